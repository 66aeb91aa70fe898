import {elasticModulusKsi} from "../materials/concrete.js";
import {timeModel} from "../materials/timeModel.js";
import {centroidAt} from "../prestress/layout.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {USUAL_SCHEDULE, type Schedule} from "../prestress/schedule.js";
import {makeClock, type TimeModels} from "../prestress/timeClock.js";
import {relaxationKsi, stepThroughTime, type SectionAtTime, type TimeSection} from "../prestress/timeStep.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";

/** What may be set of a computation through time. */
export interface TimeOptions {
  readonly schedule?: Schedule;
  /** Creep and shrinkage; by default {@link timeModels}. */
  readonly models?: TimeModels;
  /** Lost between jacking and release, ksi; by default the relaxation of those hours. */
  readonly lostBeforeKsi?: number;
  /** Time steps between two moments of the schedule. */
  readonly steps?: number;
}

/** Creep and shrinkage of a member's concretes by ACI 209R-92; a topping dries through its upper face alone. */
export function timeModels({volumeToSurfaceIn, humidityPercent, topping}: Member): TimeModels {
  return {
    member: timeModel(volumeToSurfaceIn, humidityPercent, "steam"),
    topping: topping && timeModel(topping.thicknessIn, humidityPercent, "moist"),
    relaxationShare: 1,
  };
}

/**
 * The same with another ultimate shrinkage strain of the member and none of the topping: the component method's own
 * shrinkage, to compare the two methods like with like.
 */
export function withShrinkage({member, topping, relaxationShare}: TimeModels, shrinkage: number): TimeModels {
  return {
    relaxationShare,
    member: {...member, name: `${member.name}; shrinkage as given`, shrinkage},
    topping: topping && {...topping, name: `${topping.name}; no shrinkage`, shrinkage: 0},
  };
}

/** Relaxation of the strands from an hour after they were pulled to release, ksi. */
export function relaxationBeforeKsi({releaseDay}: Schedule): number {
  return relaxationKsi(JACKING_STRESS_KSI, 1, 24 * releaseDay);
}

/**
 * Stress in the strands, its losses by cause, and the curvature, step by step through time at a place of a simple span.
 *
 * @param share - place along the span, 0 to 1
 * @param superimposedDeadPlf - dead load after the topping, per foot of member, on the full section
 * @throws InputError if the schedule's days are out of order or range
 */
export function timeStepLosses(member: Member, spanFt: number, share: number, superimposedDeadPlf: number, options: TimeOptions = {}): SectionAtTime[] {
  const {schedule = USUAL_SCHEDULE, models = timeModels(member), lostBeforeKsi = relaxationBeforeKsi(schedule), steps} = options;
  return stepThroughTime(timeSection(member, spanFt, share, superimposedDeadPlf), makeClock(schedule, models, steps), lostBeforeKsi);
}

/** The day by which half of all that creep, shrinkage and relaxation take between release and the end is gone. */
export function halfLostDay(history: readonly SectionAtTime[]): number {
  const taken = ({lostKsi}: SectionAtTime) => lostKsi.creep + lostKsi.shrinkage + lostKsi.relaxation;
  const [first, last] = [history[0], history.at(-1)] as [SectionAtTime, SectionAtTime];
  const half = (taken(first) + taken(last)) / 2;
  const at = history.findIndex((row) => taken(row) >= half);
  const [before, after] = [history[Math.max(0, at - 1)], history[Math.max(0, at)]] as [SectionAtTime, SectionAtTime];
  const share = taken(after) > taken(before) ? (half - taken(before)) / (taken(after) - taken(before)) : 0;
  return before.day + share * (after.day - before.day);
}

/** A member's section at a place of a simple span, with the moments there. */
export function timeSection(member: Member, spanFt: number, share: number, superimposedDeadPlf: number): TimeSection {
  const {section, topping} = member;
  const unitKipIn = uniformMomentKipIn(1, spanFt, share);
  return {
    strandAreaIn2: member.layout.areaIn2,
    eccentricityIn: section.ybIn - centroidAt(member.layout, share),
    areaIn2: section.areaIn2,
    inertiaIn4: section.inertiaIn4,
    modulusKsi: member.modulusKsi,
    releaseModulusKsi: member.releaseModulusKsi,
    topping: topping && {
      areaIn2: topping.widthIn * topping.thicknessIn,
      inertiaIn4: (topping.widthIn * topping.thicknessIn ** 3) / 12,
      aboveIn: section.ytIn + topping.thicknessIn / 2,
      modulusKsi: elasticModulusKsi(topping.concrete.unitWeightPcf, topping.concrete.strengthPsi),
    },
    selfKipIn: member.selfWeightPlf * unitKipIn,
    toppingKipIn: member.toppingWeightPlf * unitKipIn,
    superimposedKipIn: superimposedDeadPlf * unitKipIn,
  };
}
