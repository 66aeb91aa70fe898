import {MEASURE_LIST, type MeasureEntry} from "./measures/measureList.js";
import type {MeasureKey} from "./measures/schemeMeasures.js";

/** What a row says of its scheme besides the measures. Of what is not there the text is empty. */
export interface RowHead {
  /** The scheme's number in its brief; -1 for a design that is none of its schemes. */
  readonly index: number;
  readonly span_ft: number;
  readonly beam_span_ft: number;
  readonly bays_across: number;
  readonly bays_along: number;
  /** Field-topped tees, pretopped tees or planks. */
  readonly kind: string;
  /** Member, topping and strands, `12DT32+2 188-S`; empty where no deck of the kind carries the span. */
  readonly deck: string;
  readonly edge: string;
  readonly girder: string;
  /** How the roof is counted: as two `loads`, as schemes have it; `none` where the highest floor is open. */
  readonly roof: string;
  /** What allows the deck no more load. */
  readonly deck_governs: string;
  /** Of all parts the one that is nearest to its limit, or beyond it most; and that limit's check. */
  readonly governs_part: string;
  readonly governs: string;
  /** Names of the checks that fail, joined by "; "; why there is no scheme where none can be made. */
  readonly fails: string;
}

/** One scheme as plain numbers and words: a line of a file, or a mark of a chart. Measures stand under their columns' names. */
export type SchemeRow = RowHead & {readonly [column: string]: number | string | undefined};

/** A measure of a row; undefined where it is not known. */
export function measureOf(row: SchemeRow, {column}: Pick<MeasureEntry, "column">): number | undefined {
  const value = row[column];
  return typeof value === "number" ? value : undefined;
}

/** Whether a scheme could be made at all. */
export function isMade({deck}: Pick<SchemeRow, "deck">): boolean {
  return deck !== "";
}

/** Whether a scheme was made and all its checks hold. */
export function holds({deck, fails}: Pick<SchemeRow, "deck" | "fails">): boolean {
  return deck !== "" && fails === "";
}

/** The measure of a name. */
export function measureNamed(key: MeasureKey): MeasureEntry {
  return MEASURE_LIST.find((entry) => entry.key === key) as MeasureEntry;
}

/** A measure of a row by its name; undefined where it is not known. */
export function valueOf(row: SchemeRow, key: MeasureKey): number | undefined {
  return measureOf(row, measureNamed(key));
}

/** Whether two rows are of the same building, in whatever runs they were made. */
export function sameScheme(one: SchemeRow, other: SchemeRow): boolean {
  return (["span_ft", "beam_span_ft", "bays_across", "bays_along", "kind", "deck", "edge", "girder"] as const).every((key) => one[key] === other[key]);
}

/** The checks that fail, by name; none where none fails or no scheme could be made. */
export function failsOf({deck, fails}: Pick<SchemeRow, "deck" | "fails">): string[] {
  return deck === "" || fails === "" ? [] : fails.split("; ");
}

/** Whether a deck's strands are depressed at midspan. */
export function isDepressed({deck}: Pick<SchemeRow, "deck">): boolean {
  return /-D\d*$/.test(deck);
}

/** A deck's member without topping and strands. */
export function memberOf({deck}: Pick<SchemeRow, "deck">): string {
  return deck.split(/[+ ]/)[0] ?? "";
}

/** Width of the building, ft. */
export function widthFt({span_ft, bays_across}: Pick<SchemeRow, "span_ft" | "bays_across">): number {
  return span_ft * bays_across;
}

/** Things by a key of theirs, in the order in which the keys first occur. */
export function groups<T, K>(things: readonly T[], keyOf: (thing: T) => K): Map<K, T[]> {
  const found = new Map<K, T[]>();
  for (const thing of things) {
    const list = found.get(keyOf(thing));
    if (list) list.push(thing);
    else found.set(keyOf(thing), [thing]);
  }
  return found;
}
