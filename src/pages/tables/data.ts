import {deckName} from "../../lib/deck/deckName.js";
import {desc, escape, table, type ColumnTable} from "arquero";
import type {LimitName} from "../../lib/deck/limits.js";
import type {SweepCell, SweepRow} from "../../lib/deck/sweep.js";

/** What the reader wants to see of the rows; a part that is undefined hides nothing. */
export interface SweepFilter {
  readonly use?: SweepRow["use"];
  readonly mostDepthIn?: number;
  readonly mostStrands?: number;
  readonly straightOnly: boolean;
  /** Number of the span at which `leastPsf` and `governs` are asked; undefined: at any one of them. */
  readonly spanIndex?: number;
  readonly leastPsf?: number;
  readonly governs?: LimitName;
}

/** By what the rows are ordered: the order in which they came, a fact of the row, or the load at a span by its number. */
export type SortKey = "made" | "toppingIn" | "depthIn" | "weightPsf" | "strands" | "strandPsf" | number;

export interface SweepSort {
  readonly by: SortKey;
  readonly down: boolean;
}

export const AS_MADE: SweepSort = {by: "made", down: false};

/** A load below this reads as none in a table of whole psf. */
export const LEAST_SHOWN_PSF = 1;

/** Cells at one span by what governs them; `undefined` stands for those that carry nothing. */
export interface GovernCount {
  readonly spanFt: number;
  readonly governs: LimitName | undefined;
  readonly count: number;
}

/** A row's name, which no other row of the sweep has. */
export function rowId({member, toppingIn, pattern}: Pick<SweepRow, "member" | "toppingIn" | "pattern">): string {
  return deckName(member, toppingIn, pattern);
}

type Held = SweepRow & {readonly made: number};

/** The rows that the filter lets through, in the order asked for. Rows that are alike keep the order in which they came. */
export function shownRows(rows: readonly SweepRow[], filter: SweepFilter, sort: SweepSort): SweepRow[] {
  if (rows.length === 0) return [];
  const held = table({
    row: rows, made: rows.map((_, index) => index),
    key: rows.map((row, index) => (sort.by === "made" ? index : typeof sort.by === "number" ? (row.cells[sort.by]?.safeLoadPsf ?? 0) : row[sort.by])),
  });
  const passing = held.filter(escape(({row}: {row: Held}) => passes(row, filter)));
  return passing.orderby(sort.down ? desc("key") : "key", "made").array("row") as SweepRow[];
}

function passes(row: SweepRow, {use, mostDepthIn, mostStrands, straightOnly, spanIndex, leastPsf, governs}: SweepFilter): boolean {
  if (use !== undefined && row.use !== use) return false;
  if (mostDepthIn !== undefined && row.depthIn > mostDepthIn) return false;
  if (mostStrands !== undefined && row.strands > mostStrands) return false;
  if (straightOnly && row.profile !== "straight") return false;
  if (leastPsf === undefined && governs === undefined) return true;
  const asked = spanIndex === undefined ? row.cells : row.cells.slice(spanIndex, spanIndex + 1);
  return asked.some((cell) => cell.safeLoadPsf >= (leastPsf ?? 0) && (governs === undefined || cell.governs === governs));
}

/** One line for each cell of the rows: the whole row's facts beside it. */
export function cellTable(rows: readonly SweepRow[], extra: Readonly<Record<string, string>> = {}): ColumnTable {
  const lines = rows.flatMap((row) => row.cells.map((cell) => ({row, cell})));
  const column = (pick: (line: {row: SweepRow; cell: SweepCell}) => unknown) => lines.map(pick);
  return table({
    member: column(({row}) => row.member), kind: column(({row}) => row.use), topping_in: column(({row}) => row.toppingIn),
    pattern: column(({row}) => row.pattern), strand_profile: column(({row}) => row.profile), strands: column(({row}) => row.strands),
    depth_in: column(({row}) => row.depthIn), weight_psf: column(({row}) => round(row.weightPsf, 1)), strand_lb_per_ft2: column(({row}) => round(row.strandPsf, 3)),
    span_ft: column(({cell}) => cell.spanFt), safe_load_psf: column(({cell}) => round(cell.safeLoadPsf, 1)), governs: column(({cell}) => cell.governs),
    camber_when_set_in: column(({cell}) => round(cell.erectionCamberIn, 2)), camber_after_years_in: column(({cell}) => round(cell.longTermCamberIn, 2)),
    ...Object.fromEntries(Object.entries(extra).map(([name, value]) => [name, lines.map(() => value)])),
  });
}

/** How many cells of the rows each limit governs at each span, spans in order, limits as first met. */
export function governCounts(rows: readonly SweepRow[]): GovernCount[] {
  const bySpan = (rows[0]?.cells ?? []).map(({spanFt}) => ({spanFt, counts: new Map<LimitName | undefined, number>()}));
  for (const {cells} of rows) {
    cells.forEach(({governs, safeLoadPsf}, index) => {
      const counts = bySpan[index]?.counts;
      const key = safeLoadPsf < LEAST_SHOWN_PSF ? undefined : governs;
      counts?.set(key, (counts.get(key) ?? 0) + 1);
    });
  }
  return bySpan.flatMap(({spanFt, counts}) => [...counts].map(([governs, count]) => ({spanFt, governs, count})));
}

function round(value: number, places: number): number {
  return Number(value.toFixed(places));
}
