import type {Evaluation} from "../evaluate.js";
import {holdDownShare} from "../prestress/layout.js";
import {CAMBER_MULTIPLIERS, USUAL_AGE_DAYS, erectionGrowth, type Camber} from "../member/camber.js";
import type {SectionProperties} from "../sections/shape.js";
import {given, type Step, type Working} from "../step.js";

/** Camber at midspan by the multiplier method, from each cause to the long term; of a topping, all that fills the camber counts. */
export function camberWorking({design, member, deck, camber}: Evaluation): Working {
  const {spanFt} = design.bay;
  const {section, full, layout} = member;
  const {midspan} = deck;
  const m = camber.multipliers;
  const parts = {
    d_p: given(camber.prestressIn, "in", "lift by the strands"), d_o: given(camber.selfIn, "in", "sag under own weight"),
    d_t: given(camber.toppingIn, "in", "sag under the topping"), d_s: given(camber.superimposedIn, "in", "sag under superimposed dead load"),
  };
  const sag = (symbol: string, label: string, loadPlf: number, modulusKsi: number, of: SectionProperties, result: number): Step => ({
    symbol, label, expression: "-5 * (w / 12000) * (12 * L)^4 / (384 * E * I)",
    values: {
      w: given(loadPlf, "plf", "load per foot of member"), L: given(spanFt, "ft", "span"),
      E: given(modulusKsi, "ksi", "modulus of the concrete"), I: given(of.inertiaIn4, "in4", "second moment of area"),
    },
    result, unit: "in", source: "elastic theory",
  });
  const steps: Step[] = [
    {
      symbol: "d_p", label: "lift by the strands at release", expression: "P * (12 * L)^2 / (E_ci * I) * (e_e / 8 + e_r * (1 / 8 - a^2 / 6))",
      values: {
        P: given(layout.areaIn2 * midspan.losses.camberStressKsi, "kip", "force at release"), L: given(spanFt, "ft", "span"),
        E_ci: given(member.releaseModulusKsi, "ksi", "modulus at release"), I: given(section.inertiaIn4, "in4", "second moment of area"),
        e_e: given(section.ybIn - layout.centroidEndIn, "in", "strands below the centroid at the ends"),
        e_r: given(layout.centroidEndIn - layout.centroidCenterIn, "in", "drop from the ends to midspan"),
        a: given(holdDownShare(layout.profile), "", "place of the hold-down as a share of the span"),
      },
      result: camber.prestressIn, unit: "in", source: "moment-area",
    },
    sag("d_o", "sag under own weight", member.selfWeightPlf, member.releaseModulusKsi, section, camber.selfIn),
    {symbol: "d_1", label: "camber at release", expression: "d_p + d_o", values: pick(parts, "d_p", "d_o"), result: camber.releaseIn, unit: "in", source: "sum"},
    ...erectionSteps(camber, pick(parts, "d_p", "d_o")),
  ];
  if (member.topping) steps.push(
    sag("d_l", "sag under a wet topping of the minimum thickness", member.toppingWeightPlf, member.modulusKsi, section, deck.camber.toppingIn),
    {
      symbol: "d_t", label: "sag under the wet topping", expression: "d_l - d_x",
      values: {
        d_l: given(deck.camber.toppingIn, "in", "sag under a topping of the minimum thickness"),
        d_x: given(deck.camber.toppingIn - camber.toppingIn, "in", "further sag under what is thicker than the least"),
      },
      result: camber.toppingIn, unit: "in", source: "sum", note: "The further sag adds up, place by place, what the topping there does to midspan.",
    },
    {
      symbol: "d_3", label: "camber right after topping", expression: "d_2 + d_t",
      values: {d_2: given(camber.erectionIn, "in", "camber when set"), d_t: parts.d_t}, result: camber.toppedIn, unit: "in", source: "sum",
    },
  );
  steps.push(
    sag("d_s", "sag under superimposed dead load", deck.superimposedDeadPsf * member.widthFt, member.modulusKsi, full, camber.superimposedIn),
    {
      symbol: "d_4", label: "long-term camber",
      expression: `${m.finalPrestress} * d_p + ${m.finalSelf} * d_o + ${m.finalTopping} * d_t + ${m.finalSuperimposed} * d_s`,
      values: parts, result: camber.longTermIn, unit: "in", source: "Martin 1977, multipliers",
    },
  );
  return {title: "Camber", steps};
}

/** Camber when set: by the multipliers as they are, or grown to another age than theirs. */
function erectionSteps(camber: Camber, parts: Step["values"]): Step[] {
  const {erectionPrestress, erectionSelf} = CAMBER_MULTIPLIERS.untopped;
  const step = {symbol: "d_2", label: "camber when the member is set", result: camber.erectionIn, unit: "in"};
  if (camber.ageDays === USUAL_AGE_DAYS) {
    return [{...step, expression: `${erectionPrestress} * d_p + ${erectionSelf} * d_o`, values: parts, source: "Martin 1977, multipliers"}];
  }
  const g = given(erectionGrowth(camber.ageDays), "", "creep at that age over creep at the usual one");
  return [
    {
      symbol: "g", label: "creep at that age over creep at the usual one",
      expression: "t^0.6 / (10 + t^0.6) * (10 + t_u^0.6) / t_u^0.6",
      values: {t: given(camber.ageDays, "days", "age when set"), t_u: given(USUAL_AGE_DAYS, "days", "age that the multipliers mean")},
      result: g.value, unit: "", source: "ACI 209R-92 2.2.1",
    },
    {
      ...step, expression: `(1 + ${added(erectionPrestress)} * g) * d_p + (1 + ${added(erectionSelf)} * g) * d_o`, values: {g, ...parts},
      source: "Martin 1977, multipliers; ACI 209R-92", note: "What the multipliers add to 1 is creep, and grows as creep does.",
    },
  ];
}

/** What a multiplier adds to 1, free of the binary remainder. */
function added(multiplier: number): number {
  return Number((multiplier - 1).toFixed(6));
}

function pick<T, K extends keyof T>(of: T, ...keys: K[]): Pick<T, K> {
  return Object.fromEntries(keys.map((key) => [key, of[key]])) as Pick<T, K>;
}
