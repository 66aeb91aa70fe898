import {requireChoice, requireNumber} from "../check.js";
import {underCombination, type ColumnCombination} from "./columnCombinations.js";
import type {ColumnLevel} from "./levels.js";
import {levelAdds} from "./takedown.js";

/** How beams sit on a column. */
export interface ColumnSeat {
  /** Where the distance is measured from: the column's face, as on a corbel, or its centre line. */
  readonly from: "face" | "centre";
  /** To the middle of the bearing, in. */
  readonly distanceIn: number;
  /** Side of column for which the beams' ends are cut, in: no column of them has its corbels' bearings nearer than this one. */
  readonly cutForIn?: number;
  /** Beams on one side, or on two that balance each other under dead load. */
  readonly sides: "one" | "two";
}

/** Factored moments at the ends of one storey of a column, kip-in, without sign. */
export interface EndMoments {
  readonly topKipIn: number;
  readonly bottomKipIn: number;
  readonly curvature: "single" | "double";
}

/** Distance from the column's centre line to the beams' bearing, in; throws InputError for a seat that cannot be. */
export function seatEccentricityIn(seat: ColumnSeat, sideIn: number): number {
  requireChoice(seat.from, {path: "seat.from", label: "seat measured from", choices: ["face", "centre"]});
  requireNumber(seat.distanceIn, {path: "seat.distanceIn", label: "distance to the bearing", unit: "in", min: 0, max: 48});
  return (seat.from === "face" ? Math.max(sideIn, seat.cutForIn ?? 0) / 2 : 0) + seat.distanceIn;
}

/**
 * Moment that one level brings to the column, kip-in: its reaction times the eccentricity. With beams on two sides the
 * dead loads balance, and one side's variable load is left. The level's own live load counts unreduced, because a beam
 * feels one floor only.
 */
export function levelMomentKipIn(level: ColumnLevel, seat: ColumnSeat, sideIn: number, combination: ColumnCombination): number {
  const eccentricityIn = seatEccentricityIn(seat, sideIn);
  const adds = levelAdds(level);
  if (requireChoice(seat.sides, {path: "seat.sides", label: "sides with beams", choices: ["one", "two"]}) === "one") {
    return underCombination(adds, combination) * eccentricityIn;
  }
  return (underCombination({...adds, deadKip: 0}, combination) / 2) * eccentricityIn;
}

/**
 * Moments at the ends of each storey, top first. Where the column runs through a level, half the level's moment goes up
 * and half down (common practice for storeys of like height); at the top, and where the column above stands on a
 * splice, all goes down. The foot is taken as a hinge.
 *
 * Beams on one side turn every level the same way, so that each storey bends to both sides. Live load on alternate
 * sides can bend a storey between two pairs of beams to one side, the worse of the two.
 */
export function endMoments(levels: readonly ColumnLevel[], seat: ColumnSeat, sideIn: number, combination: ColumnCombination): EndMoments[] {
  const moments = levels.map((level) => levelMomentKipIn(level, seat, sideIn, combination));
  const passesUp = levels.map((level, i) => i > 0 && !level.spliceAbove);
  return levels.map((_, i) => ({
    topKipIn: (moments[i] as number) * (passesUp[i] ? 0.5 : 1),
    bottomKipIn: passesUp[i + 1] ? (moments[i + 1] as number) / 2 : 0,
    curvature: seat.sides === "one" ? "double" : "single",
  }));
}
