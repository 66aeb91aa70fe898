import type {Design} from "../design/design.js";
import {IN_PER_FT} from "../units.js";

/** Steepest ramp on which cars park, %: 1 in 15 (IBC 2021 406.4.3). */
export const PARKED_SLOPE_PERCENT = 100 / 15;
/** Steepest ramp for driving alone, % (common practice: 12 to 16). */
export const DRIVEN_SLOPE_PERCENT = 16;
/** Greatest change of slope at which cars do not scrape, % (common practice: 8 to 10, blended where it is more). */
export const BREAK_PERCENT = 10;

/** A ramp's profile along one straight run. */
export interface Ramp {
  /** What one run climbs, in. */
  readonly riseIn: number;
  readonly slopePercent: number;
  /** Length of the blend at each end, at half the slope, and of the ramp between them, in. */
  readonly blendIn: number;
  readonly steepIn: number;
  readonly lengthIn: number;
  /** Greatest change of slope along the way, %. */
  readonly breakPercent: number;
  readonly runs: number;
}

/**
 * The ramp that climbs one story in the design's runs.
 *
 * With a blend t at half the slope s at each end, rise = s (L - 2t) + 2 t s/2, so that L = rise/s + t; where the blends
 * alone climb more than the rise, they meet: L = 2 rise/s.
 */
export function rampOf({story, parking}: Pick<Design, "story" | "parking">): Ramp {
  const {rampSlopePercent, rampBlendFt, rampRuns} = parking;
  const riseIn = (story.floorToFloorFt * IN_PER_FT) / rampRuns;
  const slope = rampSlopePercent / 100;
  const blendIn = Math.min(rampBlendFt * IN_PER_FT, riseIn / slope);
  const steepIn = riseIn / slope - blendIn;
  return {
    riseIn, slopePercent: rampSlopePercent, blendIn, steepIn, lengthIn: riseIn / slope + blendIn, runs: rampRuns,
    breakPercent: blendIn > 0 ? rampSlopePercent / 2 : rampSlopePercent,
  };
}

/** Length of one run on the plan, in. */
export function rampLengthIn(design: Pick<Design, "story" | "parking">): number {
  return rampOf(design).lengthIn;
}
