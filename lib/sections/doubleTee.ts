import {requireNumber} from "../check.js";
import type {Point} from "./polygon.js";
import {shapeFrom, type Shape} from "./shape.js";

/** Dimensions of a double tee, inches. The stems taper toward the soffit and may flare into the flange at 45 degrees. */
export interface DoubleTeeDimensions {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly flangeIn: number;
  readonly stemBottomIn: number;
  /** Width of a stem at the foot of its chamfer, or at the flange where there is none. */
  readonly stemTopIn: number;
  /** Between the centers of the two stems. */
  readonly stemSpacingIn: number;
  /** Leg of the 45 degree chamfer between stem and flange; 0 for none. */
  readonly chamferIn: number;
}

/**
 * The shape of a double tee.
 *
 * @throws InputError if a dimension is out of its range or the stems do not fit under the flange
 */
export function doubleTee(designation: string, dimensions: DoubleTeeDimensions): Shape {
  const {widthIn, depthIn, flangeIn, stemBottomIn, stemTopIn, stemSpacingIn, chamferIn} = checked(dimensions);
  const footIn = depthIn - flangeIn - chamferIn;
  const left: Point[] = [[0, depthIn], [0, depthIn - flangeIn]];
  const webCentersIn = [widthIn / 2 - stemSpacingIn / 2, widthIn / 2 + stemSpacingIn / 2];
  const stems = webCentersIn.flatMap((x): Point[] => {
    const flare = stemTopIn / 2 + chamferIn;
    const descent: Point[] = [[x - flare, depthIn - flangeIn], [x - stemTopIn / 2, footIn], [x - stemBottomIn / 2, 0]];
    const ascent: Point[] = [[x + stemBottomIn / 2, 0], [x + stemTopIn / 2, footIn], [x + flare, depthIn - flangeIn]];
    return chamferIn > 0 ? [...descent, ...ascent] : [descent[0], descent[2], ascent[0], ascent[2]] as Point[];
  });
  const right: Point[] = [[widthIn, depthIn - flangeIn], [widthIn, depthIn]];
  return shapeFrom({
    designation,
    family: "double tee",
    depthIn,
    widthIn,
    rings: [[...left, ...stems, ...right]],
    dimensions: {...dimensions},
    webWidthIn: stemBottomIn + stemTopIn,
    webCentersIn,
  });
}

function checked(d: DoubleTeeDimensions): DoubleTeeDimensions {
  const at = (name: keyof DoubleTeeDimensions, label: string, min: number, max: number) =>
    requireNumber(d[name], {path: `dimensions.${name}`, label, unit: "in", min, max});
  at("widthIn", "width", 48, 192);
  at("depthIn", "depth", 10, 60);
  at("flangeIn", "flange", 1.5, 8);
  at("stemBottomIn", "stem width at the soffit", 2.5, 24);
  at("stemTopIn", "stem width at the flange", d.stemBottomIn, 30);
  at("chamferIn", "chamfer", 0, Math.max(0, d.depthIn - d.flangeIn - 4));
  const flareIn = d.stemTopIn + 2 * d.chamferIn;
  at("stemSpacingIn", "stem spacing", flareIn, d.widthIn - flareIn);
  return d;
}
