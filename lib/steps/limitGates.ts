import type {LimitName} from "../deck/limits.js";
import {cellOf} from "../deck/cell.js";
import {soffitMostPressed} from "../deck/compression.js";
import {allowables} from "../member/allowables.js";
import {fireRating} from "../member/fire.js";
import {PAYLOAD_KIP, handling} from "../member/handling.js";
import {prestressState} from "../member/prestressState.js";
import {handled} from "../member/stripping.js";
import {transfer} from "../member/transfer.js";
import {LEAST_FREQUENCY_HZ, vibration} from "../member/vibration.js";
import {UNIT_MOMENT, allows, common, type LimitCase} from "./limitSteps.js";
import {given, type Step, type StepValue} from "../step.js";

/** A gate that the member does not pass: by how much, and that no load is left. */
export function gateLimit(limit: LimitCase): Step[] {
  return [...gateMeasure(limit), allows(limit, "0", {}, {label: `load that is left where ${limit.name} is not passed`})];
}

/** What a gate measures, passed or not. */
export function gateMeasure(limit: LimitCase): Step[] {
  const measured = MEASURES[limit.name]?.(limit);
  return measured ? [measured] : [];
}

const MEASURES: Partial<Record<LimitName, (limit: LimitCase) => Step>> = {
  transfer: ({member, spanFt}) => {
    const neededPsi = transfer(member, spanFt).releaseStrengthNeededPsi;
    return over("f_n / f_ciprime", {
      f_n: given(neededPsi, "psi", "strength that the strands require at release"), f_ciprime: given(member.releaseStrengthPsi, "psi", "strength that is specified"),
    }, neededPsi / member.releaseStrengthPsi, "ACI 318-19 24.5.3.1");
  },
  "soffit compression": (limit) => {
    const {member, spanFt, criteria} = limit;
    const {share, stressKsi} = soffitMostPressed(cellOf(member, spanFt, criteria));
    const state = prestressState(member, spanFt, share, criteria.superimposedDeadPsf * member.widthFt);
    const {b, L, s, w_o, w_sd} = common(limit, share);
    const allowedKsi = allowables(member, criteria.tensionClass).sustainedCompressionKsi;
    return over(`(P / A + P * e / S_b - w_o * ${UNIT_MOMENT} / S_b - w_sd * ${UNIT_MOMENT} / S_bf) / f_c`, {
      P: given(state.effectiveForceKip, "kip", "effective prestress where it squeezes the soffit hardest"), A: given(member.section.areaIn2, "in2", "area"),
      e: given(state.eccentricityIn, "in", "strands below the centroid"), S_b: given(member.section.sbIn3, "in3", "modulus of the member"),
      S_bf: given(member.full.sbIn3, "in3", "modulus of the full section"), b, L, s, w_o, w_sd,
      f_c: given(allowedKsi, "ksi", "compression that is allowed for years, 0.45 f'c"),
    }, stressKsi / allowedKsi, "ACI 318-19 24.5.4.1");
  },
  vibration: ({member, spanFt, criteria: {walking, superimposedDeadPsf}}) => {
    const {frequencyHz, acceleration, allowedAcceleration} = vibration(member, spanFt, superimposedDeadPsf * member.widthFt, walking ?? "quiet");
    return over(`max(${LEAST_FREQUENCY_HZ} / f, a / a_0)`, {
      f: given(frequencyHz, "Hz", "first natural frequency"), a: given(acceleration, "", "acceleration by a walker, share of gravity"),
      a_0: given(allowedAcceleration, "", "acceleration that is tolerated"),
    }, Math.max(LEAST_FREQUENCY_HZ / frequencyHz, acceleration / allowedAcceleration), "AISC Design Guide 11 (from memory)");
  },
  fire: ({member, criteria: {fire}}) => {
    if (!fire) throw new Error("A rating that is not required cannot fail.");
    const {byThicknessHours, byCoverHours} = fireRating(member, fire);
    const values: Record<string, StepValue> = {R_t: given(byThicknessHours, "h", "rating by thickness")};
    if (byCoverHours !== undefined) values["R_c"] = given(byCoverHours, "h", "rating by cover of the strands");
    return {
      symbol: "R", label: `fire rating, where ${fire.hours} h is required`, unit: "h", source: "IBC 2021 722.2.2, 722.2.3",
      expression: byCoverHours === undefined ? "R_t" : "min(R_t, R_c)", values, result: Math.min(byThicknessHours, byCoverHours ?? Infinity),
      note: byCoverHours === undefined ? "The stems are smaller than those of the code\u2019s table for cover, so they have no rating." : undefined,
    };
  },
  stripping: ({member, spanFt}) => {
    const [form, road] = [handled(member, spanFt, "stripping"), handled(member, spanFt, "hauling")];
    return over("max(t_1 / t_a, c_1 / c_a, t_2 / t_b, c_2 / c_b)", {
      t_1: given(form.tensionKsi, "ksi", "tension when lifted from the form"), t_a: given(form.allowedTensionKsi, "ksi", "tension allowed then"),
      c_1: given(form.compressionKsi, "ksi", "compression when lifted from the form"), c_a: given(form.allowedCompressionKsi, "ksi", "compression allowed then"),
      t_2: given(road.tensionKsi, "ksi", "tension on the road"), t_b: given(road.allowedTensionKsi, "ksi", "tension allowed on the road"),
      c_2: given(road.compressionKsi, "ksi", "compression on the road"), c_b: given(road.allowedCompressionKsi, "ksi", "compression allowed on the road"),
    }, Math.max(...[form, road].map((one) => Math.max(one.tensionKsi / one.allowedTensionKsi, one.compressionKsi / one.allowedCompressionKsi))), "ACI 318-19 24.5.3.1; trade handbook (from memory)");
  },
  hauling: ({member, spanFt}) => {
    const {weightKip} = handling(member, spanFt);
    return over(`w * L / 1000 / ${PAYLOAD_KIP}`, {w: given(member.selfWeightPlf, "plf", "weight of the member"), L: given(spanFt, "ft", "span")}, weightKip / PAYLOAD_KIP, "common practice");
  },
};

/** A measure over what is allowed; above 1 the gate is not passed. */
function over(expression: string, values: Step["values"], result: number, source: string): Step {
  return {symbol: "r", label: "what is found over what is allowed", expression, values, result, unit: "", source, note: "Above 1 it is not passed."};
}
