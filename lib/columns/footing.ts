import {requireNumber} from "../check.js";
import {atMost, outOfRange, type Check} from "../checks.js";
import {SHEAR_PHI} from "../member/shear.js";
import {IN2_PER_FT2, IN_PER_FT} from "../units.js";
import {concreteBearingKip} from "../materials/bearing.js";
import {steelForMomentIn2} from "../beams/rectangularSteel.js";

/** What the first size of a square footing under a square column depends on. */
export interface FootingInput {
  /** Greatest unfactored load at the column's foot, kip. */
  readonly serviceKip: number;
  /** Greatest factored load at the column's foot, kip. */
  readonly factoredKip: number;
  readonly columnSideIn: number;
  readonly columnStrengthPsi: number;
  readonly footingStrengthPsi: number;
  /** Allowable net soil pressure, psf: what the soil can take besides the overburden and the footing in its place. */
  readonly allowablePsf: number;
}

/** The first size of a square footing. */
export interface FootingResult {
  /** Side that the soil pressure requires, and the same rounded up to 3 in. */
  readonly neededSideIn: number;
  readonly sideIn: number;
  readonly thicknessIn: number;
  /** Top of the footing to the middle of its two layers of bars, in. */
  readonly effectiveDepthIn: number;
  readonly servicePsf: number;
  /** Factored pressure, psf, that bends and shears the footing. */
  readonly factoredPsf: number;
  /** Shear across the whole width at d from the column's face, and around the column at d/2, with what resists it, kip. */
  readonly oneWay: {readonly shearKip: number; readonly designKip: number};
  readonly punching: {readonly shearKip: number; readonly designKip: number; readonly perimeterIn: number};
  readonly momentKipIn: number;
  /** Bars each way, in2: for bending or the minimum, whichever is more. */
  readonly steelIn2: number;
  readonly checks: readonly Check[];
}

/** Footings are sized in steps of 3 in, by side and by thickness (common practice). */
export const FOOTING_STEP_IN = 3;
/** Cover of concrete cast against earth, in (ACI 318-19 Table 20.5.1.3.1), and a bar, to the middle of two layers. */
const STEEL_BELOW_IN = 3 + 1;
/** Minimum thickness of a first size, in: 6 in above the bars at least (ACI 318-19 13.3.1.2). */
const THICKNESS_IN = {least: 12, most: 72} as const;
/** Minimum ratio of Grade 60 bars in a footing (ACI 318-19 13.3.3, 8.6.1.1, 24.4.3.2). */
export const LEAST_FOOTING_STEEL = 0.0018;
/** Largest side, ft, for which a square footing is a sensible first answer (common practice). */
export const LARGEST_FOOTING_FT = 20;
const SIDE = {id: "footing side", label: "Side of the footing", unit: "ft", clause: "common practice"} as const;

/**
 * First size of a square footing with the column's load at its center: side by soil pressure, thickness by shear
 * without stirrups, steel by bending; and bearing at the column's foot. Base plate, grout and dowels are not designed.
 *
 * One-way shear is 8 rho^(1/3) sqrt(f'c) with the minimum steel (ACI 318-19 22.5.5.1(c)), punching 4 sqrt(f'c) (22.6.5.2),
 * both without the size effect, as footings may (13.2.6.2). More steel would let the footing be somewhat thinner.
 *
 * @throws InputError for impossible loads, pressures or strengths
 */
export function footing(input: FootingInput): FootingResult {
  const within = (key: keyof FootingInput, label: string, unit: string, min: number, max: number) =>
    requireNumber(input[key], {path: key, label, unit, min, max});
  const serviceKip = within("serviceKip", "load on the footing", "kip", 0.1, 20000);
  const factoredKip = within("factoredKip", "factored load on the footing", "kip", 0.1, 30000);
  const columnSideIn = within("columnSideIn", "side of the column", "in", 8, 60);
  const columnStrengthPsi = within("columnStrengthPsi", "strength of the column", "psi", 3000, 12000);
  const strengthPsi = within("footingStrengthPsi", "strength of the footing", "psi", 2500, 8000);
  const allowablePsf = within("allowablePsf", "allowable pressure", "psf", 500, 40000);
  const neededSideIn = Math.sqrt((serviceKip * 1000) / allowablePsf) * IN_PER_FT;
  const sideIn = Math.max(upTo(neededSideIn), upTo(columnSideIn + 2 * FOOTING_STEP_IN));
  const areaFt2 = sideIn ** 2 / IN2_PER_FT2;
  const factoredKsi = factoredKip / sideIn ** 2;
  let thicknessIn: number = THICKNESS_IN.least;
  let shear = shearAt(thicknessIn, sideIn, columnSideIn, factoredKsi, strengthPsi);
  while (!carries(shear) && thicknessIn < THICKNESS_IN.most) {
    thicknessIn += FOOTING_STEP_IN;
    shear = shearAt(thicknessIn, sideIn, columnSideIn, factoredKsi, strengthPsi);
  }
  const {effectiveDepthIn} = shear;
  const overhangIn = (sideIn - columnSideIn) / 2;
  const momentKipIn = (factoredKsi * sideIn * overhangIn ** 2) / 2;
  const bending = steelForMomentIn2({momentKipIn, widthIn: sideIn, depthIn: effectiveDepthIn, strengthPsi, phi: 0.9});
  const leastIn2 = LEAST_FOOTING_STEEL * sideIn * thicknessIn;
  const servicePsf = (serviceKip * 1000) / areaFt2;
  const atColumnKip = concreteBearingKip(columnStrengthPsi, columnSideIn ** 2);
  // The pressure spreads sideways twice as fast as down, within the footing (ACI 318-19 22.8.3.2, definition of A2).
  const atFootingKip = concreteBearingKip(strengthPsi, columnSideIn ** 2, Math.min(sideIn, columnSideIn + 4 * thicknessIn) ** 2);
  return {
    neededSideIn, sideIn, thicknessIn, effectiveDepthIn, servicePsf, factoredPsf: factoredKsi * 1000 * IN2_PER_FT2,
    oneWay: shear.oneWay, punching: shear.punching, momentKipIn, steelIn2: Math.max(bending ?? 0, leastIn2),
    checks: [
      // The side is chosen so that the soil can take the load; what remains to be checked is whether such a footing is sensible.
      sideIn <= LARGEST_FOOTING_FT * IN_PER_FT
        ? atMost({...SIDE, meetingIsEnough: true, holds: "A single footing can spread the load as far as the soil requires.", fails: ""}, sideIn / IN_PER_FT, LARGEST_FOOTING_FT)
        : outOfRange({
          ...SIDE, message: "A single footing this large makes no sense: consider piles, a mat or better soil.",
        }, sideIn / IN_PER_FT, LARGEST_FOOTING_FT),
      atMost({
        id: "footing one-way shear", label: "Footing, shear across its width", unit: "kip", clause: "ACI 318-19 22.5.5.1, 13.2.6.2",
        holds: "The footing is thick enough for shear across its width.",
        fails: "No usual thickness of footing carries the shear across its width: stronger concrete in it, or less floor on each column.",
      }, shear.oneWay.shearKip, shear.oneWay.designKip),
      atMost({
        id: "footing punching", label: "Footing, punching by the column", unit: "kip", clause: "ACI 318-19 22.6.5.2, 13.2.6.2",
        holds: "The column does not punch through the footing.",
        fails: "The column would punch through a footing of any usual thickness: stronger concrete in it, or less floor on each column.",
      }, shear.punching.shearKip, shear.punching.designKip),
      atMost({
        id: "column bearing", label: "Bearing at the column's foot", unit: "kip", clause: "ACI 318-19 22.8.3.2, 16.3.3.4",
        holds: "Concrete alone transfers the load from column to footing.",
        fails: `Concrete alone does not transfer the load from column to footing: bars across the joint must take the rest${atFootingKip < atColumnKip ? ", or the footing needs stronger concrete" : ""}.`,
      }, factoredKip, Math.min(atColumnKip, atFootingKip)),
    ],
  };
}

type FootingShear = Pick<FootingResult, "effectiveDepthIn" | "oneWay" | "punching">;

/** Shear in a footing of a thickness, kip: one-way at d from the face (ACI 318-19 13.2.7.2) and punching at d/2 (22.6.4.1). */
function shearAt(thicknessIn: number, sideIn: number, columnSideIn: number, pressureKsi: number, strengthPsi: number): FootingShear {
  const effectiveDepthIn = thicknessIn - STEEL_BELOW_IN;
  const rootKsi = Math.sqrt(strengthPsi) / 1000;
  const oneWayIn = Math.max(0, (sideIn - columnSideIn) / 2 - effectiveDepthIn);
  const squareIn = columnSideIn + effectiveDepthIn;
  const perimeterIn = 4 * squareIn;
  // An interior column: 2 + 40 d / bo governs only where the footing is thin beside a wide column.
  const coefficient = Math.min(4, 2 + (40 * effectiveDepthIn) / perimeterIn);
  const steelRatio = (LEAST_FOOTING_STEEL * thicknessIn) / effectiveDepthIn;
  return {
    effectiveDepthIn,
    oneWay: {
      shearKip: pressureKsi * sideIn * oneWayIn,
      designKip: SHEAR_PHI * 8 * Math.cbrt(steelRatio) * rootKsi * sideIn * effectiveDepthIn,
    },
    punching: {
      shearKip: pressureKsi * Math.max(0, sideIn ** 2 - squareIn ** 2),
      designKip: SHEAR_PHI * coefficient * rootKsi * perimeterIn * effectiveDepthIn, perimeterIn,
    },
  };
}

function carries({oneWay, punching}: FootingShear): boolean {
  // Stryker disable next-line EqualityOperator: no shear meets its strength to the last digit
  return oneWay.shearKip <= oneWay.designKip && punching.shearKip <= punching.designKip;
}

function upTo(lengthIn: number): number {
  return Math.ceil(lengthIn / FOOTING_STEP_IN - 1e-9) * FOOTING_STEP_IN;
}
