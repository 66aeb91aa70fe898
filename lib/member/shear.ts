import {shearRootPsi} from "../materials/shearRoot.js";
import {STRAND_STRENGTH_KSI} from "../materials/strand.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import {holdDownShare} from "../prestress/layout.js";
import type {PrestressState} from "./prestressState.js";
import {IN_PER_FT} from "../units.js";

/** What the concrete of a prestressed web carries in shear; see {@link concreteShear}. */
export interface ConcreteShearInput {
  /** sqrt(f'c) times lambda, psi; see {@link shearRootPsi}. */
  readonly rootPsi: number;
  /** Least flexure-shear as a multiple of that root times bw d; see {@link flexureShearFloor}. */
  readonly floor: number;
  readonly webWidthIn: number;
  /** Compressed face to the strands, not taken below 0.8 of the depth, in. */
  readonly depthIn: number;
  /** Shear of unfactored dead load, kip. */
  readonly deadShearKip: number;
  /** Factored shear and moment of what is added to it, at the same place and from the same load. */
  readonly addedShearKip: number;
  readonly addedMomentKipIn: number;
  /** Moment that the added load may bring before the web's tension face cracks, kip-in. */
  readonly crackingMomentKipIn: number;
  /** Compression at the centroid of the section that resists the added load, ksi (fpc). */
  readonly centroidStressKsi: number;
  /** Upward part of the prestress force, kip. */
  readonly verticalPrestressKip: number;
}

/** Shear strength of the concrete by its two ways to crack, kip, before any reduction factor. */
export interface ConcreteShear {
  /** Flexure-shear: a bending crack that turns. */
  readonly flexureShearKip: number;
  /** Web-shear: a crack that opens in the web alone. */
  readonly webShearKip: number;
  /** The lesser of the two. */
  readonly concreteKip: number;
}

/**
 * Shear strength of the concrete in a prestressed member: the lesser of Vci and Vcw (ACI 318-19 22.5.6.3).
 *
 * Vci is not taken below a multiple of lambda sqrt(f'c) bw d, which goes by how hard the steel is prestressed
 * ({@link flexureShearFloor}). Where no moment is added, as over a simple support, bending cracks nothing: Vcw alone counts and is reported for both.
 */
export function concreteShear(input: ConcreteShearInput): ConcreteShear {
  const {rootPsi, webWidthIn, depthIn, addedMomentKipIn, crackingMomentKipIn} = input;
  const webKip = (rootPsi * webWidthIn * depthIn) / 1000;
  const webShearKip = 3.5 * webKip + 0.3 * input.centroidStressKsi * webWidthIn * depthIn + input.verticalPrestressKip;
  const added = (input.addedShearKip * Math.max(0, crackingMomentKipIn)) / addedMomentKipIn;
  const flexureShearKip = addedMomentKipIn > 0 ? Math.max(input.floor * webKip, 0.6 * webKip + input.deadShearKip + added) : webShearKip;
  return {flexureShearKip, webShearKip, concreteKip: Math.min(flexureShearKip, webShearKip)};
}

/** Share of the steel's strength from which its effective prestress counts as high (ACI 318-19 22.5.6.3.1, 9.6.3.4). */
export const HIGH_PRESTRESS_SHARE = 0.4;

/** Whether the effective force is at least 40 % of the strength of all flexural steel; here all of it is strand. */
export function highlyPrestressed(effectiveStressKsi: number): boolean {
  return effectiveStressKsi >= HIGH_PRESTRESS_SHARE * STRAND_STRENGTH_KSI;
}

/** Least flexure-shear over lambda sqrt(f'c) bw d where the steel is highly prestressed (ACI 318-19 22.5.6.3.1c). */
export const HIGHLY_PRESTRESSED_FLOOR = 2;

/** The same, or 1.7 where the steel is not (ACI 318-19 22.5.6.3.1b, c). */
export function flexureShearFloor(effectiveStressKsi: number): number {
  return highlyPrestressed(effectiveStressKsi) ? HIGHLY_PRESTRESSED_FLOOR : 1.7;
}

/** Strand diameters over which prestress builds up from the ends, for shear (ACI 318-19 21.2.3, 22.5.7). */
export const SHEAR_TRANSFER_DIAMETERS = 50;

/** Share of the prestress that has built up at a distance from the end, 0 to 1. */
export function builtUp(member: Member, distanceIn: number): number {
  return Math.min(1, Math.max(0, distanceIn / (SHEAR_TRANSFER_DIAMETERS * member.layout.strand.diameterIn)));
}

/** Shear of the concrete at one place of a member under uniform load. */
export interface ShearAt extends ConcreteShear {
  readonly share: number;
  /** Depth used for shear, in. */
  readonly depthIn: number;
  readonly highlyPrestressed: boolean;
}

/**
 * Shear strength of the concrete of a member under uniform load at a place along the span.
 *
 * The dead load taken as present before cracking is the member and its topping, on the precast section; everything
 * after is the added load, whose shear and moment are in the proportion of a uniform load whatever its size.
 */
export function shearAt(member: Member, spanFt: number, state: PrestressState): ShearAt {
  const input = shearSection(member, spanFt, state);
  const {flexureShearKip, webShearKip, concreteKip} = concreteShear(input);
  const {effectiveStressKsi} = state.losses;
  return {share: state.share, depthIn: input.depthIn, highlyPrestressed: highlyPrestressed(effectiveStressKsi), flexureShearKip, webShearKip, concreteKip};
}

/** What {@link shearAt} puts into the code's equations at a place along the span. */
export function shearSection(member: Member, spanFt: number, state: PrestressState): ConcreteShearInput {
  const {share} = state;
  const {section, full, composite, layout} = member;
  const spanIn = spanFt * IN_PER_FT;
  const fromEndIn = Math.min(share, 1 - share) * spanIn;
  const forceKip = state.effectiveForceKip * builtUp(member, fromEndIn);
  const ownPlf = member.selfWeightPlf + member.toppingWeightPlf;
  const ownMomentKipIn = uniformMomentKipIn(ownPlf, spanFt, share);
  const strandDepthIn = member.compression.depthIn - (section.ybIn - state.eccentricityIn);
  const depthIn = Math.max(0.8 * member.compression.depthIn, strandDepthIn);
  const rootPsi = shearRootPsi(member.concrete);
  const soffitKsi = forceKip * (1 / section.areaIn2 + state.eccentricityIn / section.sbIn3) - ownMomentKipIn / section.sbIn3;
  // A composite centroid that lies in the flange or the topping is replaced by the flange's underside (22.5.6.3.2).
  const flangeIn = member.shape.dimensions["flangeIn"] ?? 0;
  const levelIn = composite ? Math.min(composite.ybIn, section.depthIn - flangeIn) - section.ybIn : 0;
  const slope = layout.profile === "straight" ? 0 : (layout.centroidEndIn - layout.centroidCenterIn) / (holdDownShare(layout.profile) * spanIn);
  const sloping = share < holdDownShare(layout.profile) || share > 1 - holdDownShare(layout.profile);
  return {
    rootPsi, floor: flexureShearFloor(state.losses.effectiveStressKsi), webWidthIn: member.shape.webWidthIn, depthIn,
    deadShearKip: ((ownPlf * spanFt) / 1000) * Math.abs(0.5 - share),
    addedShearKip: Math.abs(0.5 - share) * spanIn,
    addedMomentKipIn: (share * (1 - share) * spanIn ** 2) / 2,
    crackingMomentKipIn: full.sbIn3 * ((6 * rootPsi) / 1000 + soffitKsi),
    centroidStressKsi: forceKip / section.areaIn2 - ((forceKip * state.eccentricityIn - ownMomentKipIn) * levelIn) / section.inertiaIn4,
    verticalPrestressKip: sloping ? forceKip * Math.max(0, slope) : 0,
  };
}

/** Strength reduction factor for shear (ACI 318-19 Table 21.2.1). */
export const SHEAR_PHI = 0.75;

/** Whether stirrups can be put into the member: stems and beams take them, planks and slabs drawn by machine do not. */
export function takesStirrups(member: Member): boolean {
  return member.shape.family !== "hollow core" && member.shape.family !== "flat slab";
}

/** Most that stirrups may add, as a multiple of sqrt(f'c) bw d; the clause has no lambda (ACI 318-19 22.5.1.2). */
export const STIRRUP_CEILING = 8;

/** Depth of a hollow-core plank above which minimum stirrups, and so stirrups, are required at half of phi Vcw, in (ACI 318-19 7.6.3.1). */
export const DEEP_PLANK_IN = 12.5;

/** Whether a member is a plank so deep that it may use half of its web-shear strength only, as it takes no stirrups. */
export function isDeepPlank({shape}: Pick<Member, "shape">): boolean {
  return shape.family === "hollow core" && shape.depthIn > DEEP_PLANK_IN;
}

/**
 * Factored shear that a section can carry, kip: the concrete alone, in planks deeper than 12.5 in no more than half of
 * phi Vcw (ACI 318-19 7.6.3.1); in stems and beams with as many stirrups as the code allows (22.5.1.2).
 */
export function designShearKip(member: Member, shear: ShearAt): number {
  const {concrete, shape} = member;
  if (isDeepPlank(member)) return SHEAR_PHI * Math.min(shear.concreteKip, shear.webShearKip / 2);
  const ceilingKip = (STIRRUP_CEILING * Math.sqrt(concrete.strengthPsi) * shape.webWidthIn * shear.depthIn) / 1000;
  return SHEAR_PHI * (shear.concreteKip + (takesStirrups(member) ? ceilingKip : 0));
}

