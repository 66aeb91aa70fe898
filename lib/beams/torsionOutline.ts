import {requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import type {Shape} from "../sections/shape.js";

/** Dimensions of a solid beam as torsion sees it: a web, and on none, one or both of its sides a ledge. */
export interface TorsionDimensions {
  readonly webWidthIn: number;
  readonly depthIn: number;
  /** 0 for a rectangle, 1 for an L-beam, 2 for an inverted tee. */
  readonly ledges: 0 | 1 | 2;
  readonly ledgeProjectionIn: number;
  readonly ledgeDepthIn: number;
}

/** The outline that resists cracking by torsion. */
export interface TorsionOutline {
  /** Area inside the outline (Acp), in2, and its length (pcp), in. */
  readonly areaIn2: number;
  readonly perimeterIn: number;
  /** Acp^2 / pcp, in3: what the threshold and the cracking torsion are proportional to. */
  readonly modulusIn3: number;
  /** How far the ledge is counted on each side, in; 0 where the web alone is the better outline. */
  readonly countedLedgeIn: number;
}

/**
 * The outline of a beam for torsion, by its shape.
 *
 * @throws InputError for a shape that is no beam
 */
export function torsionOutlineOf(shape: Shape): TorsionOutline {
  return torsionOutline(torsionDimensionsOf(shape));
}

/** What torsion needs to know of a rectangular beam, an L-beam or an inverted tee; any other shape throws InputError. */
export function torsionDimensionsOf(shape: Shape): TorsionDimensions {
  const {family, dimensions} = shape;
  const at = (name: string) => dimensions[name] as number;
  switch (family) {
    case "rectangular beam":
      return {webWidthIn: at("widthIn"), depthIn: at("depthIn"), ledges: 0, ledgeProjectionIn: 0, ledgeDepthIn: 0};
    case "L-beam":
    case "inverted tee":
      return {
        webWidthIn: at("webWidthIn"), depthIn: at("depthIn"), ledges: family === "L-beam" ? 1 : 2,
        ledgeProjectionIn: at("ledgeProjectionIn"), ledgeDepthIn: at("ledgeDepthIn"),
      };
    default:
      throw new InputError({path: "shape.family", label: "shape", value: family, allowed: "rectangular beam, L-beam, inverted tee"});
  }
}

/**
 * The outline of a beam for torsion: web and ledge, the ledge counted no further than the web stands above it and no
 * further than four times its own depth; or the web alone, where that gives the larger Acp^2 / pcp (ACI 318-19
 * 9.2.4.4, whose overhanging flange is here the ledge).
 *
 * @throws InputError if a dimension is out of its range
 */
export function torsionOutline(dimensions: TorsionDimensions): TorsionOutline {
  const {webWidthIn, depthIn, ledges, ledgeDepthIn} = checked(dimensions);
  const web = outline(webWidthIn * depthIn, 2 * (webWidthIn + depthIn), 0);
  if (ledges === 0) return web;
  const countedIn = Math.min(dimensions.ledgeProjectionIn, depthIn - ledgeDepthIn, 4 * ledgeDepthIn);
  // A step in the outline adds the ledge's width twice; its height replaces as much of the web's side.
  const whole = outline(web.areaIn2 + ledges * countedIn * ledgeDepthIn, web.perimeterIn + 2 * ledges * countedIn, countedIn);
  // Stryker disable next-line EqualityOperator: where both are equal, either is right
  return whole.modulusIn3 >= web.modulusIn3 ? whole : web;
}

function outline(areaIn2: number, perimeterIn: number, countedLedgeIn: number): TorsionOutline {
  return {areaIn2, perimeterIn, modulusIn3: areaIn2 ** 2 / perimeterIn, countedLedgeIn};
}

function checked(d: TorsionDimensions): TorsionDimensions {
  const at = (name: keyof TorsionDimensions, label: string, min: number, max: number) =>
    requireNumber(d[name], {path: name, label, unit: "in", min, max});
  at("webWidthIn", "web width", 4, 60);
  at("depthIn", "depth", 6, 144);
  requireNumber(d.ledges, {path: "ledges", label: "number of ledges", unit: "", min: 0, max: 2, integer: true});
  if (d.ledges > 0) {
    at("ledgeProjectionIn", "ledge projection", 1, 36);
    at("ledgeDepthIn", "ledge depth", 3, d.depthIn - 2);
  }
  return d;
}
