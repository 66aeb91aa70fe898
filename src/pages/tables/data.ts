import {deckName} from "../../lib/deck/deckName.js";
import type {LimitName} from "../../lib/deck/limits.js";
import type {SweepRow} from "../../lib/deck/sweep.js";

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

/** Whether a filter and an order leave the rows as they came. */
export function asTheyCame({straightOnly, spanIndex: _, ...asked}: SweepFilter, {by}: SweepSort): boolean {
  return by === "made" && !straightOnly && Object.values(asked).every((value) => value === undefined);
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
