import {camberCurve, type Camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {IN3_PER_YD3, IN_PER_FT} from "../units.js";

/** The topping at one place along the span. */
export interface ToppingPoint {
  readonly share: number;
  /** Rise of the member's top above its ends, in; negative where it sags. */
  readonly riseIn: number;
  readonly thicknessIn: number;
}

/** A topping cast to a flat surface on a cambered member. */
export interface ToppingResult {
  readonly points: readonly ToppingPoint[];
  readonly leastIn: number;
  readonly greatestIn: number;
  readonly averageIn: number;
  /** Weight of the topping beyond its least thickness, averaged over the span, psf. */
  readonly extraWeightPsf: number;
  /** Concrete per member, in one bay (one beam span by one deck span), and on the whole floor, yd3. */
  readonly memberYd3: number;
  readonly bayYd3: number;
  readonly floorYd3: number;
}

/** Places along the span; even, so that Simpson's rule is exact for the cubic parts and near so for the quartic. */
const INTERVALS = 80;

/**
 * Thickness and volume of a topping whose finished surface is flat, with its least thickness where the member stands
 * highest. The member's camber is taken right after casting, when the wet topping has already pressed it down.
 *
 * @param bay - the grid whose floor is counted
 * @returns undefined without topping
 */
export function toppingProfile(
  member: Member, camber: Camber, bay: {spanFt: number; beamSpanFt: number; baysAlong: number; baysAcross: number},
): ToppingResult | undefined {
  if (!member.topping) return undefined;
  const leastIn = member.topping.thicknessIn;
  const curve = camberCurve(member, camber, INTERVALS + 1);
  const highestIn = Math.max(...curve.map((point) => point.toppedIn));
  const points = curve.map((point): ToppingPoint => ({
    share: point.share, riseIn: point.toppedIn, thicknessIn: leastIn + highestIn - point.toppedIn,
  }));
  const averageIn = simpson(points.map((point) => point.thicknessIn));
  const yd3 = (widthFt: number) => (averageIn * widthFt * bay.spanFt * IN_PER_FT ** 2) / IN3_PER_YD3;
  return {
    points, leastIn, averageIn,
    greatestIn: Math.max(...points.map((point) => point.thicknessIn)),
    extraWeightPsf: ((averageIn - leastIn) / IN_PER_FT) * member.topping.concrete.unitWeightPcf,
    memberYd3: yd3(member.widthFt),
    bayYd3: yd3(bay.beamSpanFt),
    floorYd3: yd3(bay.beamSpanFt) * bay.baysAlong * bay.baysAcross,
  };
}

/** Mean of evenly spaced values over their range, by Simpson's rule. */
export function simpson(values: readonly number[]): number {
  const intervals = values.length - 1;
  const sum = values.reduce((total, value, i) => total + value * (i === 0 || i === intervals ? 1 : i % 2 === 1 ? 4 : 2), 0);
  return sum / (3 * intervals);
}
