import type {DeckResult} from "../deck/deckResult.js";
import {holdDownShare} from "../prestress/layout.js";
import type {Member} from "../member/member.js";
import type {SectionProperties} from "../sections/shape.js";
import type {ToppingResult} from "../topping/profile.js";
import {given, type Step, type Working} from "./step.js";

/** Camber at midspan by the multiplier method, from each cause to the long term. */
export function camberWorking(member: Member, spanFt: number, deck: DeckResult): Working {
  const {section, full, layout} = member;
  const {camber, midspan} = deck;
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
        e_r: given(layout.centroidEndIn - layout.centroidCentreIn, "in", "drop from the ends to midspan"),
        a: given(holdDownShare(layout.profile), "", "place of the hold-down as a share of the span"),
      },
      result: camber.prestressIn, unit: "in", source: "moment-area",
    },
    sag("d_o", "sag under own weight", member.selfWeightPlf, member.releaseModulusKsi, section, camber.selfIn),
    {symbol: "d_1", label: "camber at release", expression: "d_p + d_o", values: pick(parts, "d_p", "d_o"), result: camber.releaseIn, unit: "in", source: "sum"},
    {
      symbol: "d_2", label: "camber when the member is set", expression: `${m.erectionPrestress} * d_p + ${m.erectionSelf} * d_o`,
      values: pick(parts, "d_p", "d_o"), result: camber.erectionIn, unit: "in", source: "Martin 1977, multipliers",
    },
  ];
  if (member.topping) steps.push(
    sag("d_t", "sag under the wet topping", member.toppingWeightPlf, member.modulusKsi, section, camber.toppingIn),
    {
      symbol: "d_3", label: "camber right after topping", expression: "d_2 + d_t",
      values: {d_2: given(camber.erectionIn, "in", "camber when set"), d_t: parts.d_t}, result: camber.toppedIn, unit: "in", source: "sum",
    },
  );
  steps.push(
    sag("d_s", "sag under superimposed dead load", deck.superimposedDeadPsf * member.widthFt, member.modulusKsi, full, camber.superimposedIn),
    {
      symbol: "d_4", label: "camber after years",
      expression: `${m.finalPrestress} * d_p + ${m.finalSelf} * d_o + ${m.finalTopping} * d_t + ${m.finalSuperimposed} * d_s`,
      values: parts, result: camber.longTermIn, unit: "in", source: "Martin 1977, multipliers",
    },
  );
  return {title: "Camber", steps};
}

/** Volume of topping in one bay from its average thickness. */
export function toppingWorking(bay: {spanFt: number; beamSpanFt: number}, topping: ToppingResult): Working {
  return {title: "Topping", steps: [{
    symbol: "V", label: "topping in one bay", expression: "t_a / 12 * b * L / 27",
    values: {
      t_a: given(topping.averageIn, "in", "average thickness along the span"), b: given(bay.beamSpanFt, "ft", "width of the bay"),
      L: given(bay.spanFt, "ft", "span"),
    },
    result: topping.bayYd3, unit: "yd3", source: "geometry",
    note: "The average is the integral of the thickness along the camber's curve, by Simpson's rule.",
  }]};
}

function pick<T, K extends keyof T>(of: T, ...keys: K[]): Pick<T, K> {
  return Object.fromEntries(keys.map((key) => [key, of[key]])) as Pick<T, K>;
}
