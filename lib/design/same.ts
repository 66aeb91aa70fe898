import type {Design} from "./design.js";

const texts = new WeakMap<Design, string>();

/** Whether two designs are the same in all that a file holds; one that has been kept and read again is another object. */
export function sameDesign(one: Design, other: Design): boolean {
  return one === other || textOf(one) === textOf(other);
}

function textOf(design: Design): string {
  const text = texts.get(design) ?? JSON.stringify(design);
  texts.set(design, text);
  return text;
}
