import type {Evaluation} from "../evaluate.js";
import type {Camber} from "../member/camber.js";
import {fillRatio} from "../member/fillRatio.js";
import {simpson} from "../member/simpson.js";
import type {Topping} from "../sections/composite.js";
import {meanDifferenceIn} from "../topping/neighbors.js";
import type {ToppingPoint} from "../topping/profile.js";
import type {Scatter} from "../topping/scatter.js";
import {spreadBasis} from "../topping/spreadBasis.js";
import {firstOrderDeviationIn, spreadCauses, type SpreadCause} from "../topping/spreadCauses.js";
import {given, type Step, type StepValue, type Working} from "../step.js";

/** From the thickness along the span to its mean, and to the volume in one bay; no steps without topping. */
export function toppingWorking({design: {bay}, topping}: Evaluation): Working {
  if (!topping) return {title: "Topping", steps: []};
  const last = topping.points.length - 1;
  const at = (share: number) => (topping.points[share * last] as ToppingPoint).thicknessIn;
  const [t_e, t_q, t_m] = [given(at(0), "in", "topping at the ends"), given(at(1 / 4), "in", "topping at the quarter points"), given(at(1 / 2), "in", "topping at midspan")];
  return {title: "Topping", steps: [
    {
      symbol: "t_s", label: "mean thickness by four strips", expression: "(2 * t_e + 8 * t_q + 2 * t_m) / 12", values: {t_e, t_q, t_m},
      result: simpson([0, 1 / 4, 1 / 2, 3 / 4, 1].map(at)), unit: "in", source: "Simpson\u2019s rule",
      note: "Over a parabola it would be exact: the least and a third of what the thickest has beyond it.",
    },
    {
      symbol: "V", label: "topping in one bay", expression: "t_a / 12 * b * L / 27",
      values: {
        t_a: given(topping.averageIn, "in", "average thickness along the span"), b: given(bay.beamSpanFt, "ft", "width of the bay"),
        L: given(bay.spanFt, "ft", "span"),
      },
      result: topping.bayYd3, unit: "yd3", source: "geometry",
      note: `The average is taken by the same rule over ${last} strips.`,
    },
    {
      symbol: "V_f", label: "topping on the whole floor", expression: "V * n_a * n_c",
      values: {V: given(topping.bayYd3, "yd3", "topping in one bay"), n_a: given(bay.baysAlong, "", "bays along the building"), n_c: given(bay.baysAcross, "", "bays across the building")},
      result: topping.floorYd3, unit: "yd3", source: "geometry",
    },
  ]};
}

/** What the topping weighs beyond its minimum thickness, and how it bends the member; no steps without topping. */
export function extraWeightWorking({design, member, deck, topping}: Evaluation): Working {
  if (!topping) return {title: "Weight beyond the minimum thickness", steps: []};
  const {extra} = topping;
  const {widthIn, concrete: {unitWeightPcf}} = member.topping as Topping;
  const gamma = given(unitWeightPcf, "pcf", "unit weight of the topping");
  const t_l = given(topping.leastIn, "in", "minimum thickness");
  const b = given(widthIn, "in", "width of topping on one member");
  const L = given(design.bay.spanFt, "ft", "span");
  const C = fillRatio(unitWeightPcf, widthIn, design.bay.spanFt, member.modulusKsi, member.section.inertiaIn4);
  const weight = (symbol: string, label: string, name: string, of: StepValue, result: number): Step => ({
    symbol, label, expression: `(${name} - t_l) / 12 * gamma`, values: {[name]: of, t_l, gamma}, result, unit: "psf", source: "geometry",
  });
  return {title: "Weight beyond the minimum thickness", steps: [
    weight("w_a", "extra weight, mean over the span", "t_a", given(topping.averageIn, "in", "average thickness along the span"), extra.averagePsf),
    weight("w_e", "extra weight at the ends", "t_e", given((topping.points[0] as ToppingPoint).thicknessIn, "in", "topping at the ends"), extra.endPsf),
    {
      symbol: "w_m", label: "uniform load that bends midspan as much", expression: "8 * 1000 * M_x / (b * L^2)",
      values: {M_x: given(extra.momentKipIn, "kip-in", "moment of the extra weight at midspan"), b, L},
      result: extra.momentPsf, unit: "psf", source: "statics",
      note: "Each strip of the extra weight bends midspan by half of itself times its distance from the nearer support, so what lies at the ends counts little.",
    },
    {
      symbol: "C", label: "what a round of filling adds, as a part of the round before", expression: "gamma / (1000 * 12^3) * b * (12 * L)^4 / (pi^4 * E_c * I)",
      values: {gamma, b, L, pi: given(Math.PI, "", "circumference of a circle over its diameter"), E_c: given(member.modulusKsi, "ksi", "modulus of the member"), I: given(member.section.inertiaIn4, "in4", "second moment of area")},
      result: C, unit: "", source: "first principles: a half wave of sag under a half wave of load",
      note: "A level surface over a sag; a surface that follows the deck fills less.",
    },
    {
      symbol: "d_c", label: "camber after the topping at its true weight", expression: "d_2 - d_w",
      values: {d_2: given(deck.camber.erectionIn, "in", "camber when the member is set"), d_w: given(-topping.camber.toppingIn, "in", "sag under the topping\u2019s true weight")},
      result: topping.camber.toppedIn, unit: "in", source: "sum",
      note: "The sag adds up, place by place, what a load there does to midspan.",
    },
  ]};
}

const CAUSES: Readonly<Record<SpreadCause, {symbol: string; expression: string; source: string}>> = {
  "stiffness": {symbol: "s_E", expression: "v_E * (c_p + c_o)", source: "E in every movement"},
  "release strength": {symbol: "s_f", expression: "v_f * (c_p + c_o) / 2", source: "E goes with the root of the strength"},
  "force": {symbol: "s_P", expression: "v_P * c_p", source: "lift goes with the force"},
  "age": {symbol: "s_t", expression: "v_t * (c_p + c_o - d_p - d_o) * 6 / (10 + t^0.6)", source: "slope of ACI 209R-92\u2019s creep curve"},
  "weight": {symbol: "s_w", expression: "v_w * c_o", source: "sag goes with the weight"},
  "length": {symbol: "s_L", expression: "s_l / (12 * L) * (2 * c_p + 4 * c_o)", source: "lift goes with the square, sag with the fourth power"},
};

/** Deviation of the camber when set, cause by cause to first order, and the mean difference of neighbors. */
export function spreadWorking({design, member, deck: {camber}}: Pick<Evaluation, "design" | "member"> & {deck: {camber: Camber}}, scatter: Scatter): Working {
  const basis = spreadBasis(member, camber, design.bay.spanFt);
  const all: Readonly<Record<string, StepValue>> = {
    c_p: given(basis.erectionPrestress * basis.prestressIn, "in", "lift by the strands when set"),
    c_o: given(basis.erectionSelf * basis.selfIn, "in", "sag under own weight when set"),
    d_p: given(basis.prestressIn, "in", "lift by the strands"), d_o: given(basis.selfIn, "in", "sag under own weight"),
    t: given(basis.ageDays, "days", "age when set"), L: given(design.bay.spanFt, "ft", "span"),
    v_E: given(scatter.stiffness, "", "scatter of the stiffness"), v_f: given(scatter.releaseStrength, "", "scatter of the release strength"),
    v_P: given(scatter.force, "", "scatter of the force"), v_t: given(scatter.age, "", "scatter of the age"),
    v_w: given(scatter.weight, "", "scatter of the weight"), s_l: given(scatter.lengthIn, "in", "standard deviation of the length"),
  };
  const causes = spreadCauses(basis, scatter).filter(({deviationIn}) => deviationIn > 0);
  const steps = causes.map(({cause, deviationIn}): Step => {
    const {symbol, expression, source} = CAUSES[cause];
    const names = Object.keys(all).filter((name) => new RegExp(`\\b${name}\\b`).test(expression));
    return {symbol, label: `deviation by ${cause}`, expression: `abs(${expression})`, values: Object.fromEntries(names.map((name) => [name, all[name] as StepValue])), result: deviationIn, unit: "in", source};
  });
  if (steps.length === 0) return {title: "Spread of the camber", steps};
  const deviationIn = firstOrderDeviationIn(basis, scatter);
  return {title: "Spread of the camber", steps: [
    ...steps,
    {
      symbol: "s", label: "standard deviation of the camber when set", expression: `sqrt(${steps.map(({symbol}) => `${symbol}^2`).join(" + ")})`,
      values: Object.fromEntries(steps.map(({symbol, result, label}) => [symbol, given(result, "in", label)])),
      result: deviationIn, unit: "in", source: "textbook: squares of independent causes add up",
    },
    {
      symbol: "m_d", label: "mean difference between neighbors", expression: "2 * s * sqrt((1 - r) / pi)",
      values: {s: given(deviationIn, "in", "standard deviation of the camber when set"), r: given(scatter.likeness, "", "likeness of neighbors"), pi: given(Math.PI, "", "circumference of a circle over its diameter")},
      result: meanDifferenceIn(deviationIn, scatter), unit: "in", source: "textbook: normal deviates",
    },
  ]};
}
