import {requireNumber} from "../check.js";
import {exceeds} from "../checks.js";
import {Kept} from "../kept.js";
import {IN2_PER_FT2} from "../units.js";
import {GREATEST_ASPECT, GREATEST_VELOCITY_FPM, STEP_IN, ductVelocityFpm, type DuctUse} from "./ducts.js";
import {checkedRate, ductFriction, type Friction} from "./friction.js";

/** Widest duct that is looked for, in; one that would have to be wider carries its air faster, and checks say so. */
const WIDEST_IN = 120;
/** Of what was sized last as much is kept: rates, flows of a rate, depths of a flow. */
const [MOST_RATES, MOST_FLOWS, MOST_DEPTHS] = [4, 60, 40];

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
  return ductsFor(flowCfm, inPer100Ft, use).at(depthIn);
}

/** {@link sizedDuct} of any depth. */
export function ductsFor(flowCfm: number, inPer100Ft: number, use: DuctUse): DuctsOfFlow {
  return KNOWN[use].get(inPer100Ft, () => new Kept(MOST_FLOWS)).get(flowCfm, () => new DuctsOfFlow(flowCfm, inPer100Ft, use));
}

/** Ducts that were sized last, by use, rate and flow. */
const KNOWN: Readonly<Record<DuctUse, Kept<Kept<DuctsOfFlow, number>, number>>> = {main: new Kept(MOST_RATES), branch: new Kept(MOST_RATES)};

/** Ducts for one flow at one rate, by their depth: of a main many depths are tried. */
class DuctsOfFlow {
  readonly #known = new Kept<SizedDuct, number>(MOST_DEPTHS);

  constructor(private readonly flowCfm: number, private readonly inPer100Ft: number, private readonly use: DuctUse) {}

  /** @param depthIn - inside depth, in, 2 to 120 */
  at(depthIn: number): SizedDuct {
    return this.#known.get(depthIn, () => newSizedDuct(this.flowCfm, depthIn, this.inPer100Ft, this.use));
  }
}

function newSizedDuct(flowCfm: number, depthIn: number, inPer100Ft: number, use: DuctUse): SizedDuct {
  requireNumber(depthIn, {path: "depthIn", label: "inside depth of the duct", unit: "in", min: 2, max: 120});
  const byShape = inSteps(depthIn / GREATEST_ASPECT);
  const byVelocity = inSteps(((flowCfm / GREATEST_VELOCITY_FPM[use]) * IN2_PER_FT2) / depthIn);
  const byFriction = widthForFrictionIn(flowCfm, depthIn, inPer100Ft);
  const widthIn = Math.min(WIDEST_IN, Math.max(2 * STEP_IN, byShape, byVelocity, byFriction));
  const size = {kind: "rectangular", widthIn, depthIn} as const;
  const governs = Math.max(byFriction, byVelocity) > WIDEST_IN ? "widest" : byFriction >= widthIn ? "friction" : byVelocity >= widthIn ? "velocity" : "shape";
  return {flowCfm, size, velocityFpm: ductVelocityFpm(flowCfm, size), friction: ductFriction(flowCfm, size), governs};
}

/** Least width in steps at which a flow keeps to a friction rate, in, by halving: friction falls with the width. A step more than the widest where none does. */
function widthForFrictionIn(flowCfm: number, depthIn: number, inPer100Ft: number): number {
  const rateIn = checkedRate(inPer100Ft);
  let [low, high] = [0, WIDEST_IN / STEP_IN + 1];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (exceeds(ductFriction(flowCfm, {kind: "rectangular", widthIn: middle * STEP_IN, depthIn}).inPer100Ft, rateIn)) low = middle;
    else high = middle;
  }
  return high * STEP_IN;
}

function inSteps(lengthIn: number): number {
  return Math.ceil(lengthIn / STEP_IN - 1e-9) * STEP_IN;
}
