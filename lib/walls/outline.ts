import {columnLineToBeamEndIn} from "../beams/beamEnds.js";
import type {DeckEnds} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {inches} from "../units.js";
import type {DeckEdge} from "./deckEdge.js";
import {atBothEnds, lines, rect, type OutlinePiece, type PieceKind} from "./pieces.js";
import type {WallPlanes} from "./planes.js";
import {closingStrips, columnTopIn, parapets, shortSides} from "./wallPieces.js";

/** What the outline is made of. */
export interface OutlineParts {
  readonly planes: WallPlanes;
  readonly edge: DeckEdge;
  /** Of the topmost level. */
  readonly roofEdge: DeckEdge;
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
  const [first, last] = planes.top.sides;
  const topIn = (row: number) => (row === 0 || row === bay.baysAcross ? columnTopIn(planes, row === 0 ? first : last) : planes.top.structureIn[row] as number);
  return lines(bay.baysAlong, inches(bay.beamSpanFt)).flatMap((x) => lines(bay.baysAcross, inches(bay.spanFt)).map((y, row): OutlinePiece =>
    ({kind: "column", plan: rect(x - half, y - half, x + half, y + half), bottomIn: 0, topIn: topIn(row)})));
}

function frame(design: Design, {planes, beam, girder, deckDepthIn}: OutlineParts, level: number): OutlinePiece[] {
  const {bay, edgeBeam, girder: input, story} = design;
  const {top} = planes;
  const topmost = level === planes.stories;
  const depthIn = topmost ? top.deckDepthIn : deckDepthIn;
  /** Top of the structure at a line across. */
  const levelIn = (row: number) => (topmost ? top.structureIn[row] as number : level * planes.storyIn - story.finishIn);
  const endIn = columnLineToBeamEndIn(design);
  const spans = lines(bay.baysAlong - 1, inches(bay.beamSpanFt)).map((x) => [x + endIn, x + inches(bay.beamSpanFt) - endIn] as const);
  const half = planes.beamHalfIn;
  const soffitAt = (side: 0 | 1) => levelIn(side === 0 ? 0 : bay.baysAcross) - depthIn;
  const topAt = (side: 0 | 1) => (topmost ? top.sides[side].beamTopIn : soffitAt(side) + (edgeBeam.kind === "below" ? 0 : depthIn + edgeBeam.upstandIn));
  const edges = spans.flatMap(([x0, x1]) => [
    ...atBothEnds((side) => ({kind: "edge beam", plan: rect(x0, -half, x1, half), bottomIn: soffitAt(side) - beam.belowDeckIn, topIn: topAt(side)}), 1, planes.widthIn),
    ...(edgeBeam.kind === "ledge"
      ? atBothEnds((side) => ({kind: "ledge", plan: rect(x0, half, x1, half + edgeBeam.ledgeProjectionIn), bottomIn: soffitAt(side) - edgeBeam.ledgeDepthIn, topIn: soffitAt(side)}), 1, planes.widthIn) : []),
  ]);
  // Stryker disable next-line ConditionalExpression: where there is none no line lies between two bays
  if (!girder) return edges;
  const web = input.webWidthIn / 2;
  const rows = lines(bay.baysAcross, inches(bay.spanFt)).slice(1, -1);
  return [...edges, ...rows.flatMap((y, i) => spans.flatMap(([x0, x1]): OutlinePiece[] => {
    const structureIn = levelIn(i + 1);
    const soffitIn = structureIn - depthIn;
    const ledge = (from: number, to: number): OutlinePiece => ({kind: "ledge", plan: rect(x0, from, x1, to), bottomIn: soffitIn - input.ledgeDepthIn, topIn: soffitIn});
    return [
      {kind: "girder", plan: rect(x0, y - web, x1, y + web), bottomIn: soffitIn - girder.belowDeckIn, topIn: input.kind === "rectangle" ? soffitIn : structureIn},
      ...(input.kind === "rectangle" ? [] : [ledge(y - web - input.ledgeProjectionIn, y - web), ledge(y + web, y + web + input.ledgeProjectionIn)]),
    ];
  }))];
}

/** From an outer column line to the deck's end, in: a joint inside the web's face, the pocket's back, or the beam's outer face. */
export function deckEndIn({edgeBeam}: Design): number {
  const half = edgeBeam.webWidthIn / 2;
  const back = {ledge: half, pockets: half - edgeBeam.ledgeProjectionIn, below: -half}[edgeBeam.kind];
  return back + edgeBeam.jointGapIn;
}

function deck(design: Design, {planes, edge: ofFloors, roofEdge, deckDepthIn}: OutlineParts, level: number): OutlinePiece[] {
  const {bay, edgeBeam, girder, story} = design;
  const topmost = level === planes.stories;
  const edge = topmost ? roofEdge : ofFloors;
  const depthIn = topmost ? planes.top.deckDepthIn : deckDepthIn;
  const levelIn = (row: number) => (topmost ? planes.top.structureIn[row] as number : level * planes.storyIn - story.finishIn);
  const bayIn = inches(bay.spanFt);
  const inner = girder.kind === "rectangle" ? edgeBeam.jointGapIn / 2 : girder.webWidthIn / 2 + edgeBeam.jointGapIn;
  const deckLengthIn = planes.lengthIn - inches(edge.pieces.stripFt);
  return lines(bay.baysAcross - 1, bayIn).flatMap((y, row): OutlinePiece[] => {
    const y0 = row === 0 ? deckEndIn(design) : y + inner;
    const y1 = row === bay.baysAcross - 1 ? planes.widthIn - deckEndIn(design) : y + bayIn - inner;
    // A strip has no stems to stand in pockets: it ends at the face of the web, and between the columns.
    const clearIn = Math.max(planes.columnHalfIn, edgeBeam.kind === "below" ? -Infinity : planes.beamHalfIn);
    const [from, to] = [Math.max(y0, y + (row === 0 ? clearIn : planes.columnHalfIn)), Math.min(y1, y + bayIn - (row === bay.baysAcross - 1 ? clearIn : planes.columnHalfIn))];
    // A deck on stepped bearings is shown level, each half at its own bearing.
    const halves = levelIn(row) === levelIn(row + 1) ? [[-Infinity, Infinity, levelIn(row)] as const]
      : [[-Infinity, y + bayIn / 2, levelIn(row)], [y + bayIn / 2, Infinity, levelIn(row + 1)]] as const;
    return halves.flatMap(([low, high, topIn]): OutlinePiece[] => {
      const strip = (x0: number, x1: number): OutlinePiece[] =>
        (x1 > x0 ? [{kind: "strip", plan: rect(x0, Math.max(low, from), x1, Math.min(high, to)), bottomIn: topIn - edge.thicknessIn, topIn}] : []);
      return [
        {kind: "deck", plan: rect(0, Math.max(low, y0), deckLengthIn, Math.min(high, y1)), bottomIn: topIn - depthIn, topIn},
        ...strip(-edge.firstStripIn, 0), ...strip(deckLengthIn, deckLengthIn + edge.lastStripIn),
      ];
    });
  });
}
