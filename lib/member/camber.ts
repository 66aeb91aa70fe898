import {creepGrowth} from "../materials/timeModel.js";
import {holdDownShare} from "../prestress/layout.js";
import {IN_PER_FT, kipPerIn} from "../units.js";
import type {Member} from "./member.js";
import {prestressState} from "./prestressState.js";

/** Multipliers of Martin (PCI Journal, January 1977; the trade handbook's design aid): long-time growth of each part. */
export interface CamberMultipliers {
  readonly erectionPrestress: number;
  readonly erectionSelf: number;
  readonly finalPrestress: number;
  readonly finalSelf: number;
  readonly finalTopping: number;
  readonly finalSuperimposed: number;
}

const ERECTION = {erectionPrestress: 1.8, erectionSelf: 1.85};
/** Age at which the multipliers for erection hold, days: one to two months (the trade handbook). */
export const USUAL_AGE_DAYS = 45;
/** Without and with a composite topping. */
export const CAMBER_MULTIPLIERS: Readonly<Record<"untopped" | "topped", CamberMultipliers>> = {
  untopped: {...ERECTION, finalPrestress: 2.45, finalSelf: 2.7, finalTopping: 0, finalSuperimposed: 3},
  topped: {...ERECTION, finalPrestress: 2.2, finalSelf: 2.4, finalTopping: 2.3, finalSuperimposed: 3},
};

/**
 * How far creep has come at an age, by how far it has come at {@link USUAL_AGE_DAYS}: 1 there. ACI 209R-92's curve,
 * {@link creepGrowth}, as if the strands were cut on the day of casting.
 *
 * @param ageDays - above 0
 */
export function erectionGrowth(ageDays: number): number {
  return creepGrowth(ageDays) / creepGrowth(USUAL_AGE_DAYS);
}

/**
 * A multiplier for erection at another age: what it adds to 1 grows and shrinks with creep. Written so that at growth 1
 * it comes out to the last digit.
 */
export function grownMultiplier(atUsualAge: number, growth: number): number {
  return atUsualAge + (atUsualAge - 1) * (growth - 1);
}

/** Camber at midspan, in; up is positive. */
export interface Camber {
  /** Immediate movement by each cause, in: prestress up, the rest down (negative). */
  readonly prestressIn: number;
  readonly selfIn: number;
  readonly toppingIn: number;
  readonly superimposedIn: number;
  readonly multipliers: CamberMultipliers;
  /** Age when set, days. */
  readonly ageDays: number;
  /** When the strands are cut. */
  readonly releaseIn: number;
  /** When the member is set, at its age. */
  readonly erectionIn: number;
  /** Right after the topping is cast. */
  readonly toppedIn: number;
  /** In the long term, under all dead load and no live load. */
  readonly longTermIn: number;
}

/**
 * Camber by the multiplier method. What is left in the long term is taken to be the same at whatever age the member is set.
 *
 * @param superimposedDeadPlf - dead load after the topping, per foot of member
 * @param ageDays - age when set, above 0; the multipliers for erection are Martin's at the usual age
 */
export function camber(member: Member, spanFt: number, superimposedDeadPlf: number, ageDays = USUAL_AGE_DAYS): Camber {
  const {section, full, layout} = member;
  const spanIn = spanFt * IN_PER_FT;
  const forceKip = layout.areaIn2 * prestressState(member, spanFt, 0.5, superimposedDeadPlf).losses.camberStressKsi;
  const prestressIn = strandLiftIn({
    forceKip, spanFt, modulusKsi: member.releaseModulusKsi, inertiaIn4: section.inertiaIn4,
    endEccentricityIn: section.ybIn - layout.centroidEndIn,
    dropIn: layout.centroidEndIn - layout.centroidCenterIn,
    holdDownShare: holdDownShare(layout.profile),
  });
  const selfIn = -sag(member.selfWeightPlf, spanIn, member.releaseModulusKsi, section.inertiaIn4);
  const toppingIn = -sag(member.toppingWeightPlf, spanIn, member.modulusKsi, section.inertiaIn4);
  const superimposedIn = -sag(superimposedDeadPlf, spanIn, member.modulusKsi, full.inertiaIn4);
  const usual = CAMBER_MULTIPLIERS[member.topping ? "topped" : "untopped"];
  const growth = erectionGrowth(ageDays);
  const m = {
    ...usual,
    erectionPrestress: grownMultiplier(usual.erectionPrestress, growth),
    erectionSelf: grownMultiplier(usual.erectionSelf, growth),
  };
  const erectionIn = m.erectionPrestress * prestressIn + m.erectionSelf * selfIn;
  return {
    prestressIn, selfIn, toppingIn, superimposedIn, multipliers: m, ageDays,
    releaseIn: prestressIn + selfIn,
    erectionIn,
    toppedIn: erectionIn + toppingIn,
    longTermIn: m.finalPrestress * prestressIn + m.finalSelf * selfIn + m.finalTopping * toppingIn + m.finalSuperimposed * superimposedIn,
  };
}

/** What the lift of a simple span by its strands depends on. */
export interface StrandLift {
  readonly forceKip: number;
  readonly spanFt: number;
  readonly modulusKsi: number;
  readonly inertiaIn4: number;
  /** Strands' centroid below the section's at the ends, in. */
  readonly endEccentricityIn: number;
  /** How much lower the strands lie at the hold-down than at the ends, in. */
  readonly dropIn: number;
  /** Place of the hold-down as a share of the span. */
  readonly holdDownShare: number;
}

/** Lift at midspan by strands, in: P L^2 / (E I) (e/8 + drop (1/8 - a^2/6)), by moment areas. */
export function strandLiftIn(lift: StrandLift): number {
  const curvature = (lift.forceKip * (lift.spanFt * IN_PER_FT) ** 2) / (lift.modulusKsi * lift.inertiaIn4);
  return curvature * (lift.endEccentricityIn / 8 + lift.dropIn * (1 / 8 - lift.holdDownShare ** 2 / 6));
}

/** Midspan sag of a uniform load on a simple span, in: 5 w L^4 / (384 E I). */
export function sag(loadPlf: number, spanIn: number, modulusKsi: number, inertiaIn4: number): number {
  return (5 * kipPerIn(loadPlf) * spanIn ** 4) / (384 * modulusKsi * inertiaIn4);
}

/** Camber along the span at four moments, in. */
export interface CamberPoint {
  readonly share: number;
  readonly releaseIn: number;
  readonly erectionIn: number;
  readonly toppedIn: number;
  readonly longTermIn: number;
}

/**
 * The camber's curve: each part has the exact shape of its cause (piecewise cubic for the strands' course, quartic for
 * a uniform load), scaled to its midspan value.
 */
export function camberCurve(member: Member, result: Camber, points = 41): CamberPoint[] {
  return Array.from({length: points}, (_, i) => camberAt(member, result, i / (points - 1)));
}

/** Camber at one place along the span (0 to 1). */
export function camberAt(member: Member, result: Camber, share: number): CamberPoint {
  const prestressIn = result.prestressIn * prestressShape(member, share);
  const load = uniformLoadShape(share);
  const selfIn = result.selfIn * load;
  const toppingIn = result.toppingIn * load;
  const m = result.multipliers;
  const erectionIn = m.erectionPrestress * prestressIn + m.erectionSelf * selfIn;
  return {
    share,
    releaseIn: prestressIn + selfIn,
    erectionIn,
    toppedIn: erectionIn + toppingIn,
    longTermIn: m.finalPrestress * prestressIn + m.finalSelf * selfIn + m.finalTopping * toppingIn + m.finalSuperimposed * result.superimposedIn * load,
  };
}

/** Deflected shape of a uniform load on a simple span, 1 at midspan. */
export function uniformLoadShape(share: number): number {
  return (16 / 5) * (share - 2 * share ** 3 + share ** 4);
}

/** Deflected shape of the prestress, 1 at midspan, from the bending moment P e along the strands' course. */
function prestressShape(member: Member, share: number): number {
  const {section, layout} = member;
  const endIn = section.ybIn - layout.centroidEndIn;
  const riseIn = layout.centroidEndIn - layout.centroidCenterIn;
  const a = holdDownShare(layout.profile);
  const middle = deflection(0.5, endIn, riseIn, a);
  // Strands that follow the centroid bend nothing; the shape is then of no account and kept finite.
  return middle === 0 ? uniformLoadShape(share) : deflection(Math.min(share, 1 - share), endIn, riseIn, a) / middle;
}

/** Deflection at a share of the span, up to midspan, under the moment of a unit force: level, and added toward a hold-down at a share. */
function deflection(x: number, endIn: number, riseIn: number, a: number): number {
  const uniform = (x * (1 - x)) / 2;
  // The added moment rises straight from the end to the hold-down and stays level between two of them.
  // Stryker disable next-line EqualityOperator: the two meet at the hold-down
  const peaked = x <= a ? (x * (1 - a)) / 2 - x ** 3 / (6 * a) : x / 2 - x ** 2 / 2 - a ** 2 / 6;
  return endIn * uniform + riseIn * peaked;
}
