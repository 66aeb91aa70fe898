import {columnLineToBeamEndIn} from "../beams/beamEnds.js";
import type {DeckEnds} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {countsShortSides, hasEndSpandrels, hasPanels} from "../design/used.js";
import {inches} from "../units.js";
import {roofSpandrelTopIn} from "./endSpandrel.js";
import {pieces} from "./panels.js";
import {atBothEnds, bothEnds, lines, rect, type OutlinePiece, type PlanPoint} from "./pieces.js";
import {passesOutside, pieceBetweenIn, type WallPlanes} from "./planes.js";
import type {TopSide} from "./topLevel.js";

/** What closes the deck's ends in front of the edge beams on one level; nothing where these stand beside the deck. */
export function closingStrips(design: Design, {planes, ends, deckDepthIn}: {planes: WallPlanes; ends: DeckEnds | undefined; deckDepthIn: number}, level: number): OutlinePiece[] {
  if (!ends) return [];
  const {bay, story} = design;
  const last = level === planes.stories;
  const endIn = columnLineToBeamEndIn(design);
  const bayIn = inches(bay.beamSpanFt);
  return lines(bay.baysAlong - 1, bayIn).flatMap((x) => atBothEnds((side) => {
    const topIn = last ? planes.top.sides[side].structureIn : level * planes.storyIn - story.finishIn;
    return {
      kind: "closing strip", plan: rect(x + endIn, -planes.beamHalfIn - ends.thicknessIn, x + bayIn - endIn, -planes.beamHalfIn),
      bottomIn: topIn - (last ? planes.top.deckDepthIn : deckDepthIn), topIn,
    };
  }, 1, planes.widthIn));
}

/** What closes both short sides, piece by piece; nothing where it is not counted. */
export function shortSides(design: Design, planes: WallPlanes): OutlinePiece[] {
  if (!countsShortSides(design)) return [];
  const one = hasPanels(design) ? panels(design, planes) : hasEndSpandrels(design) ? spandrels(design, planes) : cladding(planes);
  return one.flatMap((piece) => bothEnds(piece, 0, planes.lengthIn));
}

/** The panels of the first short side, joint by joint. */
function panels({bay, walls}: Design, planes: WallPlanes): OutlinePiece[] {
  const {jointIn} = walls;
  const [x0, x1] = [-planes.endOuterIn, -planes.endInnerIn];
  const [low, high] = [-planes.longOutIn, planes.widthIn + planes.longOutIn];
  const piece = (y0: number, y1: number, bottomIn: number, topIn: number): OutlinePiece => ({kind: "panel", plan: rect(x0, y0, x1, y1), bottomIn, topIn});
  if (walls.panelSupport === "footing") {
    const across = pieces(high - low, inches(walls.panelWidthFt), jointIn);
    const tiers = Math.ceil(planes.stories / walls.panelStories);
    return Array.from({length: tiers}, (_, tier) => {
      const last = tier === tiers - 1;
      const bottomIn = tier * walls.panelStories * planes.storyIn;
      const topIn = last ? planes.topIn + planes.parapetIn : (tier + 1) * walls.panelStories * planes.storyIn - jointIn;
      return Array.from({length: across.count}, (_, i) => {
        const y0 = low + i * (across.eachIn + jointIn);
        return piece(y0, y0 + across.eachIn, bottomIn, topIn);
      });
    }).flat();
  }
  const bayIn = inches(bay.spanFt);
  const joints = lines(bay.baysAcross, bayIn).slice(1, -1);
  const ends = [low, ...joints.flatMap((y) => [y - jointIn / 2, y + jointIn / 2]), high];
  return Array.from({length: planes.stories}, (_, story) => {
    const top = story === planes.stories - 1;
    const heightIn = top ? planes.topStoryIn + planes.parapetIn : planes.storyIn;
    const rows = pieces(heightIn, inches(walls.panelWidthFt), jointIn);
    const eachIn = top ? rows.eachIn : (heightIn - rows.count * jointIn) / rows.count;
    return Array.from({length: rows.count}, (_, row) => {
      const bottomIn = story * planes.storyIn + row * (eachIn + jointIn);
      return Array.from({length: bay.baysAcross}, (_, i) => piece(ends[2 * i] as number, ends[2 * i + 1] as number, bottomIn, bottomIn + eachIn));
    }).flat();
  }).flat();
}

function spandrels(design: Design, planes: WallPlanes): OutlinePiece[] {
  const {bay, walls, story} = design;
  const bayIn = inches(bay.spanFt);
  const outside = passesOutside(design);
  const endIn = columnLineToBeamEndIn(design);
  return Array.from({length: planes.stories}, (_, i) => i + 1).flatMap((level) => {
    const floorIn = level * planes.storyIn - story.finishIn;
    const underParapet = level === planes.stories && planes.parapetIn > 0;
    const pieces = walls.spandrelPieces;
    return lines(bay.baysAcross - 1, bayIn).flatMap((y, j): OutlinePiece[] => {
      const y0 = !outside ? y + endIn : j === 0 ? -planes.longOutIn : y + walls.jointIn / 2;
      const y1 = !outside ? y + bayIn - endIn : j === bay.baysAcross - 1 ? planes.widthIn + planes.longOutIn : y + bayIn - walls.jointIn / 2;
      const bottomIn = floorIn + walls.spandrelUpstandIn - walls.spandrelDepthIn;
      const pieceIn = outside ? bayIn / pieces : pieceBetweenIn(design);
      // Pieces meet over posts: past the columns at equal parts of the bay, between them at equal lengths.
      const joint = (i: number) => (outside ? y + i * pieceIn : y0 + i * (pieceIn + walls.jointIn) - walls.jointIn / 2);
      return Array.from({length: pieces}, (_, i): OutlinePiece => ({
        kind: "spandrel", bottomIn,
        plan: rect(-planes.endOuterIn, i === 0 ? y0 : joint(i) + walls.jointIn / 2, -planes.endInnerIn, i === pieces - 1 ? y1 : joint(i + 1) - walls.jointIn / 2),
        topIn: underParapet ? Math.max(bottomIn, planes.topIn) : level === planes.stories ? roofSpandrelTopIn(design, planes) : floorIn + walls.spandrelUpstandIn,
      }));
    });
  });
}

function cladding(planes: WallPlanes): OutlinePiece[] {
  return [{kind: "cladding", plan: rect(-planes.endOuterIn, -planes.longOutIn, -planes.endInnerIn, planes.widthIn + planes.longOutIn), bottomIn: 0, topIn: planes.topIn}];
}

/** Everything above the roof's surface but panels, which rise by themselves. */
export function parapets(design: Design, planes: WallPlanes): OutlinePiece[] {
  const {walls, bay} = design;
  if (planes.parapetIn === 0) return [];
  const {topIn, parapetIn, lengthIn, widthIn, endInnerIn, endOuterIn, beamHalfIn} = planes;
  const [yOut, yIn] = [-beamHalfIn, walls.parapetThicknessIn - beamHalfIn];
  const rises = hasEndSpandrels(design) || walls.shortSide === "cladding";
  // The corner of the first long side with the first short one: who reaches it decides where either ends.
  const {corner, jointIn} = walls;
  const longEnd = (y: number): number => {
    if (!rises) return hasPanels(design) ? -endInnerIn + jointIn : -endOuterIn;
    if (corner === "miter") return y === yOut ? -endOuterIn : -endInnerIn;
    return corner === "long" ? -endOuterIn : -endInnerIn + jointIn;
  };
  const shortOutIn = corner === "long" ? yIn + jointIn : yOut;
  const shortInIn = corner === "miter" ? yIn : shortOutIn;
  const planOf = (end: (y: number) => number) => (x0?: number, x1?: number): PlanPoint[] => [
    [x0 ?? end(yOut), yOut], [x1 ?? lengthIn - end(yOut), yOut], [x1 ?? lengthIn - end(yIn), yIn], [x0 ?? end(yIn), yIn],
  ];
  const longPlan = planOf(longEnd);
  // What is built on below the roof's highest line ends at the short sides' walls, which run through there.
  const lowPlan = planOf(countsShortSides(design) ? () => -endInnerIn + jointIn : () => -endOuterIn);
  const long = (plan: PlanPoint[], heights: (side: TopSide) => readonly [bottomIn: number, topIn: number]): OutlinePiece[] =>
    atBothEnds((side) => {
      const [bottomIn, toIn] = heights(planes.top.sides[side]);
      return {kind: "parapet", plan, bottomIn, topIn: toIn};
    }, 1, widthIn).filter((piece) => piece.topIn > piece.bottomIn);
  const endIn = columnLineToBeamEndIn(design);
  const columnLines = lines(bay.baysAlong, inches(bay.beamSpanFt));
  // Beside the roof's beams, where they stand up, the parapet comes down to the columns' tops.
  const overColumns = columnLines.flatMap((x, i) => long(
    longPlan(i === 0 ? undefined : x - endIn, i === columnLines.length - 1 ? undefined : x + endIn),
    (side) => [columnTopIn(planes, side), side.builtOnIn]));
  const short: OutlinePiece[] = rises ? bothEnds({
    kind: "parapet", bottomIn: topIn, topIn: topIn + parapetIn,
    plan: [[-endOuterIn, shortOutIn], [-endInnerIn, shortInIn], [-endInnerIn, widthIn - shortInIn], [-endOuterIn, widthIn - shortOutIn]],
  }, 0, lengthIn) : [];
  return [
    ...overColumns, ...short, ...long(lowPlan(), ({builtOnIn}) => [builtOnIn, topIn]),
    ...long(longPlan(), ({builtOnIn}) => [Math.max(builtOnIn, topIn), topIn + parapetIn]),
  ];
}

/** Where the columns of a long side end, in: under a parapet at the roof's surface or at the beams' tops, whichever is lower; else at these. */
export function columnTopIn({topIn, parapetIn}: Pick<WallPlanes, "topIn" | "parapetIn">, {builtOnIn}: TopSide): number {
  return parapetIn > 0 ? Math.min(topIn, builtOnIn) : builtOnIn;
}
