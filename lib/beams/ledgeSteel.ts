import {requireNumber} from "../check.js";
import {atMost, outOfRange, type Check} from "../checks.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {SHEAR_PHI} from "../member/shear.js";
import {checkedLedge, ledgeEffectiveDepthIn, lengthWithLoadIn, type Ledge} from "./ledge.js";

/** Strength reduction factor of brackets and corbels, whatever the action (ACI 318-19 Table 21.2.1(f)). */
export const CORBEL_PHI = SHEAR_PHI;
/** Least pull across the ledge, as a share of the load, where shrinkage and creep are not kept out (ACI 318-19 16.5.3.5). */
export const LEAST_PULL = 0.2;
/** Friction of concrete cast in one piece, before lambda (ACI 318-19 Table 22.9.4.2(a)). */
export const MONOLITHIC_FRICTION = 1.4;

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

/** Steel across the ledge under one load. */
export interface LedgeSteel {
  readonly effectiveDepthIn: number;
  /** Length of ledge that works with one load, in. */
  readonly workingLengthIn: number;
  readonly pullKip: number;
  readonly momentKipIn: number;
  /** For bending (Af), for the pull (An), for shear friction (Avf), and the least (0.04 f'c/fy b d), in2. */
  readonly bendingIn2: number;
  readonly pullIn2: number;
  readonly frictionIn2: number;
  readonly leastIn2: number;
  /** Bars at the ledge's top (Asc): the greatest of Af + An, 2/3 Avf + An and the least, in2; the same per foot of working length. */
  readonly topIn2: number;
  readonly topIn2PerFt: number;
  /** Closed ties below them, within two thirds of the depth: half of Asc - An, in2. */
  readonly tiesIn2: number;
  /** Bars along the ledge: 200 lp dl / fy, in2 (PCI Design Handbook; from memory). */
  readonly lengthwiseIn2: number;
  /** Greatest spacing of the bars, in: the ledge's depth, 18 in at most (PCI Design Handbook; from memory). */
  readonly greatestSpacingIn: number;
  /** Most that shear friction may carry on the working length, phi Vn, kip. */
  readonly greatestShearKip: number;
  /** The same bars by the handbook's short form, (Vu a/d + Nu h/d) / (phi fy), in2. */
  readonly handbookIn2: number;
  readonly checks: readonly Check[];
}

/**
 * Steel across a ledge under one load, Grade 60, by the code's rules for corbels: shear friction, bending and pull
 * (ACI 318-19 16.5.2 to 16.5.5). The working length is the bearing and twice the shear span to each side (bridge practice,
 * AASHTO LRFD beam ledges; from memory), not past half-way to the next load nor past the beam's end. Bending is taken about
 * the hanger's leg rather than the web's face, the longer lever.
 *
 * @throws InputError if the ledge, load or lever cannot be
 */
export function ledgeSteel(input: LedgeSteelInput): LedgeSteel {
  const {ledge, loadKip, hangerInsetIn} = checked(input);
  const {concrete, ledgeDepthIn, shearSpanIn} = ledge;
  const d = ledgeEffectiveDepthIn(ledge);
  const workingLengthIn = lengthWithLoadIn(ledge, 2 * shearSpanIn);
  const pullKip = Math.max(LEAST_PULL * loadKip, input.pullKip ?? 0);
  const leverIn = shearSpanIn + hangerInsetIn;
  const momentKipIn = loadKip * leverIn + pullKip * (ledgeDepthIn - d);
  const strengthKsi = concrete.strengthPsi / 1000;
  const steelKsi = CORBEL_PHI * BAR_YIELD_KSI;
  // Mu = phi As fy z with a stress block as long as the working length; a moment beyond its reach is left to the failing shear check.
  const armIn = d / 2 + Math.sqrt(Math.max(0, d ** 2 / 4 - momentKipIn / (CORBEL_PHI * 1.7 * strengthKsi * workingLengthIn)));
  const bendingIn2 = momentKipIn / (steelKsi * armIn);
  const pullIn2 = pullKip / steelKsi;
  const frictionIn2 = loadKip / (steelKsi * MONOLITHIC_FRICTION * concrete.lambda);
  const leastIn2 = ((0.04 * strengthKsi) / BAR_YIELD_KSI) * workingLengthIn * d;
  const topIn2 = Math.max(bendingIn2 + pullIn2, (2 / 3) * frictionIn2 + pullIn2, leastIn2);
  const greatestShearKip = CORBEL_PHI * greatestStressKsi(ledge, d) * workingLengthIn * d;
  return {
    effectiveDepthIn: d, workingLengthIn, pullKip, momentKipIn, bendingIn2, pullIn2, frictionIn2, leastIn2,
    topIn2, topIn2PerFt: (12 * topIn2) / workingLengthIn,
    tiesIn2: (topIn2 - pullIn2) / 2,
    lengthwiseIn2: (200 * ledge.ledgeProjectionIn * d) / (1000 * BAR_YIELD_KSI),
    greatestSpacingIn: Math.min(ledgeDepthIn, 18),
    greatestShearKip,
    handbookIn2: (loadKip * (leverIn / d) + pullKip * (ledgeDepthIn / d)) / steelKsi,
    checks: [
      atMost({
        id: "ledge shear", label: "Ledge sliding down the web", unit: "kip", clause: concrete.lambda >= 1 ? "ACI 318-19 16.5.2.4" : "ACI 318-19 16.5.2.5",
        holds: "The ledge is large enough for steel across it to hold it to the web.",
        fails: "No steel across the ledge could hold this load: deepen the ledge, or make its concrete stronger.",
      }, loadKip, greatestShearKip),
      withinMethod(shearSpanIn / d, pullKip, loadKip),
    ],
  };
}

/** Greatest shear stress that friction may be asked for, ksi (ACI 318-19 16.5.2.4 normalweight, 16.5.2.5 lightweight). */
function greatestStressKsi(ledge: Ledge, effectiveDepthIn: number): number {
  const {strengthPsi, lambda} = ledge.concrete;
  if (lambda >= 1) return Math.min(0.2 * strengthPsi, 480 + 0.08 * strengthPsi, 1600) / 1000;
  // The stress falls with the lever's slope, which the method limits to 1.
  const slope = Math.min(1, ledge.shearSpanIn / effectiveDepthIn);
  return Math.min((0.2 - 0.07 * slope) * strengthPsi, 800 - 280 * slope) / 1000;
}

/** Whether the corbel rules cover the case: shear span not above the depth, pull not above the load (ACI 318-19 16.5.1.1). */
function withinMethod(slope: number, pullKip: number, loadKip: number): Check {
  const text = {id: "ledge lever", label: "Shear span over depth of the ledge", unit: "", clause: "ACI 318-19 16.5.1.1"};
  if (slope <= 1 && pullKip <= loadKip) {
    return atMost({...text, meetingIsEnough: true, holds: "The ledge is short enough to work as a corbel.", fails: ""}, slope, 1);
  }
  const message = slope > 1
    ? "The load stands further out than the ledge is deep: it bends as a cantilever, which these rules do not cover."
    : "The pull is larger than the load, which these rules do not cover.";
  return outOfRange({...text, message}, slope, 1);
}

function checked(input: LedgeSteelInput): LedgeSteelInput {
  checkedLedge(input.ledge);
  requireNumber(input.loadKip, {path: "loadKip", label: "load", unit: "kip", min: 0, max: 1e4});
  if (input.pullKip !== undefined) requireNumber(input.pullKip, {path: "pullKip", label: "pull", unit: "kip", min: 0, max: 1e4});
  requireNumber(input.hangerInsetIn, {path: "hangerInsetIn", label: "face of the web to the hanger", unit: "in", min: 0.5, max: input.ledge.webWidthIn / 2});
  return input;
}
