import type {ColumnResult} from "../columns/columnsResult.js";
import {levelWords} from "../columns/levels.js";
import type {ClassReduction, StoryLoad} from "../columns/takedown.js";
import type {Evaluation} from "../evaluate.js";
import {columnInteractionWorking, columnMomentWorking} from "./columnStrength.js";
import {given, type Step, type StepValue, type Working} from "../step.js";

/** Every "why?" of a column by name; `story` counts from the top. */
export const COLUMN_WORKINGS = {
  reduction: columnReductionWorking,
  load: columnLoadWorking,
  moment: columnMomentWorking,
  interaction: columnInteractionWorking,
  corbel: corbelWorking,
  footing: footingWorking,
} satisfies Record<string, (column: ColumnResult, story: number) => Working>;

function storyOf(result: ColumnResult, story: number): StoryLoad {
  return result.column.takedown.stories[story] ?? result.foot;
}

/** The live load of a story's floors, class by class, with its reduction. */
export function columnReductionWorking(result: ColumnResult, story: number): Working {
  const load = storyOf(result, story);
  return {title: `Live load of ${result.position}, under ${levelWords(load.level)}`, steps: load.reductions.flatMap((part) => classSteps(result, load, part))};
}

function classSteps({column}: ColumnResult, load: StoryLoad, part: ClassReduction): Step[] {
  const {reduction} = part;
  const area = given(load.level.tributaryFt2, "ft2", "area on one floor");
  const n = given(part.floors, "", "floors of this kind above");
  const factor: Step = {
    symbol: "R", label: "share of the live load that counts", ...factorExpression(part),
    result: reduction.factor, unit: "", source: reduction.clause,
    ...(reduction.decides === "no reduction" ? {note: "This use takes no reduction."} : reduction.decides === "taken in full" ? {note: "It is taken in full, as it was entered."} : {}),
  };
  return [
    {
      symbol: "A_I", label: "influence area of these floors", expression: "K_LL * A_T * n",
      values: {K_LL: given(column.takedown.elementFactor, "", "live load element factor"), A_T: area, n},
      result: part.influenceFt2, unit: "ft2", source: "ASCE 7-16 Table 4.7-1",
    },
    factor,
    {
      symbol: "P_L", label: "live load of these floors", expression: "R * L_o * A_T * n / 1000",
      values: {R: given(reduction.factor, "", "share that counts"), L_o: given(load.level.livePsf, "psf", "live load before reduction"), A_T: area, n},
      result: part.liveKip, unit: "kip", source: "definition",
    },
  ];
}

/** The reduction's factor as an expression, by the rule that decided. */
function factorExpression({reduction, influenceFt2}: ClassReduction): Pick<Step, "expression" | "values"> {
  const A_I = given(influenceFt2, "ft2", "influence area");
  const R_min = given(reduction.leastFactor, "", "least factor");
  switch (reduction.decides) {
    case "formula":
    case "lower limit":
      return {expression: "min(1, max(R_min, 0.25 + 15 / sqrt(A_I)))", values: {A_I, R_min}};
    case "heavy load on several floors":
    case "garage on several floors":
      return {expression: "max(0.8, min(1, max(R_min, 0.25 + 15 / sqrt(A_I))))", values: {A_I, R_min}};
    default:
      return {expression: "1", values: {}};
  }
}

/** Dead, live and factored load at the foot of a story. */
export function columnLoadWorking(result: ColumnResult, story: number): Working {
  const load = storyOf(result, story);
  const {stories} = result.column.takedown;
  const above = stories[stories.indexOf(load) - 1];
  const {adds, governing, governingService, level} = load;
  const D = given(load.deadKip, "kip", "dead load");
  const L = given(load.liveKip, "kip", "reduced live load of all floors above");
  const Lr = given(load.roofKip, "kip", "live load of the roof");
  const combination = ({dead, live, roof}: typeof governing.combination) => [
    `${dead} * D`, ...(live ? [`${live} * L`] : []), ...(roof ? [`${roof} * L_r`] : []),
  ].join(" + ");
  const named = ({live, roof}: typeof governing.combination): Record<string, StepValue> => ({D, ...(live ? {L} : {}), ...(roof ? {L_r: Lr} : {})});
  return {title: `Load of the ${result.position} under ${levelWords(level)}`, steps: [
    {
      symbol: "P_a", label: `dead load that ${levelWords(level)} adds`, expression: `(w_m + w_t + w_s) * A_T / 1000 + w_b * l_b / 1000${adds.wallsKip > 0 ? " + W" : ""}`,
      values: {
        ...(adds.wallsKip > 0 ? {W: given(adds.wallsKip, "kip", "walls that come to the column")} : {}),
        w_m: given(level.deckPsf, "psf", "deck"), w_t: given(level.toppingPsf, "psf", "topping"), w_s: given(level.superimposedPsf, "psf", "layers"),
        A_T: given(level.tributaryFt2, "ft2", "area on one level"), w_b: given(level.beamPlf, "plf", "beams"), l_b: given(level.beamLengthFt, "ft", "length of beams"),
      },
      result: adds.deadKip, unit: "kip", source: "sum",
    },
    {
      symbol: "D", label: "dead load at the foot of the story", expression: above ? "D_a + P_a + P_c" : "P_a + P_c",
      values: {
        ...(above ? {D_a: given(above.deadKip, "kip", "dead load from above")} : {}),
        P_a: given(adds.deadKip, "kip", "dead load of this level"), P_c: given(load.columnKip, "kip", "the column itself in this story"),
      },
      result: load.deadKip, unit: "kip", source: "sum",
    },
    {symbol: "P_u", label: `factored load, ${governing.combination.name}`, expression: combination(governing.combination), values: named(governing.combination), result: governing.kip, unit: "kip", source: "ASCE 7-16 2.3.1"},
    {symbol: "P_s", label: `service load, ${governingService.combination.name}`, expression: combination(governingService.combination), values: named(governingService.combination), result: governingService.kip, unit: "kip", source: "ASCE 7-16 2.4.1"},
  ]};
}

/** First check of the corbel. */
export function corbelWorking({corbel, position}: ColumnResult): Working {
  if (!corbel) return {title: "Corbel", steps: []};
  const {input} = corbel;
  const V = given(input.shearKip, "kip", "factored reaction of one beam");
  const d = given(input.effectiveDepthIn, "in", "depth to its steel");
  return {title: `Corbel of the ${position}`, steps: [
    {symbol: "N_uc", label: "least horizontal force", expression: "0.2 * V_u", values: {V_u: V}, result: corbel.pullKip, unit: "kip", source: "ACI 318-19 16.5.3.5"},
    {
      symbol: "M_u", label: "moment at the column's face", expression: "V_u * a_v + N_uc * (h - d)",
      values: {V_u: V, a_v: given(input.armIn, "in", "face to the bearing"), N_uc: given(corbel.pullKip, "kip", "pull"), h: given(input.depthIn, "in", "depth of the corbel"), d},
      result: corbel.momentKipIn, unit: "kip-in", source: "ACI 318-19 16.5.3.1",
    },
    {
      symbol: "V_d", label: "shear that the section can carry", expression: "0.75 * min(0.2 * f_cprime, 480 + 0.08 * f_cprime, 1600) * b * d / 1000",
      values: {f_cprime: given(input.strengthPsi, "psi", "concrete strength"), b: given(input.widthIn, "in", "width"), d},
      result: corbel.sectionShearKip, unit: "kip", source: "ACI 318-19 16.5.2.4",
    },
    {
      symbol: "A_sc", label: `main steel at its top; ${corbel.mainSteelRule} decides`, expression: "max(A_f + A_n, 2 / 3 * A_vf + A_n, 0.04 * f_cprime / 60000 * b * d)",
      values: {
        A_f: given(corbel.bendingSteelIn2, "in2", "steel for bending"), A_n: given(corbel.pullSteelIn2, "in2", "steel for the horizontal force"), A_vf: given(corbel.frictionSteelIn2, "in2", "steel for shear friction"),
        f_cprime: given(input.strengthPsi, "psi", "concrete strength"), b: given(input.widthIn, "in", "width"), d,
      },
      result: corbel.mainSteelIn2, unit: "in2", source: "ACI 318-19 16.5.5.1",
    },
  ]};
}

/** First size of the footing. */
export function footingWorking({footing, foot, column, position, allowablePsf}: ColumnResult): Working {
  if (!footing) return {title: "Footing", steps: []};
  const B = given(footing.sideIn, "in", "side of the footing, to 3 in");
  const c = given(column.sideIn, "in", "side of the column");
  const d = given(footing.effectiveDepthIn, "in", "top to the middle of its bars");
  const P = given(foot.governing.kip, "kip", "factored load");
  return {title: `Footing of the ${position}`, steps: [
    {
      symbol: "B_n", label: "side that the soil requires", expression: "sqrt(1000 * P_s / q_a) * 12",
      values: {P_s: given(foot.governingService.kip, "kip", "service load"), q_a: given(allowablePsf, "psf", "allowable pressure")},
      result: footing.neededSideIn, unit: "in", source: "stated allowable pressure",
    },
    {symbol: "q_u", label: "factored pressure", expression: "1000 * 144 * P_u / B^2", values: {P_u: P, B}, result: footing.factoredPsf, unit: "psf", source: "statics"},
    {
      symbol: "V_p", label: "shear around the column at half a depth from it", expression: "P_u / B^2 * (B^2 - (c + d)^2)",
      values: {P_u: P, B, c, d}, result: footing.punching.shearKip, unit: "kip", source: "ACI 318-19 22.6.4.1",
    },
    {
      symbol: "M_u", label: "moment at the column's face", expression: "P_u / B^2 * B * ((B - c) / 2)^2 / 2",
      values: {P_u: P, B, c}, result: footing.momentKipIn, unit: "kip-in", source: "ACI 318-19 13.2.7.1",
    },
  ]};
}

/** The floor as a beam that lies flat. */
export function diaphragmWorking({diaphragm, design}: Evaluation): Working {
  const {result, lengthFt, depthFt} = diaphragm;
  if (!result) return {title: "The floor as a diaphragm", steps: []};
  const w = given(design.diaphragm.lateralPlf, "plf", "stated lateral load");
  const L = given(lengthFt, "ft", "length of floor between the end walls");
  const b = given(depthFt, "ft", "depth of the floor");
  return {title: "The floor as a diaphragm", steps: [
    {symbol: "M", label: "moment at the middle", expression: "w * L^2 / 8 / 1000", values: {w, L}, result: result.momentKipFt, unit: "kip-ft", source: "statics"},
    {symbol: "T", label: "tension in the chord along the edge", expression: "M / (0.9 * b)", values: {M: given(result.momentKipFt, "kip-ft", "moment"), b}, result: result.chordKip, unit: "kip", source: "common practice"},
    {symbol: "A_s", label: "chord steel", expression: "T / (0.9 * 60)", values: {T: given(result.chordKip, "kip", "tension in the chord")}, result: result.chordSteelIn2, unit: "in2", source: "ACI 318-19 Table 21.2.2"},
    {symbol: "v", label: "shear at a wall, per foot", expression: "w * L / 2 / 1000 / b", values: {w, L, b}, result: result.shearKipPerFt, unit: "kip/ft", source: "statics"},
  ]};
}
