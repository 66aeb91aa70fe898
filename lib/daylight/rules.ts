import {feet, inches} from "../units.js";
import {DIFFUSE_TRANSMITTANCE_SHARE} from "./glass.js";
import {WORK_PLANE_IN, type DaylightInput, type WindowBand} from "./input.js";
import {openingFt2, surfaces, windowsOf} from "./reflected.js";
import {skylineDeg} from "./sight.js";
import {openingShare} from "./skyComponent.js";
import {radians} from "./sky.js";

/** The average daylight factor's formula with its values. */
export interface AverageDaylight {
  readonly averagePercent: number;
  /** Sum over the windows of transmittance, glass area and angle of visible sky, ft2 degrees. */
  readonly admittedFt2Deg: number;
  readonly areaFt2: number;
  readonly meanReflectanceShare: number;
}

/**
 * Average daylight factor of a room, %: T W theta/(A (1 - R^2)), with the angle theta in degrees of the sky that the
 * middle of the glass sees in section, 90 without obstruction (Crisp and Littlefair, 1984; Building Research
 * Establishment; the chartered institution's lighting guide; Tregenza and Sharples 2.12; form from memory).
 */
export function averageDaylight(input: DaylightInput): AverageDaylight {
  const {areaFt2, meanShare} = surfaces(input);
  const admittedFt2Deg = windowsOf(input).reduce((sum, window) =>
    sum + openingShare(window) * DIFFUSE_TRANSMITTANCE_SHARE * openingFt2(input, window) * (90 - skylineDeg(window)), 0);
  return {
    averagePercent: admittedFt2Deg / (areaFt2 * (1 - meanShare ** 2)),
    admittedFt2Deg, areaFt2, meanReflectanceShare: meanShare,
  };
}

/**
 * How far from the window's inner face a point of the work plane still sees sky, ft: the no-sky line, by similar
 * triangles through the head of the glass, or the foot of a beam that hangs in the room, and the top of what stands
 * outside. 0 where no point does; undefined where all do, because nothing stands higher than head and beams.
 */
export function noSkyLineFt(window: WindowBand, workPlaneIn = WORK_PLANE_IN): number | undefined {
  const edges = [{awayIn: -window.revealIn, heightIn: window.headIn}, ...(window.beams ?? []).map(({awayIn, footIn}) => ({awayIn, heightIn: footIn}))];
  const endsIn = Math.min(...edges.map((edge) => skyEndsIn(edge, window, workPlaneIn)));
  return Number.isFinite(endsIn) ? feet(Math.max(0, endsIn)) : undefined;
}

/** Where the work plane loses the sky below one edge, in from the wall's inner face: behind the skyline, or behind the sill. */
function skyEndsIn({awayIn, heightIn}: {readonly awayIn: number; readonly heightIn: number}, window: WindowBand, workPlaneIn: number): number {
  const riseIn = heightIn - workPlaneIn;
  if (riseIn <= 0) return awayIn;
  const {obstruction, revealIn, sillIn} = window;
  // Something near stands so far before the edge: the line over its top and under the edge comes down by similar triangles.
  const near = (topIn: number, beforeIn: number) => (topIn > heightIn ? awayIn + (riseIn * beforeIn) / (topIn - heightIn) : Infinity);
  const behindSillIn = near(sillIn, awayIn);
  if (!obstruction) return behindSillIn;
  return Math.min(behindSillIn, "angleDeg" in obstruction
    ? awayIn + riseIn / Math.tan(radians(obstruction.angleDeg))
    : near(inches(obstruction.heightFt), awayIn + revealIn + inches(obstruction.distanceFt)));
}

/** How many times the height of the window's head daylight reaches into a room: with blinds, usually, at most. */
export const HEAD_HEIGHT_TIMES = {least: 1.5, usual: 2, most: 2.5} as const;

/**
 * How far useful daylight reaches by the rule of thumb, ft: 1.5 to 2.5 times the height of the window's head above the
 * floor, 2 as a rule (common practice; Reinhart, building simulation conference 2005, finds 1 to 2 with blinds and 2.5
 * without).
 */
export function headHeightDepthFt(headIn: number): {leastFt: number; usualFt: number; mostFt: number} {
  const headFt = feet(headIn);
  return {leastFt: HEAD_HEIGHT_TIMES.least * headFt, usualFt: HEAD_HEIGHT_TIMES.usual * headFt, mostFt: HEAD_HEIGHT_TIMES.most * headFt};
}

/** The two sides of the rule for the depth of a room, and the depth that just meets it. */
export interface DepthLimit {
  /** Depth of the part that one window serves, ft: all of the room, or half of it with windows in two walls. */
  readonly depthFt: number;
  readonly asked: number;
  readonly limit: number;
  readonly backReflectanceShare: number;
  /** Depth of the room at which both are equal with the same reflectance, ft. */
  readonly greatestFt: number;
}

/** What of a room the rule of its depth asks. */
type Lit = Pick<DaylightInput, "depthFt" | "widthFt" | "ceilingIn" | "reflectances"> & {readonly window: Pick<WindowBand, "headIn">; readonly opposite?: Pick<WindowBand, "headIn"> | undefined};

/**
 * The rule that a room's back half must not look gloomy beside its front: L/W + L/H < 2/(1 - Rb), with the depth L, the
 * width W, the height H of the window's head and the mean reflectance Rb of the surfaces in the half away from the
 * window (British Standard 8206-2 and the lighting guides; from memory). With windows in two opposite walls each serves
 * half of the depth.
 */
export function depthLimit(input: Lit): DepthLimit {
  const {widthFt, ceilingIn, reflectances: r, opposite} = input;
  const headFt = feet(opposite ? Math.min(input.window.headIn, opposite.headIn) : input.window.headIn);
  const depthFt = opposite ? input.depthFt / 2 : input.depthFt;
  // The half away from the window: half of floor and ceiling, half of the side walls, and the back wall, which is none
  // where the other half of the room begins.
  const levelFt2 = (depthFt / 2) * widthFt;
  const wallsFt2 = feet(ceilingIn) * (depthFt + (opposite ? 0 : widthFt));
  const backReflectanceShare = (levelFt2 * (r.floorShare + r.ceilingShare) + wallsFt2 * r.wallShare) / (2 * levelFt2 + wallsFt2);
  const limit = 2 / (1 - backReflectanceShare);
  const perFt = 1 / widthFt + 1 / headFt;
  return {depthFt, asked: depthFt * perFt, limit, backReflectanceShare, greatestFt: (limit / perFt) * (opposite ? 2 : 1)};
}
