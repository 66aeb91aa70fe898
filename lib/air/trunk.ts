import type {Design} from "../design/design.js";
import {inches} from "../units.js";
import {clearRow, type FramePlan} from "./framePlan.js";
import type {AirZone} from "./zone.js";

/** Main and what runs beside it, across the building, in from the first line of bearings. */
export interface Trunk {
  readonly y0In: number;
  readonly y1In: number;
  readonly supplyY0In: number;
  readonly supplyY1In: number;
  /** The return duct, or the return riser where the air goes back another way; undefined where no return is shown. */
  readonly backY0In: number | undefined;
  readonly backY1In: number | undefined;
  /** The row of bays that it lies in, from 0, and the clear strip there. */
  readonly row: number;
  readonly rowFromIn: number;
  readonly rowToIn: number;
  /** What it needs of that strip, with room at both sides, in. */
  readonly neededIn: number;
  /** How far beside its place it lies to clear beams and columns, in; 0 where it runs as stated. */
  readonly movedIn: number;
}

/** Between a duct, or the box around it, and the concrete beside it, in: so that it can be joined (common practice). */
export const BESIDE_CONCRETE_IN = 4;
/** Between two insulated ducts side by side, in (common practice). */
export const BETWEEN_DUCTS_IN = 2;

/**
 * Places the main with what runs beside it where the design wants it, and as near to that as beams and columns allow:
 * beside the ledge, or beside the girder where the middle of the building is a line of girders.
 *
 * @param legIn - room kept beside a girder for feeders that pass under it, in
 */
export function placeTrunk(
  {air, bay}: Pick<Design, "air" | "bay">, frame: FramePlan, zone: AirZone, needs: {along: boolean; supplyIn: number; besideIn: number; legIn: number},
): Trunk {
  const {along, supplyIn, besideIn, legIn} = needs;
  const widthIn = supplyIn + (besideIn > 0 ? BETWEEN_DUCTS_IN + besideIn : 0);
  const lastRow = zone.firstRow + zone.rows - 1;
  const targetIn = along ? zone.y0In : air.place === "across" ? inches(air.acrossFt) : frame.widthIn / 2;
  const row = along ? zone.firstRow : Math.max(zone.firstRow, Math.min(lastRow, Math.floor(targetIn / inches(bay.spanFt) + 1e-9)));
  const [rowFromIn, rowToIn] = clearRow(frame, row);
  const beforeIn = BESIDE_CONCRETE_IN + (row > zone.firstRow ? legIn : 0);
  const afterIn = BESIDE_CONCRETE_IN + (row < lastRow ? legIn : 0);
  const wishIn = along ? rowFromIn + beforeIn : targetIn - widthIn / 2;
  const neededIn = widthIn + beforeIn + afterIn;
  const [leastIn, mostIn] = [rowFromIn + beforeIn, rowToIn - afterIn - widthIn];
  // Where the row is too narrow for it the trunk lies in its middle, and a check says by how much.
  const y0In = mostIn < leastIn ? (leastIn + mostIn) / 2 : Math.max(leastIn, Math.min(mostIn, wishIn));
  return {
    y0In, y1In: y0In + widthIn, supplyY0In: y0In, supplyY1In: y0In + supplyIn,
    backY0In: besideIn > 0 ? y0In + supplyIn + BETWEEN_DUCTS_IN : undefined, backY1In: besideIn > 0 ? y0In + widthIn : undefined,
    row, rowFromIn, rowToIn, neededIn, movedIn: Math.abs(y0In - wishIn),
  };
}
