import {requireNumber} from "../check.js";
import type {ColumnLoadKip, ColumnMomentKipIn} from "./columnCombinations.js";

/** Where beams bear on the corbels of a column. */
export interface CorbelSeat {
  /** To the middle of the bearing, in, from the face of a column whose side is the one that the beams' ends are cut for. */
  readonly seatIn: number;
  /** That side, in. */
  readonly cutForIn: number;
}

/** What one level brings to a column, unfactored: what bears on one side's corbel alone, and the torsion that bends it across the beams. */
export interface LevelBending {
  /** Reactions that no other balances, at the corbel's eccentricity: bending along the beams. */
  readonly along: ColumnLoadKip;
  /** Torsion at the beams' ends: bending across the beams, in the direction of the deck's span. */
  readonly across: ColumnMomentKipIn;
}

/** Whether the levels above and below a story bend it to both sides, as where all turn the same way, or to one side. */
export type Curvature = "single" | "double";

/** Where live load may stand, and how it bends the column. */
export interface LivePattern {
  /** Where the live load stands, within a sentence. */
  readonly words: string;
  /** As {@link FirstColumnInput.levels} has them, top first. */
  readonly levels: readonly LevelBending[];
  readonly curvature: {readonly along: Curvature; readonly across: Curvature};
}

/** All that bends a column. */
export interface ColumnBending {
  readonly seat: CorbelSeat;
  /** The column must carry each. */
  readonly patterns: readonly LivePattern[];
}

/**
 * From a column's center line to the middle of a beam's bearing on its corbel, in: beams are cut for columns of one side,
 * so a narrower column's corbel reaches out to the same place. A wider column is assumed to have beams cut to suit it.
 *
 * @throws InputError if the seat is outside 0 to 48 in
 */
export function corbelLeverIn({seatIn, cutForIn}: CorbelSeat, sideIn: number): number {
  requireNumber(seatIn, {path: "seat.seatIn", label: "distance to the bearing", unit: "in", min: 0, max: 48});
  return Math.max(sideIn, cutForIn) / 2 + seatIn;
}
