import type {Working} from "../lib/step.js";
import {element, uniqueId} from "./dom.js";
import {veilWorking} from "./veil.js";
import {lockNote} from "./veil/lock.js";
import {openGuesses} from "./veil/open.js";

/** Letters of the longest number with its unit. */
const LONGEST_NUMBER = 20;

/** Makes a working when it is asked for; its module may have to be fetched first. */
export type MakeWorking = () => Working | Promise<Working>;

/**
 * A number in the prose that follows the open design. With `makeWorking` it is a button that opens the worked steps,
 * which are made when asked for and not before.
 */
export function live(text: string | number, makeWorking?: MakeWorking): HTMLElement {
  if (invoker) requestAnimationFrame(closeOrphan);
  // A number stays with its unit; a name may be longer than a line.
  const className = String(text).length > LONGEST_NUMBER ? "live is-long" : "live";
  if (!makeWorking) return element("span", {class: className}, text);
  const node = element("button", {type: "button", class: className, "aria-haspopup": "dialog"}, text);
  node.addEventListener("click", () => void openPopover(node, makeWorking));
  return node;
}

/** Kept over a redraw: which "why?" is open, by its name. */
const open = new Set<string>();

/**
 * "why?" below a figure: the worked steps behind a small heading. They are made when opened. Give each a `name` of its
 * own where a page has several with one label, so that it stays open while the design changes.
 */
export function why(makeWorking: MakeWorking, label = "why?", name = label): HTMLDetailsElement {
  const body = element("div", {class: "why-body"});
  const node = element("details", {class: "why"}, element("summary", {}, label), body);
  const fill = () => void showWorking(body, makeWorking, {titled: true});
  if (open.has(name)) {
    node.open = true;
    fill();
  }
  node.addEventListener("toggle", () => {
    if (!node.isConnected) return;
    if (node.open) open.add(name);
    else open.delete(name);
    if (node.open && !body.hasChildNodes()) fill();
  });
  return node;
}

/** Resolves to the working's title. */
async function showWorking(into: HTMLElement, makeWorking: MakeWorking, {titled}: {titled: boolean}): Promise<string> {
  if (openGuesses.locksWorkings()) {
    into.replaceChildren(lockNote("Locked", () => {
      if (into.isConnected && !openGuesses.locksWorkings()) void showWorking(into, makeWorking, {titled});
    }));
    return "Worked steps";
  }
  // The typesetter is heavy, so a page loads it when the first reader asks.
  const [{worked}, working] = await Promise.all([import("./worked.js"), makeWorking()]);
  const steps = working.steps.length > 0 ? veilWorking(working, worked(working)) : element("p", {}, "There is nothing to compute here for this design.");
  into.replaceChildren(...(titled ? [element("p", {class: "why-title"}, working.title)] : []), steps);
  return working.title;
}

let popover: {node: HTMLElement; title: HTMLElement; body: HTMLElement} | undefined;
let invoker: HTMLElement | undefined;

/**
 * Opens the worked steps beside an element that is no number in the prose, such as a cell of a table; `before` stands
 * above them.
 */
export async function openPopover(from: HTMLElement, makeWorking: MakeWorking, before?: Node): Promise<void> {
  const {node, title, body} = (popover ??= makePopover());
  if (invoker === from && node.matches(":popover-open")) {
    node.hidePopover();
    return;
  }
  const heading = await showWorking(body, makeWorking, {titled: false});
  if (before) body.prepend(before);
  if (!from.isConnected) return;
  title.textContent = heading;
  invoker = from;
  node.showPopover();
  place(node, from);
  title.focus();
}

function makePopover(): {node: HTMLElement; title: HTMLElement; body: HTMLElement} {
  const id = uniqueId("why");
  const title = element("h2", {id, tabindex: -1, class: "popover-title"});
  const body = element("div", {class: "popover-body"});
  const close = element("button", {type: "button", class: "button quiet", "aria-label": "Close"}, "Close");
  const node = element("div", {popover: "auto", role: "dialog", "aria-labelledby": id, class: "popover"}, element("div", {class: "popover-head"}, title, close), body);
  close.addEventListener("click", () => node.hidePopover());
  node.addEventListener("toggle", (event) => {
    if ((event as ToggleEvent).newState !== "closed") return;
    // Focus goes back to the number unless the reader has already moved on to something else.
    const lost = document.activeElement === document.body || node.contains(document.activeElement);
    if (lost && invoker?.isConnected) invoker.focus({preventScroll: true});
    invoker = undefined;
  });
  document.body.append(node);
  return {node, title, body};
}

/** Below the number, or above it where there is more room; never beyond the edge of the window. */
function place(node: HTMLElement, from: HTMLElement): void {
  const gap = 8;
  const at = from.getBoundingClientRect();
  const {clientWidth: width, clientHeight: height} = document.documentElement;
  const below = height - at.bottom - 2 * gap;
  const above = at.top - 2 * gap;
  const under = below >= Math.min(node.offsetHeight, 320) || below >= above;
  node.style.maxHeight = `${Math.max(160, under ? below : above)}px`;
  node.style.left = `${Math.max(gap, Math.min(at.left, width - node.offsetWidth - gap))}px`;
  node.style.top = `${under ? at.bottom + gap : Math.max(gap, at.top - gap - node.offsetHeight)}px`;
}

/** A redraw has replaced the number that the popover belongs to, so what it shows is no longer true. */
function closeOrphan(): void {
  if (popover && invoker && !invoker.isConnected && popover.node.matches(":popover-open")) popover.node.hidePopover();
}
