import type {Bar} from "../materials/reinforcement.js";
import {requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import {leastClearIn, leastTie} from "./columnBars.js";
import {STEEL_RATIO} from "./section.js";

/** Bars that precast columns usually hold, by diameter, in: #6 to #11; larger ones cannot be lapped (ACI 318-19 25.5.1.1). */
const USUAL_DIAMETER_IN = {least: 0.75, most: 1.41} as const;
/** Most bars in one face of a first size. */
const MOST_IN_FACE = 8;

/** Usual bars by catalog. */
const USUAL = new WeakMap<readonly Bar[], readonly Bar[]>();

/** The bars of a catalog that columns usually hold: #6 to #11 (common practice), thinnest first. */
export function usualColumnBars(bars: readonly Bar[]): readonly Bar[] {
  const known = USUAL.get(bars);
  if (known) return known;
  const usual = bars
    .filter((bar) => bar.diameterIn >= USUAL_DIAMETER_IN.least && bar.diameterIn <= USUAL_DIAMETER_IN.most)
    .sort((a, b) => a.diameterIn - b.diameterIn);
  USUAL.set(bars, usual);
  return usual;
}

/**
 * The fewest bars on all faces of a square column that reach a share of steel, and of these the thinnest; undefined
 * where none fit with the clear spacing that the code requires.
 *
 * @param steelRatio - 0.01 to 0.08
 * @throws InputError if there are no bars to choose from, or the share is out of range
 */
export function chooseBars(sideIn: number, steelRatio: number, bars: readonly Bar[], coverIn: number): {bar: Bar; count: number} | undefined {
  const {least, most} = STEEL_RATIO;
  requireNumber(steelRatio, {path: "steelRatio", label: "share of steel", unit: "", min: least, max: most});
  if (bars.length === 0) throw new InputError({path: "bars", label: "bars", value: 0, allowed: "at least one size of bar"});
  const neededIn2 = steelRatio * sideIn ** 2;
  const thinnestFirst = [...bars].sort((a, b) => a.diameterIn - b.diameterIn);
  for (let inFace = 2; inFace <= MOST_IN_FACE; inFace++) {
    const count = 4 * (inFace - 1);
    for (const bar of thinnestFirst) {
      const areaIn2 = count * bar.areaIn2;
      const pitchIn = (sideIn - 2 * (coverIn + leastTie(bar).diameterIn) - bar.diameterIn) / (inFace - 1);
      const fits = pitchIn - bar.diameterIn >= leastClearIn(bar);
      if (fits && areaIn2 >= neededIn2 && areaIn2 <= most * sideIn ** 2) return {bar, count};
    }
  }
  return undefined;
}
