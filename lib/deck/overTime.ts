import type {Design} from "../design/design.js";
import type {Camber} from "../member/camber.js";
import {withExtraTopping, type Member} from "../member/member.js";
import {timeCamber, type CamberAtTime} from "../member/timeCamber.js";
import {halfLostDay, timeModels, timeStepLosses, withShrinkage} from "../member/timeLosses.js";
import {timeMoments, type Schedule, type TimeMoment} from "../prestress/schedule.js";
import type {SectionAtTime} from "../prestress/timeStep.js";
import type {DeckResult} from "./deckResult.js";
import {lossMethods, type LossMethods} from "./timeEffect.js";

/** A design's deck member on its span; an evaluation of the design is one. */
export interface DeckOnSpan {
  readonly design: Pick<Design, "bay">;
  readonly member: Member;
  readonly deck: Pick<DeckResult, "superimposedDeadPsf">;
}

/** The moments of the schedule that a deck has, with their days. */
export type DeckMoments = readonly {readonly moment: TimeMoment; readonly day: number}[];

/** Stress in the strands of a design's deck at midspan through time. */
export interface StressOverTime {
  readonly moments: DeckMoments;
  readonly history: readonly SectionAtTime[];
  /** When half of what time takes is gone, days. */
  readonly halfDay: number;
}

/** Stress in the strands by time steps; throws InputError for an impossible schedule. */
export function stressOverTime({design, member, deck}: DeckOnSpan, schedule: Schedule): StressOverTime {
  const history = timeStepLosses(member, design.bay.spanFt, 0.5, deck.superimposedDeadPsf * member.widthFt, {schedule});
  return {moments: timeMoments(schedule, member.topping !== undefined), history, halfDay: halfLostDay(history)};
}

/** Both loss methods for a design's deck; throws InputError for an impossible schedule. */
export function deckLossMethods({design, member, deck}: DeckOnSpan, schedule: Schedule): LossMethods {
  return lossMethods(member, design.bay.spanFt, deck.superimposedDeadPsf, schedule);
}

/** Camber of a design's deck at midspan through time. */
export interface CamberOverTime {
  readonly moments: DeckMoments;
  readonly history: readonly CamberAtTime[];
  readonly highest: CamberAtTime;
  readonly end: CamberAtTime;
}

/** The same with its camber as the floor has it, see `Evaluation.camber`. */
export interface CamberedDeck extends DeckOnSpan {
  readonly deck: Pick<DeckResult, "superimposedDeadPsf" | "camber">;
  readonly camber: Camber;
}

/**
 * Camber by time steps; throws InputError for an impossible schedule. The topping weighs what sags midspan as much as all
 * that fills the camber, so that both methods describe one floor.
 *
 * @param toppingDries - false to see what the topping's own shrinkage does
 */
export function camberOverTime(of: CamberedDeck, schedule: Schedule, toppingDries = true): CamberOverTime {
  const {design, deck} = of;
  const member = topped(of);
  const models = timeModels(member);
  const history = timeCamber(member, design.bay.spanFt, deck.superimposedDeadPsf * member.widthFt, {
    schedule, models: toppingDries ? models : withShrinkage(models, models.member.shrinkage),
  });
  return {
    moments: timeMoments(schedule, member.topping !== undefined), history,
    // Stryker disable next-line EqualityOperator: of two alike either does
    highest: history.reduce((most, row) => (row.camberIn > most.camberIn ? row : most)),
    end: history.at(-1) as CamberAtTime,
  };
}

/** The member under the evenly spread topping that sags its midspan as much as the one that fills its camber. */
function topped({member, deck, camber}: CamberedDeck): Member {
  // Stryker disable next-line ConditionalExpression: of an untopped member nothing looks at what its topping weighs
  if (deck.camber.toppingIn === 0) return member;
  const timesTheLeast = camber.toppingIn / deck.camber.toppingIn;
  return withExtraTopping(member, ((timesTheLeast - 1) * member.toppingWeightPlf) / member.widthFt);
}
