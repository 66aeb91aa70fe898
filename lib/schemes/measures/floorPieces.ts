import {WALL_CONCRETE_PCF, deckEnds, type DeckEnds} from "../../beams/deckEnds.js";
import type {DeckPieces} from "../../deck/pieces.js";
import type {Design} from "../../design/design.js";
import type {EdgeBeamResult} from "../../edgeBeam/edgeBeam.js";
import type {Evaluation} from "../../evaluate.js";
import type {GirderResult} from "../../girder/girder.js";
import type {Member} from "../../member/member.js";
import {LB_PER_KIP, feet} from "../../units.js";
import type {EndSpandrel} from "../../walls/endSpandrel.js";
import type {WallsResult} from "../../walls/walls.js";
import {parapetPlf} from "../../walls/weights.js";
import type {HauledKind} from "./road.js";

/** A level's pieces: of a floor, or of a roof of its own. */
interface LevelPieces {
  readonly design: Design;
  readonly member: Member;
  readonly pieces: DeckPieces;
  readonly edgeBeam: EdgeBeamResult;
  readonly girder: GirderResult | undefined;
}

/**
 * All precast pieces but the columns, as they travel: deck pieces lie flat, beams and walls stand. Lengths and weights of
 * deck and beams are those of their whole spans, as their pages and checks have them.
 */
export function floorPieces({design, member, walls, edgeBeam, girder, roof}: Evaluation): HauledKind[] {
  const kinds: HauledKind[] = [];
  addLevel(kinds, {design, member, pieces: walls.edge.pieces, edgeBeam, girder}, design.bay.floors);
  if (roof) addLevel(kinds, {design: roof.design, member: roof.member, pieces: walls.roofEdge.pieces, edgeBeam: roof.edgeBeam, girder: roof.girder}, 1);
  addWalls(kinds, design, walls);
  return kinds;
}

function addLevel(kinds: HauledKind[], {design: {bay}, member, pieces, edgeBeam, girder}: LevelPieces, levels: number): void {
  const {shape, widthFt} = member;
  const [lengthFt, highFt] = [bay.spanFt, feet(shape.depthIn)];
  const rows = bay.baysAcross * levels;
  const cut = pieces.lastWidthFt < widthFt - 1e-9;
  const weightLb = pieces.weightKip * LB_PER_KIP;
  kinds.push({count: rows * (pieces.perRow - (cut ? 1 : 0)), weightLb, lengthFt, acrossFt: widthFt, highFt});
  // A last piece that is cut narrower weighs by its width.
  if (cut) kinds.push({count: rows, weightLb: weightLb * (pieces.lastWidthFt / widthFt), lengthFt, acrossFt: pieces.lastWidthFt, highFt});
  kinds.push({
    count: 2 * bay.baysAlong * levels, weightLb: edgeBeam.handling.weightKip * LB_PER_KIP, lengthFt: bay.beamSpanFt,
    acrossFt: feet(edgeBeam.shape.widthIn), highFt: feet(edgeBeam.depthIn),
  });
  if (girder) {
    kinds.push({
      count: (bay.baysAcross - 1) * bay.baysAlong * levels, weightLb: girder.handling.weightKip * LB_PER_KIP, lengthFt: bay.beamSpanFt,
      acrossFt: feet(girder.member.shape.widthIn), highFt: feet(girder.depthIn),
    });
  }
}

/** What is lower than this is no piece, in. */
const LEAST_PARAPET_IN = 0.01;

/** Panels and spandrels of both short sides, strips in front of the deck's ends, and the parapet in pieces of one bay. */
function addWalls(kinds: HauledKind[], design: Design, {panels, spandrel, ends, planes}: WallsResult): void {
  const {bay} = design;
  for (const {widthIn, heightIn, count, weightKip} of panels?.sizes ?? []) {
    kinds.push({
      count: 2 * count, weightLb: weightKip * LB_PER_KIP, lengthFt: feet(Math.max(widthIn, heightIn)),
      acrossFt: feet(panels?.thicknessIn ?? 0), highFt: feet(Math.min(widthIn, heightIn)),
    });
  }
  if (spandrel) {
    const perLevel = spandrel.count / planes.stories;
    const roofs = planes.roofed ? 1 : 0;
    kinds.push(spandrels(spandrel, 2 * perLevel * (planes.stories - roofs), spandrel.selfPlf), spandrels(spandrel, 2 * perLevel * roofs, spandrel.roofSelfPlf));
  }
  if (ends?.kind === "concrete") {
    const top = deckEnds(design, planes.top.deckDepthIn) ?? ends;
    kinds.push(strips(design, 2 * (planes.stories - 1), ends), strips(design, 2, top));
  }
  for (const {addedIn} of planes.top.sides) {
    if (addedIn < LEAST_PARAPET_IN) continue;
    const plf = parapetPlf(design, addedIn);
    kinds.push({count: bay.baysAlong, weightLb: plf * bay.beamSpanFt, lengthFt: bay.beamSpanFt, acrossFt: plf / WALL_CONCRETE_PCF / feet(addedIn), highFt: feet(addedIn)});
  }
}

/** Strips in front of the deck's ends on so many sides, one a bay. */
function strips({bay}: Design, sides: number, {plf, thicknessIn, heightIn}: DeckEnds): HauledKind {
  return {count: sides * bay.baysAlong, weightLb: plf * bay.beamSpanFt, lengthFt: bay.beamSpanFt, acrossFt: feet(thicknessIn), highFt: feet(heightIn)};
}

/** Spandrels of one weight, as high as that weight says. */
function spandrels({lengthIn, thicknessIn}: EndSpandrel, count: number, plf: number): HauledKind {
  const lengthFt = feet(lengthIn);
  return {count, weightLb: plf * lengthFt, lengthFt, acrossFt: feet(thicknessIn), highFt: plf / WALL_CONCRETE_PCF / feet(thicknessIn)};
}
