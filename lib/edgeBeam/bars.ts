import type {Bar} from "../materials/reinforcement.js";

/** Bars in the bottom of a beam, in rows from the soffit up. */
export interface BarLayout {
  readonly bar: Bar;
  readonly count: number;
  readonly areaIn2: number;
  /** Bars in each row, lowest first. */
  readonly rows: readonly number[];
  /** Height of each row above the soffit, in. */
  readonly rowHeightsIn: readonly number[];
  /** Height of the bars' centroid above the soffit, in. */
  readonly centroidIn: number;
}

/** Diameter of the stirrups that are assumed around the bars, in: #4. */
export const STIRRUP_DIAMETER_IN = 0.5;
/** Minimum clear distance between bars, in, if the bar is not thicker: 1 in (ACI 318-19 25.2.1), 1 in between rows (25.2.2). */
const CLEAR_IN = 1;

/** The most bars that fit in one row between the stirrup's legs; in a beam with a ledge the stirrup stands in the web. */
export function barsPerRow(widthIn: number, coverIn: number, bar: Bar): number {
  const roomIn = widthIn - 2 * (coverIn + STIRRUP_DIAMETER_IN);
  const pitchIn = bar.diameterIn + Math.max(CLEAR_IN, bar.diameterIn);
  return Math.max(0, Math.floor((roomIn - bar.diameterIn) / pitchIn + 1e-9) + 1);
}

/** Bars placed from the soffit up; rows hold as many as fit in the width of the web. */
export function barLayout(count: number, widthIn: number, coverIn: number, bar: Bar): BarLayout {
  const perRow = Math.max(1, barsPerRow(widthIn, coverIn, bar));
  const firstIn = coverIn + STIRRUP_DIAMETER_IN + bar.diameterIn / 2;
  const rows: number[] = [];
  const rowHeightsIn: number[] = [];
  let momentIn = 0;
  for (let left = count; left > 0; left -= perRow) {
    const inRow = Math.min(perRow, left);
    const heightIn = firstIn + rows.length * (bar.diameterIn + CLEAR_IN);
    rows.push(inRow);
    rowHeightsIn.push(heightIn);
    momentIn += inRow * heightIn;
  }
  return {bar, count, areaIn2: count * bar.areaIn2, rows, rowHeightsIn, centroidIn: momentIn / count};
}
