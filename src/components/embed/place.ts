import {boardsOf, type Board} from "../boards/boards.js";
import type {EmbeddedFigure} from "./figures.js";

/** The board of a figure as its page stands now; undefined where this design has none. */
export function boardOf(main: Element, {at: [heading, picture]}: EmbeddedFigure): Board | undefined {
  return boardsOf(main).filter(({kind, id}) => kind === "picture" && id.replace(/\.\d+$/, "") === heading)[picture - 1];
}

/** Marks everything within an element that is neither one of the given, nor within one, nor on the way to one; the style hides it. */
export function alone(within: Element, kept: readonly Element[]): void {
  for (const child of within.children as HTMLCollectionOf<HTMLElement>) {
    const holds = kept.some((node) => child !== node && child.contains(node));
    const place = kept.includes(child) ? "kept" : holds ? "way" : "off";
    if (child.dataset["place"] !== place) child.dataset["place"] = place;
    // What is folded away on the page is at hand here.
    if (holds && child instanceof HTMLDetailsElement) child.open = true;
    if (holds) alone(child, kept);
  }
}
