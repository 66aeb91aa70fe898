import type {Design} from "../design/design.js";
import {IN_PER_FT, inches} from "../units.js";

/** The floor that the first main of a building serves, in plan, in from the corner of the first column lines. */
export interface AirZone {
  /** Rows of bays side by side, and the first of them from the first long side on, from 0. */
  readonly rows: number;
  readonly firstRow: number;
  /** Along the building, from its first short side. */
  readonly lengthIn: number;
  /** Across, between the column lines that bound it. */
  readonly y0In: number;
  readonly y1In: number;
}

/** The stretch of another main of the same floor. */
export interface OtherMain {
  readonly x0In: number;
  readonly x1In: number;
  readonly y0In: number;
  readonly y1In: number;
}

/** Other mains that are listed at most: a drawing can show no more. */
const MOST_LISTED = 60;

/** Floor whose air one main brings, as the design states it, ft2; of whole bays no more than the building has. */
export function servedFloorFt2({air, bay, services}: Pick<Design, "air" | "bay" | "services">): number {
  if (air.serves === "floor") return services.servedFt2;
  return Math.min(air.baysServed, bay.baysAlong) * bay.beamSpanFt * Math.min(air.rows, bay.baysAcross) * bay.spanFt;
}

/**
 * Where that floor lies: so many rows of bays side by side, and along them from the first short side on as far as its
 * area reaches. Where the rows that the design states are too few for the area, it takes as many as it needs; what is
 * more than the building has is all of it.
 */
export function airZone(design: Pick<Design, "air" | "bay" | "services">): AirZone {
  const {air, bay} = design;
  const servedFt2 = servedFloorFt2(design);
  const lengthFt = bay.beamSpanFt * bay.baysAlong;
  const needed = Math.ceil(servedFt2 / (bay.spanFt * lengthFt) - 1e-9);
  const rows = Math.min(bay.baysAcross, Math.max(1, air.rows, needed));
  const firstRow = firstRowOf(design, rows);
  return {
    rows, firstRow,
    lengthIn: Math.min(lengthFt, servedFt2 / (rows * bay.spanFt)) * IN_PER_FT,
    y0In: inches(firstRow * bay.spanFt), y1In: inches((firstRow + rows) * bay.spanFt),
  };
}

/** The rows around the building's middle, around a stated place, or from the first long side on. */
function firstRowOf({air, bay}: Pick<Design, "air" | "bay">, rows: number): number {
  const last = bay.baysAcross - rows;
  if (air.place === "middle") return Math.floor(last / 2);
  if (air.place === "across") return Math.max(0, Math.min(last, Math.floor(air.acrossFt / bay.spanFt - (rows - 1) / 2)));
  return 0;
}

/** Stretches of the other mains that serve the rest of the floor, each in the middle of its own; a drawing shows where they lie. */
export function otherMains({bay}: Pick<Design, "bay">, zone: AirZone): OtherMain[] {
  const lengthIn = inches(bay.beamSpanFt * bay.baysAlong);
  const groups: [number, number][] = [];
  for (let row = zone.firstRow; row > 0; row -= zone.rows) groups.push([Math.max(0, row - zone.rows), row]);
  groups.push([zone.firstRow, zone.firstRow + zone.rows]);
  for (let row = zone.firstRow + zone.rows; row < bay.baysAcross; row += zone.rows) groups.push([row, Math.min(bay.baysAcross, row + zone.rows)]);
  const found: OtherMain[] = [];
  for (const [from, to] of groups) {
    // Stryker disable next-line EqualityOperator: the two part in the sixth digit
    for (let x0In = 0; x0In < lengthIn - 1e-6 && found.length < MOST_LISTED; x0In += zone.lengthIn) {
      if (from === zone.firstRow && x0In === 0) continue;
      found.push({x0In, x1In: Math.min(lengthIn, x0In + zone.lengthIn), y0In: inches(from * bay.spanFt), y1In: inches(to * bay.spanFt)});
    }
  }
  return found;
}
