import type {Design} from "../design/design.js";
import {Kept} from "../kept.js";
import type {Member} from "../member/member.js";
import {IN_PER_FT, feet} from "../units.js";
import {columnLineToBeamEndIn} from "./beamEnds.js";

/** Tees side by side along a row of bays, and so their stems on the beams of these bays. */
export interface TeeRow {
  /** Spacing of the columns along the row, ft, and the number of bays. */
  readonly spanFt: number;
  readonly baysAlong: number;
  /** Width of a tee, ft, and between the centers of its two stems, ft. */
  readonly teeWidthFt: number;
  readonly stemSpacingFt: number;
  /** The building's corner column line to the first tee's edge, ft; negative where that tee begins before the line. */
  readonly startFt: number;
}

/** The stems on the beam of one bay. */
export interface BayStems {
  /** Number of the bay from the building's corner, from 1. */
  readonly bay: number;
  /** From the bay's left column line, ft, in order. A stem right over a line stands on the beams of both bays. */
  readonly placesFt: readonly number[];
}

/** The stem that stands nearest to a column line. */
export interface NearestStem {
  readonly bay: number;
  /** From the bay's left column line, ft, and from the nearer line, in. */
  readonly atFt: number;
  readonly fromLineIn: number;
}

/** Within this of a column line a stem stands over it: places are sums that round in their last digits. */
const OVER_FT = 1e-7;

/** Whether the deck bears on stems. */
export function onStems(member: Pick<Member, "shape">): boolean {
  return member.shape.family === "double tee";
}

/** The row of tees along the building, from its corner on; undefined for a deck without stems. */
export function teeRow({bay}: Pick<Design, "bay">, member: Pick<Member, "shape" | "widthFt">): TeeRow | undefined {
  if (!onStems(member)) return undefined;
  return {
    spanFt: bay.beamSpanFt, baysAlong: bay.baysAlong, teeWidthFt: member.widthFt,
    stemSpacingFt: feet(member.shape.dimensions["stemSpacingIn"] as number), startFt: 0,
  };
}

/** Between a tee's stems, and across the joint to the next tee, ft. */
export function stemGapsFt(row: Pick<TeeRow, "teeWidthFt" | "stemSpacingFt">): [number, number] {
  return [row.stemSpacingFt, row.teeWidthFt - row.stemSpacingFt];
}

/** Width of a stem at its foot, in. */
export function stemWidthIn(member: Pick<Member, "shape">): number {
  return member.shape.dimensions["stemBottomIn"] as number;
}

/** Places of the stems of one bay, counted from 0, ft from its left column line. */
function placesFt({spanFt, teeWidthFt, stemSpacingFt, startFt}: TeeRow, index: number): number[] {
  const insetFt = (teeWidthFt - stemSpacingFt) / 2;
  const offsetFt = startFt - index * spanFt;
  const places: number[] = [];
  // Stryker disable next-line UnaryOperator: it begins at a tee before the bay, however far
  for (let tee = Math.floor(-offsetFt / teeWidthFt) - 1; ; tee++) {
    const edgeFt = offsetFt + tee * teeWidthFt;
    // Stryker disable next-line EqualityOperator: the stems of a tee that begins on the line stand beyond it
    if (edgeFt > spanFt) return places;
    for (const atFt of [edgeFt + insetFt, edgeFt + insetFt + stemSpacingFt]) {
      // Stryker disable next-line EqualityOperator: no stem stands a ten-millionth of a foot from a line
      if (atFt >= -OVER_FT && atFt <= spanFt + OVER_FT) places.push(atFt < OVER_FT ? 0 : atFt > spanFt - OVER_FT ? spanFt : atFt);
    }
  }
}

/**
 * The stems of every bay. Tees lie on past the column lines, so they fall alike on each bay only where its length is a
 * whole number of them; bays with the same stems are named once, by the first. A bay too short for any has none.
 */
export function stemsOfBays(row: TeeRow): readonly BayStems[] {
  return BAYS.get(teeRowKey(row), () => newStemsOfBays(row));
}

/** Rows that were asked for last: every size of beam that is tried lies under the same one. */
const BAYS = new Kept<readonly BayStems[]>(100);
/** A search asks it of every tee that it looks at, beam span by beam span, and comes back to them with the next span. */
const NEAREST = new Kept<NearestStem | undefined>(500);

/** All that a row is, as a key of what is made of it. */
export function teeRowKey({spanFt, baysAlong, teeWidthFt, stemSpacingFt, startFt}: TeeRow): string {
  return `${spanFt} ${baysAlong} ${teeWidthFt} ${stemSpacingFt} ${startFt}`;
}

function newStemsOfBays(row: TeeRow): BayStems[] {
  const found = new Map<string, BayStems>();
  for (let i = 0; i < row.baysAlong; i++) {
    const places = placesFt(row, i);
    const key = places.map((atFt) => atFt.toFixed(6)).join(" ");
    if (!found.has(key)) found.set(key, {bay: i + 1, placesFt: places});
  }
  return [...found.values()];
}

/** From a stem's middle to the nearer column line, in. */
export function fromLineIn({spanFt}: Pick<TeeRow, "spanFt">, atFt: number): number {
  return IN_PER_FT * Math.min(atFt, spanFt - atFt);
}

/** The stem of all bays that stands nearest to a column line; undefined where no bay has a stem. */
export function nearestStem(row: TeeRow): NearestStem | undefined {
  return NEAREST.get(teeRowKey(row), () => newNearestStem(row));
}

function newNearestStem(row: TeeRow): NearestStem | undefined {
  let nearest: NearestStem | undefined;
  for (let i = 0; i < row.baysAlong; i++) {
    const places = placesFt(row, i);
    for (const atFt of [places[0], places.at(-1)]) {
      if (atFt === undefined) continue;
      const fromIn = fromLineIn(row, atFt);
      // Stryker disable next-line EqualityOperator: nor a millionth of an inch nearer than another
      if (!nearest || fromIn < nearest.fromLineIn - 1e-6) nearest = {bay: i + 1, atFt, fromLineIn: fromIn};
    }
  }
  return nearest;
}

/** From a stem's middle to the nearer end of its beam, in; negative where it stands beyond the end. */
export function stemToEndIn(design: Pick<Design, "bay" | "column">, atFt: number): number {
  return fromLineIn({spanFt: design.bay.beamSpanFt}, atFt) - columnLineToBeamEndIn(design);
}
