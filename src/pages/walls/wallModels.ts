import type {Evaluation} from "../../lib/evaluate.js";
import {roofSpandrelTopIn} from "../../lib/walls/endSpandrel.js";
import {endWallThicknessIn} from "../../lib/walls/planes.js";
import {outline} from "../../lib/walls/outline.js";
import type {OutlinePiece, PieceKind, PlanPoint} from "../../lib/walls/pieces.js";

/** What a box of an elevation shows. */
export type FaceKind = PieceKind | "glass" | "frames" | "sill" | "window";

/** A rectangle of an elevation, in: along the side from its first column line, and up from the ground. */
export interface Face {
  readonly kind: FaceKind;
  readonly x0: number;
  readonly x1: number;
  readonly z0: number;
  readonly z1: number;
}

/** A string of dimensions: its stops, in, with a name for a gap where one helps. */
export interface DimensionString {
  readonly at: readonly number[];
  readonly names?: readonly (string | undefined)[];
}

/** A side of the building as it is seen from outside; faces farther away come first. */
export interface SideModel {
  readonly faces: readonly Face[];
  /** Levels of the finished floors and of the deck's underside, hidden behind the wall. */
  readonly hidden: readonly number[];
  /** Where the side begins and ends, and what is shown of it, in. */
  readonly from: number;
  readonly to: number;
  readonly shownTo: number;
  readonly topIn: number;
  /** Bays below the side, all of it, levels at its right, beams and openings at its left. */
  readonly bays: DimensionString;
  readonly whole: DimensionString | undefined;
  readonly levels: DimensionString;
  readonly parts: DimensionString;
}

/** Every piece of the building's outline. */
export function piecesOf({design, walls, edgeBeam, girder, member}: Evaluation): OutlinePiece[] {
  return outline(design, {planes: walls.planes, edge: walls.edge, roofEdge: walls.roofEdge, ends: walls.ends, deckDepthIn: member.compression.depthIn, beam: edgeBeam, girder});
}

const spanOf = (plan: readonly PlanPoint[], axis: 0 | 1): [number, number] => {
  const values = plan.map((point) => point[axis]);
  return [Math.min(...values), Math.max(...values)];
};

/** Faces of the pieces that stand within some depth of a side, the farthest first. */
function facesOf(pieces: readonly OutlinePiece[], along: 0 | 1, depthIn: number): Face[] {
  const across = along === 0 ? 1 : 0;
  return pieces
    .map((piece) => ({piece, near: spanOf(piece.plan, across)[0], far: spanOf(piece.plan, across)[1]}))
    .filter(({piece, near}) => near < depthIn && !HIDDEN_BEHIND.includes(piece.kind))
    .sort((a, b) => b.near - a.near)
    .map(({piece}) => {
      const [x0, x1] = spanOf(piece.plan, along);
      return {kind: piece.kind, x0, x1, z0: Math.max(0, piece.bottomIn), z1: piece.topIn};
    });
}
const HIDDEN_BEHIND: readonly PieceKind[] = ["deck", "ledge", "girder", "strip"];

/** Least scale of an elevation, px per inch: a story of 15 ft is 54 px high then. */
export const LEAST_SCALE = 0.3;

/** Bays of a side that a width shows at the least scale: all of them, or some and a part of the next. */
export function shownBays(bays: number, bayIn: number, endsIn: number, roomPx: number): number {
  if (roomPx >= LEAST_SCALE * (bays * bayIn + endsIn)) return bays;
  return Math.max(1, Math.min(bays - 1, Math.floor((roomPx / LEAST_SCALE - endsIn) / bayIn)));
}

/** A long side from outside: columns, edge beams and what is built on and before them, glass between. */
export function longSide(evaluation: Evaluation, roomPx: number): SideModel {
  const {design, walls: {planes, open}, story, edgeBeam} = evaluation;
  const {bay} = design;
  const bayIn = bay.beamSpanFt * 12;
  const shown = shownBays(bay.baysAlong, bayIn, 2 * planes.shortOutIn, roomPx);
  const below = design.edgeBeam.kind === "below";
  const faces: Face[] = [];
  for (let storyNo = 0; storyNo < planes.stories; storyNo++) {
    const floorIn = storyNo * planes.storyIn;
    for (let i = 0; i < bay.baysAlong && !open; i++) {
      const [x0, x1] = [i * bayIn + planes.columnHalfIn, (i + 1) * bayIn - planes.columnHalfIn];
      const face = (kind: FaceKind, z0: number, z1: number) => {
        if (z1 > z0) faces.push({kind, x0, x1, z0: floorIn + z0, z1: floorIn + z1});
      };
      const last = storyNo === planes.stories - 1;
      // Where stepped bearings lift the roof's beam, the wall reaches up to it.
      face("frames", story.sillIn, last ? planes.top.sides[0].structureIn - planes.top.deckDepthIn - edgeBeam.belowDeckIn - floorIn : story.clearUnderLedgeIn);
      if (story.glassIn > 0) face("glass", story.glassSillIn, story.glassHeadIn);
      if (storyNo === 0 || below) face("sill", 0, story.sillIn);
      if (below && !evaluation.walls.ends) face("frames", last ? planes.top.sides[0].beamTopIn - floorIn : planes.storyIn - design.story.finishIn - story.deckDepthIn, last ? planes.topStoryIn : planes.storyIn);
    }
  }
  const deep = Math.max(planes.beamHalfIn, planes.columnHalfIn);
  faces.push(...facesOf(piecesOf(evaluation), 0, deep));
  const beams = Array.from({length: planes.stories}, (_, i) => {
    const [first] = planes.top.sides;
    if (i === planes.stories - 1) return [first.structureIn - planes.top.deckDepthIn - edgeBeam.belowDeckIn, first.beamTopIn] as const;
    const structural = (i + 1) * planes.storyIn - design.story.finishIn;
    const soffit = structural - story.deckDepthIn;
    return [soffit - edgeBeam.belowDeckIn, below ? soffit : structural + design.edgeBeam.upstandIn] as const;
  });
  return side({faces, planes, bays: bay.baysAlong, bayIn, shown, outIn: planes.shortOutIn, beams, topIn: Math.max(planes.topIn + planes.parapetIn, ...beams.map(([, top]) => top)),
    hidden: levelsHidden(evaluation)});
}

/** A short side from outside, by what closes it. */
export function shortSide(evaluation: Evaluation, roomPx: number): SideModel {
  const {design, walls: {planes, open, spandrel, panels, counted}} = evaluation;
  const {bay, walls} = design;
  const bayIn = bay.spanFt * 12;
  const outIn = counted ? planes.longOutIn : planes.columnHalfIn;
  const shown = shownBays(bay.baysAcross, bayIn, 2 * outIn, roomPx);
  const faces: Face[] = [];
  const finishIn = design.story.finishIn;
  const beams = spandrel ? Array.from({length: planes.stories}, (_, i) => {
    const structural = (i + 1) * planes.storyIn - finishIn;
    const bottom = structural + walls.spandrelUpstandIn - spandrel.depthIn;
    const top = i === planes.stories - 1 && planes.parapetIn > 0 ? Math.max(bottom, planes.topIn) + planes.parapetIn : i === planes.stories - 1 ? roofSpandrelTopIn(design, planes) : structural + walls.spandrelUpstandIn;
    return [structural + walls.spandrelUpstandIn - spandrel.depthIn, top] as const;
  }) : [];
  if (spandrel && !open) {
    beams.forEach(([bottom], i) => {
      const from = i === 0 ? 0 : (beams[i - 1] as readonly [number, number])[1];
      if (bottom > from) faces.push({kind: "glass", x0: -planes.columnHalfIn, x1: planes.widthIn + planes.columnHalfIn, z0: from, z1: bottom});
    });
  }
  faces.push(...facesOf(piecesOf(evaluation), 1, planes.columnHalfIn));
  if (panels || walls.shortSide === "cladding") faces.push(...windows(faces, walls.glassShare, planes.topIn));
  return side({faces, planes, bays: bay.baysAcross, bayIn, shown, outIn, beams, topIn: Math.max(planes.topIn + planes.parapetIn, ...beams.map(([, top]) => top)), hidden: levelsHidden(evaluation)});
}

/** Windows of panels and cladding by their share of the area below the topmost level, each in the middle of its piece. */
function windows(faces: readonly Face[], share: number, topIn: number): Face[] {
  if (share === 0) return [];
  return faces.filter(({kind}) => kind === "panel" || kind === "cladding").map(({x0, x1, z0, z1}) => {
    const high = Math.min(z1, topIn);
    const [w, h] = [(x1 - x0) * Math.sqrt(share), (high - z0) * Math.sqrt(share)];
    const [x, z] = [(x0 + x1) / 2, (z0 + high) / 2];
    return {kind: "window", x0: x - w / 2, x1: x + w / 2, z0: z - h / 2, z1: z + h / 2};
  });
}

function levelsHidden({walls: {planes}, design, story}: Evaluation): number[] {
  const {top, stories} = planes;
  const [atSide] = top.structureIn as [number];
  return [
    ...Array.from({length: stories - 1}, (_, i) => (i + 1) * planes.storyIn - design.story.finishIn).flatMap((level) => [level, level - story.deckDepthIn]),
    atSide, atSide - top.deckDepthIn,
  ];
}

/** Levels whose beams are dimensioned: all of a low building, the lowest and the topmost of a high one. */
const MOST_DIMENSIONED = 3;

function side(of: {
  faces: readonly Face[]; planes: Evaluation["walls"]["planes"]; bays: number; bayIn: number; shown: number; outIn: number;
  beams: readonly (readonly [number, number])[]; topIn: number; hidden: readonly number[];
}): SideModel {
  const {planes, bays, bayIn, shown, outIn, beams} = of;
  // What stands farther along the other side may rise higher.
  const topIn = Math.max(of.topIn, ...of.faces.map(({z1}) => z1));
  const to = bays * bayIn + outIn;
  const whole = shown === bays;
  const levels = [...Array.from({length: planes.stories}, (_, i) => i * planes.storyIn), planes.topIn];
  const dimensioned = beams.length <= MOST_DIMENSIONED ? beams : [beams[0] as readonly [number, number], beams[beams.length - 1] as readonly [number, number]];
  const parts = [...new Set([0, ...dimensioned.flatMap(([bottom, top]) => [Math.max(0, bottom), top]), topIn])].sort((a, b) => a - b)
    .filter((at, i, all) => i === 0 || at - (all[i - 1] as number) > 0.125);
  return {
    faces: of.faces, hidden: of.hidden, from: -outIn, to, shownTo: whole ? to : shown * bayIn + Math.min(bayIn / 6, 60), topIn,
    bays: {at: Array.from({length: shown + 1}, (_, i) => i * bayIn)},
    whole: whole ? {at: [-outIn, to], names: ["outside"]} : undefined,
    levels: planes.parapetIn > 0
      ? {at: [...levels, planes.topIn + planes.parapetIn], names: [...levels.slice(1).map(() => undefined), "parapet"]} : {at: levels},
    parts: {at: parts},
  };
}

/** What of the corner a plan shows, in: pieces cut at a level, with strings of dimensions below and at the left. */
export interface CornerModel {
  readonly pieces: readonly OutlinePiece[];
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly below: DimensionString;
  readonly left: DimensionString;
  /** Middle of the first stem from the column line, in, if the deck has stems. */
  readonly stemIn: number | undefined;
}

/** The corner column with all that meets there, cut through a floor or, above the roof, through the parapet. */
export function cornerModel(evaluation: Evaluation, where: "floor" | "roof"): CornerModel {
  const {design, walls: {planes, edge}, member} = evaluation;
  const all = piecesOf(evaluation);
  // Just below the top of the structural floor, where beams, deck, strip and walls are cut alike.
  const cutIn = where === "floor" ? planes.storyIn - design.story.finishIn - Math.min(1, edge.thicknessIn / 2) : planes.topIn + planes.parapetIn - 0.5;
  const pieces = all.filter(({bottomIn, topIn}) => bottomIn <= cutIn && cutIn <= topIn);
  const {dimensions} = member.shape;
  const stemIn = member.shape.family === "double tee" ? (member.widthFt * 12 - (dimensions["stemSpacingIn"] as number)) / 2 : undefined;
  const reach = Math.max(planes.columnHalfIn + 24, (stemIn ?? 0) + 8);
  const wall = endWallThicknessIn(design) > 0;
  const xs = where === "roof"
    ? [...(wall ? [-planes.endOuterIn, -planes.endInnerIn] : []), 0, planes.columnHalfIn]
    : [...(wall ? [-planes.endOuterIn, -planes.endInnerIn] : []), ...(edge.firstStripIn > 0 ? [-edge.firstStripIn] : []), 0, ...(stemIn === undefined ? [planes.columnHalfIn] : [stemIn])];
  const named = xs.slice(1).map((x, i) => (wall && i === 0 ? "wall" : x === 0 && edge.firstStripIn > 0 && where === "floor" ? "strip" : x === stemIn ? "to the stem" : undefined));
  const parapet = [-planes.beamHalfIn, design.walls.parapetThicknessIn - planes.beamHalfIn];
  const ys = [...new Set(where === "roof" ? [...parapet, Math.max(0, (parapet[1] as number) + 12)] : [-planes.longOutIn, 0, planes.columnHalfIn])].sort((a, b) => a - b);
  return {
    pieces, stemIn: where === "floor" ? stemIn : undefined,
    x: [-planes.shortOutIn - 6, reach], y: [-planes.longOutIn - 6, Math.max(planes.columnHalfIn + 30, planes.beamHalfIn + 30)],
    below: {at: xs, names: named},
    left: where === "roof" ? {at: ys.slice(0, 2), names: ["parapet"]} : {at: ys, names: []},
  };
}
