import type {ReductionRule} from "../catalog.js";
import {requireNumber} from "../check.js";

/** By which rule a live load is reduced: that of its use, or none because the reader takes it in full. */
export type LoadRule = ReductionRule | "in full";

/** What the reduction of a live load depends on. */
export interface ReductionInput {
  /** Unreduced uniform live load Lo, psf. */
  readonly livePsf: number;
  readonly rule: LoadRule;
  /** Influence area KLL AT, ft2. */
  readonly influenceFt2: number;
  /** Number of floors that load the element. */
  readonly floors: number;
}

/** A reduced live load and how it came about. */
export interface Reduction {
  /** Reduced over unreduced live load, 0.4 to 1. */
  readonly factor: number;
  readonly reducedPsf: number;
  /** 0.25 + 15/sqrt(KLL AT), before any limit. */
  readonly formulaFactor: number;
  /** Minimum factor that the rule allows. */
  readonly leastFactor: number;
  /** What governed, in a few words. */
  readonly decides: ReductionCase;
  /** Clause of ASCE 7-16. */
  readonly clause: string;
}

export type ReductionCase =
  | "formula" | "lower limit" | "area too small" | "no reduction" | "taken in full" | "heavy load" | "heavy load on several floors"
  | "garage" | "garage on several floors";

/** Influence area from which a reduction is allowed, ft2 (ASCE 7-16 4.7.2). */
export const LEAST_INFLUENCE_FT2 = 400;
/** Minimum factor for one floor, and for two or more (ASCE 7-16 4.7.2). */
export const LEAST_FACTOR = {oneFloor: 0.5, moreFloors: 0.4} as const;
/** Live load above which only the 20 % rule applies, psf (ASCE 7-16 4.7.3). */
export const HEAVY_LIVE_PSF = 100;
/** Factor for heavy loads and passenger garages on members that carry two or more floors (ASCE 7-16 4.7.3, 4.7.4). */
export const SEVERAL_FLOORS_FACTOR = 0.8;

/**
 * Reduction of a uniform live load (ASCE 7-16 4.7; the same in 7-22): L = Lo (0.25 + 15/sqrt(KLL AT)) from 400 ft2 of
 * influence area, not below 0.5 Lo for one floor and 0.4 Lo for more; none above 100 psf, in passenger garages and in
 * assembly rooms, except that members that carry two or more floors of heavy load or of cars may take off 20 %.
 *
 * @throws InputError if an area or load is out of range
 */
export function reduceLiveLoad(input: ReductionInput): Reduction {
  const {rule} = input;
  const livePsf = requireNumber(input.livePsf, {path: "livePsf", label: "live load", unit: "psf", min: 0, max: 1000});
  const influenceFt2 = requireNumber(input.influenceFt2, {path: "influenceFt2", label: "influence area", unit: "ft2", min: 1, max: 1e6});
  const floors = requireNumber(input.floors, {path: "floors", label: "floors", unit: "", min: 1, max: 200, integer: true});
  const formulaFactor = 0.25 + 15 / Math.sqrt(influenceFt2);
  const leastFactor = floors > 1 ? LEAST_FACTOR.moreFloors : LEAST_FACTOR.oneFloor;
  // Below the minimum area the formula gives more than 1, so the cap at 1 takes no reduction there.
  const formula = Math.min(1, Math.max(leastFactor, formulaFactor));
  const of = (factor: number, decides: ReductionCase, clause: string): Reduction => ({
    factor, reducedPsf: factor * livePsf, formulaFactor, leastFactor, decides, clause: `ASCE 7-16 ${clause}`,
  });
  // The code permits a reduction and does not require one.
  if (rule === "in full") return of(1, "taken in full", "4.7.1");
  if (rule === "no") return of(1, "no reduction", "4.7.5");
  if (rule === "garage") {
    if (floors < 2) return of(1, "garage", "4.7.4");
    return of(Math.max(SEVERAL_FLOORS_FACTOR, formula), "garage on several floors", "4.7.4");
  }
  if (rule === "heavy" || livePsf > HEAVY_LIVE_PSF) {
    if (floors < 2) return of(1, "heavy load", "4.7.3");
    return of(Math.max(SEVERAL_FLOORS_FACTOR, formula), "heavy load on several floors", "4.7.3");
  }
  if (influenceFt2 < LEAST_INFLUENCE_FT2) return of(1, "area too small", "4.7.2");
  return of(formula, formulaFactor < leastFactor ? "lower limit" : "formula", "4.7.2");
}
