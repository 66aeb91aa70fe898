/** A seven-wire low-relaxation strand of Grade 270 (ASTM A416). */
export interface Strand {
  /** Nominal diameter in sixteenths of an inch as patterns name it: 8 is 1/2 in; 10 is the 0.6 in strand. */
  readonly sixteenths: number;
  readonly diameterIn: number;
  readonly areaIn2: number;
  readonly weightPlf: number;
}

/** Tensile strength fpu of Grade 270 strand, ksi. */
export const STRAND_STRENGTH_KSI = 270;
/** Yield strength fpy of low-relaxation strand, ksi: 0.90 fpu (ASTM A416). */
export const STRAND_YIELD_KSI = 0.9 * STRAND_STRENGTH_KSI;
/** Modulus of elasticity of strand, ksi, as in the trade handbook's design curve (PCI Design Handbook, 7th ed., 15.3.3; from memory). */
export const STRAND_MODULUS_KSI = 28800;

/** Strain at which the handbook's curve leaves the straight line. */
export const PROPORTIONAL_STRAIN = 0.0085;
const PROPORTIONAL_STRESS_KSI = STRAND_MODULUS_KSI * PROPORTIONAL_STRAIN;

/**
 * Stress of Grade 270 low-relaxation strand at a strain, ksi.
 *
 * The handbook's design curve: 28,800 strain up to 0.0085, then 270 - 0.04/(strain - 0.007). The two pieces of the
 * printed curve miss each other by 1.5 ksi at 0.0085; the stress is held level there until the second piece has
 * risen to it (at a strain of 0.00859), so that the curve never falls and equilibrium always has a solution.
 *
 * @param strain - total strain, 0 (slack) upward; a strand carries no compression worth counting on
 */
export function strandStressKsi(strain: number): number {
  if (strain <= PROPORTIONAL_STRAIN) return STRAND_MODULUS_KSI * strain;
  return Math.max(PROPORTIONAL_STRESS_KSI, strandTailKsi(strain));
}

/** The second piece of the handbook's curve as printed, ksi; it is meant for strains above {@link PROPORTIONAL_STRAIN}. */
export function strandTailKsi(strain: number): number {
  return STRAND_STRENGTH_KSI - 0.04 / (strain - 0.007);
}

/**
 * Stress of Grade 270 low-relaxation strand by the power formula, ksi: a second opinion on {@link strandStressKsi}
 * (Devalapura and Tadros, PCI Journal, March-April 1992; constants from memory). It follows the least strand that the
 * standard accepts, 243 ksi at a strain of 0.01, and so lies up to 8 % below the handbook's curve about the knee, and
 * within 1.5 % of it up to 0.005 and from 0.02 on.
 */
export function strandStressPowerKsi(strain: number): number {
  return Math.min(STRAND_STRENGTH_KSI, strain * (887 + 27613 / (1 + (112.4 * strain) ** 7.36) ** (1 / 7.36)));
}
