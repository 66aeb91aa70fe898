import {columnLineToBeamEndIn} from "../beams/beamEnds.js";
import type {DeckEnds} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {inches} from "../units.js";
import type {DeckEdge} from "./deckEdge.js";
import {bothEnds, lines, rect, type OutlinePiece, type PieceKind} from "./pieces.js";
import type {WallPlanes} from "./planes.js";
import {closingStrips, parapets, shortSides} from "./wallPieces.js";

/** What the outline is made of. */
export interface OutlineParts {
  readonly planes: WallPlanes;
  readonly edge: DeckEdge;
  readonly ends: DeckEnds | undefined;
  readonly deckDepthIn: number;
  /** Depth of the edge beam, and how much of it is below the deck, in. */
  readonly beam: {readonly depthIn: number; readonly belowDeckIn: number};
  /** Depth of the girder and how much of it is below the deck, in; undefined where the floor has one bay across. */
  readonly girder: {readonly depthIn: number; readonly belowDeckIn: number} | undefined;
}

/** Two kinds that share a place, each with how: everything else stands clear of everything else. */
export const SHARED_PLACES: readonly {readonly kinds: readonly [PieceKind, PieceKind]; readonly how: string}[] = [
  {kinds: ["deck", "column"], how: "The deck's flanges are notched around the columns."},
  {kinds: ["deck", "edge beam"], how: "Stems stand in pockets of the edge beam's web, where it has them."},
];

/** Every piece at the building's sides on the levels given, 1 the lowest floor carried; and on the ground what stands there. */
export function outline(design: Design, parts: OutlineParts): OutlinePiece[] {
  const {planes} = parts;
  const levels = Array.from({length: planes.stories}, (_, i) => i + 1);
  return [
    ...columns(design, planes),
    ...levels.flatMap((level) => [...frame(design, parts, level), ...deck(design, parts, level), ...closingStrips(design, parts, level)]),
    ...shortSides(design, planes),
    ...parapets(design, planes),
  ];
}

function columns({bay}: Design, planes: WallPlanes): OutlinePiece[] {
  const half = planes.columnHalfIn;
  // Where a parapet runs over them they end at the roof; else beside what the roof's beams stand up.
  const topIn = planes.topIn + (planes.parapetIn > 0 ? 0 : planes.upstandIn);
  return lines(bay.baysAlong, inches(bay.beamSpanFt)).flatMap((x) => lines(bay.baysAcross, inches(bay.spanFt)).map((y): OutlinePiece =>
    ({kind: "column", plan: rect(x - half, y - half, x + half, y + half), bottomIn: 0, topIn})));
}

function frame(design: Design, {planes, beam, girder, deckDepthIn}: OutlineParts, level: number): OutlinePiece[] {
  const {bay, edgeBeam, girder: input, story} = design;
  const floorIn = level * planes.storyIn - story.finishIn;
  const soffitIn = floorIn - deckDepthIn;
  const endIn = columnLineToBeamEndIn(design);
  const spans = lines(bay.baysAlong - 1, inches(bay.beamSpanFt)).map((x) => [x + endIn, x + inches(bay.beamSpanFt) - endIn] as const);
  const half = planes.beamHalfIn;
  const standsIn = level === planes.stories && planes.roofed ? planes.upstandIn + story.finishIn : edgeBeam.upstandIn;
  const topIn = edgeBeam.kind === "below" ? soffitIn : floorIn + standsIn;
  const edges = spans.flatMap(([x0, x1]) => [
    ...bothEnds({kind: "edge beam", plan: rect(x0, -half, x1, half), bottomIn: soffitIn - beam.belowDeckIn, topIn}, 1, planes.widthIn),
    ...(edgeBeam.kind === "ledge"
      ? bothEnds({kind: "ledge", plan: rect(x0, half, x1, half + edgeBeam.ledgeProjectionIn), bottomIn: soffitIn - edgeBeam.ledgeDepthIn, topIn: soffitIn}, 1, planes.widthIn) : []),
  ]);
  if (!girder) return edges;
  const web = input.webWidthIn / 2;
  const rows = lines(bay.baysAcross, inches(bay.spanFt)).slice(1, -1);
  return [...edges, ...rows.flatMap((y) => spans.flatMap(([x0, x1]): OutlinePiece[] => [
    {kind: "girder", plan: rect(x0, y - web, x1, y + web), bottomIn: soffitIn - girder.belowDeckIn, topIn: input.kind === "rectangle" ? soffitIn : floorIn},
    ...(input.kind === "rectangle" ? [] : [{kind: "ledge" as const, plan: rect(x0, y - web - input.ledgeProjectionIn, x1, y - web), bottomIn: soffitIn - input.ledgeDepthIn, topIn: soffitIn},
      {kind: "ledge" as const, plan: rect(x0, y + web, x1, y + web + input.ledgeProjectionIn), bottomIn: soffitIn - input.ledgeDepthIn, topIn: soffitIn}]),
  ]))];
}

/** From an outer column line to the deck's end, in: a joint inside the web's face, the pocket's back, or the beam's outer face. */
export function deckEndIn({edgeBeam}: Design): number {
  const half = edgeBeam.webWidthIn / 2;
  const back = {ledge: half, pockets: half - edgeBeam.ledgeProjectionIn, below: -half}[edgeBeam.kind];
  return back + edgeBeam.jointGapIn;
}

function deck(design: Design, {planes, edge, deckDepthIn}: OutlineParts, level: number): OutlinePiece[] {
  const {bay, edgeBeam, girder, story} = design;
  const topIn = level * planes.storyIn - story.finishIn;
  const bayIn = inches(bay.spanFt);
  const inner = girder.kind === "rectangle" ? edgeBeam.jointGapIn / 2 : girder.webWidthIn / 2 + edgeBeam.jointGapIn;
  const deckLengthIn = planes.lengthIn - inches(edge.pieces.stripFt);
  return lines(bay.baysAcross - 1, bayIn).flatMap((y, row): OutlinePiece[] => {
    const y0 = row === 0 ? deckEndIn(design) : y + inner;
    const y1 = row === bay.baysAcross - 1 ? planes.widthIn - deckEndIn(design) : y + bayIn - inner;
    // A strip has no stems to stand in pockets: it ends at the face of the web, and between the columns.
    const clearIn = Math.max(planes.columnHalfIn, edgeBeam.kind === "below" ? -Infinity : planes.beamHalfIn);
    const [from, to] = [Math.max(y0, y + (row === 0 ? clearIn : planes.columnHalfIn)), Math.min(y1, y + bayIn - (row === bay.baysAcross - 1 ? clearIn : planes.columnHalfIn))];
    const strip = (x0: number, x1: number): OutlinePiece[] =>
      (x1 > x0 ? [{kind: "strip", plan: rect(x0, from, x1, to), bottomIn: topIn - edge.thicknessIn, topIn}] : []);
    return [
      {kind: "deck", plan: rect(0, y0, deckLengthIn, y1), bottomIn: topIn - deckDepthIn, topIn},
      ...strip(-edge.firstStripIn, 0), ...strip(deckLengthIn, deckLengthIn + edge.lastStripIn),
    ];
  });
}
