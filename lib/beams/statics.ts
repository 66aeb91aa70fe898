import {IN_PER_FT} from "../units.js";

/** Greatest moment of a uniform load on a simple span, kip-in: w L^2 / 8. */
export function simpleSpanMomentKipIn(loadPlf: number, spanFt: number): number {
  return ((loadPlf * spanFt ** 2) / 8) * (IN_PER_FT / 1000);
}

/** Shear of a uniform load on a simple span at a distance from the support, kip. */
export function simpleSpanShearKip(loadPlf: number, spanFt: number, fromSupportFt: number): number {
  return (loadPlf * (spanFt / 2 - fromSupportFt)) / 1000;
}
