import type {Catalog} from "../../catalog.js";
import {ELEMENT_FACTOR, type LoadElement} from "../../loads/elements.js";
import {LEAST_FACTOR, LEAST_INFLUENCE_FT2, reduceLiveLoad, type ReductionCase} from "../../loads/reduction.js";
import {loadAreas} from "../../loads/tributary.js";
import {given, type Step, type Working} from "../../step.js";
import type {Draw} from "../draw.js";
import type {Content, Earlier, Kind, Option, PlanPicture} from "../item.js";
import {oneStep} from "../keys.js";
import {choicePart, numberAt, numberPart, slip} from "../parts.js";
import {measure, prose} from "../prose.js";

const GRID = {baysAlong: 4, baysAcross: 2} as const;
const ELEMENTS = ["edge beam", "interior beam", "interior column", "edge column", "corner column"] as const satisfies readonly LoadElement[];

function areaOf(element: LoadElement, spanFt: number, beamSpanFt: number) {
  const found = loadAreas({spanFt, beamSpanFt, ...GRID}, 10).find((each) => each.element === element);
  if (!found) throw new RangeError(`the grid has no ${element}`);
  return found;
}

function planOf(spanFt: number, beamSpanFt: number, name: string, {xFt, yFt, widthFt, heightFt}: ReturnType<typeof areaOf>["tributary"]): PlanPicture {
  return {kind: "plan", spanFt, beamSpanFt, ...GRID, marked: {name, xFt, yFt, widthFt, heightFt}};
}

/** A bay that an exercise stands on. */
const bayDrawn = (draw: Draw) => ({spanFt: draw.from(30, 60, 1), beamSpanFt: draw.from(20, 40, 1)});
const bayGivens = (spanFt: number, beamSpanFt: number) => [{name: "span of the deck", value: spanFt, unit: "ft"}, {name: "span of the beams", value: beamSpanFt, unit: "ft"}];
const bayWords = (spanFt: number, beamSpanFt: number) => prose`A floor has two rows of four bays: decks span ${measure(spanFt, "ft")} between lines of beams, and the beams span ${measure(beamSpanFt, "ft")} between columns.`;

/** Tributary area of a beam or column. */
function tributaryArea(draw: Draw): Content {
  const {spanFt, beamSpanFt} = bayDrawn(draw);
  const element = draw.one(ELEMENTS);
  const {tributary, tributaryFt2: key, influenceFt2} = areaOf(element, spanFt, beamSpanFt);
  const article = /^[aeiou]/.test(element) ? "an" : "a";
  return {
    question: [bayWords(spanFt, beamSpanFt)],
    givens: [...bayGivens(spanFt, beamSpanFt), {name: "element", value: element, unit: ""}],
    // The element itself, not its area: that is asked.
    picture: planOf(spanFt, beamSpanFt, element, {xFt: element === "corner column" ? 0 : tributary.xFt + tributary.widthFt / 2, yFt: element.startsWith("interior") ? spanFt : 0, widthFt: 0, heightFt: 0}),
    parts: [numberPart({
      ask: prose`How much floor loads ${article} ${element}?`, label: "tributary area", unit: "ft2", key,
      slips: [
        slip("influence for tributary", influenceFt2, "That is the influence area, on which a load is felt at all; the tributary area is what the element carries."),
        slip("a whole bay", spanFt * beamSpanFt, "That is one bay: look how far it is to the next beam or column on each side, and take half."),
        slip("twice as much", 2 * key, "On one side too many: half of each span goes to the other end."),
        slip("half as much", key / 2, "It carries half of every bay that it touches, on both sides."),
      ],
      working: oneStep("Tributary area", {
        symbol: "A_T", label: `tributary area of ${article} ${element}`, expression: "a * b", unit: "ft2", source: "geometry", result: key,
        values: {a: given(tributary.widthFt, "ft", "along the beams: half of each beam on either side, or a beam\u2019s own span"), b: given(tributary.heightFt, "ft", "along the deck: half of each deck that bears on it")},
      }),
    })],
  };
}

function reducedStep(livePsf: number, influenceFt2: number, floors: number): Step[] {
  const {formulaFactor, reducedPsf, leastFactor, clause} = reduceLiveLoad({livePsf, rule: "yes", influenceFt2, floors});
  if (influenceFt2 < LEAST_INFLUENCE_FT2) {
    return [{symbol: "L", label: "live load, not reduced", expression: "L_o", unit: "psf", source: clause, result: reducedPsf, values: {L_o: given(livePsf, "psf", "live load of the table")}}];
  }
  return [
    {symbol: "R", label: "factor of the formula", expression: "0.25 + 15 / sqrt(A_I)", unit: "", source: "ASCE 7-16 4.7.2", result: formulaFactor, values: {A_I: given(influenceFt2, "ft2", "influence area")}},
    {
      symbol: "L", label: "live load after reduction", expression: "L_o * min(1, max(R_min, R))", unit: "psf", source: clause, result: reducedPsf,
      values: {L_o: given(livePsf, "psf", "live load of the table"), R_min: given(leastFactor, "", "least factor"), R: given(formulaFactor, "", "factor of the formula")},
    },
  ];
}

/** Tributary area, influence area, reduced live load: each from the one before. */
function reducedLiveLoad(draw: Draw): Content {
  const {spanFt, beamSpanFt} = bayDrawn(draw);
  const element = draw.one(["edge beam", "interior beam", "edge column", "corner column"] as const);
  const livePsf = draw.one([40, 50, 60, 75, 80, 100]);
  const {tributaryFt2, elementFactor, tributary} = areaOf(element, spanFt, beamSpanFt);
  const influence = (earlier: Earlier) => elementFactor * numberAt(earlier, 0);
  const reduced = (influenceFt2: number) => reduceLiveLoad({livePsf, rule: "yes", influenceFt2: Math.min(1e6, Math.max(1, influenceFt2)), floors: 1});
  return {
    question: [bayWords(spanFt, beamSpanFt), prose`The room\u2019s live load is ${measure(livePsf, "psf")} and may be reduced; take the ${element} under one floor.`],
    givens: [...bayGivens(spanFt, beamSpanFt), {name: "live load", value: livePsf, unit: "psf"}, {name: "element", value: element, unit: ""}],
    picture: planOf(spanFt, beamSpanFt, element, tributary),
    table: {
      title: "Live load element factor", columns: [{name: "element", unit: ""}, {name: "K_LL", unit: ""}],
      rows: ["interior column", "edge column", "corner column", "edge beam", "interior beam", "deck member"].map((each) => [each, ELEMENT_FACTOR[each as LoadElement]]), source: "ASCE 7-16 Table 4.7-1, without cantilevers",
    },
    parts: [
      numberPart({
        ask: prose`What is its tributary area?`, label: "tributary area", unit: "ft2", key: tributaryFt2,
        slips: [
          slip("twice the area", 2 * tributaryFt2, "Half of each span goes to its other end."), slip("half the area", tributaryFt2 / 2, "It carries half of every bay that it touches."),
          slip("influence for tributary", elementFactor * tributaryFt2, "That is the influence area already."),
        ],
        working: oneStep("Tributary area", {
          symbol: "A_T", label: "tributary area", expression: "a * b", unit: "ft2", source: "geometry", result: tributaryFt2,
          values: {a: given(tributary.widthFt, "ft", "along the beams"), b: given(tributary.heightFt, "ft", "along the deck")},
        }),
      }),
      numberPart({
        ask: prose`And its influence area?`, label: "influence area", unit: "ft2", key: influence,
        slips: (earlier) => [
          slip("tributary for influence", numberAt(earlier, 0), "That is the tributary area once more: the element factor takes in every bay in which a load is felt."),
          ...[2, 4].filter((factor) => factor !== elementFactor).map((factor) => slip("the other element\u2019s factor", factor * numberAt(earlier, 0), "Columns have 4, beams 2.")),
        ],
        working: (earlier) => oneStep("Influence area", {
          symbol: "A_I", label: "influence area", expression: "K_LL * A_T", unit: "ft2", source: "ASCE 7-16 Table 4.7-1", result: influence(earlier),
          values: {K_LL: given(elementFactor, "", "element factor"), A_T: given(numberAt(earlier, 0), "ft2", "tributary area")},
        }),
      }),
      numberPart({
        ask: prose`For what live load may it be designed?`, label: "reduced live load", unit: "psf", key: (earlier) => reduced(numberAt(earlier, 1)).reducedPsf,
        slips: (earlier) => {
          const {formulaFactor, reducedPsf} = reduced(numberAt(earlier, 1));
          return [
            slip("no reduction", livePsf, "From 400 ft\u00b2 of influence area on, the live load may be reduced."),
            slip("tributary for influence", livePsf * Math.max(LEAST_FACTOR.oneFloor, 0.25 + 15 / Math.sqrt(Math.max(1, numberAt(earlier, 0)))), "The formula takes the influence area, not the tributary area."),
            slip("took off what is left", livePsf - reducedPsf, "That is what is taken off; the factor tells what stays."),
            slip("below the least", livePsf * formulaFactor, "For one floor no more than half may be taken off."),
          ];
        },
        working: (earlier): Working => ({title: "Live load after reduction", steps: reducedStep(livePsf, numberAt(earlier, 1), 1)}),
      }),
    ],
  };
}

const RULES: readonly {readonly id: string; readonly decides: readonly ReductionCase[]; readonly text: string; readonly says: string}[] = [
  {id: "formula", decides: ["formula"], text: "reduced by the formula of the area", says: "First see whether the use and the area allow it, and whether the formula goes below the least factor."},
  {id: "least", decides: ["lower limit"], text: "reduced to the least factor that the code allows", says: "Work out the formula: it does not go as low as that, or it does not apply."},
  {id: "area", decides: ["area too small"], text: "in full: the area is too small", says: "The influence area counts, and it is not below 400 ft\u00b2; or the use forbids it anyhow."},
  {id: "assembly", decides: ["no reduction"], text: "in full: people do fill such a room", says: "That is said of assembly rooms."},
  {id: "heavy", decides: ["heavy load"], text: "in full: it is above 100 psf", says: "This load is not above 100 psf."},
  {id: "garage", decides: ["garage"], text: "in full: cars do fill a garage", says: "That is said of garages."},
];

/** Whether and by which rule a live load may be reduced. */
function mayItBeReduced(draw: Draw, {occupancies}: Catalog): Content {
  const tributaryFt2 = draw.from(120, 2400, 15);
  const element = draw.one(["edge beam", "interior column", "interior beam"] as const);
  const room = draw.one(occupancies);
  const influenceFt2 = ELEMENT_FACTOR[element] * tributaryFt2;
  const found = reduceLiveLoad({livePsf: room.livePsf, rule: room.reduction, influenceFt2, floors: 1});
  const right = RULES.find(({decides}) => decides.includes(found.decides));
  return {
    question: [
      prose`An ${element} carries ${measure(tributaryFt2, "ft2")} of one floor, used as: ${room.name.toLowerCase()}, ${measure(room.livePsf, "psf")}.`,
      prose`Its element factor is ${ELEMENT_FACTOR[element]}.`,
    ],
    givens: [
      {name: "tributary area", value: tributaryFt2, unit: "ft2"}, {name: "element", value: element, unit: ""}, {name: "element factor", value: ELEMENT_FACTOR[element], unit: ""},
      {name: "use", value: room.name, unit: ""}, {name: "live load", value: room.livePsf, unit: "psf"},
    ],
    parts: [
      choicePart({
        ask: prose`How is the live load taken?`, options: RULES.map(({id, text, says}): Option => ({id, text: [text], slip: {name: `took it ${text}`, says}})), key: right?.id ?? "formula",
        because: prose`${found.clause}: the influence area is ${measure(influenceFt2, "ft2")}, and the formula would give ${measure(Number(found.formulaFactor.toFixed(3)), "")}.`,
      }),
      numberPart({
        ask: prose`What live load is it designed for?`, label: "live load", unit: "psf", key: found.reducedPsf,
        slips: [
          slip("no reduction", room.livePsf, "It may be reduced."),
          slip("reduced all the same", room.livePsf * Math.min(1, Math.max(LEAST_FACTOR.oneFloor, found.formulaFactor)), "The formula does not apply to this use."),
          slip("tributary for influence", room.livePsf * Math.min(1, Math.max(LEAST_FACTOR.oneFloor, 0.25 + 15 / Math.sqrt(tributaryFt2))), "The formula takes the influence area: element factor times tributary area."),
          slip("below the least", room.livePsf * found.formulaFactor, "For one floor no more than half may be taken off."),
        ],
        working: room.reduction === "yes" ? {title: "Live load", steps: reducedStep(room.livePsf, influenceFt2, 1)} : oneStep("Live load", {
          symbol: "L", label: "live load in full", expression: "L_o", unit: "psf", source: found.clause, result: found.reducedPsf, values: {L_o: given(room.livePsf, "psf", "live load of the table")},
        }),
      }),
    ],
  };
}

export const REDUCTION_KINDS: readonly Kind[] = [
  {id: "tributary-area", topic: "reduction", level: 1, title: "Whose floor is it", make: tributaryArea},
  {id: "reduced-live-load", topic: "reduction", level: 2, title: "From area to reduced live load", make: reducedLiveLoad},
  {id: "may-it-be-reduced", topic: "reduction", level: 2, title: "By which rule it may be reduced", make: mayItBeReduced},
];
