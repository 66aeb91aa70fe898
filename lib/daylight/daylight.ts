import {requireNumber} from "../check.js";
import {atLeast, atMost, type Check} from "../checks.js";
import {Kept} from "../kept.js";
import {feet, inches} from "../units.js";
import {GREATEST_UPSTAND_IN} from "./desk.js";
import {WORK_PLANE_IN, checkedDaylight, type DaylightInput, type WindowBand} from "./input.js";
import {externalComponent, internalComponent} from "./reflected.js";
import {averageDaylight, depthLimit, headHeightDepthFt, noSkyLineFt, type AverageDaylight, type DepthLimit} from "./rules.js";
import {THRESHOLDS, checkedThresholds, floorShares, type FloorShares, type Thresholds} from "./shares.js";
import {sight, type Place} from "./sight.js";
import {GRID, skyComponent, type SkyGrid} from "./skyComponent.js";

/** The daylight factor at one place of the work plane, in parts, % of the light on open level ground. */
export interface DaylightPoint {
  /** From the window wall's inner face, ft. */
  readonly distanceFt: number;
  /** Straight from the sky, reflected in by what stands outside, reflected within the room; and their sum. */
  readonly skyPercent: number;
  readonly externalPercent: number;
  readonly internalPercent: number;
  readonly factorPercent: number;
}

/** Daylight of a room over its depth. */
export interface DaylightResult {
  /** At the middles of equal strips, nearest the window first. */
  readonly points: readonly DaylightPoint[];
  /** Mean and least of the points. */
  readonly meanPercent: number;
  readonly leastPercent: number;
  readonly internalPercent: number;
  readonly shares: FloorShares;
  /** Average daylight factor by formula; the points' mean need not agree, for the formula knows no depth. */
  readonly average: AverageDaylight;
  /** Depth from which no sky is seen, from each window's own wall, ft; undefined where sky is seen from everywhere. */
  readonly noSkyFt: number | undefined;
  readonly oppositeNoSkyFt: number | undefined;
  /** Part of the depth that sees sky through one window or the other, 0 to 1. */
  readonly skySeenShare: number;
  readonly headHeightFt: {readonly leastFt: number; readonly usualFt: number; readonly mostFt: number};
  readonly depthLimit: DepthLimit;
  readonly checks: readonly Check[];
}

/** Strips into which the depth is cut. */
const STRIPS = 40;

/** What may be asked otherwise than usual. */
interface Options {
  readonly strips?: number;
  readonly thresholds?: Thresholds;
  readonly grid?: SkyGrid;
}

/**
 * Daylight factor over the depth of a room lit from one side or two, under the CIE overcast sky: sky component and
 * externally reflected component at each place, and the room's average internally reflected component everywhere.
 *
 * Deep in a room the internal component is below its average, so little daylight there is less still.
 *
 * @throws InputError if the room or a window is not possible
 */
export function daylight(input: DaylightInput, options?: Options): DaylightResult {
  return options ? newDaylight(input, options) : ROOMS.get(roomKey(input), () => newDaylight(input, {}));
}

/** All that tells one room from another. */
export function roomKey({depthFt, widthFt, ceilingIn, workPlaneIn, offsetFt, reflectances: {floorShare, wallShare, ceilingShare}, window, opposite}: DaylightInput): string {
  const far = opposite === undefined ? "none" : opposite === window ? "alike" : windowKey(opposite);
  return `${depthFt} ${widthFt} ${ceilingIn} ${workPlaneIn} ${offsetFt} ${floorShare} ${wallShare} ${ceilingShare} ${windowKey(window)} ${far}`;
}

/** All that tells one window from another. */
function windowKey({sillIn, headIn, widthFt, revealIn, frameShare, transmittanceShare, maintenanceShare, obstruction, beams}: WindowBand): string {
  const outside = obstruction === undefined ? "open" : "angleDeg" in obstruction ? obstruction.angleDeg : `${obstruction.heightFt} ft at ${obstruction.distanceFt}`;
  const inside = beams?.map(({awayIn, footIn}) => `${awayIn} ${footIn}`).join() ?? "";
  return `${sillIn} ${headIn} ${widthFt} ${revealIn} ${frameShare} ${transmittanceShare} ${maintenanceShare} ${outside} ${inside}`;
}

/** Rooms that were looked at last: floors that differ in their decks and beams alone often have the same room. */
const ROOMS = new Kept<DaylightResult>(100);

function newDaylight(input: DaylightInput, options: Options): DaylightResult {
  const thresholds = checkedThresholds(options.thresholds ?? THRESHOLDS);
  const points = daylightPoints(input, options);
  const factors = points.map((point) => point.factorPercent);
  const average = averageDaylight(input);
  const limit = depthLimit(input);
  const {workPlaneIn = WORK_PLANE_IN, opposite, depthFt} = input;
  const noSkyFt = noSkyLineFt(input.window, workPlaneIn);
  const oppositeNoSkyFt = opposite && noSkyLineFt(opposite, workPlaneIn);
  const seenFt = Math.min(depthFt, noSkyFt ?? depthFt) + (opposite ? Math.min(depthFt, oppositeNoSkyFt ?? depthFt) : 0);
  const skySeenShare = Math.min(1, seenFt / depthFt);
  const headIn = opposite ? Math.max(input.window.headIn, opposite.headIn) : input.window.headIn;
  return {
    points, average, noSkyFt, oppositeNoSkyFt, skySeenShare, depthLimit: limit,
    meanPercent: factors.reduce((sum, factor) => sum + factor, 0) / factors.length,
    leastPercent: Math.min(...factors),
    internalPercent: (points[0] as DaylightPoint).internalPercent,
    shares: floorShares(factors, thresholds),
    headHeightFt: headHeightDepthFt(headIn),
    checks: daylightChecks(input, average, limit, skySeenShare, thresholds),
  };
}

/** What came through the windows that were looked at last. */
const THROUGH = new Kept<Through>(30);

/** What comes through a window at each strip, %. */
interface Through {
  readonly skyPercent: readonly number[];
  readonly externalPercent: readonly number[];
}

/** The daylight factor at the middles of equal strips over the depth; {@link daylight} with nothing beside it. */
export function daylightPoints(input: DaylightInput, {strips = STRIPS, grid = GRID}: Options = {}): DaylightPoint[] {
  checkedDaylight(input);
  requireNumber(strips, {path: "strips", label: "strips", unit: "", min: 2, max: 2000, integer: true});
  const {workPlaneIn = WORK_PLANE_IN, offsetFt = 0, opposite} = input;
  const depthIn = inches(input.depthFt);
  const internalPercent = 100 * internalComponent(input);
  const distanceIn = (i: number) => ((i + 0.5) * depthIn) / strips;
  // Two windows alike light a room like its mirror image, and a window lights every room of its depth alike.
  const through = (window: WindowBand): Through => THROUGH.get(`${windowKey(window)} ${depthIn} ${strips} ${workPlaneIn} ${offsetFt} ${grid.azimuths.nodes.length} ${grid.altitudes.nodes.length}`, () => {
    const [skyPercent, externalPercent]: [number[], number[]] = [[], []];
    for (let i = 0; i < strips; i++) {
      const place: Place = {distanceIn: distanceIn(i), heightIn: workPlaneIn, offsetIn: inches(offsetFt)};
      const seen = sight(window, place);
      skyPercent.push(100 * skyComponent(window, place, grid, seen));
      externalPercent.push(100 * externalComponent(window, place, grid, seen));
    }
    return {skyPercent, externalPercent};
  });
  const near = through(input.window);
  const far = opposite && (opposite === input.window ? near : through(opposite));
  return near.skyPercent.map((sky, i): DaylightPoint => {
    const other = strips - 1 - i;
    const skyPercent = sky + (far?.skyPercent[other] ?? 0);
    const externalPercent = (near.externalPercent[i] as number) + (far?.externalPercent[other] ?? 0);
    return {distanceFt: feet(distanceIn(i)), skyPercent, externalPercent, internalPercent, factorPercent: skyPercent + externalPercent + internalPercent};
  });
}

function daylightChecks(input: DaylightInput, average: AverageDaylight, limit: DepthLimit, skySeenShare: number, thresholds: Thresholds): Check[] {
  const upstandIn = Math.max(input.window.sillIn, input.opposite?.sillIn ?? 0);
  return [
    atLeast({
      id: "average daylight", label: "Average daylight factor", unit: "%", clause: "BS 8206-2, superseded by EN 17037 (from memory)",
      holds: "The room looks daylit; electric light helps out now and then.",
      fails: `The room looks dim by day and needs electric light: more glass, a higher head, lighter surfaces${input.opposite ? " or a less deep room" : ", or a second window wall"}.`,
    }, average.averagePercent, thresholds.partialPercent),
    atMost({
      id: "room depth", label: "Depth of the room for its width and window head", unit: "", clause: "BS 8206-2, superseded by EN 17037 (from memory)",
      holds: "The back of the room does not look gloomy next to the front.",
      fails: "The back of the room looks gloomy however bright the front is: raise the head, lighten the back, or make the room less deep.",
    }, limit.asked, limit.limit),
    atLeast({
      id: "sky seen", label: "Share of the work plane that sees sky", unit: "", clause: "lighting guides; 0.8 is common practice",
      holds: "Nearly all desks see some sky.",
      fails: "Too many desks see no sky, because what stands outside is too tall for the window's head: a higher story, or a less deep room.",
      meetingIsEnough: true,
    }, skySeenShare, LEAST_SKY_SHARE),
    atMost({
      id: "upstand", label: "Upstand under the glass", unit: "in", clause: "common practice",
      holds: "A person at a desk can see out over the upstand.",
      fails: "The upstand hides the ground from a seated person and shades the desk behind it.",
    }, upstandIn, GREATEST_UPSTAND_IN),
  ];
}

/** Part of the work plane that should see sky (common practice). */
const LEAST_SKY_SHARE = 0.8;
