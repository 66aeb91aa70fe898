import {requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import type {Shape} from "../sections/shape.js";

/** What is taken from the bare space before a duct may have it, in; each 0 to 12. */
export interface DuctClearance {
  /** Fireproofing or other coating on the concrete. */
  readonly coatingIn: number;
  /** Insulation all around the duct. */
  readonly insulationIn: number;
  /** Hangers and flanges above the duct, below the flange of the tee. */
  readonly hangerIn: number;
  /** Air at each side, so that the duct can be got in and joined. */
  readonly sideIn: number;
}

/** Bare concrete, an inch of insulation, two inches for hangers and one at each side (common practice). */
export const USUAL_CLEARANCE: DuctClearance = {coatingIn: 0, insulationIn: 1, hangerIn: 2, sideIn: 1};

/** Where a duct may run along a deck of double tees: between the stems of one tee, or of two neighbors. */
export type DuctPlace = "between stems" | "between tees";

/** The room that the stems leave a duct whose insulated underside is flush with the soffit or stands above it. */
export interface DuctRoom {
  readonly place: DuctPlace;
  /** Underside of the insulated duct above the soffit of the stems, in. */
  readonly bottomIn: number;
  /** Greatest depth of bare duct, in, and the bare width at that depth: the stems widen upward, so less depth leaves more width. */
  readonly greatestDepthIn: number;
  readonly widthAtGreatestIn: number;
}

/**
 * Clear width between stems at a height, in, from the tee's own outline: the stems taper toward the soffit and may
 * flare into the flange.
 *
 * @param heightIn - above the soffit, in; from 0 to the underside of the flange
 * @throws InputError for another family than the double tee, or a height outside the stems
 */
export function stemGapIn(shape: Shape, place: DuctPlace, heightIn: number): number {
  const d = teeDimensions(shape);
  const undersideIn = d.depthIn - d.flangeIn;
  requireNumber(heightIn, {path: "heightIn", label: "height above the soffit", unit: "in", min: 0, max: undersideIn});
  const footIn = undersideIn - d.chamferIn;
  // Stryker disable next-line EqualityOperator: taper and flare meet at the foot
  const stemIn = heightIn <= footIn
    ? d.stemBottomIn + ((d.stemTopIn - d.stemBottomIn) * heightIn) / footIn
    : d.stemTopIn + 2 * (heightIn - footIn);
  return (place === "between stems" ? d.stemSpacingIn : d.widthIn - d.stemSpacingIn) - stemIn;
}

/**
 * Width that a bare rectangular duct of some depth may have, in; 0 where it does not fit at all. Its upper corners are
 * what meets the stems.
 *
 * @param bottomIn - underside of the insulated duct above the soffit, in
 * @throws InputError for another family than the double tee, or numbers out of range
 */
export function ductWidthIn(shape: Shape, place: DuctPlace, depthIn: number, clearance: DuctClearance = USUAL_CLEARANCE, bottomIn = 0): number {
  const c = checkedClearance(clearance);
  requireNumber(depthIn, {path: "depthIn", label: "depth of the duct", unit: "in", min: 0, max: 120});
  const undersideIn = undersideOf(shape);
  requireNumber(bottomIn, {path: "bottomIn", label: "underside of the duct above the soffit", unit: "in", min: 0, max: undersideIn});
  const topIn = bottomIn + depthIn + 2 * c.insulationIn;
  // Stryker disable next-line EqualityOperator: the two part in the tenth digit
  if (topIn + c.hangerIn + c.coatingIn > undersideIn + 1e-9) return 0;
  const gapIn = stemGapIn(shape, place, Math.min(undersideIn, topIn));
  return Math.max(0, gapIn - 2 * (c.coatingIn + c.sideIn + c.insulationIn));
}

/**
 * Clear width between the stems at the top of a duct, in, less the air at its sides: the most that its insulated outside may take.
 * Undefined where the duct is too deep for the place.
 *
 * @param outsideDepthIn - of the duct with its insulation, in
 */
export function clearAtTopIn(shape: Shape, place: DuctPlace, outsideDepthIn: number, clearance: DuctClearance = USUAL_CLEARANCE): number | undefined {
  // Stryker disable next-line ArithmeticOperator: twice an inch of insulation is as much as two over it
  const widthIn = ductWidthIn(shape, place, Math.max(0, outsideDepthIn - 2 * clearance.insulationIn), clearance);
  // Stryker disable next-line ArithmeticOperator: twice an inch of insulation is as much as two over it
  return widthIn > 0 ? widthIn + 2 * clearance.insulationIn : undefined;
}

/** The room between the stems for a duct at a height above the soffit; see {@link ductWidthIn}. */
export function ductRoom(shape: Shape, place: DuctPlace, clearance: DuctClearance = USUAL_CLEARANCE, bottomIn = 0): DuctRoom {
  const c = checkedClearance(clearance);
  const greatestDepthIn = Math.max(0, undersideOf(shape) - bottomIn - c.hangerIn - c.coatingIn - 2 * c.insulationIn);
  return {place, bottomIn, greatestDepthIn, widthAtGreatestIn: greatestDepthIn > 0 ? ductWidthIn(shape, place, greatestDepthIn, c, bottomIn) : 0};
}

/** Both places along a deck of double tees. */
export const DUCT_PLACES: readonly DuctPlace[] = ["between stems", "between tees"];

function undersideOf(shape: Shape): number {
  const {depthIn, flangeIn} = teeDimensions(shape);
  return depthIn - flangeIn;
}

type TeeName = "widthIn" | "depthIn" | "flangeIn" | "stemBottomIn" | "stemTopIn" | "stemSpacingIn" | "chamferIn";

function teeDimensions(shape: Shape): Record<TeeName, number> {
  if (shape.family === "double tee") return shape.dimensions as Record<TeeName, number>;
  throw new InputError({path: "member", label: "deck member", value: shape.designation, allowed: "a double tee",
    advice: "Between planks there is no room for ducts: they run below"});
}

function checkedClearance(clearance: DuctClearance): DuctClearance {
  if (clearance === USUAL_CLEARANCE) return clearance;
  const labels = {coatingIn: "coating on the concrete", insulationIn: "insulation of the duct", hangerIn: "room for hangers", sideIn: "air beside the duct"};
  for (const key of Object.keys(labels) as (keyof DuctClearance)[]) {
    requireNumber(clearance[key], {path: `clearance.${key}`, label: labels[key], unit: "in", min: 0, max: 12});
  }
  return clearance;
}
