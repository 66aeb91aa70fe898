import {given, type Step, type StepValue} from "../step.js";
import {IN_PER_FT} from "../units.js";
import type {Member} from "./member.js";
import type {PrestressState} from "./prestressState.js";
import {DEEP_PLANK_IN, SHEAR_PHI, SHEAR_TRANSFER_DIAMETERS, STIRRUP_CEILING, builtUp, designShearKip, isDeepPlank, shearSection, takesStirrups, type ShearAt} from "./shear.js";

/** Shear strength at one place: the prestress that has built up there, both ways to crack, and what may be counted on. */
export function shearSteps(member: Member, spanFt: number, state: PrestressState, strength: ShearAt): Step[] {
  const part = shearSection(member, spanFt, state);
  const root = given(part.rootPsi, "psi", "lambda times the root of the concrete strength, the root at most 100");
  const b = given(member.shape.webWidthIn, "in", "width of the webs");
  const d = given(strength.depthIn, "in", "depth to the strands, at least 0.8 h");
  const l = given(spanFt, "ft", "span");
  const s = given(strength.share, "", "place as a share of the span");
  return [
    {
      symbol: "P", label: "prestress built up at that place of the span", expression: `A_ps * f_se * min(1, 12 * L * s / (${SHEAR_TRANSFER_DIAMETERS} * d_b))`,
      values: {
        A_ps: given(member.layout.areaIn2, "in2", "area of all strands"), f_se: given(state.losses.effectiveStressKsi, "ksi", "effective prestress"),
        L: l, s, d_b: given(member.layout.strand.diameterIn, "in", "strand diameter"),
      },
      result: state.effectiveForceKip * builtUp(member, strength.share * spanFt * IN_PER_FT), unit: "kip", source: "ACI 318-19 21.2.3, 22.5.7",
    },
    {
      symbol: "V_ci", label: "flexure-shear strength: a bending crack that turns", expression: "max(k * R * b * d / 1000, 0.6 * R * b * d / 1000 + V_d + V_i * M_cre / M_max)",
      values: {
        R: root, b, d, k: given(part.floor, "", "least factor: 2 where the strands keep 40 % of their strength, else 1.7"), V_d: given(part.deadShearKip, "kip", "shear of member and topping"),
        V_i: given(part.addedShearKip, "kip", "shear of a unit of added load"), M_max: given(part.addedMomentKipIn, "kip-in", "moment of the same load"),
        M_cre: given(Math.max(0, part.crackingMomentKipIn), "kip-in", "added moment that cracks the soffit"),
      },
      result: strength.flexureShearKip, unit: "kip", source: "ACI 318-19 22.5.6.3.1",
    },
    {
      symbol: "V_cw", label: "web-shear strength: a crack in the web alone", expression: "(3.5 * R / 1000 + 0.3 * f_pc) * b * d + V_p",
      values: {
        R: root, b, d, f_pc: given(part.centroidStressKsi, "ksi", "compression at the centroid"),
        V_p: given(part.verticalPrestressKip, "kip", "vertical component of the strand force"),
      },
      result: strength.webShearKip, unit: "kip", source: "ACI 318-19 22.5.6.3.2",
    },
    designStep(member, strength, b, d),
  ];
}

/** What may be counted on: with stirrups up to the ceiling, by the concrete alone, or by half of it in a deep plank. */
function designStep(member: Member, strength: ShearAt, b: StepValue, d: StepValue): Step {
  const V_ci = given(strength.flexureShearKip, "kip", "flexure-shear");
  const V_cw = given(strength.webShearKip, "kip", "web-shear");
  const result = designShearKip(member, strength);
  if (takesStirrups(member)) {
    return {
      symbol: "V_d", label: "most that webs and stirrups may carry",
      expression: `${SHEAR_PHI} * (min(V_ci, V_cw) + ${STIRRUP_CEILING} * sqrt(f_cprime) * b * d / 1000)`,
      values: {V_ci, V_cw, f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength"), b, d},
      result, unit: "kip", source: "ACI 318-19 22.5.1.2",
    };
  }
  const deep = isDeepPlank(member);
  return {
    symbol: "V_d", label: "design strength of the webs", expression: deep ? `${SHEAR_PHI} * min(V_ci, V_cw / 2)` : `${SHEAR_PHI} * min(V_ci, V_cw)`,
    values: {V_ci, V_cw}, result, unit: "kip", source: deep ? "ACI 318-19 22.5.6.3, 7.6.3.1" : "ACI 318-19 22.5.6.3",
    note: deep ? `Deeper than ${DEEP_PLANK_IN} in, so that it would need stirrups from half of its web strength on.` : undefined,
  };
}
