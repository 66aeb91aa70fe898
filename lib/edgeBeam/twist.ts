import {barOf, type Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import type {Concrete} from "../materials/concrete.js";
import type {Bar} from "../materials/reinforcement.js";
import {SHEAR_PHI} from "../member/shear.js";
import {STIRRUP_DIAMETER_IN} from "./bars.js";
import {SIDE_BAR_SPACING_IN} from "./bending.js";
import type {EdgeBeamDemand} from "./demand.js";
import type {EdgeBeamSection} from "./section.js";
import {endRotation, type EndRotation} from "./rotation.js";
import {shearRootPsi} from "../materials/shearRoot.js";
import {slenderSpandrel, type SlenderSpandrel} from "./slenderSpandrel.js";
import {torsionDesign, torsionLengthwiseIn2, type TorsionDesign} from "../beams/torsion.js";
import {torsionDimensionsOf} from "../beams/torsionOutline.js";

/** From a beam's soffit and its top to the connections that hold its end upright, in (common practice). */
export const CONNECTION_INSET_IN = 6;

/** Shear and torsion of the edge beam together, and what holds its ends. */
export interface EdgeBeamTwist {
  /** By closed stirrups and bars around them (ACI 318-19 22.7.6). */
  readonly design: TorsionDesign;
  /** Stress of shear alone and of torsion alone, psi; their squares add up to that of the stress together. */
  readonly shearPsi: number;
  readonly torsionPsi: number;
  /** Part of the bars along the beam that belongs to its bottom, in2. */
  readonly bottomIn2: number;
  /** Bars along each side of the stirrup between its corners, and the lengthwise steel for one of all bars around it, in2. */
  readonly sideBars: number;
  readonly barIn2: number;
  /** The slender beam's alternative, without closed stirrups. */
  readonly slender: SlenderSpandrel;
  readonly rotation: EndRotation;
  /** Height between the two connections that every end is taken to have, in. */
  readonly leverIn: number;
}

/** Cover that still leaves room for hangers and stirrups in the web, in. */
export function mostCoverIn({shape}: EdgeBeamSection): number {
  const {webWidthIn, depthIn} = shape;
  return Math.min(webWidthIn / 3 - STIRRUP_DIAMETER_IN / 2, Math.min(webWidthIn, depthIn) / 2 - STIRRUP_DIAMETER_IN - 0.5);
}

/**
 * Shear and torsion at the beam's end. Strands have not built up their pull there, so their help is not counted. The
 * outline between pockets is that of the whole web; at a pocket it is not covered.
 *
 * @returns undefined where the cover leaves no room for stirrups in the web
 */
export function edgeBeamTwist(design: Design, section: EdgeBeamSection, demand: EdgeBeamDemand, effectiveDepthIn: number): EdgeBeamTwist | undefined {
  const {coverIn} = design.edgeBeam;
  if (coverIn > mostCoverIn(section)) return undefined;
  const {shape, depthIn} = section;
  const {webWidthIn} = shape;
  const {torsionKipIn, shearKip} = demand;
  const torsion = torsionDesign({
    dimensions: torsionDimensionsOf(shape), concrete: section.concrete, torsionKipIn, shearKip, effectiveDepthIn,
    coverIn, stirrupDiameterIn: STIRRUP_DIAMETER_IN,
  });
  const {acrossIn, sideBars} = around(design, section);
  const endBars = Math.ceil(acrossIn / SIDE_BAR_SPACING_IN - 1e-9) - 1;
  const leverIn = Math.max(CONNECTION_INSET_IN, depthIn - 2 * CONNECTION_INSET_IN);
  const shearPsi = (1000 * shearKip) / (webWidthIn * effectiveDepthIn);
  return {
    design: torsion, shearPsi, torsionPsi: Math.sqrt(Math.max(0, torsion.stressPsi ** 2 - shearPsi ** 2)),
    bottomIn2: ofBottomIn2(torsion.lengthwiseIn2, design, section),
    sideBars, barIn2: torsion.lengthwiseIn2 / (4 + 2 * sideBars + 2 * endBars),
    slender: slenderSpandrel({
      concrete: section.concrete, webWidthIn, depthIn, torsionKipIn, shearKip, effectiveDepthIn,
      faceSteelDepthIn: webWidthIn - coverIn - STIRRUP_DIAMETER_IN / 2,
    }),
    rotation: endRotation({torsionKipIn: demand.endTorsionKipIn, reactionKip: demand.reactionKip, bearingOffsetIn: 0, leverIn}),
    leverIn,
  };
}

/** The bottom's part of the bars for torsion, in2, before the depth of its bending steel is known; 0 where stirrups have no room. */
export function twistBottomIn2(design: Design, section: EdgeBeamSection, {torsionKipIn}: EdgeBeamDemand): number {
  const {coverIn} = design.edgeBeam;
  if (coverIn > mostCoverIn(section)) return 0;
  const {shape, concrete} = section;
  return ofBottomIn2(torsionLengthwiseIn2({dimensions: torsionDimensionsOf(shape), concrete, torsionKipIn, coverIn, stirrupDiameterIn: STIRRUP_DIAMETER_IN}), design, section);
}

/** Between the center lines of the stirrup's legs, in, and bars along each side between its corners. */
function around({edgeBeam: {coverIn}}: Design, {shape, depthIn}: EdgeBeamSection) {
  const insetIn = 2 * coverIn + STIRRUP_DIAMETER_IN;
  const [acrossIn, upIn] = [shape.webWidthIn - insetIn, depthIn - insetIn];
  return {insetIn, acrossIn, upIn, sideBars: Math.ceil(upIn / SIDE_BAR_SPACING_IN - 1e-9) - 1};
}

function ofBottomIn2(lengthwiseIn2: number, design: Design, section: EdgeBeamSection): number {
  const {insetIn, acrossIn, upIn, sideBars} = around(design, section);
  // A bar takes the pull of half the stirrup's length to each neighbor.
  const ofSideIn = upIn / (sideBars + 1);
  return lengthwiseIn2 * ((acrossIn + ofSideIn) / (2 * (section.shape.webWidthIn + section.depthIn - 2 * insetIn)));
}

/** Stirrups of one size at one spacing. */
export interface ClosedStirrups {
  readonly bar: Bar;
  readonly spacingIn: number;
  /** What one leg must be, on the ledge's side and on the other, in2 per inch of beam. */
  readonly innerIn2PerIn: number;
  readonly outerIn2PerIn: number;
  /** Greatest spacing allowed, in. */
  readonly greatestSpacingIn: number;
  /** Design shear that the stirrups leave once their part for torsion is taken off, kip. */
  readonly designShearKip: number;
}

/** Closest spacing at which concrete still flows between stirrups, in (common practice). */
export const LEAST_STIRRUP_SPACING_IN = 3;
/** Sizes of stirrups, smallest first. */
const STIRRUP_SIZES = ["#4", "#5"] as const;
/** Stirrups are spaced in steps of this, in. */
const SPACING_STEP_IN = 0.5;

/**
 * Closed stirrups for shear, torsion and hanging up the ledge: the leg on the ledge's side is the larger of what shear
 * and torsion ask and what the hanger requires, since the one may count for the other (PCI Design Handbook, 7th ed., 5.5;
 * from memory). Minimum stirrups and greatest spacing by ACI 318-19 9.6.3.4, 9.6.4.2, 9.7.6.2.2 and 9.7.6.3.3. #5 where
 * #4 would stand closer than 3 in.
 *
 * @param hangerIn2PerIn - hanger steel on the ledge's side, in2 per inch of beam
 * @param hangerSpacingIn - greatest spacing of the hanger's legs, in
 */
export function edgeBeamStirrups(
  catalog: Catalog, material: Concrete, webWidthIn: number, effectiveDepthIn: number, shearKip: number, torsion: TorsionDesign,
  hangerIn2PerIn: number, hangerSpacingIn: number,
): ClosedStirrups {
  const rootPsi = shearRootPsi(material);
  const leastIn2PerIn = (Math.max((0.75 * rootPsi) / material.lambda, 50) * webWidthIn) / 60_000;
  const legIn2PerIn = Math.max(leastIn2PerIn / 2, torsion.torsionLegIn2PerIn + torsion.shearLegsIn2PerIn / 2);
  const innerIn2PerIn = Math.max(legIn2PerIn, hangerIn2PerIn);
  const heavyKip = (SHEAR_PHI * 6 * rootPsi * webWidthIn * effectiveDepthIn) / 1000;
  // Stryker disable next-line EqualityOperator: no shear meets that to the last digit
  const forShearIn = shearKip > heavyKip ? Math.min(effectiveDepthIn / 4, 12) : Math.min(effectiveDepthIn / 2, 24);
  const greatestSpacingIn = Math.min(forShearIn, torsion.negligible ? Infinity : torsion.greatestSpacingIn, hangerSpacingIn);
  const {bar, spacingIn} = barsAtSpacing(catalog, innerIn2PerIn, greatestSpacingIn);
  const shearLegsIn2PerIn = (2 * bar.areaIn2) / spacingIn - 2 * torsion.torsionLegIn2PerIn;
  const concreteKip = (2 * rootPsi * webWidthIn * effectiveDepthIn) / 1000;
  return {
    bar, spacingIn, innerIn2PerIn, outerIn2PerIn: legIn2PerIn, greatestSpacingIn,
    designShearKip: SHEAR_PHI * (concreteKip + shearLegsIn2PerIn * 60 * effectiveDepthIn),
  };
}

/** The smallest bars that give an area per inch at no less than 3 in, in half inches; the largest, closer, where none do. */
export function barsAtSpacing(catalog: Catalog, in2PerIn: number, greatestSpacingIn: number): {bar: Bar; spacingIn: number} {
  let last: {bar: Bar; spacingIn: number} | undefined;
  for (const size of STIRRUP_SIZES) {
    const bar = barOf(catalog, size, "stirrup");
    const exactIn = Math.min(bar.areaIn2 / in2PerIn, greatestSpacingIn);
    // Stryker disable next-line EqualityOperator: half an inch is a whole number of steps
    last = {bar, spacingIn: exactIn < SPACING_STEP_IN ? exactIn : Math.floor(exactIn / SPACING_STEP_IN) * SPACING_STEP_IN};
    if (last.spacingIn >= LEAST_STIRRUP_SPACING_IN) return last;
  }
  return last as {bar: Bar; spacingIn: number};
}
