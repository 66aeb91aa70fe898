import type {Design} from "../design/design.js";
import {IN_PER_FT} from "../units.js";

/** A column or another thing on the plan of a level, in: x along the edge from the first column line, y across from the first line of bearings. */
export interface PlanBox {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** What a level of parking lies between, in. */
export interface Site {
  /** Inner faces of the walls along the two edges, and of the columns at the two ends. */
  readonly faces: PlanBox;
  /** Column lines along the edge and across. */
  readonly linesX: readonly number[];
  readonly linesY: readonly number[];
  readonly columns: readonly PlanBox[];
}

/**
 * From the line of the deck's bearings out to the face of the edge beam, in: a deck on a ledge bears on its middle,
 * beyond its joint, so that the floor is wider than its span; in pockets or on top of the beam it bears within the
 * beam's width, and the face stands inside the line.
 */
export function faceBeyondBearingIn({edgeBeam}: Pick<Design, "edgeBeam">): number {
  const {kind, webWidthIn, ledgeProjectionIn, jointGapIn} = edgeBeam;
  if (kind === "ledge") return (jointGapIn + ledgeProjectionIn) / 2;
  return -((kind === "pockets" ? ledgeProjectionIn : webWidthIn) - jointGapIn) / 2;
}

/**
 * Walls and columns of a level. Columns of the edge stand in line with the edge beam, whose ends they carry; those
 * inside on the line between two bays.
 */
export function siteOf(design: Design): Site {
  const {bay, column, edgeBeam} = design;
  const lines = (count: number, stepFt: number) => Array.from({length: count + 1}, (_, i) => i * stepFt * IN_PER_FT);
  const [linesX, linesY] = [lines(bay.baysAlong, bay.beamSpanFt), lines(bay.baysAcross, bay.spanFt)];
  const half = column.sideIn / 2;
  const beyond = faceBeyondBearingIn(design);
  const [length, breadth] = [linesX.at(-1) as number, linesY.at(-1) as number];
  const outward = beyond + edgeBeam.webWidthIn / 2;
  const rowsAt = linesY.map((y, j) => (j === 0 ? -outward : j === bay.baysAcross ? breadth + outward : y));
  return {
    linesX, linesY,
    faces: {x0: half, y0: -beyond, x1: length - half, y1: breadth + beyond},
    columns: rowsAt.flatMap((y) => linesX.map((x) => ({x0: x - half, y0: y - half, x1: x + half, y1: y + half}))),
  };
}
