import type {DeckResult} from "../deck/deckResult.js";
import {TENSION_COEFFICIENT, allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {given, type Step, type Working} from "./step.js";

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
        w_L: given(deck.livePsf, "psf", "live load"),
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

/** The safe superimposed load from the strength: the dead part first, then live. */
export function safeLoadWorking(member: Member, spanFt: number, deck: DeckResult): Working {
  const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
  const strengthPsf = strengthPerFloor(member, spanFt, deck);
  const own = given(ownPsf, "psf", "member and topping");
  const wn = given(strengthPsf, "psf", "factored load at the design strength");
  const d = given(deck.superimposedDeadPsf, "psf", "superimposed dead load");
  const {limitsPsf, safeLoadPsf, governs} = deck.safe;
  const limits = Object.entries(limitsPsf).filter((entry): entry is [string, number] => entry[1] !== undefined);
  const live = strengthPsf / 1.4 - ownPsf >= deck.superimposedDeadPsf && strengthPsf >= 1.2 * (ownPsf + deck.superimposedDeadPsf);
  const limitSteps: Step[] = [
    {
      symbol: "w_n", label: "factored load at the design strength", expression: "M_d / (b * L^2 * s * (1 - s) / 2 * 12 / 1000)",
      values: {
        M_d: given(deck.strength.designMomentKipIn, "kip-in", "design strength"), b: given(member.widthFt, "ft", "width of the member"),
        L: given(spanFt, "ft", "span"), s: given(deck.critical.share, "", "place as a share of the span"),
      },
      result: strengthPsf, unit: "psf", source: "statics",
    },
    live
      ? {symbol: "w_1", label: "load that strength allows", expression: "w_sd + (w_n - 1.2 * (w_o + w_sd)) / 1.6", values: {w_n: wn, w_o: own, w_sd: d}, result: limitsPsf.strength as number, unit: "psf", source: "ASCE 7-16 2.3.1"}
      : {symbol: "w_1", label: "load that strength allows, all of it dead", expression: "min(w_n / 1.4 - w_o, w_sd + (w_n - 1.2 * (w_o + w_sd)) / 1.2)", values: {w_n: wn, w_o: own, w_sd: d}, result: limitsPsf.strength as number, unit: "psf", source: "ASCE 7-16 2.3.1"},
  ];
  const least: Step = {
    symbol: "w_safe", label: `safe superimposed load; ${governs} governs`,
    expression: `max(0, min(${limits.map((_, i) => `w_${i + 1}`).join(", ")}))`,
    values: Object.fromEntries(limits.map(([name, psf], i) => [`w_${i + 1}`, given(psf, "psf", `load that ${name} allows`)])),
    result: safeLoadPsf, unit: "psf", source: "least of the limits",
  };
  return {title: "Safe superimposed load", steps: [...limitSteps, least]};
}

function strengthPerFloor(member: Member, spanFt: number, deck: DeckResult): number {
  const {share} = deck.critical;
  return deck.strength.designMomentKipIn / (member.widthFt * momentKipIn(1, spanFt) * 4 * share * (1 - share));
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
