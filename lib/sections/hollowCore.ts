import {InputError} from "../errors.js";
import {requireNumber} from "../check.js";
import {circularHole, type Ring} from "./polygon.js";
import {shapeFrom, type Shape} from "./shape.js";

/** Dimensions of a hollow-core plank with round voids, inches. */
export interface HollowCoreDimensions {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly voidCount: number;
  readonly voidDiameterIn: number;
}

/** Least concrete above, below and between voids, in: below this a plank cannot be cast (common practice). */
const LEAST_WALL_IN = 0.75;

/**
 * The shape of a hollow-core plank: a rectangle with round voids at equal spacing, centered in its depth.
 *
 * Generic: a plank's real voids belong to its producer, and so do the details of its edges.
 *
 * @throws InputError if the voids do not fit
 */
export function hollowCore(designation: string, dimensions: HollowCoreDimensions): Shape {
  const {widthIn, depthIn, voidCount, voidDiameterIn} = dimensions;
  requireNumber(widthIn, {path: "dimensions.widthIn", label: "width", unit: "in", min: 16, max: 120});
  requireNumber(depthIn, {path: "dimensions.depthIn", label: "depth", unit: "in", min: 4, max: 24});
  requireNumber(voidCount, {path: "dimensions.voidCount", label: "voids", unit: "", min: 1, max: 24, integer: true});
  const pitchIn = widthIn / voidCount;
  const largestIn = Math.min(depthIn, pitchIn) - LEAST_WALL_IN;
  if (!(voidDiameterIn > 0 && voidDiameterIn <= largestIn + 1e-9)) {
    throw new InputError({path: "dimensions.voidDiameterIn", label: "void diameter", value: voidDiameterIn, unit: "in",
      allowed: `above 0 to ${largestIn} in`});
  }
  const holes: Ring[] = Array.from({length: voidCount}, (_, i) => circularHole((i + 0.5) * pitchIn, depthIn / 2, voidDiameterIn));
  return shapeFrom({
    designation,
    family: "hollow core",
    depthIn,
    widthIn,
    rings: [[[0, 0], [widthIn, 0], [widthIn, depthIn], [0, depthIn]], ...holes],
    dimensions: {...dimensions},
    webWidthIn: widthIn - voidCount * voidDiameterIn,
    // Strands sit in the webs between voids, and in the two edge webs.
    webCentersIn: Array.from({length: voidCount + 1}, (_, i) => webCenter(i, voidCount, pitchIn, voidDiameterIn, widthIn)),
  });
}

function webCenter(index: number, voidCount: number, pitchIn: number, diameterIn: number, widthIn: number): number {
  const edgeIn = (pitchIn - diameterIn) / 4;
  if (index === 0) return Math.max(edgeIn, 1);
  if (index === voidCount) return widthIn - Math.max(edgeIn, 1);
  return index * pitchIn;
}
