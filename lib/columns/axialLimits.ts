import {BAR_MODULUS_KSI, BAR_YIELD_KSI} from "../materials/reinforcement.js";
import type {ColumnSection} from "./section.js";

/** Share of the squash load that a tied column may use, to allow for accidental eccentricity (ACI 318-19 Table 22.4.2.1). */
export const TIED_SHARE = 0.8;
/** Strength reduction factor of a tied column in compression (ACI 318-19 Table 21.2.2). */
export const TIED_PHI = 0.65;
/** Strain at which a Grade 60 bar yields. */
export const BAR_YIELD_STRAIN = BAR_YIELD_KSI / BAR_MODULUS_KSI;

/** Squash load Po, kip: 0.85 f'c (Ag - Ast) + fy Ast (ACI 318-19 22.4.2.2). */
export function squashLoadKip(section: ColumnSection): number {
  return section.blockStressKsi * (section.grossIn2 - section.steelIn2) + BAR_YIELD_KSI * section.steelIn2;
}

/** Greatest factored axial load, kip: 0.65 x 0.80 Po (ACI 318-19 22.4.2.1, 21.2.2). */
export function axialCapKip(section: ColumnSection): number {
  return TIED_PHI * TIED_SHARE * squashLoadKip(section);
}

/** Nominal strength in pure tension, kip, as a positive number: fy Ast (ACI 318-19 22.4.3.1). */
export function pureTensionKip(section: ColumnSection): number {
  return BAR_YIELD_KSI * section.steelIn2;
}
