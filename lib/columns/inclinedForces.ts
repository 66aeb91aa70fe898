import {CONCRETE_CRUSHING_STRAIN} from "../materials/concrete.js";
import {barStressKsi} from "../materials/reinforcement.js";
import {BAR_YIELD_STRAIN} from "./axialLimits.js";
import type {ColumnSection} from "./section.js";

/** A section as a sum of forces reads it: plain numbers, and the bars' places in two rows of them. */
export interface SectionNumbers {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly blockStressKsi: number;
  readonly blockFactor: number;
  readonly barAreaIn2: number;
  readonly barDiameterIn: number;
  /** Every bar's center, from the left side and from the compression face, in. */
  readonly xIn: Float64Array;
  readonly yIn: Float64Array;
}

/** Numbers by section: one section is asked for its strength many times. */
const NUMBERS = new WeakMap<ColumnSection, SectionNumbers>();

/** The numbers of a section, in the shape in which a sum of forces takes a third of the time. */
export function numbersOf(section: ColumnSection): SectionNumbers {
  const known = NUMBERS.get(section);
  if (known) return known;
  const {widthIn, depthIn, blockStressKsi, blockFactor, bar, bars: {places}} = section;
  const numbers = {
    widthIn, depthIn, blockStressKsi, blockFactor, barAreaIn2: bar.areaIn2, barDiameterIn: bar.diameterIn,
    xIn: Float64Array.from(places, ({xIn}) => xIn), yIn: Float64Array.from(places, ({yIn}) => yIn),
  };
  NUMBERS.set(section, numbers);
  return numbers;
}

/** Forces of a column for one place of a slanting neutral axis, with what the concrete's come from. */
export interface ForceSum {
  /** Compression positive, and moments about the middle: bending the depth, and the width. */
  axialKip: number;
  depthMomentKipIn: number;
  widthMomentKipIn: number;
  /** Concrete under the block, in2, and its first moments about the sides that meet at the compressed corner, in3. */
  areaIn2: number;
  acrossIn3: number;
  downIn3: number;
  /** From the corner to the farthest bar, perpendicular to the axis, in. */
  farthestIn: number;
  /** How often it was filled. */
  times: number;
}

/** A sum to be filled by {@link sumForces}. */
export function emptySum(): ForceSum {
  return {axialKip: 0, depthMomentKipIn: 0, widthMomentKipIn: 0, areaIn2: 0, acrossIn3: 0, downIn3: 0, farthestIn: 0, times: 0};
}

/** Sine of the angle between the distance of the axis and the section's depth, exact at 0 and at a quarter turn. */
export function sineOf(angleRad: number): number {
  return angleRad <= 0 ? 0 : angleRad >= Math.PI / 2 ? 1 : Math.sin(angleRad);
}

/** Its cosine, exact likewise. */
export function cosineOf(angleRad: number): number {
  return angleRad <= 0 ? 1 : angleRad >= Math.PI / 2 ? 0 : Math.cos(angleRad);
}

/** From the compressed corner to a place, perpendicular to the neutral axis, in. */
export function inclinedDepthIn({xIn, yIn}: {readonly xIn: number; readonly yIn: number}, angleRad: number): number {
  return xIn * sineOf(angleRad) + yIn * cosineOf(angleRad);
}

/** Share of a bar that lies in the block, which it enters over its own diameter. */
export function shareInBlock({bar, blockFactor}: ColumnSection, barDepthIn: number, neutralAxisIn: number): number {
  return Math.max(0, Math.min(1, (blockFactor * neutralAxisIn - barDepthIn) / bar.diameterIn + 0.5));
}

/** Stress of a bar less that of the concrete it displaces in the block, ksi: tension positive. */
export function barPullKsi(section: ColumnSection, barDepthIn: number, neutralAxisIn: number): number {
  const strain = neutralAxisIn > 0 ? (CONCRETE_CRUSHING_STRAIN * (barDepthIn - neutralAxisIn)) / neutralAxisIn : Infinity;
  return barStressKsi(strain) + section.blockStressKsi * shareInBlock(section, barDepthIn, neutralAxisIn);
}

/**
 * Distance of the neutral axis from the corner from which on the whole section is at its squash load, in: there the
 * farthest bar yields. The block covers the section before that: the farthest bar lies beyond the middle, so the distance is
 * 1.6 of the section's reach at least, and the block is 0.65 of it or more.
 */
export function fullyPressedIn(section: ColumnSection, angleRad: number): number {
  return fullyPressedAtIn(numbersOf(section), sineOf(angleRad), cosineOf(angleRad));
}

/** The same by the sine and cosine of the angle. */
export function fullyPressedAtIn({xIn, yIn}: SectionNumbers, sine: number, cosine: number): number {
  let farthestIn = 0;
  for (let i = 0; i < xIn.length; i++) farthestIn = Math.max(farthestIn, (xIn[i] as number) * sine + (yIn[i] as number) * cosine);
  return farthestIn / (1 - BAR_YIELD_STRAIN / CONCRETE_CRUSHING_STRAIN);
}

/**
 * Sums up concrete and bars for a neutral axis at a distance from the compressed corner, perpendicular to a direction between
 * width (sine) and depth (cosine).
 *
 * What the block's edge cuts off the corner is exact: from the corner down a strip of the whole width, and below it
 * a trapezoid that ends at the edge. This runs some twenty times for each strength, so it makes no object, and has the
 * stress of {@link barPullKsi} written out.
 */
export function sumForces(section: SectionNumbers, neutralAxisIn: number, sine: number, cosine: number, into: ForceSum): void {
  const {widthIn, depthIn, blockStressKsi, barAreaIn2, barDiameterIn, xIn, yIn} = section;
  const reachIn = section.blockFactor * neutralAxisIn;
  // Down to here the edge lies beyond the far side; from the end on no concrete is left of it.
  const fullIn = Math.max(0, Math.min(depthIn, cosine > 0 ? (reachIn - sine * widthIn) / cosine : reachIn >= sine * widthIn ? depthIn : 0));
  const endIn = Math.max(fullIn, Math.min(depthIn, cosine > 0 ? reachIn / cosine : depthIn));
  const top = sine > 0 ? Math.max(0, Math.min(widthIn, (reachIn - cosine * fullIn) / sine)) : 0;
  const bottom = sine > 0 ? Math.max(0, Math.min(widthIn, (reachIn - cosine * endIn) / sine)) : 0;
  const t = endIn - fullIn;
  const slanted = (t * (top + bottom)) / 2;
  const areaIn2 = widthIn * fullIn + slanted;
  const acrossIn3 = (widthIn * widthIn * fullIn) / 2 + (t * (top * top + top * bottom + bottom * bottom)) / 6;
  const downIn3 = (widthIn * fullIn * fullIn) / 2 + slanted * fullIn + (t * t * (top + 2 * bottom)) / 6;
  let axialKip = blockStressKsi * areaIn2;
  let depthMomentKipIn = blockStressKsi * (areaIn2 * (depthIn / 2) - downIn3);
  let widthMomentKipIn = blockStressKsi * (areaIn2 * (widthIn / 2) - acrossIn3);
  let farthestIn = 0;
  for (let i = 0; i < xIn.length; i++) {
    const [x, y] = [xIn[i] as number, yIn[i] as number];
    const barDepthIn = x * sine + y * cosine;
    const strain = neutralAxisIn > 0 ? (CONCRETE_CRUSHING_STRAIN * (barDepthIn - neutralAxisIn)) / neutralAxisIn : Infinity;
    const share = Math.max(0, Math.min(1, (reachIn - barDepthIn) / barDiameterIn + 0.5));
    const kip = barAreaIn2 * (barStressKsi(strain) + blockStressKsi * share);
    axialKip -= kip;
    depthMomentKipIn += kip * (y - depthIn / 2);
    widthMomentKipIn += kip * (x - widthIn / 2);
    farthestIn = Math.max(farthestIn, barDepthIn);
  }
  into.areaIn2 = areaIn2;
  into.acrossIn3 = acrossIn3;
  into.downIn3 = downIn3;
  into.axialKip = axialKip;
  into.depthMomentKipIn = depthMomentKipIn;
  into.widthMomentKipIn = widthMomentKipIn;
  into.farthestIn = farthestIn;
  into.times += 1;
}
