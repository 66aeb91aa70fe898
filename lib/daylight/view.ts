import {requireNumber} from "../check.js";
import {feet, inches} from "../units.js";
import {checkedObstruction, type WindowBand} from "./input.js";
import {skylineSlope} from "./sight.js";
import {degrees} from "./sky.js";

/** Height of a seated person's eye above the floor: 4 ft (common practice). */
export const SEATED_EYE_IN = 48;

/** An opening as a section shows it. A head at or below the sill is allowed: nothing is seen then. */
export type Opening = Pick<WindowBand, "sillIn" | "headIn" | "revealIn" | "obstruction">;

/** What an eye sees through a window in the section across it; angles above the horizontal are positive. */
export interface View {
  /** Lines over the sill and under the head, past those of their edges, inside or at the glass, that cut off more, degrees. */
  readonly lowDeg: number;
  readonly highDeg: number;
  /** Between the two, degrees; 0 where sill and head meet in the eye's line. */
  readonly viewDeg: number;
  /** The part of the view that is sky: above the skyline, or the horizon. */
  readonly skyDeg: number;
  /** The part below the horizontal: ground, street, lake. */
  readonly groundDeg: number;
}

/**
 * View from a height and a distance inside a window.
 *
 * @param place - distance from the window wall's inner face, in, 1 to 3,600; height of the eye, in
 * @throws InputError if the place is out of range
 */
export function view(opening: Opening, place: {readonly distanceIn: number; readonly eyeIn: number}): View {
  const distanceIn = requireNumber(place.distanceIn, {path: "distanceIn", label: "distance from the window", unit: "in", min: 1, max: 3600});
  const eyeIn = requireNumber(place.eyeIn, {path: "eyeIn", label: "height of the eye", unit: "in", min: 0, max: 120});
  if (opening.obstruction) checkedObstruction(opening.obstruction);
  const glassIn = distanceIn + opening.revealIn;
  const slope = (heightIn: number, nearer: boolean) => (heightIn - eyeIn) / (nearer ? distanceIn : glassIn);
  // A deep sill cuts at the glass for an eye above it and at its inner edge for one below; a head the other way round.
  const low = Math.max(slope(opening.sillIn, true), slope(opening.sillIn, false));
  const high = Math.min(slope(opening.headIn, true), slope(opening.headIn, false));
  const lowDeg = degrees(Math.atan(low));
  const highDeg = Math.max(lowDeg, degrees(Math.atan(high)));
  const skylineDeg = degrees(Math.atan(skylineSlope(opening.obstruction, eyeIn, glassIn)));
  return {
    lowDeg, highDeg,
    viewDeg: highDeg - lowDeg,
    skyDeg: Math.max(0, highDeg - Math.max(lowDeg, skylineDeg)),
    groundDeg: Math.max(0, Math.min(highDeg, 0) - lowDeg),
  };
}

/**
 * How far out from the glass the nearest ground is that an eye sees over the sill, ft; undefined where the sill hides
 * the ground altogether. What lies nearer, the street below, is hidden.
 *
 * @param floorAboveGroundFt - the room's floor above the ground outside, 0 or more
 */
export function nearestGroundFt(opening: Opening, place: {readonly distanceIn: number; readonly eyeIn: number}, floorAboveGroundFt: number): number | undefined {
  requireNumber(floorAboveGroundFt, {path: "floorAboveGroundFt", label: "floor above the ground", unit: "ft", min: 0, max: 2000});
  const seen = view(opening, place);
  if (seen.viewDeg === 0 || seen.lowDeg >= 0) return undefined;
  const dropIn = place.eyeIn + inches(floorAboveGroundFt);
  const reachIn = dropIn / Math.tan((-seen.lowDeg * Math.PI) / 180);
  return feet(Math.max(0, reachIn - place.distanceIn - opening.revealIn));
}
