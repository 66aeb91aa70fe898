import {ownPsf} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {given, type Step, type StepValue} from "../step.js";
import type {Cell} from "./cell.js";

/** A limit that is computed: in which cell, under what name, and the load that the code found for it. */
export interface LimitCase {
  readonly cell: Cell;
  readonly name: string;
  readonly clause: string;
  /** Symbol of the load that the limit allows, such as `w_1`. */
  readonly symbol: string;
  /** That load, psf. */
  readonly psf: number;
}

/** Values that most steps share. */
export function common({cell: {member, spanFt, rules}}: Pick<LimitCase, "cell">, share = 0.5): Readonly<Record<"b" | "L" | "s" | "w_o" | "w_sd", StepValue>> {
  return {
    b: given(member.widthFt, "ft", "width of the member"), L: given(spanFt, "ft", "span"),
    s: given(share, "", "place as a share of the span"),
    w_o: given(ownPsf(member), "psf", "member and topping"),
    w_sd: given(rules.superimposedDeadPsf, "psf", "superimposed dead load"),
  };
}

/** Moment of one psf of floor on the member at a place, as an expression of `b`, `L` and `s`, kip-in. */
export const UNIT_MOMENT = "(b * L^2 * s * (1 - s) / 2 * 12 / 1000)";

/** The last step of a limit: the load that it allows. */
export function allows({symbol, psf, name, clause}: LimitCase, expression: string, values: Step["values"], extra: Partial<Pick<Step, "note" | "label">> = {}): Step {
  return {symbol, label: `load that ${name} allows`, expression, values, result: psf, unit: "psf", source: clause, ...extra};
}

/** From the factored load that a strength holds to the superimposed load in service: the dead part first, then live. */
export function unfactored(limit: LimitCase, factoredPsf: number): Step {
  const {superimposedDeadPsf, deadFactor, liveFactor, deadOnlyFactor} = limit.cell.rules;
  const {w_o, w_sd} = common(limit);
  const w_n = given(factoredPsf, "psf", "factored load that the strength holds");
  // Stryker disable next-line EqualityOperator: no strength meets it to the last digit
  if (factoredPsf / deadOnlyFactor - w_o.value < superimposedDeadPsf) {
    return allows(limit, `w_n / ${deadOnlyFactor} - w_o`, {w_n, w_o}, {note: "All of it dead: the strength does not even hold the superimposed dead load."});
  }
  return allows(limit, `w_sd + (w_n - ${deadFactor} * (w_o + w_sd)) / ${liveFactor}`, {w_n, w_o, w_sd});
}

/** The whole load of which only the dead part and a share of the live part last. */
export function lasting(limit: LimitCase, lastingPsf: number): Step {
  const {superimposedDeadPsf, sustainedLiveShare} = limit.cell.rules;
  const w_s = given(lastingPsf, "psf", "lasting load at the limit");
  // Stryker disable next-line EqualityOperator: the two meet there
  if (lastingPsf <= superimposedDeadPsf) return allows(limit, "w_s", {w_s}, {note: "No more than the superimposed dead load, so all of it lasts."});
  return allows(limit, "w_sd + (w_s - w_sd) / k", {
    w_s, w_sd: common(limit).w_sd, k: given(sustainedLiveShare, "", "share of the live load that stays"),
  });
}

/** From a design moment at a place, or a part of it, to the superimposed load whose factored moment it is. */
export function momentLoad(limit: LimitCase, designMomentKipIn: number, share: number, over = 1): Step[] {
  const {spanFt, member} = limit.cell;
  const {b, L, s} = common(limit, share);
  const factoredPsf = designMomentKipIn / over / (uniformMomentKipIn(1, spanFt, share) * member.widthFt);
  return [
    {
      symbol: "w_n", label: "factored load that the strength holds", expression: over === 1 ? `M_d / ${UNIT_MOMENT}` : `M_d / ${over} / ${UNIT_MOMENT}`,
      values: {M_d: given(designMomentKipIn, "kip-in", "design strength"), b, L, s}, result: factoredPsf, unit: "psf", source: "statics",
    },
    unfactored(limit, factoredPsf),
  ];
}

/** From a strength in shear at a place, or of an end's reaction, to the superimposed load whose factored shear it is. */
export function endLoad(limit: LimitCase, capacityKip: number, symbol: string, label: string, share: number): Step[] {
  const {spanFt, member} = limit.cell;
  const {b, L, s} = common(limit, share);
  const factoredPsf = (capacityKip * 1000) / (spanFt * (0.5 - share) * member.widthFt);
  const place: Step["values"] = share > 0 ? {s} : {};
  return [
    {
      symbol: "w_n", label: "factored load that the strength holds", expression: `1000 * ${symbol} / (L * ${share > 0 ? "(0.5 - s)" : "0.5"} * b)`,
      values: {[symbol]: given(capacityKip, "kip", label), L, b, ...place}, result: factoredPsf, unit: "psf", source: "statics",
    },
    unfactored(limit, factoredPsf),
  ];
}

/** What a gate measures over what is allowed; above 1 the gate is not passed. */
export function overAllowed(expression: string, values: Step["values"], result: number, source: string): Step {
  return {symbol: "r", label: "what is found over what is allowed", expression, values, result, unit: "", source, note: "Above 1 it is not passed."};
}
