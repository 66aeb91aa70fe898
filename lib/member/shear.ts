import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import {holdDownShare} from "../prestress/layout.js";
import type {PrestressState} from "./prestressState.js";
import {IN_PER_FT} from "../units.js";

/** What the concrete of a prestressed web carries in shear; see {@link concreteShear}. */
export interface ConcreteShearInput {
  /** sqrt(f'c) times lambda, psi. */
  readonly rootPsi: number;
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
 * Vci is not taken below 1.7 lambda sqrt(f'c) bw dp, the limit for members whose flexural steel is at least 40 % strand.
 * Where no moment is added, as over a simple support, bending cracks nothing: Vcw alone counts and is told for both.
 */
export function concreteShear(input: ConcreteShearInput): ConcreteShear {
  const {rootPsi, webWidthIn, depthIn, addedMomentKipIn, crackingMomentKipIn} = input;
  const webKip = (rootPsi * webWidthIn * depthIn) / 1000;
  const webShearKip = 3.5 * webKip + 0.3 * input.centroidStressKsi * webWidthIn * depthIn + input.verticalPrestressKip;
  const added = (input.addedShearKip * Math.max(0, crackingMomentKipIn)) / addedMomentKipIn;
  const flexureShearKip = addedMomentKipIn > 0 ? Math.max(1.7 * webKip, 0.6 * webKip + input.deadShearKip + added) : webShearKip;
  return {flexureShearKip, webShearKip, concreteKip: Math.min(flexureShearKip, webShearKip)};
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
}

/**
 * Shear strength of the concrete of a member under uniform load at a place along the span.
 *
 * The dead load taken as present before cracking is the member and its topping, on the precast section; everything
 * after is the added load, whose shear and moment are in the proportion of a uniform load whatever its size.
 */
export function shearAt(member: Member, spanFt: number, state: PrestressState): ShearAt {
  const input = shearSection(member, spanFt, state);
  return {share: state.share, depthIn: input.depthIn, ...concreteShear(input)};
}

/** What {@link shearAt} puts into the code's equations at a place along the span. */
export function shearSection(member: Member, spanFt: number, state: PrestressState): ConcreteShearInput {
  const {share} = state;
  const {section, full, composite, layout, concrete} = member;
  const spanIn = spanFt * IN_PER_FT;
  const fromEndIn = Math.min(share, 1 - share) * spanIn;
  const forceKip = state.effectiveForceKip * builtUp(member, fromEndIn);
  const ownPlf = member.selfWeightPlf + member.toppingWeightPlf;
  const ownMomentKipIn = uniformMomentKipIn(ownPlf, spanFt, share);
  const strandDepthIn = member.compression.depthIn - (section.ybIn - state.eccentricityIn);
  const depthIn = Math.max(0.8 * member.compression.depthIn, strandDepthIn);
  const rootPsi = concrete.lambda * Math.sqrt(concrete.strengthPsi);
  const soffitKsi = forceKip * (1 / section.areaIn2 + state.eccentricityIn / section.sbIn3) - ownMomentKipIn / section.sbIn3;
  // A composite centroid that lies in the flange or the topping is replaced by the flange's underside (22.5.6.3.2).
  const flangeIn = member.shape.dimensions["flangeIn"] ?? 0;
  const levelIn = composite ? Math.min(composite.ybIn, section.depthIn - flangeIn) - section.ybIn : 0;
  const slope = layout.profile === "straight" ? 0 : (layout.centroidEndIn - layout.centroidCentreIn) / (holdDownShare(layout.profile) * spanIn);
  const sloping = share < holdDownShare(layout.profile) || share > 1 - holdDownShare(layout.profile);
  return {
    rootPsi, webWidthIn: member.shape.webWidthIn, depthIn,
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

/** Most that stirrups may add, as a multiple of sqrt(f'c) bw d (ACI 318-19 22.5.1.2). */
const STIRRUP_CEILING = 8;

/** Factored shear that a section can carry, kip: the concrete alone, or with as many stirrups as the code allows. */
export function designShearKip(member: Member, shear: ShearAt): number {
  const {concrete, shape} = member;
  const ceilingKip = (STIRRUP_CEILING * concrete.lambda * Math.sqrt(concrete.strengthPsi) * shape.webWidthIn * shear.depthIn) / 1000;
  return SHEAR_PHI * (shear.concreteKip + (takesStirrups(member) ? ceilingKip : 0));
}

/** Shares of the span looked at for shear besides the end region. */
const SHEAR_SHARES = [0.08, 0.12, 0.16, 0.2, 0.25, 0.3, 0.36, 0.42] as const;

/**
 * Places at which shear is looked at: half the depth from the end (ACI 318-19 9.4.3.2, prestressed), the end of the
 * prestress's build-up, and on to where bending cracks turn.
 */
export function shearShares(member: Member, spanFt: number): number[] {
  const spanIn = spanFt * IN_PER_FT;
  const nearest = Math.min(0.4, member.compression.depthIn / 2 / spanIn);
  const built = (SHEAR_TRANSFER_DIAMETERS * member.layout.strand.diameterIn) / spanIn;
  return [nearest, ...(built > nearest && built < 0.45 ? [built] : []), ...SHEAR_SHARES.filter((share) => share > nearest)];
}
