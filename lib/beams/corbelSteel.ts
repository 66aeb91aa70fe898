import type {Concrete} from "../materials/concrete.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {SHEAR_PHI} from "../member/shear.js";
import {steelForMomentIn2} from "./rectangularSteel.js";

/** Strength reduction factor of brackets and corbels, whatever the action (ACI 318-19 Table 21.2.1(f)). */
export const CORBEL_PHI = SHEAR_PHI;
/** Least pull across a corbel, as a share of its load, where shrinkage and creep are not kept out (ACI 318-19 16.5.3.5). */
export const LEAST_PULL = 0.2;
/** Friction of concrete cast in one piece, before lambda (ACI 318-19 Table 22.9.4.2(a)). */
export const MONOLITHIC_FRICTION = 1.4;

/** What crosses the face of a corbel, or of the length of a ledge that works with one load. */
export interface CorbelForces {
  readonly concrete: Pick<Concrete, "strengthPsi" | "lambda">;
  /** Width bw, or length of ledge, and depth to the main steel d, in. */
  readonly widthIn: number;
  readonly effectiveDepthIn: number;
  /** Face to the load av, in. */
  readonly armIn: number;
  /** Factored load Vu and pull Nuc, kip, and moment Mu, kip-in. */
  readonly shearKip: number;
  readonly pullKip: number;
  readonly momentKipIn: number;
}

/** Which rule of ACI 318-19 16.5.5.1 requires the most steel. */
export type CorbelRule = "bending and pull" | "shear friction and pull" | "least steel";

/** Grade 60 steel across the face, and what the section resists whatever its steel. */
export interface CorbelSteel {
  /** For bending (Af), for the pull (An), for shear friction (Avf), and the least (0.04 f'c/fy b d), in2. */
  readonly bendingIn2: number;
  readonly pullIn2: number;
  readonly frictionIn2: number;
  readonly leastIn2: number;
  /** Main steel at the top (Asc): the greatest of Af + An, 2/3 Avf + An and the least, in2, and which one it is. */
  readonly topIn2: number;
  readonly rule: CorbelRule;
  /** Closed ties below it, within two thirds of d: half of Asc - An, in2. */
  readonly tiesIn2: number;
  /** Most shear that friction may carry, phi Vn, kip, and most moment that any steel gives, kip-in. */
  readonly greatestShearKip: number;
  readonly greatestMomentKipIn: number;
}

/** The pull that counts, kip: a fifth of the load at least (ACI 318-19 16.5.3.5). */
export function corbelPullKip(shearKip: number, pullKip = 0): number {
  return Math.max(LEAST_PULL * shearKip, pullKip);
}

/**
 * Steel by the code's rules for corbels: shear friction, bending and pull (ACI 318-19 16.5.2 to 16.5.5), for corbels on
 * columns and ledges of beams alike. Where the moment is beyond any steel, half the depth as its lever arm keeps a number to show;
 * the caller checks shear or moment. Arguments are taken as checked.
 */
export function corbelSteel({concrete, widthIn, effectiveDepthIn, armIn, shearKip, pullKip, momentKipIn}: CorbelForces): CorbelSteel {
  const {strengthPsi, lambda} = concrete;
  const steelKsi = CORBEL_PHI * BAR_YIELD_KSI;
  const areaIn2 = widthIn * effectiveDepthIn;
  const bendingIn2 = steelForMomentIn2({momentKipIn, widthIn, depthIn: effectiveDepthIn, strengthPsi, phi: CORBEL_PHI})
    ?? momentKipIn / (steelKsi * (effectiveDepthIn / 2));
  const pullIn2 = pullKip / steelKsi;
  const frictionIn2 = shearKip / (steelKsi * MONOLITHIC_FRICTION * lambda);
  const leastIn2 = 0.04 * (strengthPsi / (1000 * BAR_YIELD_KSI)) * areaIn2;
  const byBendingIn2 = bendingIn2 + pullIn2;
  const byFrictionIn2 = (2 / 3) * frictionIn2 + pullIn2;
  const topIn2 = Math.max(byBendingIn2, byFrictionIn2, leastIn2);
  return {
    bendingIn2, pullIn2, frictionIn2, leastIn2, topIn2,
    rule: topIn2 === byBendingIn2 ? "bending and pull" : topIn2 === byFrictionIn2 ? "shear friction and pull" : "least steel",
    tiesIn2: (topIn2 - pullIn2) / 2,
    greatestShearKip: CORBEL_PHI * greatestStressKsi(strengthPsi, lambda, armIn / effectiveDepthIn) * areaIn2,
    greatestMomentKipIn: (CORBEL_PHI * 0.85 * strengthPsi * widthIn * effectiveDepthIn ** 2) / 2000,
  };
}

/** Greatest shear stress that friction may be asked for, ksi (ACI 318-19 16.5.2.4 normalweight, 16.5.2.5 lightweight). */
function greatestStressKsi(strengthPsi: number, lambda: number, armRatio: number): number {
  if (lambda >= 1) return Math.min(0.2 * strengthPsi, 480 + 0.08 * strengthPsi, 1600) / 1000;
  // The stress falls with the ratio of lever arm to depth, which the method limits to 1.
  const slope = Math.min(1, armRatio);
  return Math.min((0.2 - 0.07 * slope) * strengthPsi, 800 - 280 * slope) / 1000;
}
