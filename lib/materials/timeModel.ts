/** How a concrete creeps and shrinks with time. */
export interface TimeModel {
  /** The model and where it is from. */
  readonly name: string;
  /** Ultimate creep coefficient, before the age of load is counted. */
  readonly creep: number;
  /** Ultimate shrinkage strain. */
  readonly shrinkage: number;
  readonly curing: Curing;
}

/** Steam for a plant's members, moist for what is cast in place. */
export type Curing = "steam" | "moist";

/** By curing: the factor for the age at loading, factor times age to a power, and the days in which half of the shrinkage comes. */
const BY_CURING: Readonly<Record<Curing, {ageFactor: number; agePower: number; halfDays: number}>> = {
  steam: {ageFactor: 1.13, agePower: -0.094, halfDays: 55},
  moist: {ageFactor: 1.25, agePower: -0.118, halfDays: 35},
};
const NAMES: Readonly<Record<Curing, string>> = {steam: "ACI 209R-92, steam cured", moist: "ACI 209R-92, moist cured"};

/**
 * Creep and shrinkage by ACI 209R-92 chapter 2: 2.35 and 780e-6, corrected for humidity and volume-to-surface ratio
 * (constants from memory; humidity 40 to 100 %, a lower one counts as 40). Slump, fines, cement and air are left at 1.
 */
export function timeModel(volumeToSurfaceIn: number, humidityPercent: number, curing: Curing = "steam"): TimeModel {
  const h = Math.max(40, humidityPercent);
  const creepHumidity = 1.27 - 0.0067 * h;
  const creepSize = (2 / 3) * (1 + 1.13 * Math.exp(-0.54 * volumeToSurfaceIn));
  const shrinkHumidity = h <= 80 ? 1.4 - 0.0102 * h : Math.max(0, 3 - 0.03 * h);
  const shrinkSize = 1.2 * Math.exp(-0.12 * volumeToSurfaceIn);
  return {name: NAMES[curing], curing, creep: 2.35 * creepHumidity * creepSize, shrinkage: 780e-6 * shrinkHumidity * shrinkSize};
}

/** Ultimate creep coefficient of a stress put on at an age, days. */
export function creepForAge(model: TimeModel, loadedDay: number): number {
  const {ageFactor, agePower} = BY_CURING[model.curing];
  return model.creep * ageFactor * Math.max(1, loadedDay) ** agePower;
}

/** Share of the ultimate creep after days under load: t^0.6 / (10 + t^0.6). */
export function creepGrowth(daysLoaded: number): number {
  const t = Math.max(0, daysLoaded) ** 0.6;
  return t / (10 + t);
}

/** Shrinkage strain after days of drying (ACI 209R-92 2.2.2): half of it in 55 days if steam cured, in 35 if moist cured. */
export function shrinkageStrain(model: TimeModel, daysDrying: number): number {
  const t = Math.max(0, daysDrying);
  return (model.shrinkage * t) / (BY_CURING[model.curing].halfDays + t);
}
