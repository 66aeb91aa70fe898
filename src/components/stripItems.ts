import type {Verdict} from "../lib/checks.js";
import type {Sentence} from "../lib/sentence.js";
import {checkMark, verdictWord} from "./checks.js";
import {element, uniqueId} from "./dom.js";
import {sentenceNodes} from "./quantity.js";

/** One fact of the strip. */
export interface SummaryItem {
  readonly label: string;
  /** What the reader has decided, or what came of it; none where the label says enough. */
  readonly value?: Sentence;
  /** Which of its checks fails or comes nearest to its limit: said where there is room for it. */
  readonly check?: string;
  /** Such as `./loads`. */
  readonly href: string;
  readonly verdict: Verdict;
  /** Of the check that comes nearest to its limit or passes it most; 1 is the limit. */
  readonly utilization: number;
}

/** Browsers tell widths in whole pixels, the one rounded up and the other down. */
const ROUNDING_PX = 1;

/**
 * The facts of the strip, as many as there is room for. What has no room is counted by a button, which opens the whole
 * list; `name` stands above that in full, as the strip may have no room for it either.
 */
export function stripItems(name: HTMLElement): {node: HTMLElement; show: (items: readonly SummaryItem[]) => void} {
  const list = element("ul", {class: "strip-items"});
  const whole = element("div", {id: uniqueId("strip"), class: "strip-whole popover", popover: "auto", role: "dialog", "aria-label": "The open design, all of it"});
  const more = element("button", {type: "button", class: "strip-more", popovertarget: whole.id, hidden: true, "aria-haspopup": "dialog"});
  const node = element("div", {class: "strip-row"}, list, more, whole);
  let known: readonly SummaryItem[] = [];

  const fill = () => whole.replaceChildren(element("p", {class: "strip-whole-name"}, name.textContent ?? ""), element("ul", {}, ...known.map((item) => itemElement(item, true))));
  const fit = () => {
    const items = [...list.children] as HTMLElement[];
    for (const item of items) item.hidden = false;
    more.hidden = true;
    let count = items.length;
    // One stays in any case; where even that is too long, the style ends it with dots.
    while (count > 1 && list.scrollWidth > list.clientWidth + ROUNDING_PX) {
      count -= 1;
      (items[count] as HTMLElement).hidden = true;
      tellMore(more, known.slice(count));
    }
  };
  const show = (items: readonly SummaryItem[]) => {
    known = items;
    list.replaceChildren(...items.map((item) => itemElement(item)));
    fit();
    if (whole.matches(":popover-open")) fill();
  };
  whole.addEventListener("beforetoggle", (event) => {
    if ((event as ToggleEvent).newState === "open") fill();
  });
  whole.addEventListener("toggle", (event) => {
    if ((event as ToggleEvent).newState !== "open") {
      whole.replaceChildren();
      return;
    }
    const {bottom, right} = more.getBoundingClientRect();
    whole.style.top = `${bottom + 8}px`;
    whole.style.left = `${Math.max(8, Math.min(right, document.documentElement.clientWidth - 8) - whole.offsetWidth)}px`;
  });
  let width = 0;
  new ResizeObserver(() => {
    if (node.clientWidth === width) return;
    width = node.clientWidth;
    fit();
  }).observe(node);
  // The faces of the letters may come after the numbers.
  void document.fonts.ready.then(fit);
  return {node, show};
}

function tellMore(more: HTMLElement, hidden: readonly SummaryItem[]): void {
  const failing = hidden.filter(({verdict}) => verdict === "fails").length;
  const words = `and ${hidden.length} more`;
  more.hidden = false;
  more.dataset["verdict"] = failing > 0 ? "fails" : "";
  more.setAttribute("aria-label", failing > 0 ? `${words}, ${failing === 1 ? "1 of them fails" : `${failing} of them fail`}` : words);
  more.replaceChildren(words, ...(failing > 0 ? [" ", checkMark("fails")] : []));
}

/** One fact; in the whole list with the check that it is about. */
function itemElement({label, value, check, href, verdict}: SummaryItem, whole = false): HTMLElement {
  const worth = verdict === "ok" ? undefined : verdict;
  return element(
    "li",
    {},
    element(
      "a",
      {href, "data-verdict": worth, title: whole ? undefined : check},
      element("span", {class: "strip-label"}, label),
      ...(value === undefined ? [] : [" ", element("span", {class: "strip-value"}, ...sentenceNodes(value))]),
      ...(whole && check !== undefined ? [": ", check] : []),
      ...(worth ? [" ", checkMark(worth), " ", element("span", {class: "strip-word"}, worth === "near" ? "near" : verdictWord(worth))] : []),
    ),
  );
}
