import {InputError} from "../errors.js";
import type {Strand} from "../materials/strand.js";
import {widthAt} from "../sections/polygon.js";
import type {Shape} from "../sections/shape.js";
import type {Pattern} from "./pattern.js";

/** Concrete from a strand to the side of its stem, in: 3/4 in of cover over a stirrup of 3/8 in (common practice). */
export const LEAST_SIDE_COVER_IN = 1.125;
/** Concrete from a strand's centre to the soffit and to the top, where heights are the reader's own, in (common practice). */
const LEAST_FACE_IN = 1;
/** Slack for heights that are right at a limit, in. */
const HAIR_IN = 1e-9;

/**
 * Whether a stem is wide enough for its strands at the lowest of them, where a tapered stem is narrowest.
 *
 * @throws InputError if the concrete beside the strand would be less than {@link LEAST_SIDE_COVER_IN}
 */
export function requireStemRoom(shape: Shape, pattern: Pattern, strand: Strand, lowestIn: number): void {
  const widthIn = widthAt(shape.rings, lowestIn) / shape.webCentresIn.length;
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
  const perStem = shape.family === "double tee" ? pattern.count / shape.webCentresIn.length : 1;
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

/** A length to a hundredth of an inch, as messages show it. */
function round(valueIn: number): number {
  return Math.round(100 * valueIn) / 100;
}
