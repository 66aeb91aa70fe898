import {InputError} from "../errors.js";
import {doubleTee, type DoubleTeeDimensions} from "./doubleTee.js";
import {hollowCore, type HollowCoreDimensions} from "./hollowCore.js";
import {flatSlab, invertedTee, lBeam, rectangularBeam, type LedgeBeamDimensions, type RectangleDimensions} from "./prismatic.js";
import type {Family, Shape} from "./shape.js";

type Dimensions = Readonly<Record<string, number>>;

/** A cross-section that has a designation, as a table lists it. */
interface ListedShape {
  readonly designation: string;
  readonly family: Family;
  readonly dimensions: Dimensions;
}

/** The tables of cross-sections, as a catalog has them. */
export interface ShapeTables {
  readonly deckMembers: readonly ListedShape[];
  readonly ledgeBeams: readonly ListedShape[];
}

const MAKERS: Readonly<Record<Family, (designation: string, dimensions: Dimensions) => Shape>> = {
  "double tee": (name, d) => doubleTee(name, d as unknown as DoubleTeeDimensions),
  "hollow core": (name, d) => hollowCore(name, d as unknown as HollowCoreDimensions),
  "flat slab": (name, d) => flatSlab(name, d as unknown as RectangleDimensions),
  "rectangular beam": (name, d) => rectangularBeam(name, d as unknown as RectangleDimensions),
  "L-beam": (name, d) => lBeam(name, d as unknown as LedgeBeamDimensions),
  "inverted tee": (name, d) => invertedTee(name, d as unknown as LedgeBeamDimensions),
};

/** The shape of a family with the given dimensions; throws {@link InputError} where a dimension cannot be. */
export function makeShape(family: Family, designation: string, dimensions: Dimensions): Shape {
  return MAKERS[family](designation, dimensions);
}

/** Shapes of the catalog's rows as they are: designs name the same few again and again. */
const KNOWN = new WeakMap<object, Shape>();

/**
 * The shape that a designation such as `10DT24`, `4HC8`, `20LB20`, `28IT28` or `12RB24` stands for.
 *
 * @param overrides - dimensions that differ from the catalog's, by name, in inches
 * @throws InputError if the designation is not in the catalog or an override does not belong to the family
 */
export function shapeOf(catalog: ShapeTables, designation: string, overrides: Dimensions = {}): Shape {
  const row = lookUp(catalog, designation);
  const {family, dimensions} = row;
  const changed = Object.keys(overrides);
  if (changed.length === 0) return KNOWN.get(row) ?? kept(row, makeShape(family, designation, dimensions));
  for (const name of changed) {
    if (Object.hasOwn(dimensions, name)) continue;
    throw new InputError({path: `dimensions.${name}`, label: "dimension", value: name,
      allowed: `one of ${Object.keys(dimensions).join(", ")}`});
  }
  return makeShape(family, designation, {...dimensions, ...overrides});
}

function kept(row: object, shape: Shape): Shape {
  KNOWN.set(row, shape);
  return shape;
}

function lookUp(catalog: ShapeTables, designation: string): {family: Family; dimensions: Dimensions} {
  const row = [...catalog.deckMembers, ...catalog.ledgeBeams].find((entry) => entry.designation === designation);
  if (row) return row;
  const rectangle = /^(\d{1,2})RB(\d{1,3})$/.exec(designation);
  if (rectangle) return {family: "rectangular beam", dimensions: {widthIn: Number(rectangle[1]), depthIn: Number(rectangle[2])}};
  throw new InputError({path: "member", label: "member", value: designation,
    allowed: `${[...catalog.deckMembers, ...catalog.ledgeBeams].map((entry) => entry.designation).join(", ")}, or a rectangular beam such as 12RB24`});
}
