import type {Criteria} from "../deck/criteria.js";
import {ownPsf} from "../member/member.js";
import type {LimitName} from "../deck/limits.js";
import {LIMIT_INFO} from "../deck/limits.js";
import type {Member} from "../member/member.js";
import {given, type Step, type StepValue} from "../step.js";

/** A limit to be worked out: where, by which rules, and the load that the code found for it. */
export interface LimitCase {
  readonly member: Member;
  readonly spanFt: number;
  readonly criteria: Criteria;
  readonly name: LimitName;
  /** Symbol of the load that the limit allows, such as `w_1`. */
  readonly symbol: string;
  /** That load, psf. */
  readonly psf: number;
}

/** Values that most steps share. */
export function common({member, spanFt, criteria}: LimitCase, share = 0.5): Readonly<Record<"b" | "L" | "s" | "w_o" | "w_sd", StepValue>> {
  return {
    b: given(member.widthFt, "ft", "width of the member"), L: given(spanFt, "ft", "span"),
    s: given(share, "", "place as a share of the span"),
    w_o: given(ownPsf(member), "psf", "member and topping"),
    w_sd: given(criteria.superimposedDeadPsf, "psf", "superimposed dead load"),
  };
}

/** Moment of one psf of floor on the member at a place, as an expression of `b`, `L` and `s`, kip-in. */
export const UNIT_MOMENT = "(b * L^2 * s * (1 - s) / 2 * 12 / 1000)";

/** The last step of a limit: the load that it allows. */
export function allows({symbol, psf, name}: LimitCase, expression: string, values: Step["values"], extra: Partial<Pick<Step, "note" | "label">> = {}): Step {
  return {symbol, label: `load that ${name} allows`, expression, values, result: psf, unit: "psf", source: LIMIT_INFO[name].clause, ...extra};
}

/** From the factored load that a strength holds to the superimposed load in service: the dead part first, then live. */
export function unfactored(limit: LimitCase, factoredPsf: number): Step {
  const {superimposedDeadPsf, deadFactor, liveFactor, deadOnlyFactor} = limit.criteria;
  const {w_o, w_sd} = common(limit);
  const values = {w_n: given(factoredPsf, "psf", "factored load that the strength holds"), w_o, w_sd};
  const source = {note: undefined as string | undefined};
  if (factoredPsf / deadOnlyFactor - w_o.value < superimposedDeadPsf) {
    const {w_n} = values;
    source.note = "All of it dead: the strength does not even hold the superimposed dead load.";
    return allows(limit, `w_n / ${deadOnlyFactor} - w_o`, {w_n, w_o}, source);
  }
  const free = factoredPsf - deadFactor * (w_o.value + superimposedDeadPsf);
  return allows(limit, `w_sd + (w_n - ${deadFactor} * (w_o + w_sd)) / ${free >= 0 ? liveFactor : deadFactor}`, values);
}

/** The whole load of which only the dead part and a share of the live part last. */
export function lasting(limit: LimitCase, lastingPsf: number): Step {
  const {superimposedDeadPsf, sustainedLiveShare} = limit.criteria;
  const w_s = given(lastingPsf, "psf", "lasting load at the limit");
  if (lastingPsf <= superimposedDeadPsf) return allows(limit, "w_s", {w_s}, {note: "No more than the superimposed dead load, so all of it lasts."});
  return allows(limit, "w_sd + (w_s - w_sd) / k", {
    w_s, w_sd: common(limit).w_sd, k: given(sustainedLiveShare, "", "share of the live load that stays"),
  });
}
