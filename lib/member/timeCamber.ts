import {CAMBER_FORCE_ALLOWANCE, JACKING_STRESS_KSI} from "../prestress/losses.js";
import {holdDownShare} from "../prestress/layout.js";
import {USUAL_SCHEDULE, type TimeMoment} from "../prestress/schedule.js";
import {makeClock} from "../prestress/timeClock.js";
import {stepThroughTime} from "../prestress/timeStep.js";
import {IN_PER_FT} from "../units.js";
import type {Member} from "./member.js";
import {timeModels, timeSection, type TimeOptions} from "./timeLosses.js";

/** Camber at midspan at one time, in; up is positive. The causes add up to it. */
export interface CamberAtTime {
  readonly day: number;
  /** The moment of the schedule that this row comes right after. */
  readonly moment: TimeMoment | undefined;
  readonly camberIn: number;
  /** By release and the loads at once. */
  readonly elasticIn: number;
  readonly creepIn: number;
  /** By drying: the strands hold the underside back, and a topping that dries pulls the top together. */
  readonly shrinkageIn: number;
  readonly relaxationIn: number;
}

/** What may be set of a camber through time. */
export interface TimeCamberOptions extends TimeOptions {
  /** Intervals between the support and midspan; even, and halved again at a hold-down. */
  readonly intervals?: number;
}

const USUAL_INTERVALS = 8;

/**
 * Camber at midspan step by step through time: the curvature of {@link stepThroughTime} at places along half the span,
 * integrated with the moment of a unit load at midspan (Simpson's rule from kink to kink of the strands' course).
 *
 * Full prestress is taken from the end on, as the multiplier method does, and by default the strands have lost the same
 * before release, {@link CAMBER_FORCE_ALLOWANCE} of the jacking stress, so that both methods start alike. A topping
 * weighs as much everywhere as where it is thinnest. Live load is not counted.
 *
 * @param superimposedDeadPlf - dead load after the topping, per foot of member
 * @throws InputError if the schedule's days are out of order or range
 */
export function timeCamber(member: Member, spanFt: number, superimposedDeadPlf: number, options: TimeCamberOptions = {}): CamberAtTime[] {
  const {schedule = USUAL_SCHEDULE, models = timeModels(member), steps, intervals = USUAL_INTERVALS} = options;
  const {lostBeforeKsi = CAMBER_FORCE_ALLOWANCE * JACKING_STRESS_KSI} = options;
  const clock = makeClock(schedule, models, steps);
  const spanIn = spanFt * IN_PER_FT;
  const histories = placesOf(member, intervals).map(({share, weight}) => ({
    // Curvature times the unit load's moment, x/2, on both halves of the span.
    lever: weight * share * spanIn ** 2,
    rows: stepThroughTime(timeSection(member, spanFt, share, superimposedDeadPlf), clock, lostBeforeKsi),
  }));
  return histories[0]!.rows.map(({day, moment}, i): CamberAtTime => {
    let [elasticIn, creepIn, shrinkageIn, relaxationIn] = [0, 0, 0, 0];
    for (const {lever, rows} of histories) {
      const bent = rows[i]!.curvaturePerIn;
      elasticIn += lever * bent.elastic;
      creepIn += lever * bent.creep;
      shrinkageIn += lever * bent.shrinkage;
      relaxationIn += lever * bent.relaxation;
    }
    return {day, moment, camberIn: elasticIn + creepIn + shrinkageIn + relaxationIn, elasticIn, creepIn, shrinkageIn, relaxationIn};
  });
}

/** The row right after a moment; after release where the moment does not occur. */
export function camberAfter(history: readonly CamberAtTime[], moment: TimeMoment): CamberAtTime {
  return (history.find((row) => row.moment === moment) ?? history[0]) as CamberAtTime;
}

/** Places along half a span with Simpson's weights as shares of the span. The support is left out: nothing there moves midspan. */
function placesOf(member: Member, intervals: number): {share: number; weight: number}[] {
  const holdDown = holdDownShare(member.layout.profile);
  const even = (count: number) => Math.max(2, 2 * Math.round(count / 2));
  const stretches = holdDown < 0.5
    ? [{from: 0, to: holdDown, count: even((intervals * holdDown) / 0.5)}, {from: holdDown, to: 0.5, count: even(intervals * (1 - holdDown / 0.5))}]
    : [{from: 0, to: 0.5, count: even(intervals)}];
  const weights = new Map<number, number>();
  for (const {from, to, count} of stretches) {
    for (let i = 0; i <= count; i++) {
      const share = from + ((to - from) * i) / count;
      const simpson = i === 0 || i === count ? 1 : i % 2 === 1 ? 4 : 2;
      weights.set(share, (weights.get(share) ?? 0) + (simpson * (to - from)) / (3 * count));
    }
  }
  weights.delete(0);
  return [...weights].map(([share, weight]) => ({share, weight}));
}
