import {WALL_CONCRETE_PCF, deckEnds, type DeckEnds} from "../beams/deckEnds.js";
import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {countsShortSides} from "../design/used.js";
import {FT3_PER_YD3, concreteCarbonKgPerFt3} from "../materials/carbon.js";
import type {Member} from "../member/member.js";
import {feet} from "../units.js";
import {wallAreas, type StoryHeights, type WallAreas} from "./areas.js";
import {deckEdge, type DeckEdge} from "./deckEdge.js";
import {endSpandrel, type EndSpandrel} from "./endSpandrel.js";
import {panelFt2, panelRun, type PanelRun} from "./panels.js";
import {beamLengthIn, parapetRunIn, wallPlanes, type WallPlanes} from "./planes.js";
import {stripFootingIn, wallChecks} from "./wallChecks.js";
import {parapetPlf, wallWeights, type WallWeights} from "./weights.js";

/** What closes the sides of the building. */
export interface WallsResult {
  /** Whether what closes the short sides is counted. */
  readonly counted: boolean;
  /** Whether stories are open between their spandrels, as in a parking structure. */
  readonly open: boolean;
  readonly planes: WallPlanes;
  readonly edge: DeckEdge;
  /** The roof's deck there, where it has one of its own; else the floors'. */
  readonly roofEdge: DeckEdge;
  /** Undefined where none close the short sides. */
  readonly panels: PanelRun | undefined;
  readonly spandrel: EndSpandrel | undefined;
  /** Undefined where the edge beam closes the deck's ends itself, or nothing is counted there. */
  readonly ends: DeckEnds | undefined;
  readonly weights: WallWeights;
  readonly areas: WallAreas;
  /** Strip footing of upright panels: required and chosen width, in. */
  readonly footing: {readonly plf: number; readonly neededIn: number; readonly widthIn: number} | undefined;
  readonly materials: WallMaterials;
  readonly checks: readonly Check[];
}

/** Precast concrete of the walls over the whole building: short sides, parapet and what closes the deck's ends. */
export interface WallMaterials {
  readonly concreteYd3: number;
  /** Embodied carbon of that concrete, kgCO2e (A1-A3), without its steel and insulation. */
  readonly carbonKg: number;
}

/**
 * What closes the sides of a design's building: planes, panels or spandrels of the short sides, the deck's edge, areas
 * by kind, and weights. Wind on the walls, their fastenings and their steel are not designed.
 *
 * @param heights - what the story leaves for windows, with the deck's depth, the beam's below it, and the roof's build
 * @param open - whether stories are open between their spandrels
 */
export function walls(design: Design, catalog: Pick<Catalog, "carbonFactors">, member: Member, heights: StoryHeights, open: boolean): WallsResult {
  const {planes, edge, panels, spandrel, checks} = checkedWalls(design, member, heights, open);
  const weights = wallWeights(design, planes, spandrel);
  const ends = deckEnds(design, heights.deckDepthIn);
  const {footingPlf} = weights;
  let areas: WallAreas | undefined;
  const {allowablePsf} = design.ground;
  return {
    counted: countsShortSides(design), open, planes, edge, roofEdge: heights.roof ? deckEdge(design, heights.roof, planes) : edge, panels, spandrel, ends, weights,
    // Only a reader asks for them where the short sides are not counted.
    get areas() { return (areas ??= wallAreas(design, heights)); },
    footing: panels && footingPlf > 0
      ? {plf: footingPlf, neededIn: (12 * footingPlf) / allowablePsf, widthIn: stripFootingIn(footingPlf, allowablePsf, panels.thicknessIn)} : undefined,
    materials: materials(design, catalog, planes, {panels, spandrel, ends}),
    checks,
  };
}

/** What {@link walls} checks and their checks, without areas, weights and materials: for those who try many. */
export function checkedWalls(design: Design, member: Member, heights: StoryHeights, open: boolean): Pick<WallsResult, "planes" | "edge" | "panels" | "spandrel" | "checks"> {
  const planes = wallPlanes(design, heights);
  const edge = deckEdge(design, {member, toppingIn: design.deck.toppingIn}, planes);
  const panels = panelRun(design, planes);
  const spandrel = endSpandrel(design, planes, open);
  return {planes, edge, panels, spandrel, checks: wallChecks(design, {panels, spandrel, edge, deckDepthIn: heights.deckDepthIn})};
}

function materials(design: Design, catalog: Pick<Catalog, "carbonFactors">, planes: WallPlanes, of: Pick<WallsResult, "panels" | "spandrel" | "ends">): WallMaterials {
  const {bay, walls: {glassShare, strengthPsi}} = design;
  const {panels, spandrel, ends} = of;
  const panelsFt3 = panels ? panels.sizes.reduce((sum, size) => sum + 2 * size.count * panelFt2(size), 0) * (1 - glassShare) * feet(panels.concreteIn) : 0;
  const floors = planes.stories - (planes.roofed ? 1 : 0);
  const spandrelsLb = spandrel ? 2 * feet(spandrel.runIn) * (floors * spandrel.selfPlf + (planes.stories - floors) * spandrel.roofSelfPlf) : 0;
  const stripPlf = (closed: DeckEnds | undefined) => (closed?.kind === "concrete" ? closed.plf : 0);
  const endsLb = 2 * bay.baysAlong * feet(beamLengthIn(design)) * ((planes.stories - 1) * stripPlf(ends) + stripPlf(deckEnds(design, planes.top.deckDepthIn)));
  const parapetLb = feet(parapetRunIn(design, planes)) * planes.top.sides.reduce((sum, {addedIn}) => sum + parapetPlf(design, addedIn), 0);
  const ft3 = panelsFt3 + (spandrelsLb + endsLb + parapetLb) / WALL_CONCRETE_PCF;
  return {concreteYd3: ft3 / FT3_PER_YD3, carbonKg: ft3 === 0 ? 0 : ft3 * concreteCarbonKgPerFt3(catalog.carbonFactors, "precast", "normalweight", strengthPsi)};
}
