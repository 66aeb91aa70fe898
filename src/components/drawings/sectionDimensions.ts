import {feetAndInches} from "../../lib/units.js";
import type {Shape} from "../../lib/sections/shape.js";

/** A dimensioned stretch of a section: inches from the left edge or the soffit. */
export interface Measured {
  /** Ends of the stretches, rising. */
  readonly at: readonly number[];
  /** Where the section's own edge stands across each end, in: from there an extension line starts. */
  readonly edge: readonly number[];
  /** What each stretch is called; `null` leaves it without a dimension. */
  readonly names: readonly (string | null)[];
  readonly parts?: readonly (string | undefined)[];
}

/** The dimension strings that a drafter would put around a section; strings nearer to it come first. */
export interface SectionDimensions {
  readonly left: readonly Measured[];
  readonly right: readonly Measured[];
  readonly above: readonly Measured[];
  readonly below: readonly Measured[];
}

/** The value of a stretch as an architect writes it. */
export const written = (lengthIn: number): string => feetAndInches(lengthIn, 8);

/** Dimension strings of a shape with its topping. */
export function sectionDimensions(shape: Shape, toppingIn: number): SectionDimensions {
  const {depthIn, widthIn, family, dimensions: d} = shape;
  const get = (name: string) => d[name] ?? 0;
  const topIn = depthIn + toppingIn;
  const topping = toppingIn > 0;
  const total: Measured = {at: [0, topIn], edge: [0, 0], names: [topping ? "in all" : "depth"]};
  const width: Measured = {at: [0, widthIn], edge: [topIn, topIn], names: ["width"]};
  const withTopping = (measured: Measured, edge: number): Measured => (topping
    ? {at: [...measured.at, topIn], edge: [...measured.edge, edge], names: [...measured.names, "topping"], parts: [...measured.names.map(() => "precast"), "topping"]}
    : measured);
  if (family === "double tee") {
    const [first = 0, second = 0] = shape.webCentersIn;
    const stem = get("stemBottomIn");
    return {
      left: [{...total, edge: [first - stem / 2, 0]}],
      right: [withTopping({at: [0, depthIn - get("flangeIn"), depthIn], edge: [second + stem / 2, widthIn, widthIn], names: ["stem", "flange"]}, widthIn)],
      above: [width],
      below: [
        {at: [first - stem / 2, first + stem / 2], edge: [0, 0], names: [""]},
        {at: [0, first, second, widthIn], edge: [depthIn - get("flangeIn"), 0, 0, depthIn - get("flangeIn")], names: ["", "between stems", ""]},
      ],
    };
  }
  if (family === "L-beam" || family === "inverted tee") {
    const ledge = get("ledgeDepthIn");
    const out = get("ledgeProjectionIn");
    const webLeft = family === "L-beam" ? 0 : out;
    const webRight = webLeft + get("webWidthIn");
    return {
      left: [{...total, edge: [0, webLeft]}],
      right: [withTopping({at: [0, ledge, depthIn], edge: [widthIn, widthIn, webRight], names: ["ledge", "above ledge"]}, webRight)],
      above: [],
      below: [{
        at: family === "L-beam" ? [0, webRight, widthIn] : [0, webLeft, webRight, widthIn],
        edge: family === "L-beam" ? [0, 0, 0] : [0, 0, 0, 0],
        names: family === "L-beam" ? ["web", "ledge"] : ["ledge", "web", "ledge"],
      }],
    };
  }
  const depth = withTopping({at: [0, depthIn], edge: [widthIn, widthIn], names: [family === "hollow core" ? "plank" : "depth"]}, widthIn);
  return {left: topping ? [total] : [], right: [depth], above: [], below: [{...width, edge: [0, 0]}]};
}
