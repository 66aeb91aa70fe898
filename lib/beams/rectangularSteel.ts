import {BAR_YIELD_KSI} from "../materials/reinforcement.js";

/** A rectangular section that bends, and the moment that it must resist. */
export interface RectangularBending {
  readonly momentKipIn: number;
  readonly widthIn: number;
  /** Compressed face to the steel, in. */
  readonly depthIn: number;
  readonly strengthPsi: number;
  /** Strength reduction factor. */
  readonly phi: number;
}

/**
 * Grade 60 steel that a rectangle needs for a moment, in2: the smaller root of M = phi As fy (d - a/2), with the
 * equivalent block a = As fy / (0.85 f'c b) (ACI 318-19 22.2). Undefined where the concrete is too small for any.
 */
export function steelForMomentIn2({momentKipIn, widthIn, depthIn, strengthPsi, phi}: RectangularBending): number | undefined {
  const fullKip = (0.85 * strengthPsi * widthIn * depthIn) / 1000;
  const inside = 1 - (2 * momentKipIn) / (phi * fullKip * depthIn);
  return inside < 0 ? undefined : (fullKip * (1 - Math.sqrt(inside))) / BAR_YIELD_KSI;
}
