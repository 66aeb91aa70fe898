import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {STRAND_STRENGTH_KSI} from "../materials/strand.js";
import type {Member} from "./member.js";
import {SHEAR_PHI, takesStirrups, type ShearAt} from "./shear.js";

/** Stirrups at one place, as area of all legs per foot of member. */
export interface Stirrups {
  /** Required by the shear beyond what the concrete carries, in2/ft. */
  readonly forShearIn2PerFt: number;
  /** Least, where the shear exceeds half of what the concrete carries, in2/ft; 0 elsewhere. */
  readonly leastIn2PerFt: number;
}

/** Stirrups at a place of the span, as a share of it. */
export interface PlacedStirrups extends Stirrups {
  readonly share: number;
}

/**
 * The stirrups required where the shear requires most of them, with the greatest least of any place. That need not be where
 * shear comes nearest to all that webs and stirrups may carry: there the shear is great, here the concrete carries
 * little of it.
 */
export function mostStirrups<T extends PlacedStirrups>(places: readonly T[]): T {
  const most = places.reduce((a, b) => (b.forShearIn2PerFt > a.forShearIn2PerFt ? b : a));
  return {...most, leastIn2PerFt: Math.max(...places.map(({leastIn2PerFt}) => leastIn2PerFt))};
}

/**
 * Stirrups of Grade 60 that a factored shear requires: (Vu/phi - Vc) / (fyt d), and the least (ACI 318-19 22.5.8.5,
 * 9.6.3). Planks and slabs take none.
 */
export function stirrups(member: Member, shear: ShearAt, factoredKip: number): Stirrups {
  if (!takesStirrups(member)) return {forShearIn2PerFt: 0, leastIn2PerFt: 0};
  const steelKip = Math.max(0, factoredKip / SHEAR_PHI - shear.concreteKip);
  const asked = factoredKip > (SHEAR_PHI * shear.concreteKip) / 2;
  return {
    forShearIn2PerFt: (12 * steelKip) / (BAR_YIELD_KSI * shear.depthIn),
    leastIn2PerFt: asked ? leastStirrupsIn2PerFt({
      strengthPsi: member.concrete.strengthPsi, webWidthIn: member.shape.webWidthIn, depthIn: shear.depthIn,
      strandAreaIn2: member.layout.areaIn2, strandStrengthKsi: STRAND_STRENGTH_KSI, yieldKsi: BAR_YIELD_KSI, highlyPrestressed: shear.highlyPrestressed,
    }) : 0,
  };
}

/**
 * Minimum stirrups, in2 per foot: the rule for all beams, and where the prestress is at least 40 % of the steel's strength
 * no more than Aps fpu / (80 fyt d) sqrt(d/bw) (ACI 318-19 Table 9.6.3.4).
 */
export function leastStirrupsIn2PerFt(of: {
  strengthPsi: number; webWidthIn: number; depthIn: number; strandAreaIn2: number; strandStrengthKsi: number; yieldKsi: number; highlyPrestressed: boolean;
}): number {
  const any = (Math.max(0.75 * Math.sqrt(of.strengthPsi), 50) * of.webWidthIn) / (1000 * of.yieldKsi);
  if (!of.highlyPrestressed) return 12 * any;
  const prestressed = ((of.strandAreaIn2 * of.strandStrengthKsi) / (80 * of.yieldKsi * of.depthIn)) * Math.sqrt(of.depthIn / of.webWidthIn);
  return 12 * Math.min(any, prestressed);
}
