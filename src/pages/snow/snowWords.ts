import type {Evaluation} from "../../lib/evaluate.js";
import {deepestDrift, deepestSnowPsf} from "../../lib/snow/deepest.js";
import type {Drift} from "../../lib/snow/drift.js";
import {roofLoadOn, type RoofElementLoad} from "../../lib/snow/roofLoads.js";
import type {RoofSide, SideDrift} from "../../lib/snow/surface.js";
import {decimals, feetAndInches, inches} from "../../lib/units.js";
import type {FigureTable} from "../../components/figure.js";
import {live} from "../../components/live.js";
import {psf} from "../../components/shared/part.js";
import {said} from "../../components/shared/said.js";
import {workingOf} from "../../components/worked/workingOf.js";

/** What the open top level carries of live load and snow together, and how its deck and beams take it. */
export function openTopSentence(result: Evaluation): HTMLElement {
  const {openTop, deck} = result;
  if (!openTop) return said``;
  const {loads} = roofLoadOn(openTop.snow, "deck member");
  const failing = openTop.checks.filter(({verdict}) => verdict === "fails");
  const drift = loads.S >= loads.R ? said`${psf(loads.S)} of snow` : said`${psf(loads.R)} of rain`;
  const counts = said`Up there the live load of the floor, ${psf(loads.L)}, and ${drift} may lie together on the deck member that carries most. By the combinations of the code they count as ${live(psf(openTop.deck.livePsf), () => workingOf("openTop", result))} of live load, where the floors below have ${psf(deck.livePsf)}.`;
  return said`${counts} ${failing.length === 0 ? "The floors' own deck and beams carry that as well." : `Of the checks that change, ${failing.length === 1 ? "one fails" : `${decimals(failing.length)} fail`}: the pieces that do on the floors do not up here.`} Columns and footings carry it too.`;
}

/** What a drift leans on and how the wind builds it, in few words. */
export function driftName({kind}: Drift): string {
  return {leeward: "in the lee of the higher part", windward: "blown against the higher part", parapet: "at the parapet"}[kind];
}

/** Why a drift does not count, in a sentence. */
export function noDriftSentence({kind, state, clearFt}: Drift): string {
  const what = kind === "parapet" ? "the parapet" : "the higher part";
  switch (state) {
    case "snow to the top":
      return `The balanced snow reaches the top of ${what}, so that no snow can drift against it.`;
    case "too little height":
      return `Only ${feetAndInches(inches(clearFt))} of ${what} rises above the balanced snow, less than a fifth of the snow\u2019s own height: no drift is counted.`;
    case "too far":
      return "The higher part stands too far away for its drift to reach this roof.";
    default:
      return "No snow is given, and so no drift.";
  }
}

/** A sentence on the drift that weighs most, or on why there is none. */
export function driftSentence({roofLoads}: Evaluation): string {
  const deepest = deepestDrift(roofLoads);
  if (!deepest) {
    const [first] = roofLoads.drifts;
    return first ? noDriftSentence(first.drift) : "Nothing rises above this roof, so that the wind finds no shelter in which to drop its snow.";
  }
  const {drift} = deepest;
  const cut = drift.wantsFt > drift.clearFt && drift.gapFt === 0
    ? ` It would rise ${feetAndInches(inches(drift.wantsFt))}, but no higher than what it leans on, and spreads out instead.`
    : "";
  return `The drift ${driftName(drift)} begins ${feetAndInches(inches((drift.heightFt * drift.widthFt) / drift.wholeWidthFt))} above the balanced snow and runs out ${feetAndInches(inches(drift.widthFt))} away.${cut}`;
}

/** What the answer to the page's question was, in a sentence. */
export function deepestSentence({roofLoads}: Evaluation): string {
  const {snow} = roofLoads;
  const drift = deepestDrift(roofLoads)?.drift;
  const total = psf(deepestSnowPsf(roofLoads));
  if (drift) return `${total}: ${psf(snow.flatPsf)} lie evenly, and the drift ${driftName(drift)} adds ${psf(drift.peakPsf)} where it is deepest.`;
  if (snow.minimumPsf > snow.flatPsf + snow.rainOnSnowPsf) return `${total}: what lies evenly is less, and the code asks for a minimum on a roof this flat.`;
  return snow.rainOnSnowPsf > 0 ? `${total}: ${psf(snow.flatPsf)} lie evenly, and rain in the snow adds ${psf(snow.rainOnSnowPsf)}.` : `${total}, evenly: nothing on this roof lets it drift.`;
}

const SIDES: Readonly<Record<RoofSide, string>> = {south: "one long side", north: "the other long side", west: "one short side", east: "the other short side"};

/** Every drift with its numbers. */
export function driftTable(drifts: readonly SideDrift[]): FigureTable {
  return {
    columns: ["Drift", "Fetch, ft", "Height, ft", "Clear height, ft", "Width, ft", "Greatest load, psf"],
    rows: drifts.map(({side, drift}) => [
      `${driftName(drift)}, ${SIDES[side]}${drift.state === "counts" ? "" : `: ${drift.state}`}`,
      Number(drift.figure.fetchFt.toFixed(1)), Number(drift.heightFt.toFixed(2)), Number(drift.clearFt.toFixed(2)), Number(drift.widthFt.toFixed(1)), Number(drift.peakPsf.toFixed(1)),
    ]),
  };
}

const CASES = {"none": "none", "balanced": "balanced", "rain on snow": "with rain in it", "minimum": "minimum", "drift": "drifted"} as const;

/** What lies on each element and what governs. */
export function elementTable({roofLoads: {elements, occupancy}}: Evaluation): FigureTable {
  const one = (value: number) => Number(value.toFixed(1));
  return {
    columns: ["Element", "Area, ft\u00b2", occupancy ? "Live load, psf" : "Roof live load, psf", "Snow, psf", "How it lies", "Rain, psf", "Factored, psf", "Governing combination", "Without factors, psf", "and its combination"],
    rows: elements.map(({area, loads, snow, governing, governingService}) => [
      area.element, Math.round(area.tributaryFt2), one(occupancy ? loads.L : loads.Lr), one(loads.S), CASES[snow.case], one(loads.R),
      one(governing.psf), governing.combination.name, one(governingService.psf), governingService.combination.name,
    ]),
  };
}

/** What governs the deck member, for a title. */
export function governsTitle({roofLoads}: Evaluation): string {
  const {loads, governing} = roofLoadOn(roofLoads, "deck member");
  const kind = governing.combination.kind;
  if (!kind) return "Dead load alone governs the roof\u2019s deck";
  const names = {Lr: "Roof live load", S: "Snow", R: "Rain"} as const;
  const beside = loads.L > 0 ? `The live load of its use with ${names[kind].toLowerCase()}` : names[kind];
  return `${beside} governs the roof\u2019s deck: ${decimals(governing.psf)} psf, factored`;
}

/** Rows of the table of combinations of one element. */
export function combinationTable({factored, governing, service, governingService}: RoofElementLoad): FigureTable {
  const rows = (all: RoofElementLoad["factored"], most: RoofElementLoad["governing"], use: string) => all.map(({combination, psf: value}) => [
    combination.name, use, Number(value.toFixed(1)), combination === most.combination ? "governs" : "",
  ]);
  return {columns: ["Combination", "For", "psf", ""], rows: [...rows(factored, governing, "strength"), ...rows(service, governingService, "service")]};
}
