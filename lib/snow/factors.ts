import type {Design} from "../design/design.js";

type Snow = Design["snow"];

/**
 * Exposure factor Ce by terrain and by the roof's exposure (ASCE 7-16 Table 7.3-1). The table has no sheltered roof above
 * the tree line nor on the bare land of Alaska: null.
 */
export const EXPOSURE_FACTOR: Readonly<Record<Snow["terrain"], Readonly<Record<Snow["exposure"], number | null>>>> = {
  B: {fully: 0.9, partly: 1, sheltered: 1.2},
  C: {fully: 0.9, partly: 1, sheltered: 1.1},
  D: {fully: 0.8, partly: 0.9, sheltered: 1},
  mountain: {fully: 0.7, partly: 0.8, sheltered: null},
  alaska: {fully: 0.7, partly: 0.8, sheltered: null},
};

/** Assumed where the table of exposure has no value: the greatest that it has. */
export const GREATEST_EXPOSURE_FACTOR = 1.2;

/** Exposure factor Ce of a design's roof, and whether the table has one. */
export function exposureFactor({terrain, exposure}: Pick<Snow, "terrain" | "exposure">): {readonly factor: number; readonly inTable: boolean} {
  const factor = EXPOSURE_FACTOR[terrain][exposure];
  return {factor: factor ?? GREATEST_EXPOSURE_FACTOR, inTable: factor !== null};
}

/** Thermal factor Ct by the thermal condition below the roof (ASCE 7-16 Table 7.3-2); greenhouses, with 0.85, are not built of precast floors. */
export const THERMAL_FACTOR: Readonly<Record<Snow["thermal"], number>> = {heated: 1, cool: 1.1, unheated: 1.2, frozen: 1.3};

/** Importance factor for snow Is by risk category (ASCE 7-16 Table 1.5-2). */
export const SNOW_IMPORTANCE: Readonly<Record<Snow["risk"], number>> = {I: 0.8, II: 1, III: 1.1, IV: 1.2};
