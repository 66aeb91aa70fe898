import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";

/** What comes and goes on a roof besides the live load of its use: roof live load, snow, rain. */
export const ROOF_LOADS = ["Lr", "S", "R"] as const;
export type RoofLoadKind = (typeof ROOF_LOADS)[number];

/** Loads on a roof element, psf: dead load, live load of the roof's use, and those of {@link ROOF_LOADS}. */
export interface RoofLoadsPsf extends Readonly<Record<RoofLoadKind, number>> {
  readonly D: number;
  readonly L: number;
}

/** A combination with the factors on dead load, live load of the use, and one of roof live load, snow and rain. */
export interface RoofCombination {
  readonly name: string;
  readonly dead: number;
  readonly live: number;
  readonly roof: number;
  /** None where the combination has no such load. */
  readonly kind: RoofLoadKind | undefined;
}

/** A combination and what it comes to, psf. */
export interface RoofCombined {
  readonly combination: RoofCombination;
  readonly psf: number;
}

/**
 * Factored gravity combinations of a roof (ASCE 7-16 2.3.1, combinations 1 to 3, without wind). The live load of an
 * occupied roof enters the third in full, without the half that the code permits for light loads.
 *
 * @param occupied - whether the roof has a live load of its use
 */
export function factoredOfRoof(occupied: boolean): RoofCombination[] {
  return [
    {name: "1.4D", dead: DEAD_ONLY_FACTOR, live: 0, roof: 0, kind: undefined},
    ...(occupied ? ROOF_LOADS.map((kind): RoofCombination => ({name: `1.2D + 1.6L + 0.5${kind}`, dead: DEAD_FACTOR, live: LIVE_FACTOR, roof: 0.5, kind})) : []),
    ...ROOF_LOADS.map((kind): RoofCombination => ({name: `1.2D + 1.6${kind}${occupied ? " + L" : ""}`, dead: DEAD_FACTOR, live: occupied ? 1 : 0, roof: LIVE_FACTOR, kind})),
  ];
}

/** Combinations of unfactored gravity load of a roof (ASCE 7-16 2.4.1, combinations 1 to 4). */
export function serviceOfRoof(occupied: boolean): RoofCombination[] {
  return [
    {name: "D", dead: 1, live: 0, roof: 0, kind: undefined},
    ...(occupied ? [{name: "D + L", dead: 1, live: 1, roof: 0, kind: undefined}] : []),
    ...ROOF_LOADS.map((kind): RoofCombination => ({name: `D + ${kind}`, dead: 1, live: 0, roof: 1, kind})),
    ...(occupied ? ROOF_LOADS.map((kind): RoofCombination => ({name: `D + 0.75L + 0.75${kind}`, dead: 1, live: 0.75, roof: 0.75, kind})) : []),
  ];
}

/** What each combination comes to, psf. */
export function combinedOfRoof(loads: RoofLoadsPsf, combinations: readonly RoofCombination[]): RoofCombined[] {
  return combinations.map((combination) => {
    const {dead, live, roof, kind} = combination;
    return {combination, psf: dead * loads.D + live * loads.L + (kind ? roof * loads[kind] : 0)};
  });
}

/** The greatest; the first of equals. */
export function greatestOfRoof(combined: readonly RoofCombined[]): RoofCombined {
  return combined.reduce((most, one) => (one.psf > most.psf ? one : most));
}
