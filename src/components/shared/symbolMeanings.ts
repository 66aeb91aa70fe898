import type {Evaluation} from "../../lib/evaluate.js";
import {reductionWorking} from "../../lib/steps/loads.js";
import type {Working} from "../../lib/step.js";
import {WORKINGS, type WorkingName} from "../../lib/steps/workings.js";

/** What a symbol stands for, and in which workings. */
export interface Meaning {
  readonly words: string;
  /** What is computed there: "drift", "steel of the ledge"; none where the symbol means this nearly everywhere. */
  readonly subjects: readonly string[];
}

/** A symbol of the worked steps with all that it stands for. */
export interface SymbolMeaning {
  /** As the steps spell it: `f_se`. */
  readonly name: string;
  readonly meanings: readonly Meaning[];
  readonly units: readonly string[];
}

/** What each working computes, in two or three words. */
const SUBJECTS: Readonly<Record<WorkingName, string>> = {
  deadLoad: "dead load", demand: "required load", edgeBeamReduction: "live load reduction", section: "section", losses: "losses", timeSteps: "losses in time steps",
  serviceStress: "stress in service", factored: "factored load", strength: "strength in bending", shear: "shear", safeLoad: "safe load", camber: "camber",
  development: "development", sag: "sag", walking: "people walking", topSteel: "steel in the top", holdDown: "strands held down", topping: "topping",
  extraWeight: "weight of the topping", spread: "scatter of camber", beamDepth: "depth of the edge beam", seat: "seat on the ledge", beamLoads: "load of the edge beam",
  beamStrength: "strength of the edge beam", torsion: "torsion", torsionDesign: "steel for torsion", ledgePunching: "punching of the ledge", ledgeSteel: "steel of the ledge",
  pad: "bearing pad", girderDepth: "depth of the girder", girderLoads: "load of the girder", girderStrength: "strength of the girder", girderService: "girder in service",
  girderShear: "shear in the girder", girderTwist: "torsion of the girder", girderCamber: "camber of the girder", snow: "balanced snow", snowDrift: "drift", snowSpan: "snow on a deck member",
  roofLive: "roof live load", rain: "rain", roofCombination: "combinations on the roof", walls: "weight of the walls", endSpandrel: "end spandrel", deckEdge: "edge of the deck", endStrip: "floor beyond the columns", openTop: "open top level",
  roofDemand: "load of the roof", roofFall: "fall of the roof", ponding: "ponding", roofSafeLoad: "safe load of the roof", roofSag: "sag of the roof", diaphragm: "diaphragm",
  story: "story", buildingHeight: "height of the building", ducts: "air", mainFriction: "friction in ducts", wayBack: "return air", mainHeight: "room for the main", parkingModule: "parking module", parkingStalls: "stalls",
  parkingHeight: "height over cars", ramp: "ramp", averageDaylight: "average daylight", noSky: "no-sky line", skyComponent: "sky component",
};

/** A meaning in more workings than these is the symbol's usual one, and needs no place. */
const MOST_SUBJECTS = 3;

/** Symbols that stand for the n-th of a row of alike things: layers, limits. They explain themselves where they stand. */
const NUMBERED = /^w_\d+$/;

/** Rows of strands are many and alike: the first stands for all. */
const FURTHER_ROW = /\brow [2-9]$/;

/** Every symbol that the worked steps of these results use, gathered from the steps themselves, so that none is missing. */
export function symbolMeanings(results: readonly Evaluation[]): SymbolMeaning[] {
  const found = new Map<string, {meanings: Map<string, Set<string>>; units: Set<string>}>();
  for (const {subject, working} of results.flatMap(workingsOf)) {
    for (const [name, {label, units}] of symbolsOf(working)) {
      const entry = found.get(name) ?? {meanings: new Map<string, Set<string>>(), units: new Set<string>()};
      const words = plain(label);
      entry.meanings.set(words, (entry.meanings.get(words) ?? new Set()).add(subject));
      for (const unit of units) entry.units.add(unit);
      found.set(name, entry);
    }
  }
  return [...found]
    .map(([name, {meanings, units}]) => ({name, meanings: fullest(meanings), units: [...units]}))
    .sort((a, b) => a.name.localeCompare(b.name, "en", {sensitivity: "base"}));
}

/** The symbols of one working: in it each means one thing, which the longest of its labels says most fully. */
function symbolsOf({steps}: Working): Map<string, {label: string; units: Set<string>}> {
  const found = new Map<string, {label: string; units: Set<string>}>();
  const add = (name: string, label: string, unit: string) => {
    if (NUMBERED.test(name) || FURTHER_ROW.test(label)) return;
    const entry = found.get(name) ?? {label: "", units: new Set<string>()};
    found.set(name, {label: label.length > entry.label.length ? label : entry.label, units: entry.units.add(unit)});
  };
  for (const step of steps) {
    for (const [name, value] of Object.entries(step.values)) add(name, value.label, value.unit);
    add(step.symbol, step.label, step.unit);
  }
  return found;
}

function workingsOf(result: Evaluation): {readonly subject: string; readonly working: Working}[] {
  return [
    ...(Object.keys(WORKINGS) as WorkingName[]).map((name) => ({subject: SUBJECTS[name], working: WORKINGS[name](result)})),
    ...result.loads.elements.flatMap((element) => element.rooms.map((room) => ({subject: SUBJECTS.edgeBeamReduction, working: reductionWorking(element, room)}))),
  ];
}

/** Meanings without those that another says more fully, whose subjects go with it. */
function fullest(meanings: ReadonlyMap<string, ReadonlySet<string>>): Meaning[] {
  const words = [...meanings.keys()];
  const fuller = (one: string) => words.filter((other) => other !== one && other.startsWith(one)).sort((a, b) => b.length - a.length)[0];
  return words.filter((one) => fuller(one) === undefined).map((one) => {
    const subjects = [...new Set(words.filter((other) => other === one || fuller(other) === one).flatMap((other) => [...meanings.get(other) ?? []]))];
    return {words: one, subjects: subjects.length > MOST_SUBJECTS ? [] : subjects};
  });
}

/** A label without what belongs to one design alone: the room, the governing limit, the bar size. */
function plain(label: string): string {
  return label
    .replace(/ of [^,]+, the heaviest room$/, " of the heaviest room").replace(/; .* governs$/, "").replace(/area of one #\d+/, "area of one bar")
    .replace(/\brow 1$/, "row 1, and so on").replace(/^tension between .* above the soffit$/, "tension in a band of the section's top").replace(/of class [UT]$/, "of the class");
}
