import type {ColumnLevel} from "../../lib/columns/levels.js";

/** A floor of 60 psf deck, 25 psf topping, 15 psf layers and 50 psf live load, or another that differs from it. */
export function floorLevel(different: Partial<ColumnLevel> = {}): ColumnLevel {
  return {
    name: "floor 2", kind: "floor", tributaryFt2: 1000, deckPsf: 60, toppingPsf: 25, superimposedPsf: 15, beamPlf: 500, beamLengthFt: 30,
    livePsf: 50, rule: "yes", partitionPsf: 0, storyHeightFt: 12, ...different,
  };
}

/** A roof of 60 psf deck, 20 psf layers and 20 psf roof live load. */
export function roofLevel(different: Partial<ColumnLevel> = {}): ColumnLevel {
  return floorLevel({name: "roof", kind: "roof", toppingPsf: 0, superimposedPsf: 20, livePsf: 20, ...different});
}
