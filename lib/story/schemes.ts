import {requireNumber} from "../check.js";
import type {Design} from "../design/design.js";
import {edgeBeam, type EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import type {Catalog} from "../catalog.js";
import {withValue} from "../design/edit.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {firstDepthBelowIn, storyStack, type StoryStack} from "./stack.js";

/** Two ways to carry the edge: a beam beside the deck, which rests on its ledge; or one wholly under the deck. */
export type SchemeKind = "beside the deck" | "under the deck";

/** What a way to carry the edge does to the story. */
export interface EdgeScheme {
  readonly kind: SchemeKind;
  readonly beamDepthIn: number;
  /** What of the beam hangs below the deck, in. */
  readonly belowDeckIn: number;
  readonly stack: StoryStack;
  /** Floor to floor that gives this scheme the head of the first, in. */
  readonly sameHeadFloorToFloorIn: number;
}

/** What the edge of a design's floor is computed from; an evaluation of the design is one. */
export interface FloorEdge {
  readonly design: Design;
  readonly member: Member;
  /** The member with all the topping that beams feel. */
  readonly laid: Member;
  readonly loads: FloorLoads;
  readonly edgeBeam: Pick<EdgeBeamResult, "depthIn">;
}

/**
 * Depth of the beam that would carry this deck on its top, in: the design's own if it is such a beam, else the one that
 * is designed in its place, with the same width, concrete and steel.
 */
export function designedDepthBelowIn({design, laid, loads, edgeBeam: own}: FloorEdge, catalog: Catalog): number {
  // Stryker disable next-line ConditionalExpression: it saves designing the same beam again
  return design.edgeBeam.kind === "below" ? own.depthIn : edgeBeam(withValue(design, "edgeBeam.kind", "below"), catalog, laid, loads).depthIn;
}

/** {@link edgeSchemes} with the beam under the deck as it is designed for this floor. */
export function designedSchemes(edge: FloorEdge, catalog: Catalog): readonly [EdgeScheme, EdgeScheme] {
  return edgeSchemes(edge.design, edge.member.compression.depthIn, designedDepthBelowIn(edge, catalog));
}

/**
 * The two schemes in the design's own story: same deck, same sill, same ceiling rule. The beam beside the deck takes
 * its depth from ledge, deck and upstand, and only the ledge hangs down; the one under the deck hangs down with all it
 * has, and a light wall stands where the upstand would.
 *
 * @param belowIn - depth of the beam under the deck, in, 6 to 96; {@link firstDepthBelowIn} if left out
 * @throws InputError if that depth is out of range
 */
export function edgeSchemes(design: Design, deckDepthIn: number, belowIn = firstDepthBelowIn(design.bay.beamSpanFt)): readonly [EdgeScheme, EdgeScheme] {
  requireNumber(belowIn, {path: "belowIn", label: "depth of the beam under the deck", unit: "in", min: 6, max: 96});
  const {ledgeDepthIn, upstandIn} = design.edgeBeam;
  const beside = storyStack(design, deckDepthIn, ledgeDepthIn);
  const below = storyStack(design, deckDepthIn, belowIn);
  return [
    {kind: "beside the deck", beamDepthIn: ledgeDepthIn + deckDepthIn + upstandIn, belowDeckIn: ledgeDepthIn, stack: beside, sameHeadFloorToFloorIn: beside.floorToFloorIn},
    {kind: "under the deck", beamDepthIn: belowIn, belowDeckIn: belowIn, stack: below, sameHeadFloorToFloorIn: below.floorToFloorIn + beside.headIn - below.headIn},
  ];
}
