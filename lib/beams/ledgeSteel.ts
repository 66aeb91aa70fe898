import {requireNumber} from "../check.js";
import {atMost, outOfRange, type Check} from "../checks.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {CORBEL_PHI, corbelPullKip, corbelSteel, type CorbelSteel} from "./corbelSteel.js";
import {checkedLedge, ledgeEffectiveDepthIn, lengthWithLoadIn, type Ledge} from "./ledge.js";

/** A load on the ledge, for its steel. */
export interface LedgeSteelInput {
  readonly ledge: Ledge;
  /** Factored load of one stem, kip. */
  readonly loadKip: number;
  /** Factored pull away from the web at the level of the bearing, kip; a fifth of the load if it is less or not given. */
  readonly pullKip?: number;
  /** Face of the web to the center of the upright leg that hangs the ledge up, in: moment is taken about it. */
  readonly hangerInsetIn: number;
}

/** Steel across the ledge under one load, on the length of ledge that works with it. */
export interface LedgeSteel extends Omit<CorbelSteel, "rule" | "greatestMomentKipIn"> {
  readonly effectiveDepthIn: number;
  /** Length of ledge that works with one load, in. */
  readonly workingLengthIn: number;
  readonly pullKip: number;
  readonly momentKipIn: number;
  /** Bars at the ledge's top per foot of working length, in2. */
  readonly topIn2PerFt: number;
  /** Bars along the ledge: 200 lp dl / fy, in2 (PCI Design Handbook, 7th ed., 5.5; from memory). */
  readonly lengthwiseIn2: number;
  /** Greatest spacing of the bars, in: the ledge's depth, 18 in at most (PCI Design Handbook, 7th ed., 5.5; from memory). */
  readonly greatestSpacingIn: number;
  /** The same bars by the handbook's short form, (Vu a/d + Nu h/d) / (phi fy), in2. */
  readonly handbookIn2: number;
  readonly checks: readonly Check[];
}

/**
 * Steel across a ledge under one load, Grade 60, by the code's rules for corbels: shear friction, bending and pull
 * (ACI 318-19 16.5.2 to 16.5.5). The working length is the bearing and twice the shear span to each side (bridge practice,
 * AASHTO LRFD beam ledges; from memory), not past half-way to the next load nor past the beam's end. Bending is taken about
 * the hanger's leg rather than the web's face, the longer lever arm.
 *
 * @throws InputError if the ledge, load or lever arm cannot be
 */
export function ledgeSteel(input: LedgeSteelInput): LedgeSteel {
  const {ledge, loadKip, hangerInsetIn} = checked(input);
  const {concrete, ledgeDepthIn, shearSpanIn} = ledge;
  const d = ledgeEffectiveDepthIn(ledge);
  const workingLengthIn = lengthWithLoadIn(ledge, 2 * shearSpanIn);
  const pullKip = corbelPullKip(loadKip, input.pullKip);
  const leverIn = shearSpanIn + hangerInsetIn;
  const momentKipIn = loadKip * leverIn + pullKip * (ledgeDepthIn - d);
  // A moment beyond the reach of any steel is left to the failing shear check.
  const {bendingIn2, pullIn2, frictionIn2, leastIn2, topIn2, tiesIn2, greatestShearKip} = corbelSteel({
    concrete, widthIn: workingLengthIn, effectiveDepthIn: d, armIn: shearSpanIn, shearKip: loadKip, pullKip, momentKipIn,
  });
  return {
    effectiveDepthIn: d, workingLengthIn, pullKip, momentKipIn, bendingIn2, pullIn2, frictionIn2, leastIn2,
    topIn2, topIn2PerFt: (12 * topIn2) / workingLengthIn, tiesIn2,
    lengthwiseIn2: (200 * ledge.ledgeProjectionIn * d) / (1000 * BAR_YIELD_KSI),
    greatestSpacingIn: Math.min(ledgeDepthIn, 18),
    greatestShearKip,
    handbookIn2: (loadKip * (leverIn / d) + pullKip * (ledgeDepthIn / d)) / (CORBEL_PHI * BAR_YIELD_KSI),
    checks: [
      atMost({
        id: "ledge shear", label: "Ledge sliding down the web", unit: "kip", clause: concrete.lambda >= 1 ? "ACI 318-19 16.5.2.4" : "ACI 318-19 16.5.2.5",
        holds: "The ledge is large enough for steel across it to tie it to the web.",
        fails: "No steel across the ledge could hold this load: deepen the ledge, or make its concrete stronger.",
      }, loadKip, greatestShearKip),
      withinMethod(shearSpanIn / d, pullKip, loadKip),
    ],
  };
}

const LEVER = {
  id: "ledge lever", label: "Shear span over depth of the ledge", unit: "", clause: "ACI 318-19 16.5.1.1", meetingIsEnough: true,
  holds: "The ledge is short enough to act as a corbel.", fails: "",
};

/** Whether the corbel rules cover the case: shear span not above the depth, pull not above the load (ACI 318-19 16.5.1.1). */
function withinMethod(slope: number, pullKip: number, loadKip: number): Check {
  if (slope <= 1 && pullKip <= loadKip) {
    return atMost(LEVER, slope, 1);
  }
  const message = slope > 1
    ? "The load is farther out than the ledge is deep: it bends as a cantilever, which these rules do not cover."
    : "The horizontal force is larger than the load, which these rules do not cover.";
  return outOfRange({...LEVER, message}, slope, 1);
}

function checked(input: LedgeSteelInput): LedgeSteelInput {
  checkedLedge(input.ledge);
  requireNumber(input.loadKip, {path: "loadKip", label: "load", unit: "kip", min: 0, max: 1e4});
  if (input.pullKip !== undefined) requireNumber(input.pullKip, {path: "pullKip", label: "pull", unit: "kip", min: 0, max: 1e4});
  requireNumber(input.hangerInsetIn, {path: "hangerInsetIn", label: "face of the web to the hanger", unit: "in", min: 0.5, max: input.ledge.webWidthIn / 2});
  return input;
}
