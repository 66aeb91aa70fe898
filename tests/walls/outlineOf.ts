import {deckEnds} from "../../lib/beams/deckEnds.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import type {Design} from "../../lib/design/design.js";
import {edgeBeamSection} from "../../lib/edgeBeam/section.js";
import {girderShape} from "../../lib/girder/section.js";
import type {Member} from "../../lib/member/member.js";
import {roofBuilt} from "../../lib/roof/roof.js";
import {deckEdge} from "../../lib/walls/deckEdge.js";
import {outline} from "../../lib/walls/outline.js";
import type {OutlinePiece} from "../../lib/walls/pieces.js";
import {wallPlanes} from "../../lib/walls/planes.js";
import {catalog} from "../support/designs.js";

/** Members of the starters, which none of these designs changes. */
const members = new Map<string, Member>();
/** The outline of a design, without the rest of its results. */
export function outlineOf(design: Design): OutlinePiece[] {
  const member = members.get(design.deck.member) ?? deckMember(design, catalog);
  members.set(design.deck.member, member);
  const deckDepthIn = member.compression.depthIn;
  const roof = roofBuilt(design, catalog)?.build;
  const planes = wallPlanes(design, {deckDepthIn, roof});
  const edge = deckEdge(design, {member, toppingIn: design.deck.toppingIn}, planes);
  const beam = edgeBeamSection(design, member);
  const girder = design.bay.baysAcross > 1
    ? {depthIn: girderShape(design, deckDepthIn).depthIn, belowDeckIn: design.girder.kind === "rectangle" ? design.girder.depthIn : design.girder.ledgeDepthIn} : undefined;
  return outline(design, {planes, edge, roofEdge: roof ? deckEdge(design, roof, planes) : edge, ends: deckEnds(design, deckDepthIn), deckDepthIn, beam, girder});
}
