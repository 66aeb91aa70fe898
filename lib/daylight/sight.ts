import {IN_PER_FT, inches} from "../units.js";
import type {Obstruction, WindowBand} from "./input.js";
import {degrees, radians} from "./sky.js";

/**
 * A patch of sky as a window cuts it out of the hemisphere, seen from a point inside. Slopes are rises over distances
 * square to the window; in these terms the horizontal edges of a window, however near, are two numbers.
 */
export interface SkyPatch {
  /** Azimuths from the direction square to the window, radians, within half a turn. */
  readonly fromRad: number;
  readonly toRad: number;
  readonly lowSlope: number;
  /** May be Infinity: up to the zenith. */
  readonly highSlope: number;
}

/** A point that looks at a window. */
export interface Place {
  /** From the window wall's inner face, in; above 0. */
  readonly distanceIn: number;
  /** Above the floor, in. */
  readonly heightIn: number;
  /** Beside the window's middle, in. */
  readonly offsetIn: number;
}

/** What a place sees through a window: sky, and below it what hides the sky. Undefined where it sees nothing of either. */
export interface Sight {
  readonly sky: SkyPatch | undefined;
  readonly hidden: SkyPatch | undefined;
}

/**
 * What a place sees of the hemisphere above it through a window.
 *
 * A ray must pass the opening twice, in the wall's inner face and in the plane of the glass. The sill cuts it off at
 * the inner edge, the head and the jambs at the glass, so the reveal costs light at all four sides. Beyond a beam that
 * hangs into the room the lower edge of the beam's face toward the window cuts off the sky above it, as a head does.
 */
export function sight(window: WindowBand, place: Place): Sight {
  const nearIn = place.distanceIn;
  const glassIn = nearIn + window.revealIn;
  const highSlope = (window.beams ?? []).reduce(
    (least, {awayIn, footIn}) => (nearIn > awayIn ? Math.min(least, (footIn - place.heightIn) / (nearIn - awayIn)) : least),
    (window.headIn - place.heightIn) / glassIn,
  );
  const lowSlope = Math.max(0, (window.sillIn - place.heightIn) / nearIn);
  const [fromRad, toRad] = azimuths(window, place, nearIn, glassIn);
  if (highSlope <= lowSlope || toRad <= fromRad) return {sky: undefined, hidden: undefined};
  const skyline = Math.min(highSlope, Math.max(lowSlope, skylineSlope(window.obstruction, place.heightIn, glassIn)));
  return {
    sky: skyline < highSlope ? {fromRad, toRad, lowSlope: skyline, highSlope} : undefined,
    hidden: skyline > lowSlope ? {fromRad, toRad, lowSlope, highSlope: skyline} : undefined,
  };
}

/** Slope from a point inside up to the top of what stands outside; 0 without it: the horizon. */
export function skylineSlope(obstruction: Obstruction | undefined, heightIn: number, glassDistanceIn: number): number {
  if (!obstruction) return 0;
  if ("angleDeg" in obstruction) return Math.tan(radians(obstruction.angleDeg));
  return Math.max(0, (inches(obstruction.heightFt) - heightIn) / (glassDistanceIn + inches(obstruction.distanceFt)));
}

/** Angle of the skyline above the horizontal as seen from the middle of the glass, degrees. */
export function skylineDeg(window: Pick<WindowBand, "sillIn" | "headIn" | "obstruction">): number {
  return degrees(Math.atan(skylineSlope(window.obstruction, (window.sillIn + window.headIn) / 2, 0)));
}

function azimuths(window: WindowBand, place: Place, nearIn: number, glassIn: number): [number, number] {
  if (window.widthFt === "endless") return [-Math.PI / 2, Math.PI / 2];
  const halfIn = (window.widthFt * IN_PER_FT) / 2;
  const left = -halfIn - place.offsetIn;
  const right = halfIn - place.offsetIn;
  // Beside the window one jamb cuts at its inner edge; before it both cut at the glass.
  return [Math.atan(Math.max(left / nearIn, left / glassIn)), Math.atan(Math.min(right / nearIn, right / glassIn))];
}
