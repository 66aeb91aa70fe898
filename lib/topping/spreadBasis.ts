import {camberAt, type Camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {IN3_PER_YD3, IN_PER_FT} from "../units.js";
import {camberToleranceIn} from "./joint.js";
import {fillRatio} from "./ponding.js";
import {simpson} from "./profile.js";
import {HALF_PLACES, MODES, levelFor, type ToppingBasis} from "./spreadTopping.js";

/** What the spread of a design's pieces starts from: plain data, which may be sent to a worker. */
export interface SpreadBasis {
  readonly spanIn: number;
  /** Immediate midspan movement by strands and own weight, in, and their growth until the piece is set. */
  readonly prestressIn: number;
  readonly selfIn: number;
  readonly erectionPrestress: number;
  readonly erectionSelf: number;
  readonly usualAgeDays: number;
  readonly toleranceIn: number;
  readonly topping: ToppingBasis | undefined;
}

/** Age at which the multipliers for erection hold, days: one to two months (the trade handbook). */
export const USUAL_AGE_DAYS = 45;

/** Flexibility ratio beyond which the spread of a topping is not told: single soft pieces would then have no end to it. */
const GREATEST_RATIO = 0.4;

/**
 * Part of its end value that creep has reached at an age, 0 to 1: t^0.6/(10 + t^0.6) (ACI 209R-92 2.2; from memory).
 *
 * @param ageDays - above 0
 */
export function creepReached(ageDays: number): number {
  const grown = ageDays ** 0.6;
  return grown / (10 + grown);
}

/**
 * Takes from a member and its camber what {@link SpreadBasis} holds.
 *
 * @param leastIn - least thickness of the topping, in; the member's own if left out
 */
export function spreadBasis(member: Member, camber: Camber, spanFt: number, leastIn = member.topping?.thicknessIn ?? 0): SpreadBasis {
  const {multipliers, prestressIn, selfIn} = camber;
  return {
    prestressIn, selfIn,
    spanIn: spanFt * IN_PER_FT,
    erectionPrestress: multipliers.erectionPrestress,
    erectionSelf: multipliers.erectionSelf,
    usualAgeDays: USUAL_AGE_DAYS,
    toleranceIn: camberToleranceIn(spanFt),
    topping: toppingBasis(member, camber, spanFt, leastIn),
  };
}

function toppingBasis(member: Member, camber: Camber, spanFt: number, leastIn: number): ToppingBasis | undefined {
  const {topping} = member;
  if (!topping) return undefined;
  const ratio = fillRatio(topping.concrete.unitWeightPcf, topping.widthIn, spanFt, member.modulusKsi, member.section.inertiaIn4);
  if (ratio > GREATEST_RATIO) return undefined;
  // The camber's own curve with one cause at a time, each of 1 in at midspan.
  const none = {...camber, prestressIn: 0, selfIn: 0, toppingIn: 0, superimposedIn: 0};
  const shape = (cause: "prestressIn" | "selfIn", points: number, end: number) =>
    Array.from({length: points}, (_, i) => camberAt(member, {...none, [cause]: 1}, (end * i) / (points - 1)).releaseIn);
  const along = {prestress: shape("prestressIn", 81, 1), self: shape("selfIn", 81, 1)};
  const waves = (values: readonly number[]) => MODES.map((n) => 2 * simpson(values.map((value, i) => value * Math.sin((n * Math.PI * i) / 80))));
  const basis = {
    leastIn, ratio,
    prestressShape: shape("prestressIn", HALF_PLACES, 0.5),
    selfShape: shape("selfIn", HALF_PLACES, 0.5),
    prestressWaves: waves(along.prestress),
    selfWaves: waves(along.self),
    prestressMean: simpson(along.prestress),
    selfMean: simpson(along.self),
    yd3PerIn: (member.widthFt * spanFt * IN_PER_FT ** 2) / IN3_PER_YD3,
  };
  const {multipliers: m} = camber;
  return {...basis, levelIn: levelFor(basis, m.erectionPrestress * camber.prestressIn, m.erectionSelf * camber.selfIn)};
}
