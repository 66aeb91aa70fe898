import type {Catalog} from "../catalog.js";
import {requireNumber} from "../check.js";
import type {Design} from "../design/design.js";
import {makeMember, type Member} from "../member/member.js";
import {invertedTee, rectangularBeam} from "../sections/prismatic.js";
import type {Shape} from "../sections/shape.js";
import {beamLayout, mostBeamStrands, strandOfSize} from "../beams/prestressedBeam.js";

/** The girder as a pretensioned member. */
export interface GirderSection {
  readonly member: Member;
  readonly depthIn: number;
  /** What of it hangs below the deck: the ledges of an inverted tee, all of a rectangle. */
  readonly belowDeckIn: number;
  /** Strands that the design asks for, and the most that the usual rows hold. */
  readonly strandsAsked: number;
  readonly strandsMost: number;
}

/**
 * The girder's outline: an inverted tee whose web rises beside the deck to the top of the structural floor, or a
 * rectangle wholly below the deck.
 *
 * @param deckDepthIn - deck member and topping
 */
export function girderShape({girder}: Pick<Design, "girder">, deckDepthIn: number): Shape {
  const {webWidthIn, ledgeProjectionIn, ledgeDepthIn} = girder;
  return girder.kind === "inverted tee"
    ? invertedTee("interior girder", {webWidthIn, ledgeProjectionIn, ledgeDepthIn, depthIn: ledgeDepthIn + deckDepthIn})
    : rectangularBeam("interior girder", {widthIn: webWidthIn, depthIn: girder.depthIn});
}

/**
 * The girder with its 1/2 in strands in the usual rows. Where more are asked for than these hold, it gets as many as
 * they hold, and a check fails: a thinner deck must not make the design impossible to compute.
 *
 * @param like - one of the same size and concrete, of which all but the strands stays
 * @throws InputError if the release strength is above the specified strength or a dimension cannot be
 */
export function girderSection(design: Design, catalog: Catalog, deckDepthIn: number, like?: GirderSection): GirderSection {
  const {girder} = design;
  if (like) {
    const {member, depthIn, strandsMost, belowDeckIn} = like;
    const layout = beamLayout(member.shape, member.layout.strand, Math.min(girder.strands, strandsMost));
    return {member: {...member, layout}, depthIn, strandsMost, strandsAsked: girder.strands, belowDeckIn};
  }
  const shape = girderShape(design, deckDepthIn);
  requireNumber(girder.releaseStrengthPsi, {path: "girder.releaseStrengthPsi", label: "girder release strength", unit: "psi", min: 2500, max: girder.strengthPsi});
  const strandsMost = mostBeamStrands(shape);
  const member = makeMember({
    shape, layout: beamLayout(shape, strandOfSize(catalog), Math.min(girder.strands, strandsMost)),
    concreteKind: "normalweight", strengthPsi: girder.strengthPsi, releaseStrengthPsi: girder.releaseStrengthPsi,
    // The topping over the girder is not counted as part of it.
    toppingIn: 0, toppingStrengthPsi: design.deck.toppingStrengthPsi, humidityPercent: design.criteria.humidityPercent,
  });
  return {
    member, depthIn: shape.depthIn, strandsMost, strandsAsked: girder.strands,
    belowDeckIn: girder.kind === "inverted tee" ? girder.ledgeDepthIn : girder.depthIn,
  };
}
