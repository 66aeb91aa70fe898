import {deckCarbon, precastFt, strandPsf, toppingFt} from "../deck/measures.js";
import {FT3_PER_YD3, carbonBracket, carbonKgPerLb, concreteCarbonKgPerFt3, type CarbonFactor, type CastPlace} from "../materials/carbon.js";
import type {Concrete} from "../materials/concrete.js";
import type {Member} from "../member/member.js";
import {given, type Step, type Working} from "../step.js";

/** A deck's embodied carbon, modules A1 to A3, by the factors of the table. */
export function carbonWorking(member: Member, factors: readonly CarbonFactor[]): Working {
  const {concrete, topping} = member;
  const toppingStep = topping ? [concreteStep("k_t", "carbon of the topping", factors, "cast on site", topping.concrete)] : [];
  const toppingKg = topping ? concreteCarbonKgPerFt3(factors, "cast on site", topping.concrete.kind, topping.concrete.strengthPsi) : 0;
  return {title: "Embodied carbon of the deck, A1 to A3", steps: [
    concreteStep("k_p", "carbon of the precast concrete", factors, "precast", concrete),
    ...toppingStep,
    {
      symbol: "c", label: "embodied carbon of a square foot", unit: "kgCO2e/ft2", source: "EN 15978, modules A1 to A3",
      expression: `t_p * k_p${topping ? " + t_t * k_t" : ""} + w_s * k_s + w_p * k_w`,
      values: {
        t_p: given(precastFt(member), "ft", "the member's concrete as a level slab"),
        k_p: given(concreteCarbonKgPerFt3(factors, "precast", concrete.kind, concrete.strengthPsi), "kgCO2e/ft3", "carbon of the precast concrete"),
        ...(topping ? {t_t: given(toppingFt(member), "ft", "thickness of the topping"), k_t: given(toppingKg, "kgCO2e/ft3", "carbon of the topping")} : {}),
        w_s: given(strandPsf(member), "psf", "strand"), k_s: given(carbonKgPerLb(factors, "strand"), "kgCO2e/lb", "carbon of strand"),
        w_p: given(member.selfWeightPlf / member.widthFt, "psf", "weight of the member"),
        k_w: given(carbonKgPerLb(factors, "plant work"), "kgCO2e/lb", "casting and curing at the plant"),
      },
      result: deckCarbon(member, factors).totalKg,
    },
  ]};
}

function concreteStep(symbol: string, label: string, factors: readonly CarbonFactor[], place: CastPlace, {kind, strengthPsi}: Concrete): Step {
  const [low, high] = carbonBracket(factors, place, kind, strengthPsi);
  return {
    symbol, label, unit: "kgCO2e/ft3", source: "table of carbon factors, straight lines between its strengths",
    expression: "max(0, k_1 + (k_2 - k_1) * (f_c - f_1) / (f_2 - f_1)) / n",
    values: {
      k_1: given(low.kgPerYd3, "kgCO2e/yd3", "carbon at the lower strength"), k_2: given(high.kgPerYd3, "kgCO2e/yd3", "carbon at the higher strength"),
      f_c: given(strengthPsi, "psi", "strength of the concrete"), f_1: given(low.strengthPsi, "psi", "lower strength in the table"),
      f_2: given(high.strengthPsi, "psi", "higher strength in the table"), n: given(FT3_PER_YD3, "ft3/yd3", "cubic feet in a cubic yard"),
    },
    result: concreteCarbonKgPerFt3(factors, place, kind, strengthPsi),
  };
}
