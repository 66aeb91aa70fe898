import type {Member} from "./member.js";

/** Strength of a clean, roughened contact face without ties, psi of contact (ACI 318-19 16.4.4.2). */
export const CONTACT_STRENGTH_PSI = 80;
/** Strength reduction factor for shear (ACI 318-19 Table 21.2.1). */
const PHI = 0.75;

/**
 * Factored shear that the contact between topping and member can pass on, kip: phi 80 bv d (ACI 318-19 16.4.3, 16.4.4.2);
 * undefined without topping.
 *
 * @param depthIn - compressed face to the strands, in
 */
export function horizontalShearKip(member: Member, depthIn: number): number | undefined {
  return member.topping && (PHI * CONTACT_STRENGTH_PSI * member.topping.widthIn * depthIn) / 1000;
}
