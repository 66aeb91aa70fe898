import {STRAND_MODULUS_KSI, STRAND_YIELD_KSI} from "../materials/strand.js";
import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {centroidAt} from "./layout.js";
import {JACKING_STRESS_KSI} from "./losses.js";

/** When things happen to a member, in days after its concrete was cast. */
export interface Schedule {
  /** Strands cut. */
  readonly releaseDay: number;
  /** Member set and topping cast. */
  readonly toppingDay: number;
  /** Superimposed dead load put on. */
  readonly loadingDay: number;
  /** End of the reckoning. */
  readonly endDay: number;
}

/** An overnight release, topping after two months, finishes after three, and fifty years. */
export const USUAL_SCHEDULE: Schedule = {releaseDay: 0.75, toppingDay: 60, loadingDay: 90, endDay: 18250};

/** How a concrete creeps and shrinks (ACI 209R-92, steam cured). */
export interface TimeModel {
  /** Ultimate creep coefficient for load at the release, before the age of load is counted. */
  readonly creep: number;
  /** Ultimate shrinkage strain. */
  readonly shrinkage: number;
}

/**
 * Creep and shrinkage of a steam-cured member by ACI 209R-92: 2.35 and 780e-6, corrected for humidity and
 * volume-to-surface ratio (constants from memory; humidity 40 to 100 %).
 */
export function timeModel(volumeToSurfaceIn: number, humidityPercent: number): TimeModel {
  const h = Math.max(40, humidityPercent);
  const creepHumidity = 1.27 - 0.0067 * h;
  const creepSize = (2 / 3) * (1 + 1.13 * Math.exp(-0.54 * volumeToSurfaceIn));
  const shrinkHumidity = h <= 80 ? 1.4 - 0.0102 * h : Math.max(0, 3 - 0.03 * h);
  const shrinkSize = 1.2 * Math.exp(-0.12 * volumeToSurfaceIn);
  return {creep: 2.35 * creepHumidity * creepSize, shrinkage: 780e-6 * shrinkHumidity * shrinkSize};
}

/** Creep coefficient at an age for a stress put on at another, days (ACI 209R-92 2.2.1, 2.3.3; steam cured). */
export function creepCoefficient(model: TimeModel, ageDay: number, loadedDay: number): number {
  const elapsed = Math.max(0, ageDay - loadedDay) ** 0.6;
  return model.creep * 1.13 * Math.max(1, loadedDay) ** -0.094 * (elapsed / (10 + elapsed));
}

/** Shrinkage strain at an age, from the release on (ACI 209R-92 2.2.2; steam cured). */
export function shrinkageStrain(model: TimeModel, ageDay: number, releaseDay: number): number {
  const elapsed = Math.max(0, ageDay - releaseDay);
  return (model.shrinkage * elapsed) / (55 + elapsed);
}

/** The prestress at one time. */
export interface PrestressAtTime {
  readonly day: number;
  readonly stressKsi: number;
  /** Lost since the jacks let go, by cause, ksi; dead load added later counts as a gain within elastic. */
  readonly elasticKsi: number;
  readonly creepKsi: number;
  readonly shrinkageKsi: number;
  readonly relaxationKsi: number;
}

/** Time steps between two events; their lengths grow with the logarithm of time. */
const STEPS = 24;

/**
 * Losses of prestress at a place of a member step by step through time.
 *
 * In each step the concrete at the strands creeps under every stress change so far, each from its own age, shrinks, and
 * the steel relaxes; strand and concrete move together. Creep by superposition on the gross section; the topping's own
 * shrinkage is left out.
 *
 * @param superimposedDeadPlf - dead load after the topping, per foot of member, on the full section
 * @param model - creep and shrinkage; by default those of {@link timeModel}
 */
export function timeStepLosses(
  member: Member, spanFt: number, share: number, superimposedDeadPlf: number,
  schedule = USUAL_SCHEDULE, model = timeModel(member.volumeToSurfaceIn, member.humidityPercent),
): PrestressAtTime[] {
  const {section, full, layout, modulusKsi, releaseModulusKsi} = member;
  const strandIn = centroidAt(layout, share);
  const e = section.ybIn - strandIn;
  const unitKipIn = uniformMomentKipIn(1, spanFt, share);
  const perKip = 1 / section.areaIn2 + (e * e) / section.inertiaIn4;
  const stiffness = layout.areaIn2 * perKip;
  const n = (ksi: number) => STRAND_MODULUS_KSI / ksi;

  // At release: the strand's force acts on the concrete at once, so force and shortening are solved together.
  const beforeRelease = intrinsicRelaxation(JACKING_STRESS_KSI, 1 / 24, 24 * schedule.releaseDay);
  const selfKsi = (member.selfWeightPlf * unitKipIn * e) / section.inertiaIn4;
  const pull = JACKING_STRESS_KSI - beforeRelease;
  const releaseStressKsi = (pull + n(releaseModulusKsi) * selfKsi) / (1 + n(releaseModulusKsi) * stiffness);
  const state = {elasticKsi: pull - releaseStressKsi, creepKsi: 0, shrinkageKsi: 0, relaxationKsi: beforeRelease, stressKsi: releaseStressKsi};
  // Every change of concrete stress at the strands, with its day and the modulus at that age.
  const changes = [{day: schedule.releaseDay, ksi: releaseStressKsi * stiffness - selfKsi, modulus: releaseModulusKsi}];
  const history: PrestressAtTime[] = [{day: schedule.releaseDay, ...state}];

  const added: Readonly<Record<number, number>> = {
    [schedule.toppingDay]: (member.toppingWeightPlf * unitKipIn * e) / section.inertiaIn4,
    [schedule.loadingDay]: (superimposedDeadPlf * unitKipIn * (full.ybIn - strandIn)) / full.inertiaIn4,
  };
  const days = timeline(schedule);
  for (let i = 1; i < days.length; i++) {
    const from = days[i - 1] as number;
    const to = days[i] as number;
    const creepStrain = changes.reduce(
      (sum, change) => sum + (change.ksi / change.modulus) * (creepCoefficient(model, to, change.day) - creepCoefficient(model, from, change.day)), 0);
    const shrink = shrinkageStrain(model, to, schedule.releaseDay) - shrinkageStrain(model, from, schedule.releaseDay);
    const relax = Math.min(state.stressKsi, intrinsicRelaxation(state.stressKsi, 24 * from, 24 * to));
    const free = STRAND_MODULUS_KSI * (creepStrain + shrink) + relax;
    // The concrete springs back a little as the strand lets go.
    const rebound = 1 / (1 + n(modulusKsi) * stiffness);
    state.creepKsi += STRAND_MODULUS_KSI * creepStrain * rebound;
    state.shrinkageKsi += STRAND_MODULUS_KSI * shrink * rebound;
    state.relaxationKsi += relax * rebound;
    state.stressKsi -= free * rebound;
    changes.push({day: (from + to) / 2, ksi: -free * rebound * stiffness, modulus: modulusKsi});
    const loadKsi = added[to] ?? 0;
    if (loadKsi > 0) {
      const gainKsi = n(modulusKsi) * loadKsi * rebound;
      state.elasticKsi -= gainKsi;
      state.stressKsi += gainKsi;
      changes.push({day: to, ksi: gainKsi * stiffness - loadKsi, modulus: modulusKsi});
    }
    history.push({day: to, ...state});
  }
  return history;
}

/** Relaxation of low-relaxation strand held at a strain between two times in hours, ksi (Magura and others, 1964; from memory). */
function intrinsicRelaxation(stressKsi: number, fromHour: number, toHour: number): number {
  const level = stressKsi / STRAND_YIELD_KSI - 0.55;
  return level <= 0 ? 0 : (stressKsi * level * (Math.log10(Math.max(1, toHour)) - Math.log10(Math.max(1, fromHour)))) / 45;
}

/** Days at which the steps end, with every event among them. */
function timeline({releaseDay, toppingDay, loadingDay, endDay}: Schedule): number[] {
  const events = [...new Set([releaseDay, toppingDay, loadingDay, endDay])].sort((a, b) => a - b);
  return events.flatMap((event, i) => {
    const next = events[i + 1];
    if (next === undefined) return [event];
    return Array.from({length: STEPS}, (_, k) => (k === 0 ? event : releaseDay - 1 + ((event - releaseDay + 1) * ((next - releaseDay + 1) / (event - releaseDay + 1)) ** (k / STEPS))));
  });
}
