import {Kept} from "../kept.js";
import {stressBlockFactor, type Concrete} from "../materials/concrete.js";
import type {Topping} from "../sections/composite.js";
import type {Shape} from "../sections/shape.js";

/**
 * A section seen from its compressed face: slices of linearly varying width, with the stress of the equivalent block.
 *
 * Held as plain number arrays, because the search for the neutral axis walks them many hundred thousand times a second.
 */
export interface CompressionZone {
  /** Depth of the section with its topping, in. */
  readonly depthIn: number;
  /** Depth of each slice's upper edge below the compressed face, in. */
  readonly startIn: readonly number[];
  readonly thicknessIn: readonly number[];
  /** Width at the slice's upper edge, in, and how it grows per inch of depth. */
  readonly widthIn: readonly number[];
  readonly slope: readonly number[];
  /** 0.85 f'c of the slice's concrete, ksi. */
  readonly stressKsi: readonly number[];
  /** beta1 of the slice's concrete: its block reaches beta1 times the neutral axis depth. */
  readonly blockFactor: readonly number[];
}

/** Uniform stress of the equivalent block over f'c (ACI 318-19 22.2.2.4.1). */
const BLOCK_STRESS = 0.85;

/** Zones of a shape that is still in use: members that differ in their strands alone share one. */
const ZONES = new WeakMap<Shape, Kept<CompressionZone>>();
/** Zones of one shape that are kept: it is made of so many concretes and toppings at a time. */
const OF_SHAPE = 20;

/** The compression zone of a shape bent with its top in compression, topping included. */
export function compressionZone(shape: Shape, concrete: Concrete, topping?: Topping): CompressionZone {
  let zones = ZONES.get(shape);
  if (!zones) ZONES.set(shape, (zones = new Kept(OF_SHAPE)));
  return zones.get(`${concrete.strengthPsi} ${topping?.thicknessIn} ${topping?.widthIn} ${topping?.concrete.strengthPsi}`, () => newZone(shape, concrete, topping));
}

function newZone(shape: Shape, concrete: Concrete, topping?: Topping): CompressionZone {
  const toppingIn = topping?.thicknessIn ?? 0;
  const slices = [...shape.bands]
    .reverse()
    .map((band) => ({
      start: toppingIn + shape.depthIn - band.topIn,
      thickness: band.topIn - band.bottomIn,
      width: band.widthTopIn,
      slope: (band.widthBottomIn - band.widthTopIn) / (band.topIn - band.bottomIn),
      strengthPsi: concrete.strengthPsi,
    }));
  if (topping) {
    slices.unshift({start: 0, thickness: toppingIn, width: topping.widthIn, slope: 0, strengthPsi: topping.concrete.strengthPsi});
  }
  return {
    depthIn: shape.depthIn + toppingIn,
    startIn: slices.map((slice) => slice.start),
    thicknessIn: slices.map((slice) => slice.thickness),
    widthIn: slices.map((slice) => slice.width),
    slope: slices.map((slice) => slice.slope),
    stressKsi: slices.map((slice) => (BLOCK_STRESS * slice.strengthPsi) / 1000),
    blockFactor: slices.map((slice) => stressBlockFactor(slice.strengthPsi)),
  };
}

/** Compression in the concrete for a neutral axis at the given depth, kip. */
export function compressionKip(zone: CompressionZone, neutralAxisIn: number): number {
  let forceKip = 0;
  for (let i = 0; i < zone.startIn.length; i++) {
    const reachIn = (zone.blockFactor[i] as number) * neutralAxisIn - (zone.startIn[i] as number);
    // Stryker disable next-line EqualityOperator: a block that ends at a slice's edge takes nothing of the slice
    if (reachIn <= 0) break;
    const t = Math.min(reachIn, zone.thicknessIn[i] as number);
    forceKip += (zone.stressKsi[i] as number) * t * ((zone.widthIn[i] as number) + ((zone.slope[i] as number) * t) / 2);
  }
  return forceKip;
}

/** Moment of the concrete's compression about the compressed face, kip-in. */
export function compressionMomentKipIn(zone: CompressionZone, neutralAxisIn: number): number {
  let momentKipIn = 0;
  for (let i = 0; i < zone.startIn.length; i++) {
    const start = zone.startIn[i] as number;
    const reachIn = (zone.blockFactor[i] as number) * neutralAxisIn - start;
    // Stryker disable next-line EqualityOperator: as above
    if (reachIn <= 0) break;
    const t = Math.min(reachIn, zone.thicknessIn[i] as number);
    const width = zone.widthIn[i] as number;
    const slope = zone.slope[i] as number;
    // Products, for a power is ten times slower here.
    momentKipIn += (zone.stressKsi[i] as number) * (start * t * (width + (slope * t) / 2) + (width * t * t) / 2 + (slope * t * t * t) / 3);
  }
  return momentKipIn;
}
