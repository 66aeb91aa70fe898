import {IN_PER_FT, LB_PER_KIP} from "../units.js";

/** Unit weight of water, pcf. */
export const WATER_PCF = 62.4;
/**
 * Flexibility ratio up to which a span needs no closer look at what fills its sag: 0.25 (AISC LRFD Specification, K2,
 * later AISC 360-16 Appendix 2, for steel roofs: Cp + 0.9 Cs at most 0.25; for wet topping common practice).
 */
export const FILL_LIMIT = 0.25;

/**
 * Flexibility of a simple span against what flows into its sag: C = g s L^4/(pi^4 E I), with the unit weight g and the
 * width s from which it loads the member. Wet topping on a floor and rain on a roof are the same to it.
 *
 * A sag a sin(pi x/L) filled with a liquid carries the load g s a sin(pi x/L), and that load sags the span by C a
 * sin(pi x/L). The sag grows by C of itself, then by C of that, and so on: in all by 1/(1 - C). From C = 1 on it has
 * no end. With steel's modulus and water this is the ratio 32 S L^4/(10^7 I) of AISC 360 Appendix 2 (L, S in ft).
 */
export function fillRatio(unitWeightPcf: number, widthIn: number, spanFt: number, modulusKsi: number, inertiaIn4: number): number {
  const weightKipIn3 = unitWeightPcf / (LB_PER_KIP * IN_PER_FT ** 3);
  return (weightKipIn3 * widthIn * (spanFt * IN_PER_FT) ** 4) / (Math.PI ** 4 * modulusKsi * inertiaIn4);
}
