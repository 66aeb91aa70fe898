import type {LoadElement} from "../loads/elements.js";
import type {ColumnGrid, PlanRect} from "../loads/tributary.js";
import {simpleSpan, type SpanUnderLine} from "./simpleSpan.js";
import {alongStrip, type LinePoint, type RoofSide, type SnowSurface} from "./surface.js";

/** An element at one place of the roof, and the drifted snow on it. */
export interface SnowPlace {
  readonly tributary: PlanRect;
  /** Sides of the roof whose drift reaches it; none inside. */
  readonly sides: readonly RoofSide[];
  /** Load along a deck member or a beam, psf of its tributary width; undefined for a column. */
  readonly span: SpanUnderLine | undefined;
  /** Uniform loads of the same effect, psf: on its greatest moment, and on the reaction at its more loaded support. */
  readonly momentPsf: number;
  readonly shearPsf: number;
  /** The greater of the two. */
  readonly psf: number;
}

/** A beam or a member of the deck at one place of the roof. */
type BeamPlace = SnowPlace & {readonly span: SpanUnderLine};

/**
 * Drifted snow on each kind of element at the places of the roof where it may be greatest, and inside. A drift falls
 * straight from the roof's sides, so that snow is deepest toward them and what an element carries is greatest at its
 * first or its last place.
 *
 * Beams take the deck's load as spread evenly along them, and every span is simply supported.
 */
export function snowPlaces(grid: ColumnGrid, memberWidthFt: number, surface: SnowSurface): (element: LoadElement) => SnowPlace[] {
  const {baysAlong, baysAcross} = grid;
  const known = new Map<string, BeamPlace>();
  /** Beams by line and bay; several columns share one. */
  const beam = (line: number, bay: number): BeamPlace => {
    const key = `${line} ${bay}`;
    const place = known.get(key) ?? beamPlace(line, bay, grid, surface);
    known.set(key, place);
    return place;
  };
  const inner = firstMiddleLast(1, baysAcross - 1);
  const outer = [0, baysAcross];
  const bays = firstMiddleLast(0, baysAlong - 1);
  const each = <T>(lines: readonly number[], along: readonly number[], of: (line: number, at: number) => T) => lines.flatMap((line) => along.map((at) => of(line, at)));
  const column = (line: number, axis: number) => columnPlace(line, axis, grid, surface, beam);
  return (element) => {
    switch (element) {
      case "deck member":
        return deckPlaces(grid, memberWidthFt, surface);
      case "edge beam":
        return each(outer, bays, beam);
      case "interior beam":
        return each(inner, bays, beam);
      case "interior column":
        return each(inner, firstMiddleLast(1, baysAlong - 1), column);
      case "edge column":
        return each(outer, firstMiddleLast(1, baysAlong - 1), column);
      case "girder end column":
        return each(inner, [0, baysAlong], column);
      case "corner column":
        return each(outer, [0, baysAlong], column);
    }
  };
}

function deckPlaces({spanFt, baysAcross}: ColumnGrid, memberWidthFt: number, surface: SnowSurface): SnowPlace[] {
  const {lengthFt} = surface;
  const widthFt = Math.min(memberWidthFt, lengthFt);
  const xs = [...new Set([0, (lengthFt - widthFt) / 2, lengthFt - widthFt])];
  return firstMiddleLast(0, baysAcross - 1).flatMap((bay) => xs.map((xFt) => {
    const yFt = bay * spanFt;
    return spanPlace({xFt, yFt, widthFt, heightFt: spanFt}, alongStrip(surface, "y", [yFt, yFt + spanFt], [xFt, xFt + widthFt], [1, 1]), surface);
  }));
}

/** A beam on a line of columns, 0 at the south side, in one of the bays along it. */
function beamPlace(line: number, bay: number, {spanFt, beamSpanFt, baysAcross}: ColumnGrid, surface: SnowSurface): BeamPlace {
  const xFt = bay * beamSpanFt;
  const yFt = line * spanFt;
  const along: readonly [number, number] = [xFt, xFt + beamSpanFt];
  const [below, above] = [line > 0, line < baysAcross];
  const strips = [
    ...(below ? [alongStrip(surface, "x", along, [yFt - spanFt, yFt], [0, 1])] : []),
    ...(above ? [alongStrip(surface, "x", along, [yFt, yFt + spanFt], [1, 0])] : []),
  ];
  const fromFt = below ? yFt - spanFt : yFt;
  const reachFt = (below ? spanFt : 0) + (above ? spanFt : 0);
  // What each span brings to the beam, over half of that span, which is the beam's own width of roof.
  const load = strips.reduce(sumOf).map(({xFt: at, load: share}) => ({xFt: at, load: (share * spanFt) / (reachFt / 2)}));
  const place = spanPlace({xFt, yFt: fromFt, widthFt: beamSpanFt, heightFt: reachFt}, load, surface);
  return {...place, tributary: {xFt, yFt: below ? yFt - spanFt / 2 : 0, widthFt: beamSpanFt, heightFt: reachFt / 2}};
}

/** The sum of two loads along one line; where one is taken at fewer places, it is straight between them. */
function sumOf(one: LinePoint[], other: LinePoint[]): LinePoint[] {
  // Stryker disable next-line EqualityOperator: as many places along one line are the same places
  const [fine, coarse] = one.length >= other.length ? [one, other] : [other, one];
  return fine.map(({xFt, load}) => ({xFt, load: load + loadAt(coarse, xFt)}));
}

/** Load at a place of a line that is straight between its points. */
export function loadAt(line: readonly LinePoint[], xFt: number): number {
  const next = line.findIndex((point) => point.xFt >= xFt);
  const [b, a] = [line[Math.max(0, next)] as LinePoint, line[Math.max(0, next - 1)] as LinePoint];
  return b.xFt > a.xFt ? a.load + ((b.load - a.load) * (xFt - a.xFt)) / (b.xFt - a.xFt) : b.load;
}

/** A column where a line of beams, 0 at the south side, meets an axis, 0 at the west side. */
function columnPlace(
  line: number, axis: number, {spanFt, beamSpanFt, baysAlong}: ColumnGrid, surface: SnowSurface, beam: (line: number, bay: number) => BeamPlace,
): SnowPlace {
  const left = axis > 0 ? beam(line, axis - 1) : undefined;
  const right = axis < baysAlong ? beam(line, axis) : undefined;
  const reachFt = (left ? beamSpanFt : 0) + (right ? beamSpanFt : 0);
  const psf = ((left?.span.secondReaction ?? 0) + (right?.span.firstReaction ?? 0)) / (reachFt / 2);
  const fromYFt = Math.max(0, (line - 0.5) * spanFt);
  const toYFt = Math.min(surface.widthFt, (line + 0.5) * spanFt);
  const tributary = {xFt: axis * beamSpanFt - (left ? beamSpanFt / 2 : 0), yFt: fromYFt, widthFt: reachFt / 2, heightFt: toYFt - fromYFt};
  const sides = new Set([...left?.sides ?? [], ...right?.sides ?? []]);
  return {tributary, sides: [...sides], span: undefined, momentPsf: psf, shearPsf: psf, psf};
}

function spanPlace(tributary: PlanRect, line: readonly LinePoint[], surface: SnowSurface): BeamPlace {
  const span = simpleSpan(line);
  const momentPsf = (8 * span.moment) / span.lengthFt ** 2;
  const shearPsf = (2 * Math.max(span.firstReaction, span.secondReaction)) / span.lengthFt;
  return {tributary, sides: reached(tributary, surface), span, momentPsf, shearPsf, psf: Math.max(momentPsf, shearPsf)};
}

/** Sides of the roof whose drift reaches into a place. */
function reached({xFt, yFt, widthFt, heightFt}: PlanRect, surface: SnowSurface): RoofSide[] {
  const away: Readonly<Record<RoofSide, number>> = {
    south: yFt, north: surface.widthFt - yFt - heightFt, west: xFt, east: surface.lengthFt - xFt - widthFt,
  };
  // Stryker disable next-line EqualityOperator: the two part in the tenth digit
  return [...new Set(surface.drifts.filter(({side, drift}) => drift.widthFt > away[side] + 1e-9).map(({side}) => side))];
}

/** The first, the middle and the last of whole numbers, each once; none if there are none. */
function firstMiddleLast(first: number, last: number): number[] {
  return first > last ? [] : [...new Set([first, Math.floor((first + last) / 2), last])];
}
