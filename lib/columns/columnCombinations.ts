import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";

/** Factors on dead load, floor live load, and roof live load or snow. */
export interface ColumnCombination {
  readonly name: string;
  readonly dead: number;
  readonly live: number;
  readonly roof: number;
}

/**
 * Factored combinations of gravity load on a column (ASCE 7-16 2.3.1, combinations 1 to 3). Live load stands in the
 * third in full, without the half that the code permits for light loads. Lr stands for roof live load or snow.
 *
 * The last is the second without it (ACI 318-19 5.3.2; from memory: loads that need not act at once are to be omitted
 * where that is worse): axial load helps a column that is mostly in bending, and the roof may be bare.
 */
export const FACTORED: readonly ColumnCombination[] = [
  {name: "1.4D", dead: DEAD_ONLY_FACTOR, live: 0, roof: 0},
  {name: "1.2D + 1.6L + 0.5Lr", dead: DEAD_FACTOR, live: LIVE_FACTOR, roof: 0.5},
  {name: "1.2D + L + 1.6Lr", dead: DEAD_FACTOR, live: 1, roof: LIVE_FACTOR},
  {name: "1.2D + 1.6L", dead: DEAD_FACTOR, live: LIVE_FACTOR, roof: 0},
];

/** Combinations of unfactored load, for the soil (ASCE 7-16 2.4.1, combinations 2 to 4). */
export const SERVICE: readonly ColumnCombination[] = [
  {name: "D + L", dead: 1, live: 1, roof: 0},
  {name: "D + Lr", dead: 1, live: 0, roof: 1},
  {name: "D + 0.75L + 0.75Lr", dead: 1, live: 0.75, roof: 0.75},
];

/** Dead load, floor live load, and roof live load or snow on a column or from one level, kip. */
export interface ColumnLoadKip {
  readonly deadKip: number;
  readonly liveKip: number;
  readonly roofKip: number;
}

/** Moment by dead load, floor live load, and roof live load or snow, kip-in. */
export interface ColumnMomentKipIn {
  readonly deadKipIn: number;
  readonly liveKipIn: number;
  readonly roofKipIn: number;
}

/** A load under a combination, kip. */
export interface CombinedKip {
  readonly combination: ColumnCombination;
  readonly kip: number;
}

/** A load under each of several combinations. */
export function combined(load: ColumnLoadKip, combinations: readonly ColumnCombination[]): CombinedKip[] {
  return combinations.map((combination) => ({combination, kip: underCombination(load, combination)}));
}

/** A load under one combination, kip. */
export function underCombination({deadKip, liveKip, roofKip}: ColumnLoadKip, {dead, live, roof}: ColumnCombination): number {
  return dead * deadKip + live * liveKip + roof * roofKip;
}

/** A moment under one combination, kip-in. */
export function momentUnder({deadKipIn, liveKipIn, roofKipIn}: ColumnMomentKipIn, {dead, live, roof}: ColumnCombination): number {
  return dead * deadKipIn + live * liveKipIn + roof * roofKipIn;
}

/** The greatest of several combined loads; the first of equals. */
export function greatest(loads: readonly CombinedKip[]): CombinedKip {
  return loads.reduce((most, load) => (load.kip > most.kip ? load : most));
}
