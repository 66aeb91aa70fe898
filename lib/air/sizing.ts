import {requireNumber} from "../check.js";
import {Kept} from "../kept.js";
import {IN2_PER_FT2} from "../units.js";
import {GREATEST_ASPECT, GREATEST_VELOCITY_FPM, STEP_IN, ductVelocityFpm, type DuctUse} from "./ducts.js";
import {ductFriction, equivalentDiameterIn, roundForFrictionIn, type Friction} from "./friction.js";

/** Widest duct that is looked for, in; one that would have to be wider carries its air faster, and checks say so. */
const WIDEST_IN = 120;

/** A duct sized for a flow at a friction rate. */
export interface SizedDuct {
  readonly flowCfm: number;
  /** Inside of the duct. */
  readonly size: {readonly kind: "rectangular"; readonly widthIn: number; readonly depthIn: number};
  readonly velocityFpm: number;
  readonly friction: Friction;
  /** What decides its width: friction, the greatest velocity, that no duct is made narrower for its depth, or that none is made wider. */
  readonly governs: "friction" | "velocity" | "shape" | "widest";
}

/**
 * The narrowest duct of a depth that carries a flow at a friction rate and no faster than its use allows, in steps of
 * 2 in. One that is flatter than 4 to 1 is returned all the same: a check says so.
 *
 * @param depthIn - inside depth, in, 2 to 120
 * @param inPer100Ft - in of water in 100 ft
 */
export function sizedDuct(flowCfm: number, depthIn: number, inPer100Ft: number, use: DuctUse): SizedDuct {
  return DUCTS.get(`${flowCfm} ${depthIn} ${inPer100Ft} ${use}`, () => newSizedDuct(flowCfm, depthIn, inPer100Ft, use));
}

/** Ducts that were sized last. */
const DUCTS = new Kept<SizedDuct>(200);

function newSizedDuct(flowCfm: number, depthIn: number, inPer100Ft: number, use: DuctUse): SizedDuct {
  requireNumber(depthIn, {path: "depthIn", label: "inside depth of the duct", unit: "in", min: 2, max: 120});
  const byShape = inSteps(depthIn / GREATEST_ASPECT);
  const byVelocity = inSteps(((flowCfm / GREATEST_VELOCITY_FPM[use]) * IN2_PER_FT2) / depthIn);
  const byFriction = inSteps(widthForRoundIn(roundForFrictionIn(flowCfm, inPer100Ft), depthIn));
  const widthIn = Math.min(WIDEST_IN, Math.max(2 * STEP_IN, byShape, byVelocity, byFriction));
  const size = {kind: "rectangular", widthIn, depthIn} as const;
  const governs = Math.max(byFriction, byVelocity) > WIDEST_IN ? "widest" : byFriction >= widthIn ? "friction" : byVelocity >= widthIn ? "velocity" : "shape";
  return {flowCfm, size, velocityFpm: ductVelocityFpm(flowCfm, size), friction: ductFriction(flowCfm, size), governs};
}

/** Width of the rectangular duct of a depth that is equivalent to a round one, in, by halving: the equivalent grows with the width. */
export function widthForRoundIn(diameterIn: number, depthIn: number): number {
  let [low, high] = [0.1, 10 * WIDEST_IN];
  // Stryker disable next-line EqualityOperator,ArithmeticOperator: halving a little longer changes nothing that is told
  while (high - low > 1e-11 * high) {
    const middle = (low + high) / 2;
    if (equivalentDiameterIn({kind: "rectangular", widthIn: middle, depthIn}) < diameterIn) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function inSteps(lengthIn: number): number {
  return Math.ceil(lengthIn / STEP_IN - 1e-9) * STEP_IN;
}
