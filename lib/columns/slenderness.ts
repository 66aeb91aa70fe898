import {requireNumber, type NumberRule} from "../check.js";
import {atMost, exceeds, outOfRange, type Check} from "../checks.js";
import {elasticModulusKsi} from "../materials/concrete.js";
import {IN_PER_FT} from "../units.js";
import type {ColumnSection} from "./section.js";

/** What the slenderness of one story of a column depends on, besides its loads. */
export interface StrutInput {
  readonly section: Pick<ColumnSection, "depthIn" | "inertiaIn4" | "concrete">;
  /** Unbraced length lu, ft. */
  readonly unbracedFt: number;
  /** Effective length factor k: 1.0 where the frame is braced and nothing better is known (ACI 318-19 6.6.4.4.3). */
  readonly lengthFactor: number;
  /** Whether the story may sway: whether the column, instead of walls, braces it. */
  readonly sways: boolean;
}

/** Whether a column is slender, and what its slenderness does to its moment. */
export interface Slenderness {
  /** Radius of gyration, in: 0.30 of the depth (ACI 318-19 6.2.5.2). */
  readonly radiusIn: number;
  /** k lu / r. */
  readonly ratio: number;
  /** k lu / r up to which slenderness may be neglected. */
  readonly limit: number;
  readonly slender: boolean;
  /** The larger end moment, and the minimum for a slender column, kip-in (ACI 318-19 6.6.4.5.4). */
  readonly endMomentKipIn: number;
  readonly leastMomentKipIn: number;
  /** Effective stiffness, kip-in2, and the critical load Pc, kip. */
  readonly stiffnessKipIn2: number;
  readonly criticalKip: number;
  /** Cm: the constant moment equivalent to the end moments, as a share of the larger. */
  readonly evenMomentFactor: number;
  /** Moment magnifier, 1 or more; undefined where the column would buckle or the method does not reach. */
  readonly magnifier: number | undefined;
  /** Moment to design for, kip-in; undefined where there is no magnifier. */
  readonly momentKipIn: number | undefined;
  readonly checks: readonly Check[];
}

/** k lu / r below which a column in a story that may sway is not slender (ACI 318-19 6.2.5.1(a)). */
export const SWAY_LIMIT = 22;
/** The most that the limit of a braced column may be (ACI 318-19 6.2.5.1(b)). */
export const BRACED_LIMIT_MOST = 40;
/** k lu / r beyond which this first size does not apply: the older limit of the magnifier method (ACI 318-05 10.11.5; from memory). */
export const SLENDERNESS_REACH = 100;
/** Stiffness reduction factor of the magnifier (ACI 318-19 6.6.4.5.2). */
export const STIFFNESS_PHI = 0.75;
/** Greatest moment with slenderness over that without (ACI 318-19 6.2.5.3). */
export const MOST_MAGNIFIER = 1.4;

/** Minimum moment for a slender column, kip-in: Pu (0.6 + 0.03 h) (ACI 318-19 6.6.4.5.4). */
export function leastMomentKipIn(axialKip: number, depthIn: number): number {
  return axialKip * (0.6 + 0.03 * depthIn);
}

/** One story of a column in one way of bending, before its loads. */
export interface Strut {
  readonly depthIn: number;
  readonly sways: boolean;
  readonly radiusIn: number;
  readonly ratio: number;
  /** Effective length k lu, squared, in2. */
  readonly lengthIn2: number;
  /** 0.4 Ec Ig, kip-in2: the effective stiffness but for the sustained part of the load. */
  readonly grossKipIn2: number;
}

/** What loads a strut. */
export interface StrutLoad {
  /** Factored axial load Pu, kip. */
  readonly axialKip: number;
  /** Factored moments at the two ends, kip-in, without sign. */
  readonly momentKipIn: readonly [number, number];
  /** Whether the two moments bend the column to one side, or to both. */
  readonly curvature: "single" | "double";
  /** Sustained part of the factored axial load, 0 to 1 (beta dns). */
  readonly sustainedShare: number;
  /** Whether the minimum moment of a slender column counts (it does if omitted): of two axes it counts about one at a time. */
  readonly countsLeast?: boolean;
}

/** What slenderness does to a moment, without the checks that tell it. */
export type Magnified = Omit<Slenderness, "checks">;

/**
 * One story of a column as {@link magnified} needs it.
 *
 * @throws InputError for unbraced lengths outside 1 to 100 ft, k outside 0.5 to 3
 */
export function strut({section, unbracedFt, lengthFactor, sways}: StrutInput): Strut {
  requireNumber(unbracedFt, {path: "unbracedFt", label: "unbraced length", unit: "ft", min: 1, max: 100});
  requireNumber(lengthFactor, {path: "lengthFactor", label: "effective length factor", unit: "", min: 0.5, max: 3});
  const {depthIn, inertiaIn4, concrete: {unitWeightPcf, strengthPsi}} = section;
  const radiusIn = 0.3 * depthIn;
  const lengthIn = lengthFactor * unbracedFt * IN_PER_FT;
  return {
    depthIn, sways, radiusIn, ratio: lengthIn / radiusIn, lengthIn2: lengthIn ** 2,
    grossKipIn2: 0.4 * elasticModulusKsi(unitWeightPcf, strengthPsi) * inertiaIn4,
  };
}

/** Greatest axial load that the method is asked for, kip. */
export const MOST_AXIAL_KIP = 1e5;
const AXIAL: NumberRule = {path: "axialKip", label: "axial load", unit: "kip", min: 0, max: MOST_AXIAL_KIP};
const END_MOMENT = {label: "end moment", unit: "kip-in", min: 0, max: 1e7} as const;
const END_MOMENTS: readonly [NumberRule, NumberRule] = [{path: "momentKipIn.0", ...END_MOMENT}, {path: "momentKipIn.1", ...END_MOMENT}];
const SUSTAINED: NumberRule = {path: "sustainedShare", label: "sustained share", unit: "", min: 0, max: 1};

/**
 * Slenderness of a column by the moment magnifier (ACI 318-19 6.2.5, 6.6.4).
 *
 * Approximations: EI is 0.4 Ec Ig / (1 + beta dns) (6.6.4.4.4(a)), without the bars. A column without end moments counts
 * as bent by equal end moments. In a story that may sway the magnifier needs the whole story, which a first size does not know: a
 * slender column there is out of range, as is any beyond k lu / r of 100.
 *
 * It runs a hundred times for each column, so the checks that tell it are made apart, by {@link slenderness}.
 *
 * @throws InputError for tension, axial loads above {@link MOST_AXIAL_KIP}, negative moments
 */
export function magnified({depthIn, sways, radiusIn, ratio, lengthIn2, grossKipIn2}: Strut, load: StrutLoad): Magnified {
  const axialKip = requireNumber(load.axialKip, AXIAL);
  const oneKipIn = requireNumber(load.momentKipIn[0], END_MOMENTS[0]);
  const otherKipIn = requireNumber(load.momentKipIn[1], END_MOMENTS[1]);
  const sustainedShare = requireNumber(load.sustainedShare, SUSTAINED);
  const endMomentKipIn = Math.max(oneKipIn, otherKipIn);
  // M1/M2 by the code's sign: negative where the column bends to one side.
  const share = endMomentKipIn > 0 ? ((load.curvature === "single" ? -1 : 1) * Math.min(oneKipIn, otherKipIn)) / endMomentKipIn : -1;
  const limit = sways ? SWAY_LIMIT : Math.min(BRACED_LIMIT_MOST, 34 + 12 * share);
  const slender = ratio > limit;
  const least = leastMomentKipIn(axialKip, depthIn);
  const stiffnessKipIn2 = grossKipIn2 / (1 + sustainedShare);
  const criticalKip = (Math.PI ** 2 * stiffnessKipIn2) / lengthIn2;
  const countsLeast = load.countsLeast ?? true;
  const evenMomentFactor = countsLeast && least > endMomentKipIn ? 1 : 0.6 - 0.4 * share;
  const left = 1 - axialKip / (STIFFNESS_PHI * criticalKip);
  const magnifier = !covers(ratio, slender, sways) ? undefined : !slender ? 1 : left > 0 ? Math.max(1, evenMomentFactor / left) : undefined;
  const startKipIn = slender && countsLeast ? Math.max(endMomentKipIn, least) : endMomentKipIn;
  return {
    radiusIn, ratio, limit, slender, endMomentKipIn, leastMomentKipIn: least, stiffnessKipIn2, criticalKip, evenMomentFactor, magnifier,
    momentKipIn: magnifier === undefined ? undefined : magnifier * startKipIn,
  };
}

/** Whether the method reaches so far. */
function covers(ratio: number, slender: boolean, sways: boolean): boolean {
  return ratio <= SLENDERNESS_REACH && !(slender && sways);
}

/** What one check of slenderness compares. */
export interface SlendernessLimit {
  readonly id: "column slenderness" | "column buckling" | "column magnifier";
  readonly demand: number;
  readonly capacity: number;
}

/** What the checks of slenderness compare, in their order, without the words that tell it. */
export function slendernessLimits({sways}: Pick<Strut, "sways">, axialKip: number, {ratio, slender, magnifier, criticalKip}: Magnified): SlendernessLimit[] {
  if (!covers(ratio, slender, sways)) return [{id: "column slenderness", demand: ratio, capacity: ratio > SLENDERNESS_REACH ? SLENDERNESS_REACH : SWAY_LIMIT}];
  const buckling = {id: "column buckling", demand: axialKip, capacity: STIFFNESS_PHI * criticalKip} as const;
  return slender && magnifier !== undefined ? [buckling, {id: "column magnifier", demand: magnifier, capacity: MOST_MAGNIFIER}] : [buckling];
}

/** Whether the checks of slenderness hold. */
export function stands(of: Pick<Strut, "sways">, axialKip: number, found: Magnified): boolean {
  return slendernessLimits(of, axialKip, found).every(({id, demand, capacity}) => id !== "column slenderness" && !exceeds(demand, capacity));
}

/** Slenderness with its checks; see {@link magnified}. */
export function slenderness(of: Pick<Strut, "sways">, axialKip: number, found: Magnified): Slenderness {
  return {...found, checks: slendernessLimits(of, axialKip, found).map((limit) => slendernessCheck(limit, found.slender))};
}

function slendernessCheck({id, demand, capacity}: SlendernessLimit, slender: boolean): Check {
  switch (id) {
    case "column slenderness": {
      const far = capacity === SLENDERNESS_REACH;
      return outOfRange({
        id, label: "Slenderness k lu / r", unit: "", clause: far ? "ACI 318-05 10.11.5 (from memory)" : "ACI 318-19 6.6.4.6",
        message: far
          ? "The column is too slender for this method: make it thicker, or brace it between the floors."
          : "The column is slender and the story may sway: that takes an analysis of the whole story, which a first size does not include.",
      }, demand, capacity);
    }
    case "column buckling":
      return atMost({
        id, label: "Axial load against buckling", unit: "kip", clause: "ACI 318-19 6.6.4.5.2",
        holds: slender ? "The column is slender, and stays stable with its moments magnified." : "The column is too stocky to buckle.",
        fails: "The column would buckle: make it thicker, or brace it between the floors.",
      }, demand, capacity);
    case "column magnifier":
      return atMost({
        id, label: "Moment with slenderness, as a ratio to moment without", unit: "", clause: "ACI 318-19 6.2.5.3",
        holds: "Slenderness magnifies the moment no more than the code allows.",
        fails: "Slenderness magnifies the moment more than the code allows: make the column thicker.",
      }, demand, capacity);
  }
}
