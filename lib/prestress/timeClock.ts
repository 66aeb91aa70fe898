import {creepForAge, creepGrowth, shrinkageStrain, type TimeModel} from "../materials/timeModel.js";
import {checkSchedule, timeStops, type Schedule, type TimeStop} from "./schedule.js";

/** Creep and shrinkage of the concretes of a member. */
export interface TimeModels {
  readonly member: TimeModel;
  /** Undefined where there is no topping. */
  readonly topping: TimeModel | undefined;
  /** Relaxation of the strands against low-relaxation strand: 1; 0 for steel that never relaxes. */
  readonly relaxationShare: number;
}

/** One step of time. */
export interface TimeStep extends TimeStop {
  readonly fromDay: number;
  /** By source up to now, how far the creep coefficient of its stress grows in this step. */
  readonly creep: Float64Array;
  readonly toppingCreep: Float64Array | undefined;
  /** Shrinkage strain in this step. */
  readonly shrinkage: number;
  readonly toppingShrinkage: number;
  /** The sources that this step adds: what passes between the parts during it, and the loads at its end, if any. */
  readonly midSource: number;
  readonly endSource: number;
}

/**
 * What a schedule and the concretes make of time, shared by all sections of a member.
 *
 * Stress changes come from sources in the order of time. Source 0 is the release; what passes between the parts in a step
 * is taken as put on in its middle.
 */
export interface TimeClock {
  readonly releaseDay: number;
  readonly relaxationShare: number;
  readonly steps: readonly TimeStep[];
  readonly sources: number;
}

/** Steps between two moments of the schedule; twice as many move camber by less than a hundredth of an inch. */
export const USUAL_STEPS = 20;

/**
 * Makes the clock.
 *
 * @throws InputError if the schedule's days are out of order or range
 */
export function makeClock(schedule: Schedule, models: TimeModels, steps = USUAL_STEPS): TimeClock {
  const topped = models.topping !== undefined;
  const stops = timeStops(checkSchedule(schedule, topped), topped, steps);
  const sourceDays = [schedule.releaseDay];
  const marks = stops.slice(1).map(({day, moments}, k) => {
    const known = sourceDays.length;
    const fromDay = (stops[k] as TimeStop).day;
    sourceDays.push((fromDay + day) / 2);
    // Moments that bring no load are no source.
    if (moments.some((moment) => moment === "topping" || moment === "loading")) sourceDays.push(day);
    return {day, moments, fromDay, known, midSource: known, endSource: sourceDays.length - 1};
  });
  const member = creepRows(models.member, marks, sourceDays, 0);
  const cast = models.topping && creepRows(models.topping, marks, sourceDays, schedule.toppingDay);
  const between = (model: TimeModel | undefined, from: number, to: number, bornDay: number) =>
    (model ? shrinkageStrain(model, to - bornDay) - shrinkageStrain(model, from - bornDay) : 0);
  return {
    releaseDay: schedule.releaseDay,
    relaxationShare: models.relaxationShare,
    sources: sourceDays.length,
    steps: marks.map(({known: _, ...mark}, k): TimeStep => ({
      ...mark,
      creep: member[k] as Float64Array,
      toppingCreep: cast?.[k],
      shrinkage: between(models.member, mark.fromDay, mark.day, schedule.releaseDay),
      toppingShrinkage: between(models.topping, mark.fromDay, mark.day, schedule.toppingDay),
    })),
  };
}

/**
 * By step and source, the growth of the creep coefficient. Sources before the concrete was cast, on `bornDay`, are none
 * to it.
 */
function creepRows(model: TimeModel, steps: readonly {readonly day: number; readonly known: number}[], sourceDays: readonly number[], bornDay: number): Float64Array[] {
  const ultimate = sourceDays.map((day) => (day >= bornDay ? creepForAge(model, day - bornDay) : 0));
  // How far each source's creep has been counted. What a source creeps within its own step comes with the next step.
  const counted = new Float64Array(sourceDays.length);
  return steps.map(({day, known}) => {
    const row = new Float64Array(known);
    for (let s = 0; s < known; s++) {
      if (ultimate[s] === 0) continue;
      const reached = (ultimate[s] as number) * creepGrowth(day - (sourceDays[s] as number));
      row[s] = reached - (counted[s] as number);
      counted[s] = reached;
    }
    return row;
  });
}
