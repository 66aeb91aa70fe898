import {axialCapKip} from "../columns/axialLimits.js";
import {corbelLeverIn} from "../columns/columnBending.js";
import {momentUnder, underCombination} from "../columns/columnCombinations.js";
import {shareBelow} from "../columns/columnMoments.js";
import type {ColumnResult} from "../columns/columnsResult.js";
import {BENDING_AXES, type BendingAxis, type ColumnStory} from "../columns/columnStory.js";
import {barPullKsi, inclinedDepthIn, shareInBlock} from "../columns/inclinedForces.js";
import {levelWords} from "../columns/levels.js";
import type {ColumnSection} from "../columns/section.js";
import {given, type Step, type StepValue, type Working} from "../step.js";

/** A bending's words and the letter that its symbols bear. */
const AXES: Readonly<Record<BendingAxis, {words: string; letter: string}>> = {
  along: {words: "along the beams", letter: "a"},
  across: {words: "across the beams", letter: "c"},
};

/** The moments of a story along its beams and across them, each with its slenderness. */
export function columnMomentWorking(result: ColumnResult, story: number): Working {
  const at = result.column.stories[story] ?? result.column.worst;
  return {
    title: `Moments of the ${result.position} under ${levelWords(at.load.level)}, by ${at.pattern.words}`,
    steps: BENDING_AXES.flatMap((axis) => [...endSteps(result, at, axis), ...slendernessSteps(result, at, axis)]),
  };
}

/** The end moments by what each level brings. */
function endSteps({column}: ColumnResult, at: ColumnStory, axis: BendingAxis): Step[] {
  const {ends} = at[axis];
  const larger = Math.max(ends.topKipIn, ends.bottomKipIn);
  if (larger === 0) return [];
  const {words, letter} = AXES[axis];
  const levels = column.takedown.stories.map(({level}) => level);
  const i = column.stories.indexOf(at);
  const {seat} = column.bending;
  const leverIn = corbelLeverIn(seat, column.sideIn);
  const brought = (n: number, symbol: string): Step => {
    const {along, across} = at.pattern.levels[n] as ColumnStory["pattern"]["levels"][number];
    const {dead, live, roof} = at.combination;
    const level = levels[n] as (typeof levels)[number];
    const parts = axis === "along"
      ? {D: given(along.deadKip, "kip", "unbalanced dead load of the beam's end"), L: given(along.liveKip, "kip", "its live load"), L_r: given(along.roofKip, "kip", "its roof live load")}
      : {D: given(across.deadKipIn, "kip-in", "twist of the beams' ends by dead load"), L: given(across.liveKipIn, "kip-in", "by live load"), L_r: given(across.roofKipIn, "kip-in", "by roof live load")};
    const factors = [`${dead} * D`, ...(parts.L.value && live ? [`${live} * L`] : []), ...(parts.L_r.value && roof ? [`${roof} * L_r`] : [])];
    const values: Record<string, StepValue> = {D: parts.D, ...(factors.some((factor) => factor.endsWith(" L")) ? {L: parts.L} : {}), ...(factors.some((factor) => factor.endsWith("L_r")) ? {L_r: parts.L_r} : {})};
    return axis === "along"
      ? {
        symbol, label: `moment ${words} that ${levelWords(level)} brings`, expression: `(${factors.join(" + ")}) * e_c`,
        values: {...values, e_c: given(leverIn, "in", "column's middle to the bearing")}, result: underCombination(along, at.combination) * leverIn, unit: "kip-in", source: "statics",
      }
      : {
        symbol, label: `moment ${words} that ${levelWords(level)} brings`, expression: factors.join(" + "), values,
        result: momentUnder(across, at.combination), unit: "kip-in", source: "statics: the whole twist of the beams' ends reaches the column",
      };
  };
  const top = brought(i, `M_t${letter}`);
  const lower = i + 1 < levels.length ? brought(i + 1, `M_b${letter}`) : undefined;
  return [
    ...(axis === "along" ? [{
      symbol: "e_c", label: "column's middle to the beam's bearing", expression: "max(h, h_b) / 2 + e_s",
      values: {h: given(column.sideIn, "in", "side of the column"), h_b: given(seat.cutForIn, "in", "side that the beams' ends are cut for"), e_s: given(seat.seatIn, "in", "seat off that face")},
      result: leverIn, unit: "in", source: "geometry",
    }] : []),
    top, ...(lower ? [lower] : []),
    {
      symbol: `M_2${letter}`, label: `larger end moment ${words}`, expression: lower ? "max(s_t * M_t, s_b * M_b)" : "s_t * M_t",
      values: {
        s_t: given(shareBelow(levels, i), "", "share of the upper level's moment that goes down"), M_t: given(top.result, "kip-in", "moment of the upper level"),
        ...(lower ? {s_b: given(1 - shareBelow(levels, i + 1), "", "share of the lower level's moment that goes up"), M_b: given(lower.result, "kip-in", "moment of the lower level")} : {}),
      },
      result: larger, unit: "kip-in", source: "common practice: half up, half down",
    },
  ];
}

/** What slenderness makes of the larger end moment. */
function slendernessSteps({column}: ColumnResult, at: ColumnStory, axis: BendingAxis): Step[] {
  const {slenderness: slender, momentKipIn} = at[axis];
  const {words, letter} = AXES[axis];
  const counts = at.leastCounts === axis;
  if (slender.endMomentKipIn === 0 && !(counts && slender.slender)) return [];
  const {level} = at.load;
  const side = given(column.sideIn, "in", "side of the column");
  const axial = given(at.axialKip, "kip", "factored load");
  const end = given(slender.endMomentKipIn, "kip-in", "larger end moment");
  const ratio: Step = {
    symbol: `lambda_${letter}`, label: `slenderness ${words}; up to ${slender.limit.toFixed(0)} it may be left out`, expression: "k * 12 * l_u / (0.3 * h)",
    values: {k: given(1, "", "effective length factor"), l_u: given(level.clearHeightFt ?? level.storyHeightFt, "ft", "story"), h: side}, result: slender.ratio, unit: "", source: "ACI 318-19 6.2.5",
  };
  if (!slender.slender || slender.magnifier === undefined) {
    return [ratio, {symbol: `M_u${letter}`, label: `moment ${words} to design for`, expression: "M_2", values: {M_2: end}, result: momentKipIn, unit: "kip-in", source: "statics"}];
  }
  return [
    ratio,
    ...(counts ? [{
      symbol: "M_min", label: "least moment of a slender column, one way at a time", expression: "P_u * (0.6 + 0.03 * h)",
      values: {P_u: axial, h: side}, result: slender.leastMomentKipIn, unit: "kip-in", source: "ACI 318-19 6.6.4.5.4",
    }] : []),
    {
      symbol: `delta_${letter}`, label: "magnification by slenderness", expression: "max(1, C_m / (1 - P_u / (0.75 * P_c)))",
      values: {C_m: given(slender.evenMomentFactor, "", "share of an even moment"), P_u: axial, P_c: given(slender.criticalKip, "kip", "buckling load")},
      result: slender.magnifier, unit: "", source: "ACI 318-19 6.6.4.5.2, 6.6.4.5.3",
      ...(at[axis].ends.curvature === "double" ? {note: "C_m counts the smaller end moment without live load on that level, which is worse."} : {}),
    },
    {
      symbol: `M_u${letter}`, label: `moment ${words} to design for`, expression: counts ? "delta * max(M_2, M_min)" : "delta * M_2",
      values: {delta: given(slender.magnifier, "", "enlargement"), M_2: end, ...(counts ? {M_min: given(slender.leastMomentKipIn, "kip-in", "least moment")} : {})},
      result: momentKipIn, unit: "kip-in", source: "ACI 318-19 6.6.4.5.1",
    },
  ];
}

/** Bars that lie equally far from the compressed corner, square to the neutral axis. */
interface BarGroup {
  readonly depthIn: number;
  readonly areaIn2: number;
  /** Middle of the group from the corner, in. */
  readonly xIn: number;
  readonly yIn: number;
}

function barGroups({bars, bar}: ColumnSection, angleRad: number): BarGroup[] {
  const found = new Map<string, {xIn: number; yIn: number}[]>();
  for (const place of bars.places) {
    const key = inclinedDepthIn(place, angleRad).toFixed(7);
    found.set(key, [...(found.get(key) ?? []), place]);
  }
  return [...found.values()].map((places): BarGroup => {
    const mean = (of: (place: {xIn: number; yIn: number}) => number) => places.reduce((sum, place) => sum + of(place), 0) / places.length;
    const middle = {xIn: mean(({xIn}) => xIn), yIn: mean(({yIn}) => yIn)};
    return {...middle, depthIn: inclinedDepthIn(middle, angleRad), areaIn2: places.length * bar.areaIn2};
  }).sort((one, other) => one.depthIn - other.depthIn);
}

/** Strength at the point of the interaction that lies in the story's direction. */
export function columnInteractionWorking(result: ColumnResult, story: number): Working {
  const at = result.column.stories[story] ?? result.column.worst;
  const {section} = result.column;
  const {capacity} = at;
  const {state} = capacity;
  const stressKsi = section.blockStressKsi;
  const fc = given(stressKsi, "ksi", "stress of the block, 0.85 f'c");
  const c = given(state.neutralAxisIn, "in", "neutral axis from the most compressed corner, square to it");
  const side = given(section.depthIn, "in", "side of the column");
  const concreteKip = stressKsi * state.block.areaIn2;
  const C = given(concreteKip, "kip", "push of the concrete");
  const groups = barGroups(section, state.angleRad).map((group, i) => ({...group, n: i + 1, pull: group.areaIn2 * barPullKsi(section, group.depthIn, state.neutralAxisIn)}));
  const forces = Object.fromEntries(groups.map(({n, pull}) => [`F_${n}`, given(pull, "kip", `pull of row ${n}`)]));
  const moment = (axis: BendingAxis, of: (group: BarGroup) => number, centroidIn: number, resultKipIn: number): Step => {
    const {words, letter} = AXES[axis];
    return {
      symbol: `M_n${letter}`, label: `nominal moment ${words}`, expression: `C * (h / 2 - z_C) + ${groups.map(({n}) => `F_${n} * (z_${n} - h / 2)`).join(" + ")}`,
      values: {
        C, h: side, z_C: given(centroidIn, "in", `compressed face to the middle of the block, ${words}`), ...forces,
        ...Object.fromEntries(groups.map((group) => [`z_${group.n}`, given(of(group), "in", `compressed face to row ${group.n}, ${words}`)])),
      },
      result: resultKipIn, unit: "kip-in", source: "equilibrium",
    };
  };
  const capKip = axialCapKip(section);
  return {title: `Strength of the ${result.position} under ${levelWords(at.load.level)}`, steps: [
    ...blockSteps(section, at),
    {symbol: "C", label: "push of the concrete", expression: "f_c * A_c", values: {f_c: fc, A_c: given(state.block.areaIn2, "in2", "concrete under the block")}, result: concreteKip, unit: "kip", source: "ACI 318-19 22.2.2.4"},
    ...groups.map(({n, depthIn, areaIn2, pull}): Step => ({
      symbol: `F_${n}`, label: `pull of row ${n}, negative where it is pressed`, expression: `A_${n} * (max(-60, min(60, 29000 * 0.003 * (d_${n} - c) / c)) + k_${n} * f_c)`,
      values: {
        [`A_${n}`]: given(areaIn2, "in2", `area of row ${n}`), [`d_${n}`]: given(depthIn, "in", `depth of row ${n} below that corner, square to the neutral axis`), c,
        [`k_${n}`]: given(shareInBlock(section, depthIn, state.neutralAxisIn), "", `share of row ${n} that displaces pressed concrete`), f_c: fc,
      },
      result: pull, unit: "kip", source: "ACI 318-19 22.2, 20.2.2.1",
    })),
    {symbol: "P_n", label: "nominal axial load", expression: `C - (${groups.map(({n}) => `F_${n}`).join(" + ")})`, values: {C, ...forces}, result: state.axialKip, unit: "kip", source: "equilibrium"},
    ...(state.angleRad > 0 ? [moment("along", ({xIn}) => xIn, state.block.xIn, state.widthMomentKipIn)] : []),
    ...(state.angleRad < Math.PI / 2 ? [moment("across", ({yIn}) => yIn, state.block.yIn, state.depthMomentKipIn)] : []),
    {
      symbol: "phi", label: "strength reduction factor", expression: "0.65 + 0.25 * max(0, min(1, (epsilon_t - 0.002) / 0.003))",
      values: {epsilon_t: given(state.tensileStrain ?? 0.005, "", "net tensile strain of the farthest bar")}, result: state.phi, unit: "", source: "ACI 318-19 Table 21.2.2",
    },
    {
      symbol: "P_cap", label: "most axial load of a tied column", expression: "0.65 * 0.8 * (f_c * (A_g - A_s) + 60 * A_s)",
      values: {f_c: fc, A_g: given(section.grossIn2, "in2", "area of the column"), A_s: given(section.steelIn2, "in2", "area of the bars")}, result: capKip, unit: "kip", source: "ACI 318-19 22.4.2.1",
    },
    {
      symbol: "P_d", label: "axial load that the column can carry in this direction", expression: "min(phi * P_n, P_cap)",
      values: {phi: given(state.phi, "", "strength reduction factor"), P_n: given(state.axialKip, "kip", "nominal axial load"), P_cap: given(capKip, "kip", "most axial load")},
      result: capacity.axialKip, unit: "kip", source: "ACI 318-19 22.4",
    },
  ]};
}

/** Concrete under the block: a strip, or what a slanting line cuts off the corner: a triangle less those that pass the sides. */
function blockSteps(section: ColumnSection, {asked, capacity: {state}}: ColumnStory): Step[] {
  const factor = section.blockFactor;
  const blockIn = factor * state.neutralAxisIn;
  const slants = state.angleRad > 0 && state.angleRad < Math.PI / 2;
  const proportion = slants
    ? `Slope and c are found by trial, so that both moments and the axial load stand in the proportion that is asked: ${Math.round(asked.axialKip)} kip with ${Math.round(asked.widthMomentKipIn)} kip-in along the beams and ${Math.round(asked.depthMomentKipIn)} across them.`
    : "c is found by trial, so that moment and axial load stand in the proportion that is asked.";
  const block: Step = {
    symbol: "a", label: "depth of the block, square to the neutral axis", expression: "beta_1 * c",
    values: {beta_1: given(factor, "", "block over neutral axis"), c: given(state.neutralAxisIn, "in", "neutral axis from the most compressed corner, square to it")},
    result: blockIn, unit: "in", source: "ACI 318-19 22.2.2.4.1", note: proportion,
  };
  const a = given(blockIn, "in", "depth of the block");
  const h = given(section.depthIn, "in", "side of the column");
  const area = {symbol: "A_c", label: "concrete under the block", result: state.block.areaIn2, unit: "in2", source: "geometry"};
  if (!slants) return [block, {...area, expression: "h * min(h, a)", values: {a, h}}];
  const [sine, cosine] = [Math.sin(state.angleRad), Math.cos(state.angleRad)];
  // Stryker disable EqualityOperator: what just reaches a side cuts off nothing beyond it
  const past = [["h * s", sine], ["h * k", cosine]].flatMap(([words, share]) => (blockIn > section.depthIn * (share as number) ? [` - (a - ${words})^2`] : []));
  const both = blockIn > section.depthIn * (sine + cosine) ? " + (a - h * s - h * k)^2" : "";
  // Stryker restore EqualityOperator
  return [block, {
    ...area, expression: `(a^2${past.join("")}${both}) / (2 * s * k)`,
    values: {a, ...(past.length > 0 ? {h} : {}), s: given(sine, "", "sine of the neutral axis' slope"), k: given(cosine, "", "its cosine")},
  }];
}
