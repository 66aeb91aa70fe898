import type {Evaluation} from "../../lib/evaluate.js";
import {reductionWorking} from "../../lib/steps/loads.js";
import type {Working} from "../../lib/step.js";
import {WORKINGS} from "../../lib/steps/workings.js";

/** A symbol of the worked steps with all that it stands for. */
export interface SymbolMeaning {
  /** As the steps spell it: `f_se`. */
  readonly name: string;
  readonly meanings: readonly string[];
  readonly units: readonly string[];
}

/** Symbols that stand for the n-th of a row of alike things: layers, limits. They explain themselves where they stand. */
const NUMBERED = /^w_\d+$/;

/** Rows of strands are many and alike: the first stands for all. */
const FURTHER_ROW = /\brow [2-9]$/;

/** Every symbol that the worked steps of these results use, gathered from the steps themselves, so that none is missing. */
export function symbolMeanings(results: readonly Evaluation[]): SymbolMeaning[] {
  const found = new Map<string, {meanings: Set<string>; units: Set<string>}>();
  const add = (name: string, label: string, unit: string) => {
    if (NUMBERED.test(name) || FURTHER_ROW.test(label)) return;
    const entry = found.get(name) ?? {meanings: new Set(), units: new Set()};
    entry.meanings.add(plain(label));
    entry.units.add(unit);
    found.set(name, entry);
  };
  for (const working of results.flatMap(workingsOf)) {
    for (const step of working.steps) {
      for (const [name, value] of Object.entries(step.values)) add(name, value.label, value.unit);
      add(step.symbol, step.label, step.unit);
    }
  }
  return [...found]
    .map(([name, {meanings, units}]) => ({name, meanings: fullest([...meanings]), units: [...units]}))
    .sort((a, b) => a.name.localeCompare(b.name, "en", {sensitivity: "base"}));
}

function workingsOf(result: Evaluation): Working[] {
  return [
    ...Object.values(WORKINGS).map((working) => working(result)),
    ...result.loads.elements.flatMap((element) => element.rooms.map((room) => reductionWorking(element, room))),
  ];
}

/** Meanings without those that another says more fully. */
function fullest(meanings: readonly string[]): string[] {
  return meanings.filter((meaning) => !meanings.some((other) => other !== meaning && other.startsWith(meaning)));
}

/** A label without what belongs to one design alone: the room, the governing limit, the bar size. */
function plain(label: string): string {
  return label
    .replace(/ of [^,]+, the heaviest room$/, " of the heaviest room").replace(/; .* governs$/, "").replace(/area of one #\d+/, "area of one bar")
    .replace(/\brow 1$/, "row 1, and so on").replace(/of class [UT]$/, "of the class");
}
