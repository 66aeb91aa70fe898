import {requireNumber} from "../check.js";
import {IN2_PER_FT2, IN_PER_FT} from "../units.js";
import type {DuctSize} from "./ducts.js";

/**
 * Friction of air in straight ducts by Darcy and Weisbach with the friction factor of Colebrook and White, as ASHRAE
 * Handbook Fundamentals, "Duct Design", has it (from memory): standard air of 0.075 lb/ft3, galvanized steel with a
 * roughness of 0.0003 ft, lengths of 100 ft. Elbows, take-offs and dampers come on top.
 */

/** Absolute roughness of galvanized steel ducts, ft (ASHRAE Fundamentals, "Duct Design"; from memory). */
export const ROUGHNESS_FT = 0.0003;
/** Standard air, lb/ft3. */
export const AIR_PCF = 0.075;
/** Reynolds number of standard air over diameter in inches times velocity in ft/min (ASHRAE Fundamentals, "Duct Design"; from memory). */
export const REYNOLDS_PER_IN_FPM = 8.56;
/** Velocity in ft/min at which air of 1 lb/ft3 has a velocity pressure of 1 in of water. */
export const UNIT_PRESSURE_FPM = 1097;
/** Friction rate that sizes follow where a design gives none, in of water in 100 ft (common practice: 0.08 to 0.1). */
export const USUAL_FRICTION_IN = 0.1;

/** Largest and smallest flow that the method is used for, cfm. */
const FLOW = {path: "flowCfm", label: "air flow", unit: "cfm", min: 1, max: 20_000_000} as const;

/** Friction of air in a duct. */
export interface Friction {
  /** The round duct that has the same friction with the same flow, in: of a round one its own diameter. */
  readonly equivalentIn: number;
  /** Velocity in that round duct, ft/min: what friction is computed from. */
  readonly equivalentFpm: number;
  readonly reynolds: number;
  readonly factor: number;
  /** Loss of pressure in 100 ft of straight duct, in of water. */
  readonly inPer100Ft: number;
}

/**
 * Diameter of the round duct that passes the same flow at the same friction as a rectangular one, in: 1.30 (ab)^0.625 /
 * (a + b)^0.25 (Huebscher 1948, in ASHRAE Fundamentals, "Duct Design").
 */
export function equivalentDiameterIn(size: DuctSize): number {
  if (size.kind === "round") return size.diameterIn;
  const {widthIn: a, depthIn: b} = size;
  return (1.3 * (a * b) ** 0.625) / (a + b) ** 0.25;
}

/**
 * Friction factor of a rough pipe in turbulent flow (Colebrook and White), solved by putting it into its own formula
 * until it converges; in laminar flow, below a Reynolds number of 2,000, 64 over it.
 */
export function frictionFactor(reynolds: number, diameterIn: number): number {
  if (reynolds < 2000) return 64 / reynolds;
  const rough = (IN_PER_FT * ROUGHNESS_FT) / (3.7 * diameterIn);
  let inverseRoot = 7;
  // Stryker disable next-line EqualityOperator: another round changes nothing that is told
  for (let i = 0; i < 60; i++) {
    const next = -2 * Math.log10(rough + (2.51 * inverseRoot) / reynolds);
    // Stryker disable next-line EqualityOperator: another round changes nothing that is told
    if (Math.abs(next - inverseRoot) < 1e-13) break;
    inverseRoot = next;
  }
  return 1 / (inverseRoot * inverseRoot);
}

/**
 * Friction of a flow in a duct.
 *
 * @param flowCfm - 1 to 20,000,000 cfm
 * @throws InputError if the flow or the size is out of range
 */
export function ductFriction(flowCfm: number, size: DuctSize): Friction {
  requireNumber(flowCfm, FLOW);
  return frictionOfRound(flowCfm, equivalentDiameterIn(size));
}

/**
 * Diameter of the round duct whose friction is a given rate, in, by halving: friction falls with the diameter.
 *
 * @param inPer100Ft - in of water in 100 ft, 0.001 to 10
 */
export function roundForFrictionIn(flowCfm: number, inPer100Ft: number): number {
  requireNumber(flowCfm, FLOW);
  checkedRate(inPer100Ft);
  let [low, high] = [1, 1200];
  // Stryker disable next-line EqualityOperator,ArithmeticOperator: halving a little longer changes nothing that is told
  while (high - low > 1e-11 * high) {
    const middle = (low + high) / 2;
    // Stryker disable next-line EqualityOperator: the two meet there
    if (frictionOfRound(flowCfm, middle).inPer100Ft > inPer100Ft) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Returns a friction rate if it is one, in of water in 100 ft; throws {@link InputError} otherwise. */
export function checkedRate(inPer100Ft: number): number {
  return requireNumber(inPer100Ft, {path: "inPer100Ft", label: "friction rate", unit: "in of water in 100 ft", min: 0.001, max: 10});
}

function frictionOfRound(flowCfm: number, equivalentIn: number): Friction {
  const equivalentFpm = flowCfm / ((Math.PI * equivalentIn * equivalentIn) / 4 / IN2_PER_FT2);
  const reynolds = REYNOLDS_PER_IN_FPM * equivalentIn * equivalentFpm;
  const factor = frictionFactor(reynolds, equivalentIn);
  const pressureIn = AIR_PCF * (equivalentFpm / UNIT_PRESSURE_FPM) ** 2;
  return {equivalentIn, equivalentFpm, reynolds, factor, inPer100Ft: ((factor * IN_PER_FT * 100) / equivalentIn) * pressureIn};
}
