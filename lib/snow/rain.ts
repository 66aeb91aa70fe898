import {requireNumber} from "../check.js";

/** Load of an inch of water, psf (ASCE 7-16 Eq. 8.3-1). */
export const WATER_PSF_PER_IN = 5.2;

/**
 * Rain load R = 5.2 (ds + dh), psf (ASCE 7-16 8.3): water on the roof as it stands undeflected when the primary drains are
 * blocked. Water that gathers because the roof deflects under it is ponding, and is not included.
 *
 * @param staticIn - depth of water up to the inlet of the secondary drains, ds
 * @param hydraulicIn - depth of water above that inlet at its design flow, dh
 * @throws InputError if a depth is out of range
 */
export function rainLoadPsf(staticIn: number, hydraulicIn: number): number {
  requireNumber(staticIn, {path: "staticIn", label: "depth up to the overflow", unit: "in", min: 0, max: 48});
  requireNumber(hydraulicIn, {path: "hydraulicIn", label: "water above the overflow", unit: "in", min: 0, max: 48});
  return WATER_PSF_PER_IN * (staticIn + hydraulicIn);
}
