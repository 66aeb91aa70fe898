import {creepForAge, creepGrowth, type TimeModel} from "../../lib/materials/timeModel.js";

/** Creep coefficient at an age for a stress put on at another, days (ACI 209R-92 2.2.1, 2.3.1). Loads before the first day count as put on then. */
export function creepCoefficient(model: TimeModel, ageDay: number, loadedDay: number): number {
  return creepForAge(model, loadedDay) * creepGrowth(ageDay - loadedDay);
}
