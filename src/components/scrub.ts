import {valueAt} from "../lib/design/plain.js";
import {InputError} from "../lib/errors.js";
import {requireField} from "./controls/frame.js";
import {keyedValue, numberBox, onRange, spokenNumber, stepOf} from "./controls/numberBox.js";
import {element, uniqueId} from "./dom.js";
import type {DesignStore} from "./store.js";

/** How far the hand goes for one step, px. */
const PX_PER_STEP = 6;
/** How many frames a sentence takes at most until it is said anew. */
const FRAMES = 120;

/** The number under the hand and the one with the focus, by path: a sentence that is said anew has new elements for both. */
let held: {readonly path: string; readonly value: number; readonly px: number} | undefined;
let focused: string | undefined;

/**
 * A number of the design in a sentence, which can be moved there: drag it sideways, use the arrow keys, or press Enter to
 * type another. `text` is what the sentence says, with its unit, so that the sentence stays one.
 */
export function scrub(store: DesignStore, path: string, text: string): HTMLElement {
  const field = requireField(path);
  if (field.kind !== "number") throw new Error(`${path} is not a number.`);
  const value = valueAt(store.get(), path);
  // Where the design leaves it out there is nothing to move.
  if (typeof value !== "number") return element("span", {class: "live"}, text);
  const rule = {...field, path};
  const node = element("span", {
    class: "live scrub", tabindex: 0, role: "spinbutton", "aria-label": rule.label, title: `Drag to change: ${rule.label}`,
    "aria-valuemin": rule.min, "aria-valuemax": rule.max, "aria-valuenow": value,
    "aria-valuetext": spokenNumber(value, rule),
  }, text);
  const take = (next: number) => {
    try {
      store.set(path, onRange(next, rule));
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      // A sentence has no room of its own for the reason.
      store.tell({kind: "problem", message: problem.message});
    }
  };
  const now = () => valueAt(store.get(), path) as number;

  node.addEventListener("focus", () => (focused = path));
  node.addEventListener("blur", () => {
    // The element that a new sentence replaces loses its focus without the reader's will; it is gone a moment later.
    setTimeout(() => {
      if (node.isConnected && !document.activeElement?.classList.contains("scrub") && focused === path) focused = undefined;
    });
  });
  node.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    event.preventDefault();
    node.focus({preventScroll: true});
    held = {path, value: now(), px: event.clientX};
    const move = (moved: PointerEvent) => {
      if (held) take(held.value + Math.round((moved.clientX - held.px) / PX_PER_STEP) * stepOf(rule));
    };
    const release = () => {
      held = undefined;
      removeEventListener("pointermove", move);
      for (const over of ["pointerup", "pointercancel"]) removeEventListener(over, release);
    };
    // On the window: this very element is gone with the first change.
    addEventListener("pointermove", move);
    for (const over of ["pointerup", "pointercancel"]) addEventListener(over, release);
  });
  node.addEventListener("keydown", (event) => {
    if (event.key === "Enter") {
      event.preventDefault();
      typeInto(node, store, path);
      return;
    }
    const next = keyedValue(event, rule, now());
    if (next === undefined) return;
    event.preventDefault();
    take(next);
  });
  node.addEventListener("dblclick", () => typeInto(node, store, path));
  if (focused === path) refocus(node, path, FRAMES);
  return node;
}

/** Gives the focus to the new element once it stands in the place of the one that had it. */
function refocus(node: HTMLElement, path: string, frames: number): void {
  requestAnimationFrame(() => {
    const active = document.activeElement;
    if (focused !== path || active === node) return;
    if (node.isConnected && active === document.body) node.focus({preventScroll: true});
    // The one that has it may be about to go; where the reader has gone elsewhere, all is well.
    else if (frames > 0 && (active === document.body || active?.classList.contains("scrub"))) refocus(node, path, frames - 1);
  });
}

/** A box over the number, for one who would rather type. */
function typeInto(node: HTMLElement, store: DesignStore, path: string): void {
  const field = requireField(path);
  if (field.kind !== "number") return;
  const box = numberBox({
    rule: {...field, path}, name: field.label,
    get: () => valueAt(store.get(), path) as number | undefined,
    set: (value) => store.set(path, value),
  });
  const popover = element("div", {id: uniqueId("scrub"), class: "popover scrub-entry", popover: "auto"}, box.entry, box.message.node);
  document.body.append(popover);
  const {left, bottom} = node.getBoundingClientRect();
  popover.showPopover();
  popover.style.left = `${Math.max(8, Math.min(left, document.documentElement.clientWidth - popover.offsetWidth - 8))}px`;
  popover.style.top = `${bottom + 6}px`;
  box.input.select();
  box.input.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && !box.input.hasAttribute("aria-invalid")) popover.hidePopover();
  });
  popover.addEventListener("toggle", (event) => {
    if ((event as ToggleEvent).newState !== "closed") return;
    popover.remove();
    focused = path;
    const again = node.isConnected ? node : document.querySelector<HTMLElement>(`.scrub[aria-label="${CSS.escape(field.label)}"]`);
    again?.focus({preventScroll: true});
  });
}
