import type {ColumnsResult} from "./columns/columnsResult.js";
import type {Evaluation} from "./evaluate.js";
import {QUANTITIES, type QuantityName} from "./quantities.js";
import {decimals, feetAndInches, IN_PER_FT} from "./units.js";

/** How a change of a quantity reads. */
interface Reading {
  /** What there is more or less of: "ceiling" in "11 in less ceiling". */
  readonly of: string;
  /** The least change that is worth a word, in the quantity's own unit; changes are ranked by how many of these they are. */
  readonly notable: number;
  /** The size of a change as text; the size is never negative. */
  readonly text: (size: number) => string;
}

/** A length to the quarter of an inch, as it is said: `11 1/2 in`, from a foot on `2'-6"`. */
const length = (sizeIn: number): string => (sizeIn >= IN_PER_FT ? feetAndInches(sizeIn) : feetAndInches(sizeIn).replace('"', " in"));
/** With so many decimals and a unit. */
const to = (places: number, unit: string) => (size: number): string => `${decimals(size, places)} ${unit}`;
/** Of things that are counted. */
const count = (size: number): string => decimals(size);

/**
 * What is said of a change, by quantity. The inputs themselves have no place here: the hand that moves one sees it. Nor
 * have columns, which take too long to follow a hand.
 */
const READINGS: Partial<Record<QuantityName, Reading>> = {
  "ceiling, in": {of: "ceiling", notable: 1, text: length},
  "glass, in": {of: "glass", notable: 1, text: length},
  "safe load, psf": {of: "safe load", notable: 2, text: to(0, "psf")},
  "demand, psf": {of: "load to carry", notable: 2, text: to(0, "psf")},
  "camber when set, in": {of: "camber when set", notable: 0.1, text: to(2, "in")},
  "camber after years, in": {of: "camber after years", notable: 0.1, text: to(2, "in")},
  "effective prestress, ksi": {of: "prestress left", notable: 3, text: to(1, "ksi")},
  "piece, tons": {of: "weight a piece", notable: 0.5, text: to(1, "tons")},
  "pieces": {of: "pieces", notable: 1, text: count},
  "topping average, in": {of: "topping on average", notable: 0.1, text: to(2, "in")},
  "topping of a bay, yd3": {of: "topping a bay", notable: 1, text: to(1, "yd3")},
  "joint step, in": {of: "step at the joint", notable: 0.1, text: to(2, "in")},
  "beam depth, in": {of: "beam depth", notable: 2, text: length},
  "beam moment, kip-ft": {of: "moment in the edge beam", notable: 20, text: to(0, "kip-ft")},
  "beam twist, kip-ft": {of: "torsion in the edge beam", notable: 10, text: to(0, "kip-ft")},
  "beam weight, kip": {of: "weight of the edge beam", notable: 2, text: to(1, "kip")},
  "seat left, in": {of: "seat left", notable: 0.25, text: length},
  "girder below deck, in": {of: "girder below the deck", notable: 2, text: length},
  "girder moment, kip-ft": {of: "moment in the girder", notable: 40, text: to(0, "kip-ft")},
  "girder reaction, kip": {of: "girder reaction", notable: 5, text: to(0, "kip")},
  "clear under girder, in": {of: "height under the girder", notable: 1, text: length},
  "deepest snow, psf": {of: "snow where it is deepest", notable: 2, text: to(0, "psf")},
  "roof safe load, psf": {of: "safe load of the roof", notable: 2, text: to(0, "psf")},
  "duct velocity, ft/min": {of: "speed in the main duct", notable: 50, text: to(0, "ft/min")},
  "stalls": {of: "stalls", notable: 1, text: count},
  "clear over cars, in": {of: "height over cars", notable: 1, text: length},
  "daylit, %": {of: "of the floor daylit", notable: 1, text: to(0, "%")},
  "average daylight, %": {of: "average daylight", notable: 0.1, text: to(1, "%")},
};

/** Things that are counted are fewer, not less; one alone has a name of its own. */
const COUNTED: Partial<Record<QuantityName, {readonly one: string; readonly many: string}>> = {
  "pieces": {one: "piece", many: "pieces"},
  "stalls": {one: "stall", many: "stalls"},
};

/** The quantities that a change can be told of. */
export const TOLD = Object.keys(READINGS) as readonly QuantityName[];

/** How many differences one sentence holds; more are not read while a hand moves. */
const MOST = 3;

const NO_COLUMNS: ColumnsResult = {columns: [], unsized: [], checks: []};

/**
 * What a change of the design has done, in one line: "11 in less ceiling, 40 psf more safe load, 1 more check fails".
 *
 * @param wanted - the quantities that matter here, such as those that a page shows; the largest few changes among them
 * are named, each measured by the least that is worth a word
 * @returns an empty text where nothing worth a word has changed
 */
export function differences(before: Evaluation, now: Evaluation, wanted: readonly QuantityName[] = TOLD): string {
  const changes = [...new Set(wanted)].flatMap((name) => {
    const reading = READINGS[name];
    const [from, to] = [before, now].map((evaluation) => QUANTITIES[name](evaluation, () => NO_COLUMNS));
    if (!reading || from === undefined || to === undefined) return [];
    const weight = Math.abs(to - from) / reading.notable;
    return weight >= 1 ? [{weight, words: change(name, reading, to - from)}] : [];
  });
  const largest = changes.sort((a, b) => b.weight - a.weight).slice(0, MOST).map(({words}) => words);
  return [...largest, ...checksChange(before, now)].join(", ");
}

/** "11 in less ceiling", "2 fewer stalls", "1 more piece". */
function change(name: QuantityName, {of, text}: Reading, by: number): string {
  const counted = COUNTED[name];
  if (!counted) return `${text(Math.abs(by))} ${by > 0 ? "more" : "less"} ${of}`;
  return `${text(Math.abs(by))} ${by > 0 ? "more" : "fewer"} ${Math.abs(by) === 1 ? counted.one : counted.many}`;
}

/** What has become of the checks: how many more fail, or fewer, or none any more. */
function checksChange(before: Evaluation, now: Evaluation): string[] {
  const [had, has] = [before, now].map(({checks}) => checks.filter(({verdict}) => verdict === "fails").length) as [number, number];
  if (had === has) return [];
  if (has === 0) return ["no check fails any more"];
  const by = Math.abs(has - had);
  const word = has > had ? "more" : "fewer";
  return [by === 1 ? `1 ${word} check fails` : `${by} ${word} checks fail`];
}
