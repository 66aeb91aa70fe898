import {requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import type {Bar} from "../materials/reinforcement.js";

/** Which faces of a column hold its bars: all four, or the two that bending puts in compression and in tension. */
export type BarFaces = "all" | "two";

/** What the places of a column's bars depend on. */
export interface ColumnBarsInput {
  /** Side along the axis of bending, in. */
  readonly widthIn: number;
  /** Side in the direction of bending, in. */
  readonly depthIn: number;
  readonly bar: Bar;
  /** All bars of the section; even, four at least. */
  readonly count: number;
  readonly faces: BarFaces;
  /** Concrete outside the ties, in. */
  readonly coverIn: number;
}

/** The bars of a column in rows, nearest the compression face first. */
export interface ColumnBars {
  readonly rows: readonly {readonly depthIn: number; readonly count: number}[];
  /** Every bar's center for a drawing: from the left side and from the compression face, in. */
  readonly places: readonly {readonly xIn: number; readonly yIn: number}[];
  /** Smallest clear distance between two neighbors, in. */
  readonly clearIn: number;
  /** Clear distance between neighbors in the compression face and in the sides, in. */
  readonly clearInFaceIn: number;
  readonly clearInSideIn: number;
}

/**
 * Ties are #3 around bars up to #10, #4 around larger ones (ACI 318-19 25.7.2.2).
 *
 * The diameter is all that the places of the bars need: 3/8 or 1/2 in.
 */
export function leastTie(bar: Bar): {readonly size: "#3" | "#4"; readonly diameterIn: number} {
  return bar.diameterIn <= LARGEST_UNDER_NO3_IN ? {size: "#3", diameterIn: 0.375} : {size: "#4", diameterIn: 0.5};
}

/** Diameter of a #10 bar, in: the largest that #3 ties may hold. */
const LARGEST_UNDER_NO3_IN = 1.27;

/** Minimum clear distance between the bars of a column, in: 1.5 in or 1.5 diameters (ACI 318-19 25.2.3, with 1 in aggregate at most). */
export function leastClearIn(bar: Bar): number {
  return Math.max(1.5, 1.5 * bar.diameterIn);
}

/**
 * Places bars evenly around a column or along two of its faces.
 *
 * On all faces the corners come first; the other bars are shared by pairs in proportion to the sides' lengths, and an
 * odd pair goes to the sides beside the axis of bending, where it helps least.
 *
 * @throws InputError if there are fewer than four bars (ACI 318-19 10.7.3.1), an odd number, or so many that they touch
 */
export function placeBars(input: ColumnBarsInput): ColumnBars {
  const {widthIn, depthIn, bar, count, faces, coverIn} = input;
  requireNumber(count, {path: "count", label: "bars", unit: "", min: 4, max: 100, integer: true});
  if (count % 2 !== 0) throw new InputError({path: "count", label: "bars", value: count, allowed: "an even number, 4 or more"});
  const edgeIn = coverIn + leastTie(bar).diameterIn + bar.diameterIn / 2;
  const acrossIn = widthIn - 2 * edgeIn;
  const alongIn = depthIn - 2 * edgeIn;
  const pairs = (count - 4) / 2;
  const facePairs = faces === "two" ? pairs : Math.ceil((pairs * acrossIn) / (acrossIn + alongIn) - 0.5 - 1e-9);
  const perFace = 2 + facePairs;
  const sideRows = pairs - facePairs;
  const clearInFaceIn = acrossIn / (perFace - 1) - bar.diameterIn;
  const clearInSideIn = alongIn / (sideRows + 1) - bar.diameterIn;
  const clearIn = Math.min(clearInFaceIn, clearInSideIn);
  if (!(acrossIn > 0 && alongIn > 0 && clearIn > 0)) {
    throw new InputError({
      path: "count", label: "bars", value: `${count} ${bar.size}`, allowed: `bars that do not touch in ${widthIn} x ${depthIn} in with ${coverIn} in cover`,
    });
  }
  const rows = Array.from({length: sideRows + 2}, (_, i) => ({
    depthIn: edgeIn + (i * alongIn) / (sideRows + 1), count: i === 0 || i === sideRows + 1 ? perFace : 2,
  }));
  const places = rows.flatMap((row) => Array.from({length: row.count}, (_, i) => ({
    xIn: edgeIn + (i * acrossIn) / (row.count - 1), yIn: row.depthIn,
  })));
  return {rows, places, clearIn, clearInFaceIn, clearInSideIn};
}

/** Ties of a column. */
export interface ColumnTies {
  readonly size: "#3" | "#4";
  readonly diameterIn: number;
  /** Maximum spacing, in: 16 bar diameters, 48 tie diameters, or the smaller side of the column (ACI 318-19 25.7.2.1). */
  readonly spacingIn: number;
  /** Bars besides those at the corners that a crosstie must support, in one tie set (ACI 318-19 25.7.2.3). */
  readonly heldBars: number;
}

/** Clear distance to a supported bar beyond which a bar needs lateral support itself, in (ACI 318-19 25.7.2.3). */
const UNHELD_CLEAR_IN = 6;

/** Minimum ties of a column: size, maximum spacing, and how many bars between the corners need a crosstie. */
export function columnTies(input: ColumnBarsInput, bars: ColumnBars): ColumnTies {
  const tie = leastTie(input.bar);
  const spacingIn = Math.min(16 * input.bar.diameterIn, 48 * tie.diameterIn, input.widthIn, input.depthIn);
  const inFace = (bars.rows[0]?.count ?? 2) - 2;
  const inSide = bars.rows.length - 2;
  const heldBars = 2 * (heldBetweenCorners(inFace, bars.clearInFaceIn) + heldBetweenCorners(inSide, bars.clearInSideIn));
  return {...tie, spacingIn, heldBars};
}

/** Bars of one face that need lateral support: every other one, or all where they are more than 6 in apart. */
function heldBetweenCorners(between: number, clearIn: number): number {
  return clearIn > UNHELD_CLEAR_IN ? between : Math.floor(between / 2);
}
