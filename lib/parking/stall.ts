import {ACCESSIBLE_IN} from "./accessible.js";
import type {Design} from "../design/design.js";

/** A point of a row, in: along the row, and out from the line of the stalls' heads into the aisle. */
export type RowPoint = readonly [along: number, out: number];

/** How the stalls of a design are turned, and what each takes of its row. */
export interface StallGeometry {
  /** Between the car and the aisle, degrees: 90 is at right angles. */
  readonly angleDeg: number;
  readonly lengthIn: number;
  /** Row that one stall's width takes along the aisle for each inch of it: 1/sin of the angle. */
  readonly alongPerWidth: number;
  /** From the line of heads to the stalls' mouths, perpendicular to the aisle, in. */
  readonly depthIn: number;
}

const DEGREES: Readonly<Record<Design["parking"]["angle"], number>> = {"90 two-way": 90, "90 one-way": 90, "75 one-way": 75, "60 one-way": 60};

/** Minimum aisle from which cars can turn in, in: 24 ft at right angles, 22 ft at 75 degrees and 18 ft at 60 (common practice; town ordinances agree within a foot). */
export const USUAL_AISLE_IN: Readonly<Record<Design["parking"]["angle"], number>> = {"90 two-way": 288, "90 one-way": 288, "75 one-way": 264, "60 one-way": 216};

/** The stalls' turn and depth: a rectangle w by l turned by the angle is l sin + w cos deep (geometry), for the wider of usual and accessible stalls. */
export function stallGeometry({angle, stallWidthIn, stallLengthIn}: Pick<Design["parking"], "angle" | "stallWidthIn" | "stallLengthIn">): StallGeometry {
  const angleDeg = DEGREES[angle];
  const [sin, cos] = turn(angleDeg);
  return {angleDeg, lengthIn: stallLengthIn, alongPerWidth: 1 / sin, depthIn: stallLengthIn * sin + Math.max(stallWidthIn, ACCESSIBLE_IN.stall) * cos};
}

/** Sine and cosine of a stall's angle; exact at right angles, where a cosine of 1e-17 would tilt every stall. */
function turn(angleDeg: number): [sin: number, cos: number] {
  if (angleDeg === 90) return [1, 0];
  const angle = (angleDeg * Math.PI) / 180;
  return [Math.sin(angle), Math.cos(angle)];
}

/**
 * Corners of a rectangle that lies like a stall: head corner, other head corner, mouth, mouth. A stall that leans has
 * its head further along the row than its mouth, for traffic along the row.
 *
 * @param widthIn - across the car
 * @param fromHeadIn - where along the car it begins, and `toHeadIn` where it ends
 * @param besideIn - how much wider it is on both sides
 */
export function stallOutline(geometry: StallGeometry, atIn: number, widthIn: number, fromHeadIn = 0, toHeadIn = geometry.lengthIn, besideIn = 0): RowPoint[] {
  const [sin, cos] = turn(geometry.angleDeg);
  const point = (across: number, back: number): RowPoint => [atIn + across * sin - back * cos, across * cos + back * sin];
  return [point(-besideIn, fromHeadIn), point(widthIn + besideIn, fromHeadIn), point(widthIn + besideIn, toHeadIn), point(-besideIn, toHeadIn)];
}

/** How far something reaches along the row, in. */
export interface RowExtent {
  readonly least: number;
  readonly most: number;
}

/** Extent of a shape along the row within a band of distances from the heads; undefined where it does not come into the band. */
export function extentWithin(outline: readonly RowPoint[], fromOut: number, toOut: number): RowExtent | undefined {
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < outline.length; i++) {
    const [along, out] = outline[i] as RowPoint;
    const [nextAlong, nextOut] = outline[(i + 1) % outline.length] as RowPoint;
    // A side's part within the band, by where along it the band's edges lie; what only touches the band is not in it.
    if (Math.max(out, nextOut) <= fromOut || Math.min(out, nextOut) >= toOut) continue;
    const rise = nextOut - out;
    for (const edge of [Math.min(toOut, Math.max(fromOut, out)), Math.min(toOut, Math.max(fromOut, nextOut))]) {
      const at = rise === 0 ? along : along + ((edge - out) / rise) * (nextAlong - along);
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
  }
  return most === -Infinity ? undefined : {least, most};
}
