import type {Scatter} from "./scatter.js";
import type {SpreadBasis} from "./spreadBasis.js";

/** What makes pieces differ. */
export type SpreadCause = "stiffness" | "release strength" | "force" | "age" | "weight" | "length";

/** What one cause does to the camber at erection. */
export interface CauseOfSpread {
  readonly cause: SpreadCause;
  /** Standard deviation by this cause alone, in. */
  readonly deviationIn: number;
  /** Its part of the variance by all causes, 0 to 1. */
  readonly varianceShare: number;
}

/**
 * The spread of the camber at erection by cause, to first order: the standard deviation of each cause times the slope
 * of the camber in it; squares add up (textbook: the delta method). Largest first.
 */
export function spreadCauses(basis: SpreadBasis, scatter: Scatter): CauseOfSpread[] {
  const strands = basis.erectionPrestress * basis.prestressIn;
  const own = basis.erectionSelf * basis.selfIn;
  const t = basis.ageDays ** 0.6;
  const growing = (basis.erectionPrestress - 1) * basis.prestressIn + (basis.erectionSelf - 1) * basis.selfIn;
  const deviations: [SpreadCause, number][] = [
    ["stiffness", scatter.stiffness * (strands + own)],
    ["release strength", (scatter.releaseStrength * (strands + own)) / 2],
    ["force", scatter.force * strands],
    // d ln g/d ln t of g = t^0.6/(10 + t^0.6) is 0.6 x 10/(10 + t^0.6).
    ["age", scatter.age * growing * (6 / (10 + t))],
    ["weight", scatter.weight * own],
    ["length", (scatter.lengthIn / basis.spanIn) * (2 * strands + 4 * own)],
  ];
  const variance = deviations.reduce((sum, [, deviation]) => sum + deviation ** 2, 0);
  return deviations
    .map(([cause, deviation]): CauseOfSpread => ({cause, deviationIn: Math.abs(deviation), varianceShare: variance > 0 ? deviation ** 2 / variance : 0}))
    .sort((a, b) => b.deviationIn - a.deviationIn);
}

/** Standard deviation of the camber at erection by all causes, to first order, in. */
export function firstOrderDeviationIn(basis: SpreadBasis, scatter: Scatter): number {
  return Math.hypot(...spreadCauses(basis, scatter).map(({deviationIn}) => deviationIn));
}
