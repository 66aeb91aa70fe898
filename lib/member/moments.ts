import {IN_PER_FT, kipPerIn} from "../units.js";

/**
 * Moment of a uniform load on a simple span at a place along it, kip-in: w x (L - x) / 2.
 *
 * @param loadPlf - load per foot of member
 * @param share - place along the span, 0 to 1
 */
export function uniformMomentKipIn(loadPlf: number, spanFt: number, share: number): number {
  return (kipPerIn(loadPlf) * (spanFt * IN_PER_FT) ** 2 * share * (1 - share)) / 2;
}
