import {deckEnds} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {countsShortSides, hasEndSpandrels, hasPanels} from "../design/used.js";
import {feet} from "../units.js";
import {passesOutside, shortRunIn, wallPlanes, type LevelDepths, type WallPlanes} from "./planes.js";
import type {TopSide} from "./topLevel.js";

/** Kinds of wall, as they are seen from outside. */
export const WALL_KINDS = ["columns", "spandrel", "closing strip", "sill", "windows", "frames and wall", "panels", "cladding", "parapet", "not counted"] as const;
export type WallKind = (typeof WALL_KINDS)[number];

/** Area of one kind of wall on both long, or both short sides. */
export interface WallArea {
  readonly side: "long" | "short";
  readonly kind: WallKind;
  readonly ft2: number;
}

/** Walls of the whole building by kind. */
export interface WallAreas {
  readonly parts: readonly WallArea[];
  /** All walls with their parapet; windows, or openings, of them. */
  readonly wallFt2: number;
  readonly windowFt2: number;
  readonly parapetFt2: number;
  /** Around the building, as the walls are measured, ft. */
  readonly perimeterFt: number;
}

/** Heights of a story that its windows and beams leave, in. */
export interface StoryHeights extends LevelDepths {
  /** How much of the edge beam hangs below the deck. */
  readonly ledgeDepthIn: number;
  /** Height of the glass, or of the opening that it would fill. */
  readonly glassIn: number;
}

/**
 * Areas of the walls as they are seen from outside, over a number of stories. Where what closes the short sides is not
 * counted, the building is as long and as wide as its outer column lines are apart; else walls are measured to the
 * outer faces. Pieces of one wall add up to its rectangle, to the topmost level, a roof's highest line; a parapet comes on
 * top, or without a roof what stands up past the highest floor. What is built on an edge beam that ends below that line
 * counts with the beam. Joints are counted with the pieces beside them.
 */
export function wallAreas(design: Design, heights: StoryHeights, stories?: number): WallAreas {
  const planes = wallPlanes(design, heights, stories);
  // Stryker disable next-line EqualityOperator: nothing is just a billionth of a square foot
  const parts = merged([...longSides(design, planes, heights), ...shortSides(design, planes)]).filter(({ft2}) => ft2 > 1e-9);
  const sum = (kind?: WallKind) => parts.reduce((total, part) => (kind === undefined || part.kind === kind ? total + part.ft2 : total), 0);
  return {parts, wallFt2: sum(), windowFt2: sum("windows"), parapetFt2: sum("parapet"), perimeterFt: 2 * feet(longRunIn(design, planes) + shortSideIn(design, planes))};
}

/** One part for each kind of a side. */
function merged(parts: readonly WallArea[]): WallArea[] {
  const found = new Map<string, WallArea>();
  for (const part of parts) {
    const key = `${part.side} ${part.kind}`;
    found.set(key, {...part, ft2: part.ft2 + (found.get(key)?.ft2 ?? 0)});
  }
  return [...found.values()];
}

/** Length of a long and of a short side as it is measured, in. */
const longRunIn = (design: Design, {lengthIn, shortOutIn}: WallPlanes) => lengthIn + (countsShortSides(design) ? 2 * shortOutIn : 0);
const shortSideIn = (design: Design, {widthIn, longOutIn}: WallPlanes) => widthIn + (countsShortSides(design) ? 2 * longOutIn : 0);

/** A story of a long side from its floor up, in: sill, opening with the window in it, and the beam above with what closes the deck's ends. */
interface Band {
  readonly sillIn: number;
  readonly openIn: number;
  readonly windowIn: number;
  readonly aboveIn: number;
  readonly stripIn: number;
}

function longSides(design: Design, planes: WallPlanes, {deckDepthIn, ledgeDepthIn, glassIn}: StoryHeights): WallArea[] {
  const {bay, edgeBeam, story, daylight} = design;
  const counted = countsShortSides(design);
  const runIn = longRunIn(design, planes);
  const columnsIn = Math.min(planes.lengthIn, (bay.baysAlong + (counted ? 1 : 0)) * 2 * planes.columnHalfIn);
  // Outside the outermost columns the ends of the short sides' wall are seen.
  const endsIn = counted ? 2 * (planes.shortOutIn - planes.columnHalfIn) : 0;
  const betweenIn = runIn - columnsIn - endsIn;
  const below = edgeBeam.kind === "below";
  const band = (heightIn: number, depthIn: number): Band => {
    const sillIn = Math.min(Math.max(0, edgeBeam.upstandIn - story.finishIn), heightIn);
    const aboveIn = Math.min(depthIn + ledgeDepthIn, heightIn - sillIn);
    const openIn = heightIn - sillIn - aboveIn;
    return {sillIn, aboveIn, openIn, stripIn: below ? Math.min(depthIn, aboveIn) : 0, windowIn: Math.min(Math.max(0, glassIn), openIn)};
  };
  const {stories, top} = planes;
  const usual = band(planes.storyIn, deckDepthIn + story.finishIn);
  const ofTop = ({structureIn}: TopSide) => band(planes.topStoryIn, planes.topIn - structureIn + top.deckDepthIn);
  // Heights of a kind added up over all stories, of the first long side, which has windows, and of the other.
  const sums = top.sides.map((side) => {
    const last = ofTop(side);
    return (of: (band: Band) => number): number => (stories - 1) * of(usual) + of(last);
  });
  const {sillIn} = usual;
  // Without a roof the highest floor's beam stands up past it as a guard.
  const upstands = below ? 0 : planes.roofed ? stories - 1 : stories;
  const area = (kind: WallKind, lengthIn: number, heightIn: number): WallArea => ({side: "long", kind, ft2: feet(lengthIn) * feet(heightIn)});
  const both = (kind: WallKind, lengthIn: number, heightIn: number): WallArea => area(kind, lengthIn, 2 * heightIn);
  const windowed = daylight.sides === "two" ? sums : sums.slice(0, 1);
  return [
    both("columns", columnsIn, planes.topIn),
    both(endKind(design), endsIn, planes.topIn),
    ...sums.map((of) => area("spandrel", betweenIn, of(({aboveIn, stripIn}) => aboveIn - stripIn) + upstands * sillIn)),
    ...sums.map((of) => area(deckEnds(design, deckDepthIn) ? "closing strip" : "frames and wall", betweenIn, of(({stripIn}) => stripIn))),
    both("sill", betweenIn, (below ? stories : 1) * sillIn),
    ...windowed.flatMap((of) => [area("windows", betweenIn, of(({windowIn}) => windowIn)), area("frames and wall", betweenIn, of(({openIn, windowIn}) => openIn - windowIn))]),
    ...sums.slice(windowed.length).map((of) => area("frames and wall", betweenIn, of(({openIn}) => openIn))),
    both("parapet", runIn, planes.parapetIn),
  ];
}

/** What is seen of a short side's wall from a long side. */
function endKind(design: Design): WallKind {
  return hasPanels(design) ? "panels" : hasEndSpandrels(design) ? "spandrel" : "cladding";
}

function shortSides(design: Design, planes: WallPlanes): WallArea[] {
  const {bay, walls, story} = design;
  const {stories, storyIn, topIn} = planes;
  const both = (kind: WallKind, lengthIn: number, heightIn: number): WallArea => ({side: "short", kind, ft2: 2 * feet(lengthIn) * feet(heightIn)});
  const runIn = shortSideIn(design, planes);
  const parapet = both("parapet", runIn, planes.parapetIn);
  if (!countsShortSides(design)) return [both("not counted", runIn, topIn), parapet];
  if (!hasEndSpandrels(design)) {
    const [kind, share] = [endKind(design), walls.glassShare];
    return [both(kind, runIn, topIn * (1 - share)), both("windows", runIn, topIn * share), parapet];
  }
  const outside = passesOutside(design);
  const columnsIn = outside ? 0 : (bay.baysAcross + 1) * 2 * planes.columnHalfIn;
  const wallIn = outside ? shortRunIn(design, planes) : planes.widthIn + 2 * planes.columnHalfIn - columnsIn;
  const upperIn = Math.min(Math.max(0, walls.spandrelUpstandIn - story.finishIn), storyIn, planes.topStoryIn);
  const lower = (heightIn: number) => Math.min(Math.max(0, walls.spandrelDepthIn - walls.spandrelUpstandIn + story.finishIn + heightIn - storyIn), heightIn - upperIn);
  const [lowerIn, topLowerIn] = [lower(storyIn), lower(planes.topStoryIn)];
  return [
    both("columns", columnsIn, topIn),
    // Beyond columns that stand in the wall, its run ends at the long sides' strips.
    both("closing strip", runIn - columnsIn - wallIn, topIn),
    both("spandrel", wallIn, (stories - 1) * lowerIn + topLowerIn + (stories - (planes.roofed ? 1 : 0)) * upperIn),
    // On the ground there is no spandrel: the window begins there.
    both("windows", wallIn, topIn - (stories - 1) * (upperIn + lowerIn) - topLowerIn),
    parapet,
  ];
}
