import {requireNumber} from "../check.js";

/** Roof live load of an ordinary roof, and the minimum after reduction, psf (ASCE 7-16 Table 4.3-1, 4.8.2). */
export const ROOF_LIVE_PSF = 20;
export const LEAST_ROOF_LIVE_PSF = 12;
/** Minimum value of either factor (ASCE 7-16 4.8.2). */
const LEAST_FACTOR = 0.6;

/** A reduced roof live load and how it came about. */
export interface RoofLive {
  readonly tributaryFt2: number;
  /** R1, for the area. */
  readonly areaFactor: number;
  /** R2, for the slope. */
  readonly slopeFactor: number;
  /** Lr, psf. */
  readonly psf: number;
}

/**
 * Roof live load of an ordinary roof (ASCE 7-16 4.8.2; IBC 2021 1607.14.2): Lr = 20 R1 R2, from 12 to 20 psf. R1 is 1 up to
 * 200 ft2 of tributary area, 1.2 - 0.001 At up to 600 ft2, 0.6 above; R2 is 1 up to a rise F of 4 in/ft, 1.2 - 0.05 F up to
 * 12, 0.6 above.
 *
 * @param tributaryFt2 - tributary area At of the element, without an element factor
 * @throws InputError if a value is out of range
 */
export function roofLive(tributaryFt2: number, riseInPerFt = 0): RoofLive {
  requireNumber(tributaryFt2, {path: "tributaryFt2", label: "tributary area", unit: "ft2", min: 0, max: 1e6});
  requireNumber(riseInPerFt, {path: "riseInPerFt", label: "rise of the roof", unit: "in/ft", min: 0, max: 24});
  const areaFactor = between(1.2 - 0.001 * tributaryFt2);
  const slopeFactor = between(1.2 - 0.05 * riseInPerFt);
  return {tributaryFt2, areaFactor, slopeFactor, psf: Math.max(LEAST_ROOF_LIVE_PSF, ROOF_LIVE_PSF * areaFactor * slopeFactor)};
}

/** The lines of both factors meet 1 and 0.6 at the ends of their ranges. */
function between(factor: number): number {
  return Math.min(1, Math.max(LEAST_FACTOR, factor));
}
