import {desc, escape, table, type ColumnTable} from "arquero";
import type {SweepCell, SweepRow} from "../../lib/deck/sweep.js";
import type {SweepFilter, SweepSort} from "./data.js";

/*
 * What the table library does for the page. It weighs as much as the charts, so it is fetched once the reader filters,
 * orders or saves: rows as they come need none of it.
 */

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

function round(value: number, places: number): number {
  return Number(value.toFixed(places));
}
