import {requireNumber} from "../check.js";
import {Kept} from "../kept.js";
import type {Point} from "./polygon.js";
import {shapeFrom, type Family, type Shape} from "./shape.js";

/** Dimensions of a rectangle, inches. */
export interface RectangleDimensions {
  readonly widthIn: number;
  readonly depthIn: number;
}

/** The shape of a solid flat slab. */
export function flatSlab(designation: string, dimensions: RectangleDimensions): Shape {
  return rectangle(designation, "flat slab", dimensions, 12);
}

/** The shape of a rectangular beam. */
export function rectangularBeam(designation: string, dimensions: RectangleDimensions): Shape {
  return rectangle(designation, "rectangular beam", dimensions, 2);
}

function rectangle(designation: string, family: Family, dimensions: RectangleDimensions, strandPitchIn: number): Shape {
  return SHAPES.get(`${family} ${designation} ${dimensions.widthIn} ${dimensions.depthIn}`, () => newRectangle(designation, family, dimensions, strandPitchIn));
}

/** Shapes that were made last: a search asks for the same ones again and again. */
const SHAPES = new Kept<Shape>(500);

function newRectangle(designation: string, family: Family, dimensions: RectangleDimensions, strandPitchIn: number): Shape {
  const {widthIn, depthIn} = dimensions;
  requireNumber(widthIn, {path: "dimensions.widthIn", label: "width", unit: "in", min: 6, max: 192});
  requireNumber(depthIn, {path: "dimensions.depthIn", label: "depth", unit: "in", min: 3, max: 144});
  return shapeFrom({
    designation, family, depthIn, widthIn,
    rings: [[[0, 0], [widthIn, 0], [widthIn, depthIn], [0, depthIn]]],
    dimensions: {...dimensions},
    webWidthIn: widthIn,
    webCentersIn: spread(widthIn, strandPitchIn),
  });
}

/** Dimensions of an L-beam or inverted tee, inches: a web that stands on a wider foot, whose free part is the ledge. */
export interface LedgeBeamDimensions {
  readonly webWidthIn: number;
  readonly depthIn: number;
  readonly ledgeProjectionIn: number;
  readonly ledgeDepthIn: number;
}

/** The shape of an L-beam: one ledge, on the right of the web. */
export function lBeam(designation: string, dimensions: LedgeBeamDimensions): Shape {
  return kept("L", designation, dimensions, newLBeam);
}

function newLBeam(designation: string, dimensions: LedgeBeamDimensions): Shape {
  const {webWidthIn, depthIn, ledgeProjectionIn, ledgeDepthIn} = checked(dimensions);
  const widthIn = webWidthIn + ledgeProjectionIn;
  return ledgeBeam(designation, "L-beam", dimensions, widthIn, [
    [0, 0], [widthIn, 0], [widthIn, ledgeDepthIn], [webWidthIn, ledgeDepthIn], [webWidthIn, depthIn], [0, depthIn],
  ]);
}

/** The shape of an inverted tee: a ledge on each side of the web. */
export function invertedTee(designation: string, dimensions: LedgeBeamDimensions): Shape {
  return kept("IT", designation, dimensions, newInvertedTee);
}

function kept(kind: string, designation: string, dimensions: LedgeBeamDimensions, make: (designation: string, dimensions: LedgeBeamDimensions) => Shape): Shape {
  const {webWidthIn, depthIn, ledgeProjectionIn, ledgeDepthIn} = dimensions;
  return SHAPES.get(`${kind} ${designation} ${webWidthIn} ${depthIn} ${ledgeProjectionIn} ${ledgeDepthIn}`, () => make(designation, dimensions));
}

function newInvertedTee(designation: string, dimensions: LedgeBeamDimensions): Shape {
  const {webWidthIn, depthIn, ledgeProjectionIn, ledgeDepthIn} = checked(dimensions);
  const widthIn = webWidthIn + 2 * ledgeProjectionIn;
  const rightIn = ledgeProjectionIn + webWidthIn;
  return ledgeBeam(designation, "inverted tee", dimensions, widthIn, [
    [0, 0], [widthIn, 0], [widthIn, ledgeDepthIn], [rightIn, ledgeDepthIn], [rightIn, depthIn],
    [ledgeProjectionIn, depthIn], [ledgeProjectionIn, ledgeDepthIn], [0, ledgeDepthIn],
  ]);
}

function ledgeBeam(designation: string, family: Family, dimensions: LedgeBeamDimensions, widthIn: number, outline: Point[]): Shape {
  return shapeFrom({
    designation, family, depthIn: dimensions.depthIn, widthIn, rings: [outline],
    dimensions: {...dimensions},
    webWidthIn: dimensions.webWidthIn,
    webCentersIn: spread(widthIn, 2),
  });
}

function checked(d: LedgeBeamDimensions): LedgeBeamDimensions {
  const at = (name: keyof LedgeBeamDimensions, label: string, min: number, max: number) =>
    requireNumber(d[name], {path: `dimensions.${name}`, label, unit: "in", min, max});
  at("webWidthIn", "web width", 6, 48);
  at("depthIn", "depth", 10, 144);
  at("ledgeProjectionIn", "ledge projection", 2, 24);
  at("ledgeDepthIn", "ledge depth", 3, d.depthIn - 2);
  return d;
}

/** Vertical lines for strands at a pitch, two inches clear of the sides. */
function spread(widthIn: number, pitchIn: number): number[] {
  const count = Math.max(1, Math.floor((widthIn - 4) / pitchIn) + 1);
  return Array.from({length: count}, (_, i) => widthIn / 2 + (i - (count - 1) / 2) * pitchIn);
}
