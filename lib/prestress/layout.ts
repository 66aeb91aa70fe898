import {InputError} from "../errors.js";
import type {Strand} from "../materials/strand.js";
import type {Shape} from "../sections/shape.js";
import type {Pattern, Profile} from "./pattern.js";
import {centroidRangeIn, clearOfVoids, requireRowRoom, requireStemRoom} from "./room.js";

/** Where the strands run. All heights are above the soffit, in. */
export interface StrandLayout {
  readonly strand: Strand;
  readonly count: number;
  readonly profile: Profile;
  /** Strands of equal heights taken together, lowest at midspan first. */
  readonly rows: readonly StrandRow[];
  /** Total area Aps, in2. */
  readonly areaIn2: number;
  /** Height of the centroid at the ends and at the hold-down points. */
  readonly centroidEndIn: number;
  readonly centroidCenterIn: number;
}

/** Strands that share their heights at the ends and at the hold-down points. */
export interface StrandRow {
  readonly count: number;
  readonly areaIn2: number;
  readonly endIn: number;
  readonly centerIn: number;
}

/** Distance between strands, center to center, in: 2 in is the usual grid of casting beds (common practice). */
export const STRAND_PITCH_IN = 2;
/** Hold-down points of a two-point profile as a share of the span from each end (common practice). */
export const TWO_POINT_SHARE = 0.4;
/** Concrete from a strand's center to the top of the member, in: cover and half a strand, rounded (common practice). */
const TOP_CLEARANCE_IN = 1.5;
/** Height left above the topmost depressed strand at the ends of a tee, in (common practice). */
const END_CLEARANCE_IN = 3;

/**
 * The usual layout of a pattern in a shape.
 *
 * Tees: one column of strands in each stem, 2 in apart, upwards from the lowest; depressed strands lie on each other
 * at midspan, one strand diameter apart, and spread evenly up the stem at the ends. Planks and slabs: one row.
 *
 * @param lowestIn - height of the lowest strands, in
 * @throws InputError if the strands do not fit
 */
export function usualLayout(shape: Shape, pattern: Pattern, strand: Strand, lowestIn: number): StrandLayout {
  checkPattern(shape, pattern);
  return shape.family === "double tee" ? teeLayout(shape, pattern, strand, lowestIn) : plankLayout(shape, pattern, strand, lowestIn);
}

/** Whether a member of this family is cast with such a pattern at all, wherever its strands stand. */
function checkPattern(shape: Shape, pattern: Pattern): void {
  const refuse = (allowed: string): never => {
    throw new InputError({path: "pattern", label: "strand pattern", value: pattern.text, allowed});
  };
  const stems = shape.webCentersIn.length;
  if (shape.family === "double tee") {
    if (pattern.count % stems !== 0) refuse(`a multiple of ${stems} strands, the same in each stem`);
  } else if (pattern.profile !== "straight") {
    refuse(`straight strands (S) in a ${shape.family}`);
  }
}

/**
 * A layout that is known by the height of its centroid alone, as printed tables give it: all strands stand at that
 * height.
 *
 * @param endIn - height at the ends, in
 * @param centerIn - height at the hold-down points, in; one of the two stands for both where the other is not given
 * @throws InputError if the member is not cast with such a pattern, or has no concrete around it at a height
 */
export function centroidLayout(shape: Shape, pattern: Pattern, strand: Strand, endIn: number | undefined, centerIn: number | undefined): StrandLayout {
  checkPattern(shape, pattern);
  const {min, max} = centroidRangeIn(shape, pattern, strand);
  if (min > max) tooMany(shape, pattern, shape.webCentersIn.length * (Math.floor((shape.depthIn - 2) / strand.diameterIn) + 1));
  for (const [path, label, heightIn] of [
    ["strandHeightEndIn", "strand height at the ends", endIn],
    ["strandHeightCenterIn", "strand height at midspan", centerIn],
  ] as const) {
    if (heightIn === undefined) continue;
    if (!(heightIn >= min && heightIn <= max)) {
      throw new InputError({path, label, value: heightIn, unit: "in", allowed: `${min} to ${max} in ${heightWords(shape, pattern)}`});
    }
    if (!clearAt(shape, pattern.count, strand, heightIn)) {
      const soffitIn = highestClearIn(shape, pattern.count, strand);
      throw new InputError({path, label, value: heightIn, unit: "in", allowed: soffitIn === undefined
        ? `the voids of this ${shape.designation} leave no height for ${pattern.count} strands`
        : `${min} to ${soffitIn} in: higher up ${pattern.count} strands of a ${shape.designation} would stand in its voids`});
    }
  }
  const [end, center] = [(endIn ?? centerIn) as number, (centerIn ?? endIn) as number];
  if (pattern.profile === "straight" && end !== center) {
    throw new InputError({path: "strandHeightEndIn", label: "strand height at the ends", value: end, unit: "in",
      allowed: `${center} in, as at midspan: the strands of ${pattern.text} are straight`});
  }
  if (end < center) {
    throw new InputError({path: "strandHeightEndIn", label: "strand height at the ends", value: end, unit: "in",
      allowed: `${center} in or more: depressed strands are held down toward midspan, not up`});
  }
  if (shape.family === "double tee") requireStemRoom(shape, pattern, strand, center - (min - 1));
  return layoutOfRows(strand, pattern.profile, [{count: pattern.count, endIn: end, centerIn: center}]);
}

/**
 * A layout of rows that a reader gives one by one, at their heights at the ends and at the hold-down points.
 *
 * @throws InputError if the member is not cast with such strands, or a row does not fit
 */
export function rowLayout(shape: Shape, pattern: Pattern, strand: Strand, rows: readonly Omit<StrandRow, "areaIn2">[]): StrandLayout {
  checkPattern(shape, pattern);
  return fitted(shape, strand, pattern.profile, rows);
}

/** Rows that have passed the door for all of them. */
function fitted(shape: Shape, strand: Strand, profile: Profile, rows: readonly Omit<StrandRow, "areaIn2">[]): StrandLayout {
  requireRowRoom(shape, strand, rows, (count, heightIn) => spreadOverWebs(shape.webCentersIn, count, heightIn));
  return layoutOfRows(strand, profile, rows);
}

function heightWords(shape: Shape, pattern: Pattern): string {
  const member = `${/^(8|11$|18$)/.test(String(shape.depthIn)) ? "an" : "a"} ${shape.depthIn} in member`;
  if (shape.family !== "double tee" || pattern.count === shape.webCentersIn.length) return `in ${member}`;
  return `with ${pattern.count / shape.webCentersIn.length} strands in each stem of ${member}`;
}

function teeLayout(shape: Shape, pattern: Pattern, strand: Strand, lowestIn: number): StrandLayout {
  const stems = shape.webCentersIn.length;
  const perStem = pattern.count / stems;
  const most = mostTeeStrands(shape.depthIn, stems, pattern.profile, lowestIn);
  if (pattern.count > most) tooMany(shape, pattern, most);
  requireStemRoom(shape, pattern, strand, lowestIn);
  const depressedTopIn = shape.depthIn - END_CLEARANCE_IN;
  const rows = Array.from({length: perStem}, (_, i) => {
    if (pattern.profile === "straight") {
      const heightIn = lowestIn + i * STRAND_PITCH_IN;
      return {count: stems, endIn: heightIn, centerIn: heightIn};
    }
    const endIn = perStem === 1 ? depressedTopIn : lowestIn + (i * (depressedTopIn - lowestIn)) / (perStem - 1);
    return {count: stems, endIn, centerIn: lowestIn + i * strand.diameterIn};
  });
  return fitted(shape, strand, pattern.profile, rows);
}

/** The most strands that the usual layout of a tee can hold: one column in each stem. */
export function mostTeeStrands(depthIn: number, stems: number, profile: Profile, lowestIn: number): number {
  const highestIn = depthIn - (profile === "straight" ? TOP_CLEARANCE_IN : END_CLEARANCE_IN);
  return stems * (Math.floor((highestIn - lowestIn) / STRAND_PITCH_IN) + 1);
}

function plankLayout(shape: Shape, pattern: Pattern, strand: Strand, lowestIn: number): StrandLayout {
  const most = mostPlankStrands(shape);
  if (pattern.count > most) tooMany(shape, pattern, most);
  if (!clearAt(shape, pattern.count, strand, lowestIn)) {
    let fit = pattern.count - 1;
    while (fit > 0 && !clearAt(shape, fit, strand, lowestIn)) fit -= 1;
    tooMany(shape, pattern, fit);
  }
  return fitted(shape, strand, "straight", [{count: pattern.count, endIn: lowestIn, centerIn: lowestIn}]);
}

/** The most strands in one row of a plank or slab: two to a web between voids, or one to each pitch of a solid slab. */
function mostPlankStrands(shape: Shape): number {
  if (shape.family === "hollow core") return 2 * shape.webCentersIn.length;
  return Math.floor(shape.widthIn / STRAND_PITCH_IN) - 1;
}

/** Whether a row of strands at a height stands clear of a plank's voids; other members have none. */
function clearAt(shape: Shape, count: number, strand: Strand, heightIn: number): boolean {
  return clearOfVoids(shape, strand, spreadOverWebs(shape.webCentersIn, count, heightIn));
}

/** The highest row below the middle of a plank that stands clear of its voids, to 0.05 in; undefined where none does. */
function highestClearIn(shape: Shape, count: number, strand: Strand): number | undefined {
  let found: number | undefined;
  for (let twentieths = 20; twentieths <= 10 * shape.depthIn && clearAt(shape, count, strand, twentieths / 20); twentieths++) found = twentieths / 20;
  return found;
}

function tooMany(shape: Shape, pattern: Pattern, most: number): never {
  throw new InputError({path: "pattern", label: "strand pattern", value: pattern.text,
    allowed: `at most ${most} strands of this profile fit a ${shape.designation}`});
}

/** A layout of rows that are known one by one, at their heights at the ends and at the hold-down points; nothing is checked. */
export function layoutOfRows(strand: Strand, profile: Profile, rows: readonly Omit<StrandRow, "areaIn2">[]): StrandLayout {
  const count = rows.reduce((sum, row) => sum + row.count, 0);
  const mean = (pick: (row: Omit<StrandRow, "areaIn2">) => number) => rows.reduce((sum, row) => sum + row.count * pick(row), 0) / count;
  return {
    strand, count, profile,
    // Written out, not spread, so that all rows are objects of one shape: tables walk them many hundred thousand times a second.
    rows: rows.map(({count: n, endIn, centerIn}) => ({count: n, areaIn2: n * strand.areaIn2, endIn, centerIn})),
    areaIn2: count * strand.areaIn2,
    centroidEndIn: mean((row) => row.endIn),
    centroidCenterIn: mean((row) => row.centerIn),
  };
}

/** The hold-down point nearest an end, as a share of the span; midspan for one point, and for straight strands. */
export function holdDownShare(profile: Profile): number {
  return profile === "two-point" ? TWO_POINT_SHARE : 0.5;
}

/**
 * How far a strand has come from its end height to its hold-down height: 0 at the end, 1 at the hold-down and between
 * two of them.
 *
 * @param share - place along the span, 0 to 1
 */
export function depression(profile: Profile, share: number): number {
  if (profile === "straight") return 1;
  const fromEnd = Math.min(share, 1 - share);
  return Math.min(1, fromEnd / holdDownShare(profile));
}

/** Height of the strands' centroid at a place along the span (0 to 1), in. */
export function centroidAt(layout: StrandLayout, share: number): number {
  return layout.centroidEndIn + depression(layout.profile, share) * (layout.centroidCenterIn - layout.centroidEndIn);
}

/** Distance between strands that share a web of a plank, in (common practice). */
const PAIR_PITCH_IN = 1.5;

/** One strand in a cross-section. */
export interface PlacedStrand {
  readonly xIn: number;
  readonly yIn: number;
}

/**
 * Every strand of a layout as a point of the cross-section at a place along the span (0 to 1), for drawings.
 *
 * A row's strands are shared out over the stems or webs; strands known by their centroid alone are stacked about it.
 */
export function placedStrands(shape: Shape, layout: StrandLayout, share: number): PlacedStrand[] {
  const webs = shape.webCentersIn;
  const at = depression(layout.profile, share);
  return layout.rows.flatMap((row) => {
    const heightIn = row.endIn + at * (row.centerIn - row.endIn);
    return shape.family === "double tee"
      ? stackInStems(webs, row.count, heightIn, shape.depthIn)
      : spreadOverWebs(webs, row.count, heightIn);
  });
}

/** One column in each stem, about the row's height, an inch off soffit and top. */
function stackInStems(stemsIn: readonly number[], count: number, heightIn: number, depthIn: number): PlacedStrand[] {
  const perStem = Math.ceil(count / stemsIn.length);
  const roomIn = 2 * Math.min(heightIn - 1, depthIn - 1 - heightIn);
  const spacingIn = Math.max(0, Math.min(STRAND_PITCH_IN, roomIn / Math.max(1, perStem - 1)));
  return Array.from({length: count}, (_, i) => ({
    xIn: stemsIn[Math.floor(i / perStem)] as number,
    yIn: heightIn + ((i % perStem) - (perStem - 1) / 2) * spacingIn,
  }));
}

/** Side by side over the webs as evenly as whole strands allow; in an edge web they spread inwards. */
function spreadOverWebs(websIn: readonly number[], count: number, heightIn: number): PlacedStrand[] {
  const perWeb = websIn.map(() => 0);
  for (let i = 0; i < count; i++) perWeb[Math.floor(((i + 0.5) * websIn.length) / count) % websIn.length]! += 1;
  return perWeb.flatMap((strands, web) => Array.from({length: strands}, (_, k): PlacedStrand => {
    const offset = web === 0 ? k : web === websIn.length - 1 ? k - (strands - 1) : k - (strands - 1) / 2;
    return {xIn: (websIn[web] as number) + offset * PAIR_PITCH_IN, yIn: heightIn};
  }));
}
