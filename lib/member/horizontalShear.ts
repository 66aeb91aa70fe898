import type {Member} from "./member.js";
import {SHEAR_PHI} from "./shear.js";

/** Strength of a clean, roughened contact face without ties, psi of contact (ACI 318-19 16.4.4.2). */
export const CONTACT_STRENGTH_PSI = 80;

/**
 * Factored shear that the contact between topping and member can pass on, kip: phi 80 bv d (ACI 318-19 16.4.3, 16.4.4.2),
 * with the top of the member left rough; undefined without topping.
 */
export function horizontalShearKip(member: Member): number | undefined {
  return member.topping && (SHEAR_PHI * CONTACT_STRENGTH_PSI * member.topping.widthIn * contactDepthIn(member)) / 1000;
}

/** Depth that counts for the contact, in: compressed face to the strands' centroid at midspan, not below 0.8 of the whole. */
export function contactDepthIn({compression, layout}: Member): number {
  return Math.max(0.8 * compression.depthIn, compression.depthIn - layout.centroidCenterIn);
}
