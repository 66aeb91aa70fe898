import {feetAndInches, decimals} from "../../lib/units.js";

/** Names the part of a drawing that a number in the prose belongs to, so that each lights the other. */
export function part<T extends HTMLElement>(name: string, node: T): T {
  node.dataset["part"] = name;
  return node;
}

/** Inches with no more decimals than they have: "10 in", "29.75 in". */
export function inches(lengthIn: number): string {
  return `${Number(lengthIn.toFixed(2)).toLocaleString("en-US")} in`;
}

/** A height above the floor, with its feet: `0'-8"`. */
export function height(lengthIn: number): string {
  return feetAndInches(lengthIn, 4, true);
}

/** Pounds per square foot, to the pound, or to a tenth where it is little or uneven. */
export function psf(loadPsf: number): string {
  return `${decimals(loadPsf, loadPsf % 1 && loadPsf < 100 ? 1 : 0)} psf`;
}
