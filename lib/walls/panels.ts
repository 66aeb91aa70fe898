import {WALL_CONCRETE_PCF} from "../beams/deckEnds.js";
import type {Design} from "../design/design.js";
import {hasPanels} from "../design/used.js";
import {IN2_PER_FT2, LB_PER_KIP, feet, inches} from "../units.js";
import {endWallThicknessIn, shortRunIn, type WallPlanes} from "./planes.js";

/** Weight of rigid insulation, pcf (common practice: 1.5 to 2 for extruded polystyrene). */
export const INSULATION_PCF = 2;

/** One size of panel on a short side. */
export interface PanelSize {
  /** Where it stands: "each story", "the topmost tier". */
  readonly where: string;
  readonly widthIn: number;
  readonly heightIn: number;
  /** On one short side. */
  readonly count: number;
  /** Weight with its windows cut out of it, kip. */
  readonly weightKip: number;
}

/** The panels of a short side. */
export interface PanelRun {
  readonly support: Design["walls"]["panelSupport"];
  readonly thicknessIn: number;
  /** Thickness that carries the panel by itself: all of it, or the inner wythe. */
  readonly structuralIn: number;
  /** Total thickness of concrete in the panel, in. */
  readonly concreteIn: number;
  readonly psf: number;
  readonly sizes: readonly PanelSize[];
  /** On one short side. */
  readonly count: number;
  /** The heaviest size. */
  readonly heaviest: PanelSize;
  /** Distance between the floors, or the columns, that hold the panel against wind, in. */
  readonly heldIn: number;
}

/** Weight of panel per square foot without windows, psf; 0 where no panels close the short sides. */
export function panelPsf(design: Design): number {
  const {walls} = design;
  if (!hasPanels(design)) return 0;
  return (WALL_CONCRETE_PCF * concreteIn(walls)) / 12 + (walls.shortSide === "insulated panel" ? (INSULATION_PCF * walls.insulationIn) / 12 : 0);
}

/**
 * The panels of one short side; undefined where none close it. Upright ones are of one width over the whole side, in
 * tiers of so many stories; lying ones reach from column to column in rows of one height, as many to a story as their
 * greatest height requires. A parapet is part of the topmost.
 */
export function panelRun(design: Design, planes: WallPlanes): PanelRun | undefined {
  if (!hasPanels(design)) return undefined;
  const {walls} = design;
  const psf = panelPsf(design);
  const upright = walls.panelSupport === "footing";
  const sizes = (upright ? uprightSizes : lyingSizes)(design, planes).filter(({count}) => count > 0)
    .map((size) => ({...size, weightKip: (psf * (1 - walls.glassShare) * size.widthIn * size.heightIn) / IN2_PER_FT2 / LB_PER_KIP}));
  return {
    support: walls.panelSupport, psf, thicknessIn: endWallThicknessIn(design), concreteIn: concreteIn(walls), sizes,
    structuralIn: walls.shortSide === "solid panel" ? walls.panelThicknessIn : walls.innerWytheIn,
    count: sizes.reduce((sum, {count}) => sum + count, 0),
    // Stryker disable next-line EqualityOperator: of two as heavy one is told
    heaviest: sizes.reduce((most, size) => (size.weightKip > most.weightKip ? size : most)),
    heldIn: upright ? heldUprightIn(design, planes) : inches(design.bay.spanFt),
  };
}

/** Greatest distance between two levels that hold an upright panel, in: between the structural decks of two floors, or of the topmost and the roof. */
function heldUprightIn({story}: Design, {stories, storyIn, top}: WallPlanes): number {
  return Math.max(storyIn, ...top.structureIn.map((levelIn) => levelIn - ((stories - 1) * storyIn - story.finishIn)));
}

function concreteIn(walls: Design["walls"]): number {
  return walls.shortSide === "solid panel" ? walls.panelThicknessIn : walls.outerWytheIn + walls.innerWytheIn;
}

type Size = Omit<PanelSize, "weightKip">;

function uprightSizes(design: Design, planes: WallPlanes): Size[] {
  const {jointIn, panelWidthFt, panelStories} = design.walls;
  const across = pieces(shortRunIn(design, planes), inches(panelWidthFt), jointIn);
  const tiers = Math.ceil(planes.stories / panelStories);
  const topStories = planes.stories - (tiers - 1) * panelStories;
  const size = (where: string, heightIn: number, count: number): Size => ({where, widthIn: across.eachIn, heightIn, count: count * across.count});
  return [
    size(panelStories === 1 ? "each story" : `${panelStories} stories`, panelStories * planes.storyIn - jointIn, tiers - 1),
    size(tiers > 1 ? "the topmost tier" : "the whole height", (topStories - 1) * planes.storyIn + planes.topStoryIn + planes.parapetIn, 1),
  ];
}

function lyingSizes({bay, walls}: Design, planes: WallPlanes): Size[] {
  const {jointIn, panelWidthFt} = walls;
  const bayIn = inches(bay.spanFt);
  // Of one bay both ends reach a corner; else the two outer bays' panels are longer by one.
  const lengths = bay.baysAcross === 1 ? [{name: "corner to corner", lengthIn: bayIn + 2 * planes.longOutIn, count: 1}]
    : [{name: "bays at the corners", lengthIn: bayIn + planes.longOutIn - jointIn / 2, count: 2}, {name: "bays between", lengthIn: bayIn - jointIn, count: bay.baysAcross - 2}];
  const story = pieces(planes.storyIn, inches(panelWidthFt), jointIn);
  const top = pieces(planes.topStoryIn + planes.parapetIn, inches(panelWidthFt), jointIn);
  return lengths.flatMap(({name, lengthIn, count}) => [
    // Each story's last row ends a joint below the next; the topmost has the sky above it.
    {where: name, widthIn: lengthIn, heightIn: (planes.storyIn - story.count * jointIn) / story.count, count: count * story.count * (planes.stories - 1)},
    {where: `${name}, top story`, widthIn: lengthIn, heightIn: top.eachIn, count: count * top.count},
  ]);
}

/** Fewest equal pieces, none longer than a maximum, that cover a length with joints between them. */
export function pieces(lengthIn: number, mostIn: number, jointIn: number): {readonly count: number; readonly eachIn: number} {
  const count = Math.max(1, Math.ceil((lengthIn + jointIn) / (mostIn + jointIn) - 1e-9));
  return {count, eachIn: (lengthIn - (count - 1) * jointIn) / count};
}

/** Area of a panel, ft2. */
export function panelFt2({widthIn, heightIn}: Pick<PanelSize, "widthIn" | "heightIn">): number {
  return feet(widthIn) * feet(heightIn);
}
