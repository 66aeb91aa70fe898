import {uniformMomentKipIn} from "../member/moments.js";
import {given, type Step} from "../step.js";
import type {ServicePlace} from "./cell.js";
import {UNIT_MOMENT, common, type LimitCase} from "./limitSteps.js";

/** Stress of a face under prestress, member and topping, before the superimposed load. */
export function ownStressSteps(limit: LimitCase, {state, own}: ServicePlace, face: "bottom" | "top"): Step[] {
  const {member, spanFt} = limit.cell;
  const {section} = member;
  const {b, L, s, w_o} = common(limit, state.share);
  const momentKipIn = uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, spanFt, state.share);
  const soffit = face === "bottom";
  return [
    {
      symbol: "P", label: "effective prestress force", expression: "A_ps * f_se",
      values: {A_ps: given(member.layout.areaIn2, "in2", "area of all strands"), f_se: given(state.losses.effectiveStressKsi, "ksi", "effective prestress")},
      result: state.effectiveForceKip, unit: "kip", source: "definition",
    },
    {
      symbol: "M_o", label: "moment of member and topping, on the member alone", expression: `w_o * ${UNIT_MOMENT}`, values: {w_o, b, L, s},
      result: momentKipIn, unit: "kip-in", source: "statics",
    },
    {
      symbol: "f_o", label: `stress of the ${soffit ? "soffit" : "member\u2019s top"} before the superimposed load, compression positive`,
      expression: soffit ? "P / A + (P * e - M_o) / S_b" : "P / A - (P * e - M_o) / S_t",
      values: {
        P: given(state.effectiveForceKip, "kip", "effective prestress force"), A: given(section.areaIn2, "in2", "area of the member"),
        e: given(state.eccentricityIn, "in", "strands below the centroid"), M_o: given(momentKipIn, "kip-in", "moment of member and topping"),
        [soffit ? "S_b" : "S_t"]: given(soffit ? section.sbIn3 : section.stIn3, "in3", soffit ? "modulus of the member" : "modulus of the member at its top"),
      },
      result: soffit ? own.bottomKsi : own.topKsi, unit: "ksi", source: "elastic theory",
    },
  ];
}
