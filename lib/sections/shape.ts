import {bands, integrate, type Band, type Ring} from "./polygon.js";

/** The families of members that a floor is laid with. */
export const DECK_FAMILIES = ["double tee", "hollow core", "flat slab"] as const;
export type DeckFamily = typeof DECK_FAMILIES[number];
/** The families of beams that have ledges. */
export const LEDGE_FAMILIES = ["L-beam", "inverted tee"] as const;
/** All families of members that the kit knows; those that are no deck are beams. */
export const FAMILIES = [...DECK_FAMILIES, "rectangular beam", ...LEDGE_FAMILIES] as const;
export type Family = typeof FAMILIES[number];

/** Whether a family's members make a deck: loads are shown per square foot, and fire and walking are judged. */
export function isDeckFamily(family: Family): family is DeckFamily {
  return (DECK_FAMILIES as readonly Family[]).includes(family);
}

/** An outline to scale and where its steel may go. */
export interface Outline {
  readonly designation: string;
  readonly family: Family;
  readonly depthIn: number;
  readonly widthIn: number;
  /** The outline first, counterclockwise, then the holes, clockwise. */
  readonly rings: readonly Ring[];
  /** The dimensions that made it, by name, in inches (a count where the name says so). */
  readonly dimensions: Readonly<Record<string, number>>;
  /** Total width of the webs that resist shear, in: stems at their mean width, webs between voids at their narrowest. */
  readonly webWidthIn: number;
  /** Vertical lines, as x from the left edge, in, along which strands are placed: the stems of a tee, the webs of a plank. */
  readonly webCentersIn: readonly number[];
}

/** The cross-section of a member: its outline, with the properties that follow from it. */
export interface Shape extends Outline {
  readonly section: SectionProperties;
  /** Horizontal slices, lowest first. */
  readonly bands: readonly Band[];
  readonly volumeToSurfaceIn: number;
}

/** Computes an outline's properties once, so that every member made from the shape shares them. */
export function shapeFrom(outline: Outline): Shape {
  return {
    ...outline,
    section: sectionProperties(outline),
    bands: bands(outline.rings),
    volumeToSurfaceIn: volumeToSurfaceIn(outline),
  };
}

/** Properties of an uncracked section about its own centroid. */
export interface SectionProperties {
  readonly areaIn2: number;
  readonly inertiaIn4: number;
  /** Centroid above the soffit, in. */
  readonly ybIn: number;
  /** Top fiber above the centroid, in. */
  readonly ytIn: number;
  readonly sbIn3: number;
  readonly stIn3: number;
  readonly depthIn: number;
}

/** Area, centroid, second moment and section moduli of a shape by boundary integrals. */
export function sectionProperties(shape: Pick<Outline, "rings" | "depthIn">): SectionProperties {
  const {areaIn2, firstMomentIn3, secondMomentIn4} = integrate(shape.rings);
  const ybIn = firstMomentIn3 / areaIn2;
  return fromMoments(areaIn2, ybIn, secondMomentIn4 - areaIn2 * ybIn ** 2, shape.depthIn);
}

/** Properties from area, centroid and second moment about the centroid. */
export function fromMoments(areaIn2: number, ybIn: number, inertiaIn4: number, depthIn: number): SectionProperties {
  const ytIn = depthIn - ybIn;
  return {areaIn2, inertiaIn4, ybIn, ytIn, sbIn3: inertiaIn4 / ybIn, stIn3: inertiaIn4 / ytIn, depthIn};
}

/**
 * Volume-to-surface ratio, in: area over the perimeter that can dry.
 *
 * The true outline is used, with its tapered stems; the handbook ignores the taper, so its ratios for tees come out 1
 * to 2 % lower. Voids dry through the section's own surface, so their surfaces are not counted (the handbook's printed
 * 1.92 in for an 8 in plank comes out the same way).
 */
export function volumeToSurfaceIn(shape: Pick<Outline, "rings">): number {
  return integrate(shape.rings).areaIn2 / integrate(shape.rings.slice(0, 1)).perimeterIn;
}
