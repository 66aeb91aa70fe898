import {nonDominated, type Values} from "../deck/dominance.js";
import type {MeasureEntry} from "./measures/measureList.js";
import {MEASURE_LIST} from "./measures/measureList.js";
import type {MeasureKey} from "./measures/schemeMeasures.js";
import {failsOf, holds, isMade, measureOf, type SchemeRow} from "./schemeRow.js";

/** A deck span by a beam span, with the best of its schemes. */
export interface BayCell {
  readonly spanFt: number;
  readonly beamSpanFt: number;
  /** The best that holds; where none does, the one that fails least; undefined where none can be made. */
  readonly best: SchemeRow | undefined;
  readonly holds: boolean;
  /** What fails in the best, or why none can be made. */
  readonly fails: string;
  /** Schemes tried, and of these all whose checks hold. */
  readonly tried: number;
  readonly holding: number;
}

/** Least and greatest that a measure may be; what is left out is free. */
export type Range = readonly [least: number | undefined, most: number | undefined];
export type Ranges = ReadonlyMap<MeasureKey, Range>;

/** Measures by which schemes can be judged: totals, of which less or more is better, with or without columns; cost only where it is known. */
export function judged(columns: boolean, priced = false): MeasureEntry[] {
  const without = new Set(MEASURE_LIST.flatMap(({withoutColumns}) => withoutColumns ?? []));
  return MEASURE_LIST.filter(({better, partOf, needsColumns, key, group}) =>
    better !== "neither" && partOf === undefined && (priced || group !== "cost") && (columns ? !without.has(key) : !needsColumns));
}

/** A measure as a number of which less is better; undefined where it is not known. */
export function lessIsBetter(row: SchemeRow, entry: MeasureEntry): number | undefined {
  const value = measureOf(row, entry);
  return value === undefined ? undefined : entry.better === "more" ? -value : value;
}

/** Whether a scheme's measures lie within ranges; one that is not known lies in none. */
export function isWithin(row: SchemeRow, ranges: Ranges): boolean {
  for (const [key, [least, most]] of ranges) {
    const entry = MEASURE_LIST.find((one) => one.key === key);
    const value = entry && measureOf(row, entry);
    if (value === undefined || (least !== undefined && value < least) || (most !== undefined && value > most)) return false;
  }
  return true;
}

/**
 * The best of the schemes in every cell by a measure; of equals the one with the lower number. Made for rows that mostly
 * come one after another: a cell that no new row falls into is the very same again, so that neither is it judged anew nor
 * need it be drawn anew. Rows that do not begin with those of the last call begin anew.
 */
export function growingCells(): (rows: readonly SchemeRow[], entry: MeasureEntry) => BayCell[] {
  let known: readonly SchemeRow[] = [];
  let by: MeasureEntry | undefined;
  const lists = new Map<string, SchemeRow[]>();
  const cells = new Map<SchemeRow[], BayCell>();
  return (rows, entry) => {
    const grown = rows.length >= known.length && known.every((row, i) => row === rows[i]);
    if (!grown) lists.clear();
    if (!grown || by !== entry) cells.clear();
    for (const row of grown ? rows.slice(known.length) : rows) {
      const key = `${row.span_ft} ${row.beam_span_ft}`;
      const list = lists.get(key);
      if (!list) lists.set(key, [row]);
      else {
        list.push(row);
        cells.delete(list);
      }
    }
    [known, by] = [rows, entry];
    return [...lists.values()].map((list) => {
      const cell = cells.get(list) ?? cellOf(list, entry);
      cells.set(list, cell);
      return cell;
    });
  };
}

function cellOf(list: readonly SchemeRow[], entry: MeasureEntry): BayCell {
  const first = list[0] as SchemeRow;
  const good = list.filter(holds);
  const best = bestOf(good.length > 0 ? good : leastFailing(list.filter(isMade)), entry);
  return {
    spanFt: first.span_ft, beamSpanFt: first.beam_span_ft, best, holds: good.length > 0, tried: list.length, holding: good.length,
    fails: good.length > 0 ? "" : best ? best.fails : first.fails,
  };
}

function bestOf(rows: readonly SchemeRow[], entry: MeasureEntry): SchemeRow | undefined {
  let best: SchemeRow | undefined;
  for (const row of rows) {
    if (!best) best = row;
    else {
      const [a, b] = [lessIsBetter(row, entry) ?? Infinity, lessIsBetter(best, entry) ?? Infinity];
      if (a < b || (a === b && row.index < best.index)) best = row;
    }
  }
  return best;
}

function leastFailing(rows: readonly SchemeRow[]): SchemeRow[] {
  const counts = rows.map((row) => failsOf(row).length);
  const least = Math.min(...counts);
  return rows.filter((_, i) => counts[i] === least);
}

/** The cell whose scheme holds and is best by the measure; undefined where none holds. */
export function bestCell(cells: readonly BayCell[], entry: MeasureEntry): BayCell | undefined {
  return bestOfCells(cells.filter(({holds: good}) => good), entry);
}

/** The cell whose scheme fails in the fewest checks, and of these is best by the measure. */
export function leastFailingCell(cells: readonly BayCell[], entry: MeasureEntry): BayCell | undefined {
  const made = cells.flatMap((cell) => (cell.best ? [{cell, fails: failsOf(cell.best).length}] : []));
  const least = Math.min(...made.map(({fails}) => fails));
  return bestOfCells(made.filter(({fails}) => fails === least).map(({cell}) => cell), entry);
}

function bestOfCells(cells: readonly BayCell[], entry: MeasureEntry): BayCell | undefined {
  const value = (cell: BayCell) => (cell.best && lessIsBetter(cell.best, entry)) ?? Infinity;
  let best: BayCell | undefined;
  for (const cell of cells) if (!best || value(cell) < value(best)) best = cell;
  return best;
}

/**
 * The schemes that no other beats: of those whose checks hold and whose measures are known, the ones for which no other is
 * at least as good in all measures and better in one. Of equals the one with the lowest number counts.
 */
export function unbeaten(rows: readonly SchemeRow[], entries: readonly MeasureEntry[]): SchemeRow[] {
  const judgedRows = rows.filter((row) => holds(row) && entries.every((entry) => measureOf(row, entry) !== undefined));
  if (entries.length === 0) return [];
  const valuesOf = (row: SchemeRow): Values => entries.map((entry) => lessIsBetter(row, entry) as number);
  return nonDominated(judgedRows, valuesOf, (a, b) => a.index - b.index);
}

/** Checks that fail among schemes, by how many of them each stops, most first. */
export function failCounts(rows: readonly SchemeRow[]): (readonly [id: string, count: number])[] {
  const counts = new Map<string, number>();
  for (const row of rows) for (const id of failsOf(row)) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || a[0].localeCompare(b[0]));
}
