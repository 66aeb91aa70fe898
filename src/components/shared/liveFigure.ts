import type {Design} from "../../lib/design/design.js";
import {follow} from "../controls/follow.js";
import {element} from "../dom.js";
import {redraw} from "../held.js";
import type {Followed} from "../store.js";

/**
 * A figure that is drawn again in the very moment of a change, ahead of the page's cells, which wait for a frame: for the
 * picture that a control moves under the reader's hand. What the reader has unfolded in it stays open.
 */
export function liveFigure(store: Followed, draw: (design: Design) => HTMLElement): HTMLElement {
  const node = element("div", {});
  follow(store, node, (design) => redraw(node, draw(design)));
  return node;
}

/** A function that remembers its last answer, for several pictures of one design. */
export function lastOf<R>(work: (design: Design) => R): (design: Design) => R {
  let known: {design: Design; answer: R} | undefined;
  return (design) => {
    if (known?.design !== design) known = {design, answer: work(design)};
    return known.answer;
  };
}
