import type {Design} from "../design/design.js";

/** Joint between a column's face and the end of a beam on its corbel, in (common practice). */
export const BEAM_END_JOINT_IN = 1;

/** The part of a design that says where its beams end. */
export type BeamEnds = {readonly column: Pick<Design["column"], "sideIn" | "seatIn">};

/**
 * From a column line to the end of a girder or an edge beam, in: half the side of the columns for which the beams are
 * cut, and a joint. Beams of one building are cut alike, so a narrower column has a wider joint.
 */
export function columnLineToBeamEndIn({column}: BeamEnds): number {
  return column.sideIn / 2 + BEAM_END_JOINT_IN;
}

/** From a column line to the middle of a beam's bearing on its corbel, in: the same at each column, whatever its own side. */
export function columnLineToBearingIn({column}: BeamEnds): number {
  return column.sideIn / 2 + column.seatIn;
}
