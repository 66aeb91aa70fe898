import {InputError} from "../errors.js";
import type {Strand} from "../materials/strand.js";
import {widthAt} from "../sections/polygon.js";
import type {Shape} from "../sections/shape.js";
import type {Pattern} from "./pattern.js";

/** Concrete from a strand to the side of its stem, in: 3/4 in of cover over a stirrup of 3/8 in (common practice). */
export const LEAST_SIDE_COVER_IN = 1.125;
/** Concrete from a strand's center to the soffit and to the top, where heights are the reader's own, in (common practice). */
const LEAST_FACE_IN = 1;
/** Slack for heights that are right at a limit, in. */
const HAIR_IN = 1e-9;

/**
 * Whether a stem is wide enough for its strands at the lowest of them, where a tapered stem is narrowest.
 *
 * @throws InputError if the concrete beside the strand would be less than {@link LEAST_SIDE_COVER_IN}
 */
export function requireStemRoom(shape: Shape, pattern: Pattern, strand: Strand, lowestIn: number): void {
  const widthIn = widthAt(shape.rings, lowestIn) / shape.webCentersIn.length;
  const neededIn = strand.diameterIn + 2 * LEAST_SIDE_COVER_IN;
  if (widthIn >= neededIn - HAIR_IN) return;
  throw new InputError({path: "pattern", label: "strand pattern", value: pattern.text,
    allowed: `a ${strand.diameterIn} in strand needs a stem ${round(neededIn)} in wide, with ${LEAST_SIDE_COVER_IN} in of concrete on either side; `
      + `this one has ${round(widthIn)} in at its lowest strand`});
}

/**
 * Heights at which the strands of a pattern can have their centroid, in. In a stem they may lie on each other, so half
 * of a stack a strand apart must fit below and above; elsewhere they lie side by side.
 */
export function centroidRangeIn(shape: Shape, pattern: Pattern, strand: Strand): {min: number; max: number} {
  const perStem = shape.family === "double tee" ? pattern.count / shape.webCentersIn.length : 1;
  const halfStackIn = ((perStem - 1) / 2) * strand.diameterIn;
  return {min: round(LEAST_FACE_IN + halfStackIn), max: round(shape.depthIn - LEAST_FACE_IN - halfStackIn)};
}

/** Whether every strand of a plank, given as points of its cross-section, lies wholly in concrete: none reaches into a void. */
export function clearOfVoids(shape: Shape, strand: Strand, placed: readonly {readonly xIn: number; readonly yIn: number}[]): boolean {
  const {voidCount = 0, voidDiameterIn = 0} = shape.dimensions;
  if (voidCount === 0) return true;
  const pitchIn = shape.widthIn / voidCount;
  const leastIn = (voidDiameterIn + strand.diameterIn) / 2;
  return placed.every(({xIn, yIn}) => {
    const nearest = Math.max(0, Math.min(voidCount - 1, Math.floor(xIn / pitchIn)));
    return Math.hypot(xIn - (nearest + 0.5) * pitchIn, yIn - shape.depthIn / 2) >= leastIn - HAIR_IN;
  });
}

/** Strands of one height, at the ends and at the hold-down points, in. */
interface Row {
  readonly count: number;
  readonly endIn: number;
  readonly centerIn: number;
}

/** Strands side by side in a row, center to center, and from a side of a solid section to the first of them, in (common practice). */
const SIDE_BY_SIDE_IN = 2;

/**
 * Least distance of strands at the ends, center to center, in: 1-3/4 in, 2 in for the 0.6 in strand, or four diameters
 * where that is less (ACI 318-19 25.2.4, for 4,000 psi at release; from memory).
 */
function leastEndSpacingIn({diameterIn}: Strand): number {
  return Math.min(4 * diameterIn, diameterIn > 0.5 ? 2 : 1.75);
}

/**
 * The one door for rows of strands, whoever laid them out: each row has concrete around it at the ends and at midspan and
 * stands clear of voids; rows keep their distance and their order; depressed strands come down toward midspan.
 *
 * @param placed - a row's strands as points of the cross-section at a height
 * @throws InputError naming the row that does not fit
 */
export function requireRowRoom(
  shape: Shape, strand: Strand, rows: readonly Row[], placed: (count: number, heightIn: number) => readonly {readonly xIn: number; readonly yIn: number}[],
): void {
  rows.forEach(({count, endIn, centerIn}, i) => {
    if (endIn < centerIn - HAIR_IN) {
      throw new InputError({path: `rows.${i}.heightEndIn`, label: "strand height at the ends", value: endIn, unit: "in",
        allowed: `${round(centerIn)} in or more: depressed strands are held down toward midspan, not up`});
    }
    for (const [key, heightIn] of [["heightEndIn", endIn], ["heightMidspanIn", centerIn]] as const) {
      if (!(heightIn >= LEAST_FACE_IN && heightIn <= shape.depthIn - LEAST_FACE_IN)) {
        throw new InputError({path: `rows.${i}.${key}`, label: "strand height", value: heightIn, unit: "in",
          allowed: `${LEAST_FACE_IN} to ${shape.depthIn - LEAST_FACE_IN} in in a ${shape.depthIn} in member`});
      }
      const most = mostInRow(shape, strand, heightIn);
      const voids = !clearOfVoids(shape, strand, placed(count, heightIn));
      if (count <= most && !voids) continue;
      throw new InputError({path: `rows.${i}.count`, label: `strands side by side ${round(heightIn)} in above the soffit`, value: count,
        allowed: voids ? `fewer or elsewhere: the voids of this ${shape.designation} take their place` : `at most ${most} in this ${shape.designation}`});
    }
    if (shape.family === "double tee" && count % shape.webCentersIn.length !== 0) {
      throw new InputError({path: `rows.${i}.count`, label: "strands in a row", value: count, allowed: `a multiple of ${shape.webCentersIn.length}, the same in each stem`});
    }
  });
  requireRowsApart(strand, rows);
}

/** Rows from below keep their distance at the ends, and at midspan lie on each other at the closest; none crosses another. */
function requireRowsApart(strand: Strand, rows: readonly Row[]): void {
  const depressed = rows.some(({endIn, centerIn}) => endIn !== centerIn);
  const order = rows.map((_, i) => i).sort((a, b) => (rows[a] as Row).centerIn - (rows[b] as Row).centerIn);
  order.slice(1).forEach((index, k) => {
    const [low, high] = [rows[order[k] as number] as Row, rows[index] as Row];
    const leastIn = leastEndSpacingIn(strand);
    for (const [key, apartIn, askedIn] of [
      ["heightEndIn", high.endIn - low.endIn, leastIn], ["heightMidspanIn", high.centerIn - low.centerIn, depressed ? strand.diameterIn : leastIn],
    ] as const) {
      if (apartIn >= askedIn - HAIR_IN) continue;
      throw new InputError({path: `rows.${index}.${key}`, label: "distance of two rows of strands", value: round(apartIn), unit: "in",
        allowed: `${round(askedIn)} in or more ${key === "heightEndIn" ? "at the ends" : "at midspan"}; strands of one height are one row`});
    }
  });
}

/** The most strands that stand side by side at a height. */
function mostInRow(shape: Shape, strand: Strand, heightIn: number): number {
  const widthIn = widthAt(shape.rings, heightIn);
  const {length: webs} = shape.webCentersIn;
  if (shape.family === "hollow core") return 2 * webs;
  const [partIn, parts, sidesIn] = shape.family === "double tee"
    ? [widthIn / webs, webs, strand.diameterIn + 2 * LEAST_SIDE_COVER_IN]
    : [widthIn, 1, 2 * SIDE_BY_SIDE_IN];
  return parts * Math.max(0, Math.floor((partIn - sidesIn + HAIR_IN) / SIDE_BY_SIDE_IN) + 1);
}

/** A length to a hundredth of an inch, as messages show it. */
function round(valueIn: number): number {
  return Math.round(100 * valueIn) / 100;
}
