import type {DeckResult} from "../deck/deckResult.js";
import {liveName} from "../loads/liveWords.js";
import {TENSION_COEFFICIENT, allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {shearSteps} from "../member/shearSteps.js";
import {strengthSteps} from "../member/strengthSteps.js";
import {given, type Step, type Working} from "../step.js";

/** Stress in the soffit at midspan under full service load, and what is allowed. */
export function serviceStressWorking(member: Member, spanFt: number, deck: DeckResult): Working {
  const {section, full} = member;
  const {midspan, totalStresses} = deck;
  const p = given(midspan.effectiveForceKip, "kip", "effective prestress force");
  const ownPlf = member.selfWeightPlf + member.toppingWeightPlf;
  const steps: Step[] = [
    {
      symbol: "P", label: "effective prestress force", expression: "A_ps * f_se",
      values: {A_ps: given(member.layout.areaIn2, "in2", "area of all strands"), f_se: given(midspan.losses.effectiveStressKsi, "ksi", "effective prestress")},
      result: midspan.effectiveForceKip, unit: "kip", source: "definition",
    },
    moment("M_o", "moment of member and topping, on the member alone", ownPlf, spanFt),
    moment("M_s", "moment of the superimposed load, on the full section", deck.demandPsf * member.widthFt, spanFt),
    {
      symbol: "f_b", label: "stress in the soffit, compression positive", expression: "P / A + (P * e - M_o) / S_b - M_s / S_bf",
      values: {
        P: p, A: given(section.areaIn2, "in2", "area of the member"), e: given(midspan.eccentricityIn, "in", "strands below the centroid"),
        M_o: given(momentKipIn(ownPlf, spanFt), "kip-in", "moment of member and topping"), S_b: given(section.sbIn3, "in3", "modulus of the member"),
        M_s: given(momentKipIn(deck.demandPsf * member.widthFt, spanFt), "kip-in", "moment of the superimposed load"),
        S_bf: given(full.sbIn3, "in3", "modulus of the full section"),
      },
      result: totalStresses.bottomKsi, unit: "ksi", source: "elastic theory",
    },
    {
      symbol: "f_t", label: "tension that the class allows", expression: "k * sqrt(f_cprime) / 1000",
      values: {
        k: given(TENSION_COEFFICIENT[deck.criteria.tensionClass], "", `coefficient of class ${deck.criteria.tensionClass}`),
        f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength"),
      },
      result: allowables(member, deck.criteria.tensionClass).serviceTensionKsi, unit: "ksi", source: "ACI 318-19 24.5.2.1",
    },
  ];
  return {title: "Stress in the soffit under full load", steps};
}

/** The factored moment against the strength. */
export function factoredWorking(member: Member, spanFt: number, deck: DeckResult): Working {
  const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
  return {title: "Factored load and moment", steps: [
    {
      symbol: "w_u", label: "factored load", expression: "max(1.4 * (w_o + w_sd), 1.2 * (w_o + w_sd) + 1.6 * w_L)",
      values: {
        w_o: given(ownPsf, "psf", "member and topping"), w_sd: given(deck.superimposedDeadPsf, "psf", "superimposed dead load"),
        w_L: given(deck.livePsf, "psf", liveName(deck.load.governing)),
      },
      result: deck.factoredPsf, unit: "psf", source: "ASCE 7-16 2.3.1",
    },
    {
      symbol: "M_u", label: "factored moment where it comes nearest to the strength", expression: "w_u * b * L^2 * s * (1 - s) / 2 * 12 / 1000",
      values: {
        w_u: given(deck.factoredPsf, "psf", "factored load"), b: given(member.widthFt, "ft", "width of the member"),
        L: given(spanFt, "ft", "span"), s: given(deck.critical.share, "", "place as a share of the span"),
      },
      result: deck.factoredMomentKipIn, unit: "kip-in", source: "statics",
    },
  ]};
}

/** Strength in bending at the place that governs. */
export function strengthWorking(member: Member, {critical, strength}: Pick<DeckResult, "critical" | "strength">): Working {
  return {title: "Strength in bending", steps: strengthSteps(member, critical, strength)};
}

/** Shear strength of the webs where shear comes nearest to it, by both ways to crack. */
export function shearWorking(member: Member, spanFt: number, deck: DeckResult): Working {
  const {state, strength, factoredKip} = deck.shear;
  const factored: Step = {
    symbol: "V_u", label: "factored shear where it comes nearest to the strength", expression: "w_u * w * L * (0.5 - s) / 1000",
    values: {
      w_u: given(deck.factoredPsf, "psf", "factored load"), w: given(member.widthFt, "ft", "width of the member"), L: given(spanFt, "ft", "span"),
      s: given(strength.share, "", "place as a share of the span"),
    },
    result: factoredKip, unit: "kip", source: "statics",
  };
  return {title: "Shear", steps: [factored, ...shearSteps(member, spanFt, state, strength)]};
}

function moment(symbol: string, label: string, loadPlf: number, spanFt: number): Step {
  return {
    symbol, label, expression: "w * L^2 / 8 * 12 / 1000",
    values: {w: given(loadPlf, "plf", "load per foot of member"), L: given(spanFt, "ft", "span")},
    result: momentKipIn(loadPlf, spanFt), unit: "kip-in", source: "statics",
  };
}

function momentKipIn(loadPlf: number, spanFt: number): number {
  return ((loadPlf * spanFt ** 2) / 8) * (12 / 1000);
}
