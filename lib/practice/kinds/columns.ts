import type {Catalog} from "../../catalog.js";
import {footing, FOOTING_STEP_IN} from "../../columns/footing.js";
import {TIED_PHI, TIED_SHARE, axialCapKip, squashLoadKip} from "../../columns/axialLimits.js";
import {columnSection} from "../../columns/section.js";
import {takedown} from "../../columns/takedown.js";
import {factoredLoad} from "../../loads/combinations.js";
import {ELEMENT_FACTOR} from "../../loads/elements.js";
import {BAR_YIELD_KSI} from "../../materials/reinforcement.js";
import {given, type Working} from "../../step.js";
import {feet} from "../../units.js";
import type {Draw} from "../draw.js";
import type {Content, Kind} from "../item.js";
import {oneStep} from "../keys.js";
import {numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";

/** Greatest axial load of a tied column. */
function columnStrength(draw: Draw, {bars}: Catalog): Content {
  const sideIn = draw.from(14, 32, 2);
  const strengthPsi = draw.from(4000, 8000, 500);
  const bar = draw.one(bars.filter(({size}) => ["#8", "#9", "#10", "#11"].includes(size)));
  const count = draw.one(sideIn < 18 ? [4, 8] : [8, 12]);
  const loadKip = draw.from(200, 600, 50);
  const section = columnSection({widthIn: sideIn, depthIn: sideIn, bar, count, faces: "all", coverIn: 1.5, strengthPsi});
  const {grossIn2, steelIn2, blockStressKsi} = section;
  const [squash, key] = [squashLoadKip(section), axialCapKip(section)];
  return {
    question: [prose`A square tied column of ${measure(sideIn, "in")} is cast of ${measure(strengthPsi, "psi")} concrete and holds ${count} bars ${bar.size} of ${measure(bar.areaIn2, "in2")} each, which yield at ${measure(BAR_YIELD_KSI, "ksi")}. It carries ${measure(loadKip, "kip")} now.`],
    givens: [{name: "side", value: sideIn, unit: "in"}, {name: "concrete strength", value: strengthPsi, unit: "psi"}, {name: "bars", value: count, unit: ""}, {name: "area of a bar", value: bar.areaIn2, unit: "in2"}, {name: "yield strength", value: BAR_YIELD_KSI, unit: "ksi"}, {name: "load now", value: loadKip, unit: "kip"}],
    parts: [numberPart({
      ask: prose`What is the greatest factored axial load that it may be designed for?`, label: "design axial strength", unit: "kip", key,
      slips: [
        slip("gross for net", TIED_PHI * TIED_SHARE * (blockStressKsi * grossIn2 + BAR_YIELD_KSI * steelIn2), "Where a bar is, there is no concrete: take the bars\u2019 area off."),
        slip("forgot the eccentricity", TIED_PHI * squash, "A tied column may use 0.80 of its squash load, because no load stands exactly in its middle."),
        slip("forgot the reduction factor", TIED_SHARE * squash, "A tied column in compression has a strength reduction factor of 0.65."),
        slip("squash load", squash, "That is its squash load: no column is designed for all of it."),
        slip("a beam\u2019s factor", (0.9 / TIED_PHI) * key, "0.9 is for bending where steel yields; a column in compression has 0.65."),
        slip("forgot the 0.85", TIED_PHI * TIED_SHARE * ((strengthPsi / 1000) * (grossIn2 - steelIn2) + BAR_YIELD_KSI * steelIn2), "Concrete in a column reaches 0.85 of its cylinder strength."),
        slip("forgot the bars", TIED_PHI * TIED_SHARE * blockStressKsi * grossIn2, "The bars carry as well."),
      ],
      working: {title: "Axial strength", steps: [
        {symbol: "A_st", label: "area of the bars", expression: "n * A_b", unit: "in2", source: "definition", result: steelIn2, values: {n: given(count, "", "bars"), A_b: given(bar.areaIn2, "in2", "area of a bar")}},
        {
          symbol: "P_o", label: "squash load", expression: "0.85 * f_cprime / 1000 * (h^2 - A_st) + f_y * A_st", unit: "kip", source: "ACI 318-19 22.4.2.2", result: squash,
          values: {f_cprime: given(strengthPsi, "psi", "concrete strength"), h: given(sideIn, "in", "side"), A_st: given(steelIn2, "in2", "area of the bars"), f_y: given(BAR_YIELD_KSI, "ksi", "yield strength")},
        },
        {symbol: "P_max", label: "greatest factored axial load", expression: "0.65 * 0.8 * P_o", unit: "kip", source: "ACI 318-19 22.4.2.1, 21.2.2", result: key, values: {P_o: given(squash, "kip", "squash load")}},
      ]},
    })],
  };
}

const POSITIONS = ["interior column", "edge column", "corner column"] as const;

/** Dead load, reduced live load and factored load of several floors on one column. */
function columnTakedown(draw: Draw): Content {
  const spanFt = draw.from(30, 60, 2);
  const beamSpanFt = draw.from(20, 40, 1);
  const floors = draw.from(2, 6, 1);
  const deadPsf = draw.from(75, 125, 5);
  const livePsf = draw.one([40, 50, 60, 75, 80]);
  const position = draw.one(POSITIONS);
  const tributaryFt2 = spanFt * beamSpanFt * {"interior column": 1, "edge column": 0.5, "corner column": 0.25}[position];
  const level = {kind: "floor" as const, deckPsf: deadPsf, toppingPsf: 0, superimposedPsf: 0, beamPlf: 0, beamLengthFt: 0, livePsf, rule: "yes" as const, partitionPsf: 0, tributaryFt2, storyHeightFt: 14};
  const {stories} = takedown({position, columnPlf: 0, levels: Array.from({length: floors}, (_, i) => ({...level, name: `floor ${floors - i}`}))});
  const foot = stories.at(-1);
  if (!foot) throw new RangeError("no floor");
  const [deadKip, liveKip, fullKip] = [foot.deadKip, foot.liveKip, foot.unreducedLiveKip];
  const {formulaFactor, leastFactor, factor} = foot.reductions[0]?.reduction ?? {formulaFactor: 1, leastFactor: 0.4, factor: 1};
  const area = given(tributaryFt2, "ft2", "area on one floor");
  const n = given(floors, "", "floors");
  const article = position === "corner column" ? "A" : "An";
  return {
    question: [
      prose`${article} ${position} carries ${floors} floors of ${measure(tributaryFt2, "ft2")} each. A floor weighs ${measure(deadPsf, "psf")} with its beams and finishes, and holds ${measure(livePsf, "psf")} of live load that may be reduced.`,
      prose`Leave the roof and the column\u2019s own weight out. Its element factor is ${ELEMENT_FACTOR[position]}; the bays are ${measure(spanFt, "ft")} by ${measure(beamSpanFt, "ft")}.`,
    ],
    givens: [{name: "floors", value: floors, unit: ""}, {name: "area on one floor", value: tributaryFt2, unit: "ft2"}, {name: "dead load", value: deadPsf, unit: "psf"}, {name: "live load", value: livePsf, unit: "psf"}, {name: "element factor", value: ELEMENT_FACTOR[position], unit: ""}, {name: "position", value: position, unit: ""}, {name: "span of the deck", value: spanFt, unit: "ft"}, {name: "span of the beams", value: beamSpanFt, unit: "ft"}],
    parts: [
      numberPart({
        ask: prose`What dead load do the floors bring to it?`, label: "dead load", unit: "kip", key: deadKip,
        slips: [slip("one floor only", deadKip / floors, "The column carries every floor above it."), slip("pounds for kips", deadKip * 1000, "That is in pounds; a kip is a thousand of them."), slip("influence for tributary", ELEMENT_FACTOR[position] * deadKip, "The element factor is for the reduction of the live load alone.")],
        working: oneStep("Dead load of the floors", {symbol: "D", label: "dead load of all floors", expression: "n * w_D * A_T / 1000", unit: "kip", source: "sum", result: deadKip, values: {n, w_D: given(deadPsf, "psf", "dead load of a floor"), A_T: area}}),
      }),
      numberPart({
        ask: prose`And what live load, reduced?`, label: "reduced live load", unit: "kip", key: liveKip,
        slips: [
          slip("no reduction", fullKip, "Over this much floor the live load may be reduced."),
          slip("one floor\u2019s area in the formula", fullKip * Math.max(leastFactor, Math.min(1, 0.25 + 15 / Math.sqrt(ELEMENT_FACTOR[position] * tributaryFt2))), "The influence area of every floor above counts, not of one."),
          slip("tributary for influence", fullKip * Math.max(leastFactor, Math.min(1, 0.25 + 15 / Math.sqrt(floors * tributaryFt2))), "The formula takes the influence area: the element factor multiplies the tributary area."),
          slip("below the least", fullKip * formulaFactor, "No more than six tenths may be taken off a column of several floors."),
          slip("a beam\u2019s least factor", fullKip * Math.max(0.5, factor), "A member that carries two floors or more may go down to 0.4."),
        ],
        working: {title: "Reduced live load", steps: [
          {symbol: "R", label: "factor of the formula", expression: "0.25 + 15 / sqrt(K_LL * n * A_T)", unit: "", source: "ASCE 7-16 4.7.2", result: formulaFactor, values: {K_LL: given(ELEMENT_FACTOR[position], "", "element factor"), n, A_T: area}},
          {symbol: "L", label: "reduced live load", expression: "n * L_o * A_T / 1000 * min(1, max(0.4, R))", unit: "kip", source: "ASCE 7-16 4.7.2", result: liveKip, values: {n, L_o: given(livePsf, "psf", "live load of the table"), A_T: area, R: given(formulaFactor, "", "factor of the formula")}},
        ]},
      }),
      numberPart({
        ask: prose`For what factored load is it designed?`, label: "factored load", unit: "kip", key: (earlier) => factoredLoad(numberAt(earlier, 0), numberAt(earlier, 1)),
        slips: (earlier) => [
          slip("forgot the load factors", numberAt(earlier, 0) + numberAt(earlier, 1), "That is the unfactored load: it is what the soil feels."),
          slip("swapped the factors", 1.6 * numberAt(earlier, 0) + 1.2 * numberAt(earlier, 1), "The factors are swapped."), slip("one factor for both", 1.6 * (numberAt(earlier, 0) + numberAt(earlier, 1)), "Dead load takes a smaller factor."),
        ],
        working: (earlier): Working => oneStep("Factored load", {
          symbol: "P_u", label: "factored load", expression: "max(1.4 * D, 1.2 * D + 1.6 * L)", unit: "kip", source: "ASCE 7-16 2.3.1", result: factoredLoad(numberAt(earlier, 0), numberAt(earlier, 1)),
          values: {D: given(numberAt(earlier, 0), "kip", "dead load"), L: given(numberAt(earlier, 1), "kip", "reduced live load")},
        }),
      }),
    ],
  };
}

/** Side of a square footing by the soil's pressure. */
function footingSide(draw: Draw): Content {
  const serviceKip = draw.from(120, 900, 5);
  const liveShare = draw.from(0.2, 0.4, 0.02);
  const allowablePsf = draw.from(2500, 8000, 500);
  const factoredKip = Math.round(factoredLoad((1 - liveShare) * serviceKip, liveShare * serviceKip));
  const {neededSideIn, sideIn} = footing({serviceKip, factoredKip, columnSideIn: 16, columnStrengthPsi: 5000, footingStrengthPsi: 3000, allowablePsf});
  const key = feet(neededSideIn);
  return {
    question: [prose`A column brings ${measure(serviceKip, "kip")} to its square footing, ${measure(factoredKip, "kip")} with load factors. The soil may be pressed by ${measure(allowablePsf, "psf")} besides what lay on it before.`],
    givens: [{name: "load without factors", value: serviceKip, unit: "kip"}, {name: "factored load", value: factoredKip, unit: "kip"}, {name: "allowable pressure", value: allowablePsf, unit: "psf"}],
    parts: [
      numberPart({
        ask: prose`How long must its side be at least?`, label: "side", unit: "ft", key,
        slips: [
          slip("factored for service", key * Math.sqrt(factoredKip / serviceKip), "Soil pressure is compared without load factors."), slip("area for side", key ** 2, "That is its area: the side is its root."),
          slip("kips for pounds", key / Math.sqrt(1000), "A kip is a thousand pounds."), slip("half the side", key / 2, "The side, not the reach from the middle."),
        ],
        working: oneStep("Side that the soil requires", {symbol: "B_n", label: "side that the soil requires", expression: "sqrt(1000 * P_s / q_a)", unit: "ft", source: "stated allowable pressure", result: key, values: {P_s: given(serviceKip, "kip", "load without factors"), q_a: given(allowablePsf, "psf", "allowable pressure")}}),
      }),
      numberPart({
        ask: prose`Footings are made in steps of ${measure(FOOTING_STEP_IN, "in")}. What side is built?`, label: "side as built", unit: "ft", tolerance: {within: 0.02}, key: feet(sideIn),
        slips: [slip("rounded down", feet(sideIn - FOOTING_STEP_IN), "That would press the soil harder than it may be pressed: round up."), slip("rounded to the foot", Math.ceil(key), "Steps of 3 in leave less concrete than whole feet.")],
        because: prose`The next step of ${measure(FOOTING_STEP_IN, "in")} that is not shorter.`,
      }),
    ],
  };
}

export const COLUMNS_KINDS: readonly Kind[] = [
  {id: "footing-side", topic: "columns", level: 1, title: "How large a footing", make: footingSide},
  {id: "column-strength", topic: "columns", level: 2, title: "How much a column carries", make: columnStrength},
  {id: "column-takedown", topic: "columns", level: 3, title: "What several floors bring down", make: columnTakedown},
];
