import type {Design} from "../../lib/design/design.js";
import {follow} from "../controls/follow.js";
import type {Followed} from "../store.js";
import {element} from "../dom.js";
import {redraw} from "../held.js";

/** How near to the window counts as seen, and how long what is not seen may wait, ms. */
const NEAR = "200px";
const WAIT_MS = 250;

/**
 * A figure that follows the design like a live one, for pages that have many: what the reader sees is drawn again in the
 * very moment of a change, what lies outside the window when the changes have come to rest.
 */
export function seenFigure(store: Followed, draw: (design: Design) => HTMLElement): HTMLElement {
  const node = element("div", {});
  let seen = true;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const show = () => {
    clearTimeout(waiting);
    waiting = undefined;
    redraw(node, draw(store.get()));
  };
  new IntersectionObserver((entries) => {
    seen = entries.at(-1)?.isIntersecting ?? true;
    if (seen && waiting !== undefined) show();
  }, {rootMargin: NEAR}).observe(node);
  follow(store, node, () => {
    if (seen) {
      show();
      return;
    }
    clearTimeout(waiting);
    waiting = setTimeout(show, WAIT_MS);
  });
  return node;
}

/**
 * Makes the figures of one page, which all draw what is read of the design: `drawnOf(store, (now) => [evaluated(now)])`
 * gives a function that takes how to draw. Where there is nothing to read, a figure's place stays empty.
 */
export function drawnOf<Seen extends readonly [unknown, ...unknown[]]>(store: Followed, read: (design: Design) => Seen | undefined): (draw: (...seen: Seen) => HTMLElement) => HTMLElement {
  return (draw) => seenFigure(store, (design) => {
    const seen = read(design);
    return seen ? draw(...seen) : element("div", {});
  });
}
