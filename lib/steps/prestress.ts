import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import type {PrestressState} from "../member/prestressState.js";
import {STRAND_MODULUS_KSI} from "../materials/strand.js";
import {JACKING_STRESS_KSI, LOSS_CONSTANTS} from "../prestress/losses.js";
import {given, type Step, type Working} from "../step.js";

/** Losses of prestress one by one, at one place of the member. */
export function lossesWorking(member: Member, spanFt: number, state: PrestressState, superimposedDeadPlf: number): Working {
  const {section, full, layout} = member;
  const {losses} = state;
  const unitKipIn = uniformMomentKipIn(1, spanFt, state.share);
  const e = given(state.eccentricityIn, "in", "strands below the centroid");
  const i = given(section.inertiaIn4, "in4", "second moment of area");
  const eps = given(STRAND_MODULUS_KSI, "ksi", "modulus of the strand");
  const p = layout.areaIn2 * JACKING_STRESS_KSI;
  const ecc = state.eccentricityIn;
  const laterKsi =
    (member.toppingWeightPlf * unitKipIn * ecc) / section.inertiaIn4 +
    (superimposedDeadPlf * unitKipIn * (full.ybIn - (section.ybIn - ecc))) / full.inertiaIn4;
  const es = given(losses.elasticKsi, "ksi", "elastic shortening");
  const cr = given(losses.creepKsi, "ksi", "creep");
  const sh = given(losses.shrinkageKsi, "ksi", "shrinkage");
  const steps: Step[] = [
    {
      symbol: "P_i", label: "force at the jacks", expression: "A_ps * f_pj",
      values: {A_ps: given(layout.areaIn2, "in2", "area of all strands"), f_pj: given(JACKING_STRESS_KSI, "ksi", "jacking stress, 0.75 of 270 ksi")},
      result: p, unit: "kip", source: "common practice; below ACI 318-19 20.3.2.5.1",
    },
    {
      symbol: "f_cir", label: "concrete stress at the strands, just after transfer", expression: "0.9 * (P_i / A + P_i * e^2 / I) - M_o * e / I",
      values: {
        P_i: given(p, "kip", "force at the jacks"), A: given(section.areaIn2, "in2", "area"), e, I: i,
        M_o: given(member.selfWeightPlf * unitKipIn, "kip-in", "moment of own weight"),
      },
      result: losses.concreteStressKsi, unit: "ksi", source: "Zia et al. 1979",
    },
    {
      symbol: "ES", label: "elastic shortening", expression: "min(E_ps * f_cir / E_ci, f_pj / 3)",
      values: {
        f_pj: given(JACKING_STRESS_KSI, "ksi", "jacking stress"),
        E_ps: eps, f_cir: given(losses.concreteStressKsi, "ksi", "concrete at the strands"), E_ci: given(member.releaseModulusKsi, "ksi", "modulus at release"),
      },
      result: losses.elasticKsi, unit: "ksi", source: "Zia et al. 1979",
    },
    {
      symbol: "CR", label: "creep", expression: "max(0, K_cr * E_ps * (f_cir - f_cds) / E_c)",
      values: {
        K_cr: given(LOSS_CONSTANTS.creep[member.concrete.kind], "", "creep factor of the concrete"), E_ps: eps,
        f_cir: given(losses.concreteStressKsi, "ksi", "concrete at the strands"),
        f_cds: given(laterKsi, "ksi", "relief by later dead load"), E_c: given(member.modulusKsi, "ksi", "modulus of the member"),
      },
      result: losses.creepKsi, unit: "ksi", source: "Zia et al. 1979",
    },
    {
      symbol: "SH", label: "shrinkage", expression: "0.0000082 * E_ps * (1 - 0.06 * VS) * (100 - RH)",
      values: {
        E_ps: eps, VS: given(member.volumeToSurfaceIn, "in", "volume over surface"),
        RH: given(member.humidityPercent, "%", "relative humidity"),
      },
      result: losses.shrinkageKsi, unit: "ksi", source: "Zia et al. 1979",
    },
    {
      symbol: "RE", label: "relaxation of the steel", expression: "max(0, 5 - 0.04 * (SH + CR + ES))",
      values: {SH: sh, CR: cr, ES: es},
      result: losses.relaxationKsi, unit: "ksi", source: "Zia et al. 1979",
    },
    {
      symbol: "f_se", label: "effective prestress", expression: "f_pj - max(0, min(f_pj, ES + CR + SH + RE))",
      values: {
        f_pj: given(JACKING_STRESS_KSI, "ksi", "jacking stress"), ES: es, CR: cr, SH: sh,
        RE: given(losses.relaxationKsi, "ksi", "relaxation"),
      },
      result: losses.effectiveStressKsi, unit: "ksi", source: "definition",
    },
  ];
  return {title: "Losses of prestress", steps};
}
