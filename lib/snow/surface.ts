import type {Drift} from "./drift.js";

/** Sides of the roof: the deck's members end along the south and north side, and lie along the west and east side. */
export const ROOF_SIDES = ["south", "north", "west", "east"] as const;
export type RoofSide = (typeof ROOF_SIDES)[number];

/** A drift and the side of the roof that it lies along. */
export interface SideDrift {
  readonly side: RoofSide;
  readonly drift: Drift;
}

/** Snow on the whole roof: uniform, and along its sides whichever drift is deeper, never both (ASCE 7-16 7.7.3). */
export interface SnowSurface {
  readonly balancedPsf: number;
  /** Those that count. */
  readonly drifts: readonly SideDrift[];
  /** The roof's sizes: along x its length, across it y, ft. */
  readonly lengthFt: number;
  readonly widthFt: number;
  /** The drifts' sloping surfaces: of the short sides along x, of the long sides along y. */
  readonly lines: Readonly<Record<"x" | "y", readonly Line[]>>;
}

/** A straight line: its value at 0 and what it gains per foot. */
interface Line {
  readonly at0: number;
  readonly perFt: number;
}

/** A load at a place along a line, psf or plf. */
export interface LinePoint {
  readonly xFt: number;
  readonly load: number;
}

/** The snow of a roof of some size with those of its drifts that count. */
export function snowSurface(balancedPsf: number, all: readonly SideDrift[], {lengthFt, widthFt}: Pick<SnowSurface, "lengthFt" | "widthFt">): SnowSurface {
  const drifts = all.filter(({drift}) => drift.state === "counts");
  const lineOf = ({side, drift}: SideDrift): Line => {
    const perFt = drift.peakPsf / drift.widthFt;
    if (side === "south" || side === "west") return {at0: drift.peakPsf, perFt: -perFt};
    return {at0: drift.peakPsf - perFt * (side === "north" ? widthFt : lengthFt), perFt};
  };
  const of = (...sides: RoofSide[]) => drifts.filter(({side}) => sides.includes(side)).map(lineOf);
  return {balancedPsf, drifts, lengthFt, widthFt, lines: {x: of("west", "east"), y: of("south", "north")}};
}

/** The drift that some lines leave at a place, 0 where none reaches. */
function highest(lines: readonly Line[], xFt: number): number {
  let most = 0;
  for (const {at0, perFt} of lines) most = Math.max(most, at0 + perFt * xFt);
  return most;
}

/** Places from one end to the other where the highest of the lines and of a level may bend, both ends with them, in order. */
function bends(lines: readonly Line[], level: number, fromFt: number, toFt: number): number[] {
  const places = [fromFt, toFt];
  const take = (xFt: number) => {
    if (xFt > fromFt && xFt < toFt) places.push(xFt);
  };
  lines.forEach((one, i) => {
    take(-one.at0 / one.perFt);
    // Stryker disable next-line ConditionalExpression,EqualityOperator: the level of the roof itself has been taken
    if (level > 0) take((level - one.at0) / one.perFt);
    for (let j = i + 1; j < lines.length; j++) {
      const other = lines[j] as Line;
      // Two that never meet have no such place within the length.
      take((other.at0 - one.at0) / (one.perFt - other.perFt));
    }
  });
  return places.sort((a, b) => a - b);
}

/** Parts into which a length is cut where drifts of both directions meet: the load is convex there, so chords err to the safe side. */
const PARTS = 8;

/** Places along a line at which the load on a strip across it is taken: straight between them, or nearly. */
function places(own: readonly Line[], across: readonly Line[], [from, to]: readonly [number, number], strip: readonly [number, number]): number[] {
  const cuts = bends(own, 0, from, to);
  // A drift rises toward its side, so it is greatest at an end of the strip.
  const met = Math.max(highest(across, strip[0]), highest(across, strip[1])) > 0;
  if (!met) return cuts;
  return cuts.flatMap((place, i) => {
    const before = cuts[i - 1];
    if (before === undefined) return [place];
    if (highest(own, (before + place) / 2) === 0) return [place];
    return Array.from({length: PARTS}, (_, part) => before + ((place - before) * (part + 1)) / PARTS);
  });
}

/**
 * Load along a line in the direction of an axis, psf: the mean over a strip across it, weighted by a straight line from
 * the first of the weights to the second. With weights 1 and 0 it is the share of the strip's first edge, as the reaction
 * of what spans the strip; with 1 and 1 the plain mean.
 */
export function alongStrip(
  surface: SnowSurface, axis: "x" | "y", line: readonly [number, number], strip: readonly [number, number], weights: readonly [number, number],
): LinePoint[] {
  const own = surface.lines[axis];
  const across = surface.lines[axis === "x" ? "y" : "x"];
  return places(own, across, line, strip).map((xFt): LinePoint => ({xFt, load: weightedMean(surface.balancedPsf, across, highest(own, xFt), strip, weights)}));
}

/** Mean of a uniform load and of the higher of some lines and a level over a strip, weighted. */
function weightedMean(even: number, lines: readonly Line[], level: number, [from, to]: readonly [number, number], [first, second]: readonly [number, number]): number {
  const cuts = bends(lines, level, from, to);
  const at = (place: number) => (even + Math.max(level, highest(lines, place))) * (first + ((second - first) * (place - from)) / (to - from));
  let sum = 0;
  for (let i = 1; i < cuts.length; i++) {
    const [a, b] = [cuts[i - 1] as number, cuts[i] as number];
    // Straight load by straight weight: Simpson's rule is exact.
    sum += ((b - a) / 6) * (at(a) + 4 * at((a + b) / 2) + at(b));
  }
  return sum / (to - from);
}
