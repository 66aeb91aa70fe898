import type {QuantityName} from "../lib/quantities.js";
import type {Sentence} from "../lib/sentence.js";
import {element} from "./dom.js";
import {veilQuantity} from "./veil.js";

/**
 * Marks an element, in prose or in a drawing, as one that shows a quantity and nothing else. While the page asks the reader
 * to guess it, a veil stands in its place.
 */
export function quantity<T extends HTMLElement | SVGElement>(name: QuantityName, node: T): T {
  node.dataset["quantity"] = name;
  veilQuantity(name, node);
  return node;
}

/** A number of a sentence that is not live. */
export function figureOf(name: QuantityName, text: string): HTMLElement {
  return quantity(name, element("span", {}, text));
}

/** A sentence's pieces, each number marked with what it stands for. */
export function sentenceNodes(told: Sentence): (string | Node)[] {
  return typeof told === "string" ? [told] : told.map((part) => (typeof part === "string" ? part : figureOf(part.quantity, part.text)));
}
