import {element} from "../dom.js";

/** A sentence with live numbers in it, for prose that depends on the design: said`It weighs ${live("3 kip")}.` */
export function said(words: TemplateStringsArray, ...values: readonly (Node | string)[]): HTMLElement {
  return element("span", {}, ...words.flatMap((text, i) => (i < values.length ? [text, values[i] as Node | string] : [text])));
}
