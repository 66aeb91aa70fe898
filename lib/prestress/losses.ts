import type {ConcreteKind} from "../materials/concrete.js";
import {STRAND_MODULUS_KSI, STRAND_STRENGTH_KSI, STRAND_YIELD_KSI} from "../materials/strand.js";

/** Stress to which strands are pulled, as a share of fpu; below the limits of ACI 318-19 20.3.2.5.1 (common practice). */
export const JACKING_SHARE = 0.75;
/** Stress in the strands at the jacks, ksi. */
export const JACKING_STRESS_KSI = JACKING_SHARE * STRAND_STRENGTH_KSI;

/** Hours from tensioning to cutting the strands: an overnight cycle (common practice). */
const HOURS_TO_RELEASE = 18;
/**
 * Relaxation before the strands are cut, ksi: fpj log10(t)/45 (fpj/fpy - 0.55), t in hours (PCI Committee on Prestress
 * Losses, PCI Journal, July-August 1975; from memory). It belongs to the force at release; the component method counts
 * all relaxation in RE.
 */
export const RELAXATION_TO_RELEASE_KSI =
  ((JACKING_STRESS_KSI * Math.log10(HOURS_TO_RELEASE)) / 45) * (JACKING_STRESS_KSI / STRAND_YIELD_KSI - 0.55);
/**
 * Share of the jacking stress that is gone at release besides elastic shortening, for camber: overnight relaxation,
 * seating of the grips and the warmth of the bed, about 3 % in all (common practice; see the methods page for what 2 to
 * 4 % do to the handbook's cambers). Stresses at transfer count relaxation alone, which is the safer side for them.
 */
export const CAMBER_FORCE_ALLOWANCE = 0.03;

/**
 * Greatest share of the pull that shortening at release is let take. The method counts 0.9 of the pull whatever is left
 * of it, so with too much strand its formula would take all of it and more; no concrete can take the compression that goes with a third.
 */
export const MOST_ELASTIC_SHARE = 1 / 3;

/** What the component method needs to know of one section. */
export interface LossInput {
  readonly strandAreaIn2: number;
  /** Gross precast section. */
  readonly areaIn2: number;
  readonly inertiaIn4: number;
  /** Strands' centroid below the section's, in; negative where it lies above. */
  readonly eccentricityIn: number;
  readonly volumeToSurfaceIn: number;
  readonly concreteKind: ConcreteKind;
  readonly modulusKsi: number;
  readonly releaseModulusKsi: number;
  /** Moment of the member's own weight, kip-in. */
  readonly selfMomentKipIn: number;
  /** Stress at the strands' centroid by dead load added later, ksi: topping and superimposed dead (fcds). */
  readonly laterDeadStressKsi: number;
  /** Yearly average relative humidity, %. */
  readonly humidityPercent: number;
}

/** Losses of prestress by cause, ksi, and what is left. */
export interface Losses {
  /** Stress in the concrete at the strands right after transfer, ksi (fcir). */
  readonly concreteStressKsi: number;
  /** At most {@link MOST_ELASTIC_SHARE} of the pull. */
  readonly elasticKsi: number;
  readonly creepKsi: number;
  readonly shrinkageKsi: number;
  readonly relaxationKsi: number;
  /** Their sum, 0 to the jacking stress. */
  readonly totalKsi: number;
  /** Strand stress right after transfer: jacking less elastic shortening and early relaxation, ksi. */
  readonly initialStressKsi: number;
  /** Strand stress that bends the member up at release, ksi; see {@link CAMBER_FORCE_ALLOWANCE}. */
  readonly camberStressKsi: number;
  /** Effective prestress after all losses fse, ksi. */
  readonly effectiveStressKsi: number;
}

/** Constants of the component method for pretensioned 270 ksi low-relaxation strand jacked to 0.75 fpu. */
export const LOSS_CONSTANTS = {
  /** Kes, pretensioned. */
  elastic: 1,
  /** Kcir, pretensioned. */
  transferForce: 0.9,
  /** Kcr by concrete. */
  creep: {"normalweight": 2, "sand-lightweight": 1.6},
  /** Ultimate shrinkage strain before its corrections; Ksh = 1 for pretensioned members. */
  shrinkageStrain: 8.2e-6,
  /** Kre, ksi. */
  relaxationKsi: 5,
  /** J. */
  relaxationRelief: 0.04,
  /** C at fpi/fpu = 0.75. */
  relaxationLevel: 1,
} as const;

/**
 * Losses by the component method (Zia, Preston, Scott and Workman, "Estimating prestress losses", Concrete
 * International, June 1979; PCI Design Handbook, 7th ed., 5.7). The factors of creep and the form of shrinkage were
 * seen in McCormac and Brown, Design of Reinforced Concrete, 9th ed., 19.7; the other constants are from memory.
 *
 * For members of 70 to 80 % humidity and ordinary spans; elastic shortening uses 0.9 of the jacking force, so no
 * iteration is needed. Losses never take more than there was: a piece with far too much strand is left with none of
 * its prestress and with a compression at release that no transfer check passes.
 */
export function losses(input: LossInput): Losses {
  const k = LOSS_CONSTANTS;
  const jackingForceKip = input.strandAreaIn2 * JACKING_STRESS_KSI;
  const {areaIn2, inertiaIn4, eccentricityIn: e} = input;
  const concreteStressKsi =
    k.transferForce * (jackingForceKip / areaIn2 + (jackingForceKip * e * e) / inertiaIn4) -
    (input.selfMomentKipIn * e) / inertiaIn4;
  const elasticKsi = Math.min(MOST_ELASTIC_SHARE * JACKING_STRESS_KSI, (k.elastic * STRAND_MODULUS_KSI * concreteStressKsi) / input.releaseModulusKsi);
  // Creep is not negative: where later dead load outweighs the prestress, the strand regains nothing worth counting.
  const creepKsi = Math.max(
    0,
    ((k.creep[input.concreteKind] * STRAND_MODULUS_KSI) / input.modulusKsi) * (concreteStressKsi - input.laterDeadStressKsi),
  );
  const shrinkageKsi =
    k.shrinkageStrain * STRAND_MODULUS_KSI * (1 - 0.06 * input.volumeToSurfaceIn) * (100 - input.humidityPercent);
  const relaxationKsi = Math.max(
    0,
    (k.relaxationKsi - k.relaxationRelief * (shrinkageKsi + creepKsi + elasticKsi)) * k.relaxationLevel,
  );
  // Where own weight puts the concrete beside the strands in tension, it would have cracked before it stretched them beyond the pull.
  const totalKsi = Math.max(0, Math.min(JACKING_STRESS_KSI, elasticKsi + creepKsi + shrinkageKsi + relaxationKsi));
  return {
    concreteStressKsi, elasticKsi, creepKsi, shrinkageKsi, relaxationKsi, totalKsi,
    initialStressKsi: JACKING_STRESS_KSI - elasticKsi - RELAXATION_TO_RELEASE_KSI,
    camberStressKsi: JACKING_STRESS_KSI * (1 - CAMBER_FORCE_ALLOWANCE) - elasticKsi,
    effectiveStressKsi: JACKING_STRESS_KSI - totalKsi,
  };
}

/** Whether no part of some losses is held at a bound: between two such places the losses of level strands grow in a straight line with the moment. */
export function withinBounds({elasticKsi, creepKsi, relaxationKsi, totalKsi}: Losses): boolean {
  return elasticKsi < MOST_ELASTIC_SHARE * JACKING_STRESS_KSI && creepKsi > 0 && relaxationKsi > 0 && totalKsi > 0 && totalKsi < JACKING_STRESS_KSI;
}
