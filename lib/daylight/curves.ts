import {daylightPoints} from "./daylight.js";
import {DESK_MIDDLE_IN, deskAtWindow, type DeskAtWindow} from "./desk.js";
import {gaussLegendre} from "./gauss.js";
import type {DaylightInput, WindowBand} from "./input.js";
import {averageDaylight} from "./rules.js";
import {floorShares, type FloorShares} from "./shares.js";
import type {SkyGrid} from "./skyComponent.js";

/** What a curve of daylight runs over: depth of the room, height of the window's head with the ceiling, upstand. */
export type DaylightParameter = "depth" | "head" | "sill";

/** One value of the parameter with the daylight that it gives. */
export interface DaylightCurvePoint {
  /** ft for the depth, in for head and sill. */
  readonly value: number;
  readonly shares: FloorShares;
  readonly averagePercent: number;
  readonly leastPercent: number;
}

/** Half as fine as usual: the shares move by less than a hundredth, which a chart does not show; a test looks. */
const CURVE_GRID: SkyGrid = {azimuths: gaussLegendre(12), altitudes: gaussLegendre(6)};
const CURVE_STRIPS = 24;

/**
 * A room with one thing changed; undefined where no glass would be left. A head lifts or lowers ceiling and girders with
 * it; in a deeper room girders lie deeper.
 */
export function changedRoom(input: DaylightInput, parameter: DaylightParameter, value: number): DaylightInput | undefined {
  const change = (window: WindowBand): WindowBand => ({
    ...window, ...(parameter === "head" ? {headIn: value} : parameter === "sill" ? {sillIn: value} : {}),
    ...(window.beams ? {beams: window.beams.map(({awayIn, footIn}) => ({
      awayIn: parameter === "depth" ? (awayIn * value) / input.depthFt : awayIn,
      footIn: Math.max(0, parameter === "head" ? footIn + value - window.headIn : footIn),
    }))} : {}),
  });
  const window = change(input.window);
  const opposite = input.opposite && {opposite: input.opposite === input.window ? window : change(input.opposite)};
  if (parameter === "depth") return {...input, depthFt: value, window, ...opposite};
  if (window.sillIn >= window.headIn || window.headIn > 480) return undefined;
  const ceilingIn = input.ceilingIn + window.headIn - input.window.headIn;
  if (ceilingIn < 36) return undefined;
  return {...input, ceilingIn, window, ...opposite};
}

/** How the floor's daylight changes with one thing, the rest as it is; values without glass are left out. */
export function daylightCurve(input: DaylightInput, parameter: DaylightParameter, values: readonly number[]): DaylightCurvePoint[] {
  return values.flatMap((value) => {
    const room = changedRoom(input, parameter, value);
    if (!room) return [];
    const factors = daylightPoints(room, {strips: CURVE_STRIPS, grid: CURVE_GRID}).map((point) => point.factorPercent);
    return [{value, shares: floorShares(factors), averagePercent: averageDaylight(room).averagePercent, leastPercent: Math.min(...factors)}];
  });
}

/**
 * Values that a curve is drawn over, evenly apart: depths of 10 to 100 ft, or 1.4 times the room's own, 300 ft at most;
 * heads from a foot above the sill, 5 ft at least, to 14 ft or a foot more than they are; sills up to a foot below the
 * head, 6 ft at most.
 */
export function curveValues(input: DaylightInput, parameter: DaylightParameter, count = 33): number[] {
  const {headIn, sillIn} = input.window;
  const [low, high] = parameter === "depth" ? [10, Math.min(300, Math.max(100, 1.4 * input.depthFt))]
    : parameter === "head" ? [Math.max(60, sillIn + 12), Math.max(168, headIn + 12)]
    : [0, Math.min(72, headIn - 12)];
  return low < high ? Array.from({length: count}, (_, i) => low + ((high - low) * i) / (count - 1)) : [low];
}

/** A sill's height with what it leaves a desk just inside it. */
export interface DeskCurvePoint extends DeskAtWindow {
  readonly sillIn: number;
}

/** Direct light on a desk that stands against the window wall, over the height of the sill. */
export function deskCurve(input: DaylightInput, sillsIn: readonly number[], distanceIn = DESK_MIDDLE_IN): DeskCurvePoint[] {
  return sillsIn.flatMap((sillIn) => {
    const room = changedRoom(input, "sill", sillIn);
    return room ? [{sillIn, ...deskAtWindow(room, distanceIn)}] : [];
  });
}
