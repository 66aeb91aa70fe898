import {columnLineToBearingIn} from "../beams/beamEnds.js";
import {WALL_CONCRETE_PCF} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {hasEndSpandrels} from "../design/used.js";
import {concrete, ruptureModulusKsi} from "../materials/concrete.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {IN2_PER_FT2, LB_PER_KIP, feet, inches} from "../units.js";
import {pieceBetweenIn, shortRunIn, type WallPlanes} from "./planes.js";

/** Weight of windows with their frames, psf (ASCE 7-16 Table C3.1-1: glass, frame and sash; from memory). */
export const WINDOW_PSF = 8;

/** A spandrel on a short side, which carries itself and the windows on it. */
export interface EndSpandrel {
  readonly depthIn: number;
  readonly thicknessIn: number;
  /** In one bay: more than one meet over posts. */
  readonly pieces: number;
  /** Between the middles of its bearings, a column's or a post's, and its own length, in; of the longest where they differ. */
  readonly spanIn: number;
  readonly lengthIn: number;
  /** Length of all on one level of a short side, in. */
  readonly runIn: number;
  /** From its underside up to the structural floor, in. */
  readonly belowFloorIn: number;
  readonly selfPlf: number;
  /** Windows that stand on it, in of height, and their weight. */
  readonly windowIn: number;
  readonly windowPlf: number;
  readonly momentKipIn: number;
  readonly modulusIn3: number;
  /** Tension at midspan in service, and the tension at which it cracks, ksi. */
  readonly tensionKsi: number;
  readonly ruptureKsi: number;
  readonly weightKip: number;
  /** On one short side. */
  readonly count: number;
  /** At the roof, with the parapet that is part of it: its weight there, plf. */
  readonly roofSelfPlf: number;
}

/** Top of the topmost spandrel where no parapet rises from it, in: as on a floor, but no lower than the surface of a roof that is deeper than one. */
export function roofSpandrelTopIn({walls, story}: Pick<Design, "walls" | "story">, planes: Pick<WallPlanes, "stories" | "storyIn" | "topStoryIn" | "topIn">): number {
  const topIn = planes.stories * planes.storyIn - story.finishIn + walls.spandrelUpstandIn;
  return planes.topStoryIn > planes.storyIn ? Math.max(topIn, planes.topIn) : topIn;
}

/**
 * The spandrel of the short sides under its own weight and the windows on it, as an uncracked, simply supported beam; undefined
 * where there is none. Wind on it is not designed, nor are the posts that carry it where a bay has several pieces.
 *
 * @param open - whether the story is open above the spandrel, as in a parking structure
 */
export function endSpandrel(design: Design, planes: WallPlanes, open: boolean): EndSpandrel | undefined {
  if (!hasEndSpandrels(design)) return undefined;
  const {walls, bay, story} = design;
  const {spandrelDepthIn: depthIn, spandrelThicknessIn: thicknessIn, spandrelUpstandIn} = walls;
  const between = walls.spandrelPlace === "between";
  const bayIn = inches(bay.spanFt);
  const corners = bay.baysAcross === 1 ? 2 : 1;
  const pieces = walls.spandrelPieces;
  // Of several pieces in a bay the longest is that at the building's corner.
  const atCorner = pieces === 1 ? corners : 1;
  const lengthIn = between ? pieceBetweenIn(design) : bayIn / pieces + atCorner * planes.longOutIn - (2 - atCorner) * (walls.jointIn / 2);
  const spanIn = (between ? bayIn - 2 * columnLineToBearingIn(design) : bayIn) / pieces;
  const plf = (heightIn: number) => (WALL_CONCRETE_PCF * thicknessIn * heightIn) / IN2_PER_FT2;
  const selfPlf = plf(depthIn);
  const windowIn = open ? 0 : Math.max(0, planes.storyIn - depthIn);
  const windowPlf = WINDOW_PSF * feet(windowIn);
  const momentKipIn = uniformMomentKipIn(selfPlf + windowPlf, feet(spanIn), 0.5);
  const modulusIn3 = (thicknessIn * depthIn ** 2) / 6;
  const belowFloorIn = Math.max(0, depthIn - spandrelUpstandIn);
  return {
    depthIn, thicknessIn, pieces, spanIn, lengthIn, belowFloorIn,
    runIn: between ? bay.baysAcross * pieces * lengthIn : shortRunIn(design, planes) - (bay.baysAcross * pieces - 1) * walls.jointIn,
    selfPlf, windowIn, windowPlf, momentKipIn, modulusIn3,
    tensionKsi: momentKipIn / modulusIn3, ruptureKsi: ruptureModulusKsi(concrete("normalweight", walls.strengthPsi)),
    weightKip: (selfPlf * feet(lengthIn)) / LB_PER_KIP, count: bay.baysAcross * pieces * planes.stories,
    roofSelfPlf: planes.parapetIn > 0 ? plf(Math.max(0, belowFloorIn + story.finishIn + planes.topStoryIn - planes.storyIn + planes.parapetIn))
      : plf(roofSpandrelTopIn(design, planes) - (planes.stories * planes.storyIn - story.finishIn + spandrelUpstandIn - depthIn)),
  };
}
