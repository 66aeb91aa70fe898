import {requireNumber} from "../check.js";
import {IN_PER_FT} from "../units.js";

/** A roof's site and exposure, for its snow load. */
export interface SnowSite {
  /** Ground snow load pg, psf. */
  readonly groundPsf: number;
  /** Ce, Ct and Is. */
  readonly exposureFactor: number;
  readonly thermalFactor: number;
  readonly importance: number;
}

/** Basic share of the ground snow load that stays on a flat roof (ASCE 7-16 Eq. 7.3-1). */
export const ROOF_SHARE = 0.7;
/** Ground snow load up to which the minimum follows it, and rain on snow is added, psf (ASCE 7-16 7.3.4, 7.10). */
export const LIGHT_SNOW_PSF = 20;
/** Rain on snow, psf (ASCE 7-16 7.10). */
export const RAIN_ON_SNOW_PSF = 5;
/** Rain stays in the snow of a roof whose slope in degrees is below its length from eave to ridge in feet over this (ASCE 7-16 7.10). */
export const DRAIN_LENGTH_FT = 50;

/** Unit weight of snow, pcf: 0.13 pg + 14, at most 30 (ASCE 7-16 Eq. 7.7-1). */
export function snowDensityPcf(groundPsf: number): number {
  return Math.min(30, 0.13 * groundPsf + 14);
}

/** Slope of a roof in degrees. */
export function slopeDeg(riseInPerFt: number): number {
  return (Math.atan(riseInPerFt / IN_PER_FT) * 180) / Math.PI;
}

/** Snow that lies evenly on a roof of low slope. */
export interface BalancedSnow {
  readonly site: SnowSite;
  /** pf = 0.7 Ce Ct Is pg, psf; the sloped-roof load ps is the same, as Cs is 1 (ASCE 7-16 7.4). */
  readonly flatPsf: number;
  /** pm, psf: a load case of its own, never with drift (ASCE 7-16 7.3.4). */
  readonly minimumPsf: number;
  /** Unit weight of snow, pcf. */
  readonly densityPcf: number;
  /** Height hb of the balanced snow, ft. */
  readonly depthFt: number;
  /** Slope of the roof, and the slope from which rain runs off through the snow: W/50, deg. */
  readonly slopeDeg: number;
  readonly drainsFromDeg: number;
  /** What rain adds to the balanced snow alone, psf. */
  readonly rainOnSnowPsf: number;
}

/**
 * Balanced snow on a flat roof (ASCE 7-16 7.3, 7.4, 7.10).
 *
 * @param riseInPerFt - slope of the roof; above 5 degrees a slippery warm roof may shed snow, which is not counted
 * @param eaveToRidgeFt - W: from the low edge, or the drain, to the high line
 * @throws InputError if a value is out of range
 */
export function balancedSnow(site: SnowSite, riseInPerFt: number, eaveToRidgeFt: number): BalancedSnow {
  const {groundPsf, exposureFactor, thermalFactor, importance} = site;
  requireNumber(groundPsf, {path: "groundPsf", label: "ground snow load", unit: "psf", min: 0, max: 1000});
  requireNumber(riseInPerFt, {path: "riseInPerFt", label: "slope of the roof", unit: "in/ft", min: 0, max: 3});
  requireNumber(eaveToRidgeFt, {path: "eaveToRidgeFt", label: "length from eave to ridge", unit: "ft", min: 1, max: 2000});
  const flatPsf = ROOF_SHARE * exposureFactor * thermalFactor * importance * groundPsf;
  const densityPcf = snowDensityPcf(groundPsf);
  const slope = slopeDeg(riseInPerFt);
  const drainsFromDeg = eaveToRidgeFt / DRAIN_LENGTH_FT;
  const light = groundPsf > 0 && groundPsf <= LIGHT_SNOW_PSF;
  return {
    site, flatPsf, densityPcf,
    minimumPsf: importance * Math.min(groundPsf, LIGHT_SNOW_PSF),
    depthFt: flatPsf / densityPcf,
    slopeDeg: slope, drainsFromDeg,
    rainOnSnowPsf: light && slope < drainsFromDeg ? RAIN_ON_SNOW_PSF : 0,
  };
}
