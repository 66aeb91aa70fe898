import {requireNumber} from "../check.js";
import {inches} from "../units.js";
import {WORK_PLANE_IN, checkedDaylight, type DaylightInput, type WindowBand} from "./input.js";
import {externalComponent} from "./reflected.js";
import {skyComponent} from "./skyComponent.js";
import {degrees, radians} from "./sky.js";

/** Upstands are usually 2 ft 6 in and at most 3 ft high (common practice). */
export const GREATEST_UPSTAND_IN = 36;
/** From the wall to the middle of a desk that stands against it, in (common practice). */
export const DESK_MIDDLE_IN = 15;

/**
 * How far the upstand's shadow reaches over the work plane from the wall's inner face, in, for light that comes square
 * to the window at an altitude; 0 where the upstand is no higher than the work plane.
 *
 * Light from the low sky goes deepest into a room, but a desk behind the upstand gets none of it.
 *
 * @param altitudeDeg - 1 to 89
 */
export function upstandShadowIn(sillIn: number, altitudeDeg: number, workPlaneIn = WORK_PLANE_IN): number {
  requireNumber(altitudeDeg, {path: "altitudeDeg", label: "altitude", unit: "degrees", min: 1, max: 89});
  return Math.max(0, sillIn - workPlaneIn) / Math.tan(radians(altitudeDeg));
}

/** What the upstand takes from a desk that stands against it. */
export interface DeskAtWindow {
  readonly distanceIn: number;
  /** Angle of low sky that the upstand hides from the desk, degrees. */
  readonly hiddenDeg: number;
  /** Direct daylight on the desk, % of that outdoors: as it is, and with the sill at the height of the desk. */
  readonly directPercent: number;
  readonly openPercent: number;
  /** Part of the direct daylight that the upstand takes, 0 to 1. */
  readonly lostShare: number;
}

/**
 * Direct daylight (sky and what stands outside) on a desk just inside the upstand, and what the upstand takes of it.
 *
 * Each inch of upstand above the desk hides sky that is near and would fall on the desk, so the loss grows fast: a
 * little at 2 ft 6 in, much above 3 ft.
 *
 * @param distanceIn - from the wall's inner face to the desk's middle, in, 1 to the depth of the room
 */
export function deskAtWindow(input: DaylightInput, distanceIn = DESK_MIDDLE_IN): DeskAtWindow {
  const {window, workPlaneIn = WORK_PLANE_IN, offsetFt = 0} = checkedDaylight(input);
  requireNumber(distanceIn, {path: "distanceIn", label: "distance from the window", unit: "in", min: 1, max: inches(input.depthFt)});
  const place = {distanceIn, heightIn: workPlaneIn, offsetIn: inches(offsetFt)};
  const percent = (band: WindowBand) => 100 * (skyComponent(band, place) + externalComponent(band, place));
  const directPercent = percent(window);
  const openPercent = window.sillIn > workPlaneIn ? percent({...window, sillIn: workPlaneIn}) : directPercent;
  return {
    distanceIn, directPercent, openPercent,
    hiddenDeg: degrees(Math.atan(Math.max(0, window.sillIn - workPlaneIn) / distanceIn)),
    lostShare: openPercent > 0 ? 1 - directPercent / openPercent : 0,
  };
}
