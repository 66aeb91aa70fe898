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

/** Of the row's stems, counted from that of the first tee, the place of one in a bay, counted from 0: ft from its left column line. */
function placeFt({spanFt, teeWidthFt, stemSpacingFt, startFt}: TeeRow, index: number, stem: number): number {
  const edgeFt = startFt - index * spanFt + Math.floor(stem / 2) * teeWidthFt;
  const firstFt = edgeFt + (teeWidthFt - stemSpacingFt) / 2;
  const atFt = stem % 2 === 0 ? firstFt : firstFt + stemSpacingFt;
  if (Math.abs(atFt) < OVER_FT) return 0;
  return Math.abs(spanFt - atFt) < OVER_FT ? spanFt : atFt;
}

/** The first of the row's stems that stand on a bay: none is before the tee that lies over the bay's left line. */
function firstStem(row: TeeRow, index: number): number {
  const {spanFt, teeWidthFt, startFt} = row;
  let stem = 2 * Math.floor((index * spanFt - startFt) / teeWidthFt);
  while (placeFt(row, index, stem) < 0) stem++;
  return stem;
}

/** The last of them: none is beyond the tee over the right line. Where no stem stands on the bay, it is before the first. */
function lastStem(row: TeeRow, index: number): number {
  const {spanFt, teeWidthFt, startFt} = row;
  let stem = 2 * Math.floor(((index + 1) * spanFt - startFt) / teeWidthFt) + 1;
  while (placeFt(row, index, stem) > spanFt) stem--;
  return stem;
}

/** Places of the stems of one bay, counted from 0, ft from its left column line. */
function placesFt(row: TeeRow, index: number): number[] {
  const first = firstStem(row, index);
  return Array.from({length: Math.max(0, lastStem(row, index) - first + 1)}, (_, i) => placeFt(row, index, first + i));
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

/**
 * The stem of all bays that stands nearest to a column line; undefined where no bay has a stem.
 *
 * @param isTooNear - of a distance from that line, in, whether nobody needs to know if another is less; never if omitted
 */
export function nearestStem(row: TeeRow, isTooNear: (fromLineIn: number) => boolean = () => false): NearestStem | undefined {
  let [bay, nearestFt, nearestIn] = [0, 0, Infinity];
  for (let i = 0; i < row.baysAlong; i++) {
    const [first, last] = [firstStem(row, i), lastStem(row, i)];
    if (last < first) continue;
    for (const stem of [first, last]) {
      const atFt = placeFt(row, i, stem);
      const fromIn = fromLineIn(row, atFt);
      // Stryker disable next-line EqualityOperator: nor a millionth of an inch nearer than another
      if (fromIn < nearestIn - 1e-6) [bay, nearestFt, nearestIn] = [i + 1, atFt, fromIn];
    }
    if (isTooNear(nearestIn)) break;
  }
  return bay > 0 ? {bay, atFt: nearestFt, fromLineIn: nearestIn} : undefined;
}

/** From a stem's middle to the nearer end of its beam, in; negative where it stands beyond the end. */
export function stemToEndIn(design: Pick<Design, "bay" | "column">, atFt: number): number {
  return fromLineIn({spanFt: design.bay.beamSpanFt}, atFt) - columnLineToBeamEndIn(design);
}
