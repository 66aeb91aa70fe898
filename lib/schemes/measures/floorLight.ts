import type {Evaluation} from "../../evaluate.js";

/** Parts of a whole floor by its daylight, %. */
export interface FloorLight {
  readonly goodPercent: number;
  /** Good and partial together. */
  readonly daylitPercent: number;
  readonly noSkyPercent: number;
}

const DARK: FloorLight = {goodPercent: 0, daylitPercent: 0, noSkyPercent: 100};

/**
 * Daylight over the whole width of the floor. What lies behind the room that has the windows, as the other bays where one
 * long side alone has them, or what is deeper than the computation goes, is dark; so is a floor without glass.
 */
export function floorLight({design, daylight}: Evaluation): FloorLight {
  if (!daylight) return DARK;
  const {bay} = design;
  const litPart = daylight.input.depthFt / (bay.spanFt * bay.baysAcross);
  const {shares, skySeenShare} = daylight.result;
  return {
    goodPercent: 100 * litPart * shares.good, daylitPercent: 100 * litPart * (shares.good + shares.partial), noSkyPercent: 100 * (1 - litPart * skySeenShare),
  };
}
