import {WALL_CONCRETE_PCF, type DeckEnds} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {hasEndSpandrels, hasPanels} from "../design/used.js";
import {IN2_PER_FT2, LB_PER_KIP, feet, inches} from "../units.js";
import type {DeckEdge} from "./deckEdge.js";
import {WINDOW_PSF, type EndSpandrel} from "./endSpandrel.js";
import {panelPsf} from "./panels.js";
import {beamLengthIn, endWallThicknessIn, passesOutside, pieceBetweenIn, shortRunIn, type WallPlanes} from "./planes.js";

/** How far a precast cap stands out of the parapet on either side, in (common practice: an inch and its drip). */
export const CAP_OVERHANG_IN = 1;

/** Weights of the walls per foot and per square foot. */
export interface WallWeights {
  /** Of the wall of a short side without its windows, and with them, psf; of a spandrel 0, which counts per foot. */
  readonly wallPsf: number;
  readonly withWindowsPsf: number;
  /** What a foot of a short side brings to the columns on a floor, and on the roof's level, plf. */
  readonly floorPlf: number;
  readonly roofPlf: number;
  /** What a foot of a short side brings to a footing of its own, plf. */
  readonly footingPlf: number;
  /** Parapet that is built on the roof's beams along the long sides, with its cap, plf, of both sides the heavier; the beams' own upstand counts with the beams. */
  readonly parapetPlf: number;
  /** Cap on the short sides' wall, plf. */
  readonly endCapPlf: number;
}

/** A parapet along a long side by how far it is built up from the roof's beam, with its cap, plf. The cap is the top of the parapet's height. */
export function parapetPlf({walls}: Pick<Design, "walls">, addedIn: number): number {
  const capIn = Math.min(walls.capIn, addedIn);
  return (WALL_CONCRETE_PCF * (walls.parapetThicknessIn * (addedIn - capIn))) / IN2_PER_FT2 + capPlf(capIn, walls.parapetThicknessIn);
}

function capPlf(capIn: number, thicknessIn: number): number {
  // Stryker disable next-line ArithmeticOperator: twice an inch is as much as two over it
  return (WALL_CONCRETE_PCF * capIn * (thicknessIn + 2 * CAP_OVERHANG_IN)) / IN2_PER_FT2;
}

/** Weights of the walls of a design. */
export function wallWeights(design: Design, planes: WallPlanes, spandrel: EndSpandrel | undefined): WallWeights {
  const {walls} = design;
  const upright = hasPanels(design) && walls.panelSupport === "footing";
  const wallPsf = walls.shortSide === "cladding" ? walls.claddingPsf : panelPsf(design);
  const withWindowsPsf = wallPsf === 0 ? 0 : wallPsf * (1 - walls.glassShare) + WINDOW_PSF * walls.glassShare;
  const [storyFt, parapetFt] = [feet(planes.storyIn), feet(planes.parapetIn)];
  // The cap takes the place of the wall's own top.
  const capIn = Math.min(walls.capIn, planes.parapetIn);
  const endCapPlf = walls.shortSide === "not counted" ? 0
    : capPlf(capIn, endWallThicknessIn(design)) - (spandrel ? (WALL_CONCRETE_PCF * spandrel.thicknessIn * capIn) / IN2_PER_FT2 : wallPsf * feet(capIn));
  // Parapets have no windows.
  const topPlf = withWindowsPsf * feet(planes.topStoryIn) + wallPsf * parapetFt + endCapPlf;
  const footingPlf = upright ? withWindowsPsf * storyFt * (planes.stories - 1) + (planes.roofed ? topPlf : withWindowsPsf * storyFt) : 0;
  return {
    wallPsf, withWindowsPsf, footingPlf, endCapPlf, parapetPlf: parapetPlf(design, planes.parapetAddedIn),
    floorPlf: spandrel ? spandrel.selfPlf + spandrel.windowPlf : upright ? 0 : withWindowsPsf * storyFt,
    roofPlf: !planes.roofed || upright ? 0 : spandrel ? spandrel.roofSelfPlf + endCapPlf : topPlf,
  };
}

/** A column at the edge of the building, by which walls it carries. */
export type WallColumn = "corner column" | "girder end column" | "edge column" | "interior column";

/** One piece of wall that a column carries on one level. */
export interface WallShare {
  readonly name: string;
  readonly lengthFt: number;
  readonly plf: number;
  readonly kip: number;
}

/** What walls bring to a column, by level. */
export interface WallReach {
  readonly floor: readonly WallShare[];
  readonly roof: readonly WallShare[];
}

/** What of the walls comes to columns. */
export interface WallsCarried {
  readonly planes: WallPlanes;
  readonly weights: WallWeights;
  readonly edge: DeckEdge;
  readonly roofEdge: DeckEdge;
  readonly ends: DeckEnds | undefined;
}

/**
 * Which pieces of wall a column carries: those of a short side halfway to the next column and out to the corner, the
 * parapet of a long side, and the strip of floor beyond the end column line. What closes the deck's ends hangs on the
 * edge beams: on the floors it is among their cladding, on the roof, which has none, it counts by itself.
 */
export function wallReach(design: Design, {planes, weights, edge, roofEdge, ends}: WallsCarried, column: WallColumn): WallReach {
  const {bay} = design;
  const corner = column === "corner column";
  const onShort = corner || column === "girder end column";
  const share = (name: string, lengthIn: number, plf: number): WallShare[] =>
    (plf > 0 && lengthIn > 0 ? [{name, lengthFt: feet(lengthIn), plf, kip: (plf * feet(lengthIn)) / LB_PER_KIP}] : []);
  const bayIn = inches(bay.spanFt);
  // Posts carry what is not next to a column.
  const reachIn = hasEndSpandrels(design) ? bayIn / design.walls.spandrelPieces : bayIn;
  const shortIn = !onShort ? 0
    : !passesOutside(design) ? pieceBetweenIn(design) * (corner ? 0.5 : 1)
    : corner ? reachIn / 2 + (shortRunIn(design, planes) - planes.widthIn) / 2 : reachIn;
  const onLong = corner || column === "edge column";
  const longIn = corner ? inches(bay.beamSpanFt) / 2 + planes.endOuterIn : onLong ? inches(bay.beamSpanFt) : 0;
  // Of both ends of the building the one with the wider strip counts.
  const strip = ({firstPlf, lastPlf}: DeckEdge) => share("strip of floor", onShort ? bayIn * (corner ? 0.5 : 1) : 0, Math.max(firstPlf, lastPlf));
  const name = hasEndSpandrels(design) ? "spandrel and windows" : hasPanels(design) ? "wall panels" : "cladding";
  const parapet = share("parapet of the long side", longIn, weights.parapetPlf);
  const closing = share("closing strip of the long side", onLong ? beamLengthIn(design) * (corner ? 0.5 : 1) : 0, ends?.plf ?? 0);
  return {
    floor: [...share(name, shortIn, weights.floorPlf), ...strip(edge)],
    roof: planes.roofed ? [...share(name, shortIn, weights.roofPlf), ...parapet, ...closing, ...strip(roofEdge)] : [],
  };
}

/** Length of the spandrels on one level of a short side that posts carry, in; 0 where each reaches from column to column. */
export function onPostsIn(design: Design): number {
  if (!hasEndSpandrels(design)) return 0;
  const {bay, walls: {spandrelPieces}} = design;
  const pieceIn = passesOutside(design) ? inches(bay.spanFt) / spandrelPieces : pieceBetweenIn(design);
  return bay.baysAcross * (spandrelPieces - 1) * pieceIn;
}

/** Weight of a level's shares, kip. */
export function sharesKip(shares: readonly WallShare[]): number {
  return shares.reduce((sum, {kip}) => sum + kip, 0);
}
