import {columnLineToBeamEndIn} from "../beams/beamEnds.js";
import {LIGHT_WALL_IN, deckEnds} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {countsShortSides, hasEndSpandrels, hasPanels, hasRoof} from "../design/used.js";
import {inches} from "../units.js";
import {topLevel, type RoofBuild, type TopLevel} from "./topLevel.js";

/** Clear of the columns' faces, in, where a wall passes outside them: room to set it and to fasten it (common practice). */
export const CLEAR_OF_COLUMNS_IN = 1;
/** Soft joint between the deck's edge, or the strip that closes it, and a wall that moves by itself, in (common practice). */
export const EDGE_JOINT_IN = 1;

/**
 * Where the walls stand, in. Column lines are the reference: the middle of every column, and of the edge beams' webs,
 * is on one. Distances of walls are outward from the outer column line.
 */
export interface WallPlanes {
  /** Stories that the walls enclose: the floors carried, and one more under a roof. */
  readonly stories: number;
  readonly storyIn: number;
  readonly roofed: boolean;
  /** Ground to the topmost level: the roof's surface, where that falls its highest line, or the highest floor where there is no roof. */
  readonly topIn: number;
  readonly top: TopLevel;
  /** Height of the topmost story, up to `topIn`: a story's, save under a roof of its own. */
  readonly topStoryIn: number;
  /** Between the outer column lines. */
  readonly lengthIn: number;
  readonly widthIn: number;
  readonly columnHalfIn: number;
  /** Half of the edge beams' web. */
  readonly beamHalfIn: number;
  /** Inner and outer face of what closes a short side; the columns' outer face where it is not given. */
  readonly endInnerIn: number;
  readonly endOuterIn: number;
  /** The outermost face of a short and of a long side. */
  readonly shortOutIn: number;
  readonly longOutIn: number;
  /** Height of the wall's top above the roof's surface; 0 without a roof. */
  readonly parapetIn: number;
  /** Part of it that the roof's edge beams already stand above the roof; along both sides at least. */
  readonly upstandIn: number;
  /** What is built on top of these beams, and on the deck's edge where the beams lie below it: of both long sides the more. */
  readonly parapetAddedIn: number;
}

/** Depths of the levels that the walls enclose, in: of the floors, and of a roof of its own. */
export interface LevelDepths {
  readonly deckDepthIn: number;
  readonly roof?: RoofBuild | undefined;
}

/** Thickness of what closes the short sides, in; 0 where it is not given. */
export function endWallThicknessIn({walls}: Pick<Design, "walls">): number {
  switch (walls.shortSide) {
    case "not counted": return 0;
    case "solid panel": return walls.panelThicknessIn;
    case "insulated panel": return walls.outerWytheIn + walls.insulationIn + walls.innerWytheIn;
    case "spandrel": return walls.spandrelThicknessIn;
    case "cladding": return LIGHT_WALL_IN;
  }
}

/** Whether what closes the short sides passes outside the columns. */
export function passesOutside(design: Design): boolean {
  return countsShortSides(design) && !(hasEndSpandrels(design) && design.walls.spandrelPlace === "between");
}

/**
 * The planes of the walls of a design.
 *
 * @param deckDepthIn - deck member and topping, in; and the roof's build where it is a level of its own
 * @param stories - those of the design if omitted
 */
export function wallPlanes(design: Design, {deckDepthIn, roof}: LevelDepths, stories = wallStories(design)): WallPlanes {
  const {bay, story, column, edgeBeam, walls} = design;
  const storyIn = inches(story.floorToFloorFt);
  const columnHalfIn = column.sideIn / 2;
  const beamHalfIn = edgeBeam.webWidthIn / 2;
  const endInnerIn = endInnerFaceIn(design);
  const endOuterIn = endInnerIn + endWallThicknessIn(design);
  const roofed = hasRoof(design);
  const parapetIn = roofed ? walls.parapetIn : 0;
  const top = topLevel(design, deckDepthIn, roof, stories);
  const [near, far] = top.sides;
  const topIn = top.surfaceIn;
  return {
    stories, storyIn, roofed, topIn, top, topStoryIn: topIn - (stories - 1) * storyIn, lengthIn: inches(bay.beamSpanFt * bay.baysAlong), widthIn: inches(bay.spanFt * bay.baysAcross),
    columnHalfIn, beamHalfIn, endInnerIn, endOuterIn,
    shortOutIn: Math.max(columnHalfIn, endOuterIn),
    longOutIn: Math.max(columnHalfIn, beamHalfIn + (deckEnds(design, deckDepthIn)?.thicknessIn ?? 0)),
    parapetIn, upstandIn: Math.max(0, Math.min(near.builtOnIn, far.builtOnIn) - topIn), parapetAddedIn: Math.max(near.addedIn, far.addedIn),
  };
}

/** Stories that the walls enclose. */
export function wallStories(design: Design): number {
  return design.bay.floors + (hasRoof(design) ? 1 : 0);
}

/** Inner face of what closes a short side, outward from the outer column line, in; the columns' outer face where it is not given. */
export function endInnerFaceIn(design: Design): number {
  const columnHalfIn = design.column.sideIn / 2;
  return passesOutside(design) ? columnHalfIn + CLEAR_OF_COLUMNS_IN : countsShortSides(design) ? EDGE_JOINT_IN : columnHalfIn;
}

/** Length of an end spandrel between two columns, in: cut as the beams are. */
export function betweenColumnsIn(design: Pick<Design, "bay" | "column">): number {
  return inches(design.bay.spanFt) - 2 * columnLineToBeamEndIn(design);
}

/** Length of one piece of an end spandrel between two columns, in: all of it, or as many pieces as it is cut into, with a joint between two. */
export function pieceBetweenIn(design: Pick<Design, "bay" | "column" | "walls">): number {
  const {spandrelPieces, jointIn} = design.walls;
  return (betweenColumnsIn(design) - (spandrelPieces - 1) * jointIn) / spandrelPieces;
}

/** Length of an edge beam, and of what hangs in front of it, between two columns, in. */
export function beamLengthIn(design: Pick<Design, "bay" | "column">): number {
  return inches(design.bay.beamSpanFt) - 2 * columnLineToBeamEndIn(design);
}

/** Length of a short side as its wall runs, in, from corner to corner. */
export function shortRunIn(design: Design, planes: WallPlanes): number {
  return planes.widthIn + (passesOutside(design) ? 2 * planes.longOutIn : 0);
}

/** Length of a long side's parapet, in: to the outer faces of the short sides' walls, or to panels that run past it. */
export function parapetRunIn(design: Design, {lengthIn, endInnerIn, endOuterIn}: WallPlanes): number {
  return lengthIn + 2 * (hasPanels(design) ? endInnerIn - design.walls.jointIn : endOuterIn);
}
