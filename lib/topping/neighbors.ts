import {camberCurve, type Camber, type CamberPoint} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {jointStep, type JointStep} from "./joint.js";
import {SCATTER, type Scatter} from "./scatter.js";
import {spreadBasis} from "./spreadBasis.js";
import {firstOrderDeviationIn} from "./spreadCauses.js";

/** Two pieces of one design that differ as much as neighbors do on average. */
export interface Neighbors extends JointStep {
  /** Standard deviation of the camber of such pieces, in, to first order. */
  readonly deviationIn: number;
  /** Mean difference between neighbors at midspan, in. */
  readonly meanIn: number;
  /** Rise of both along the span, in, at the places of the steps. */
  readonly lowerIn: readonly number[];
  readonly higherIn: readonly number[];
}

/**
 * Mean difference in size between neighbors, in: that of two normal deviates with standard deviation s and correlation
 * r is 2 s sqrt((1 - r)/pi) (textbook).
 */
export function meanDifferenceIn(deviationIn: number, {likeness}: Pick<Scatter, "likeness">): number {
  return 2 * deviationIn * Math.sqrt((1 - likeness) / Math.PI);
}

/**
 * The joint between two pieces of one design, one of which stands higher by the mean difference between neighbors. Its
 * strands are taken to lift the more.
 */
export function neighbors(member: Member, camber: Camber, spanFt: number, scatter: Scatter = SCATTER): Neighbors {
  const deviationIn = firstOrderDeviationIn(spreadBasis(member, camber, spanFt), scatter);
  const meanIn = meanDifferenceIn(deviationIn, scatter);
  // A lift of nothing cannot be scaled; such members have strands that bend nothing, and so nothing to differ by in lift.
  const liftIn = camber.multipliers.erectionPrestress * camber.prestressIn;
  const higher = {...camber, prestressIn: camber.prestressIn * (liftIn > 0 ? 1 + meanIn / liftIn : 1)};
  const [low, high] = [camberCurve(member, camber, PLACES), camberCurve(member, higher, PLACES)];
  const rise = (curve: readonly CamberPoint[]) => curve.map(({erectionIn}) => erectionIn);
  return {...jointStep(low, high, spanFt), deviationIn, meanIn, lowerIn: rise(low), higherIn: rise(high)};
}

const PLACES = 41;
