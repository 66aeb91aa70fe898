import type {Member} from "../member/member.js";
import {prestressState} from "../member/prestressState.js";
import {STRAND_MODULUS_KSI} from "../materials/strand.js";
import {timeModels, timeStepLosses, withShrinkage} from "../member/timeLosses.js";
import {USUAL_SCHEDULE, type Schedule} from "../prestress/schedule.js";
import type {TimeModels} from "../prestress/timeClock.js";
import type {Criteria} from "./criteria.js";
import {safeLoad, type SafeLoad} from "./safeLoad.js";

/** Stress in the strands at midspan in the end by both methods. */
export interface LossMethods {
  /** By the component method, ksi. */
  readonly componentKsi: number;
  /** By time steps with the component method's shrinkage. */
  readonly alikeKsi: number;
  /** By time steps with their own. */
  readonly ownKsi: number;
  /** Shrinkage strain of the member: the component method's, and the ultimate one of the time steps. */
  readonly componentShrinkage: number;
  readonly ownShrinkage: number;
}

/** What the choice of the loss method does to a member on its span. */
export interface TimeEffect extends LossMethods {
  /** Safe load with the component method's losses and with those of the time steps. */
  readonly safe: SafeLoad;
  readonly ownSafe: SafeLoad;
}

/**
 * The two loss methods on one member, with the same shrinkage and each with its own.
 *
 * @throws InputError if a day of the schedule is out of range
 */
export function lossMethods(member: Member, spanFt: number, superimposedDeadPsf: number, schedule: Schedule = USUAL_SCHEDULE): LossMethods {
  const deadPlf = superimposedDeadPsf * member.widthFt;
  const {losses} = prestressState(member, spanFt, 0.5, deadPlf);
  const models = timeModels(member);
  const componentShrinkage = losses.shrinkageKsi / STRAND_MODULUS_KSI;
  const stress = (of: TimeModels) => (timeStepLosses(member, spanFt, 0.5, deadPlf, {schedule, models: of}).at(-1) as {stressKsi: number}).stressKsi;
  return {
    componentKsi: losses.effectiveStressKsi,
    alikeKsi: stress(withShrinkage(models, componentShrinkage)),
    ownKsi: stress(models),
    componentShrinkage,
    ownShrinkage: models.member.shrinkage,
  };
}

/**
 * What the choice of methods does to the losses and the safe load of one member.
 *
 * @throws InputError if the span or a day of the schedule is out of range
 */
export function timeEffect(member: Member, spanFt: number, criteria: Criteria, schedule: Schedule = USUAL_SCHEDULE): TimeEffect {
  const losses = lossMethods(member, spanFt, criteria.superimposedDeadPsf, schedule);
  return {
    ...losses,
    safe: safeLoad(member, spanFt, criteria),
    ownSafe: safeLoadAtStress(member, spanFt, criteria, losses.ownKsi),
  };
}

/**
 * The safe load if the strands kept another stress at midspan than the component method gives: the same method in air
 * so dry or damp that it comes to that stress. Humidity enters the losses alone, and them linearly; away from midspan
 * the loss by drying is the same, so the stress there shifts by as much.
 *
 * @param effectiveStressKsi - stress at midspan after all losses
 */
export function safeLoadAtStress(member: Member, spanFt: number, criteria: Criteria, effectiveStressKsi: number): SafeLoad {
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  const stressAt = (humidityPercent: number) => prestressState({...member, humidityPercent}, spanFt, 0.5, deadPlf).losses.effectiveStressKsi;
  const own = member.humidityPercent;
  const perPercent = stressAt(own + 1) - stressAt(own);
  return safeLoad({...member, humidityPercent: own + (effectiveStressKsi - stressAt(own)) / perPercent}, spanFt, criteria);
}
