import type {Consider, Design} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {USUAL_TOPPING_IN} from "../deck/trials.js";
import type {ConcreteKind} from "../materials/concrete.js";
import type {Prices} from "./measures/prices.js";

/** A kind of deck member, by the name of the switch that lets it into a search. */
export type DeckKind = keyof Consider;

/** What each kind is called, in files and in words. */
export const DECK_KINDS: Readonly<Record<DeckKind, string>> = {
  fieldToppedTees: "field-topped tees", pretoppedTees: "pretopped tees", planks: "planks",
};

/** Which profiles of strand a deck may have: whatever the preferences like best, or one of the two alone. */
export type StrandChoice = "any" | "straight" | "depressed";
export const STRAND_CHOICES: readonly StrandChoice[] = ["any", "straight", "depressed"];

/** How the edge carries the deck, and how the girder does. */
export type EdgeKind = Design["edgeBeam"]["kind"];
export type GirderKind = Design["girder"]["kind"];

/**
 * The building's outline. Of length, width and floor area two fix the plan, and spans follow from the bays across; with
 * one of them the width follows from the span; with the area alone the length does too.
 */
export interface PlanOutline {
  readonly lengthFt?: number;
  readonly widthFt?: number;
  /** Area of one floor, ft2. */
  readonly floorFt2?: number;
}

/** What may vary from scheme to scheme: each list in the order in which schemes are numbered. */
export interface Vary {
  /** Deck spans, ft; used where the outline leaves the width free. */
  readonly spansFt: readonly number[];
  readonly baysAcross: readonly number[];
  readonly beamSpansFt: readonly number[];
  readonly kinds: readonly DeckKind[];
  /** Members of the catalog that are each tried by themselves, by designation, beside the kinds. */
  readonly members: readonly string[];
  readonly strands: readonly StrandChoice[];
  /** Toppings of the kinds that take one, in; 0 leaves planks bare. */
  readonly toppingsIn: readonly number[];
  readonly concretes: readonly ConcreteKind[];
  readonly strengthsPsi: readonly number[];
  readonly edges: readonly EdgeKind[];
  readonly girders: readonly GirderKind[];
}

/** The greatest story and building that the brief allows, ft. */
export interface StoryLimits {
  readonly floorToFloorFt?: number;
  readonly buildingFt?: number;
}

/** What a building must be, before anything of it is chosen. */
export interface Brief {
  readonly name: string;
  readonly setting: string;
  /** A design that holds all that neither a choice nor a rule changes: rooms, loads, criteria, windows, strengths. */
  readonly base: Design;
  readonly outline: PlanOutline;
  /** Ceiling that is wanted, or clear height under whatever hangs where there is no ceiling, ft; the base's own floor-to-floor height is kept where it is left out. */
  readonly ceilingFt: number | undefined;
  readonly limits: StoryLimits;
  readonly vary: Vary;
  /** The reader's own unit prices, of which a cost is made. */
  readonly prices: Prices;
}

/** Story heights are rounded up to this, in: what stairs of equal risers and drawings like. */
export const STORY_STEP_IN = 3;

/** Most schemes that one brief may ask for. */
export const MOST_SCHEMES = 5_000_000;

/** Spans that are tried where a brief names none, ft. */
const USUAL_SPANS_FT = {from: 20, to: 100, by: 4} as const;
const USUAL_BEAM_SPANS_FT = {from: 20, to: 60, by: 4} as const;

/** Evenly spaced numbers from one to another, both included where the steps meet the end. */
export function steps({from, to, by}: {readonly from: number; readonly to: number; readonly by: number}): number[] {
  return Array.from({length: Math.floor((to - from) / by + 1e-9) + 1}, (_, i) => Number((from + i * by).toFixed(6)));
}

/** What varies where a brief does not say: every kind of deck, edge and girder; the base's own concrete and topping, or the usual one where it has none and other kinds may take one. */
export function usualVary({deck}: Pick<Design, "deck">): Vary {
  return {
    spansFt: steps(USUAL_SPANS_FT), baysAcross: [1, 2], beamSpansFt: steps(USUAL_BEAM_SPANS_FT),
    kinds: Object.keys(DECK_KINDS) as DeckKind[], members: [], strands: ["any"], toppingsIn: [deck.toppingIn > 0 ? deck.toppingIn : USUAL_TOPPING_IN], concretes: [deck.concrete], strengthsPsi: [deck.strengthPsi],
    edges: Object.keys(fieldOf("edgeBeam.kind").choices) as EdgeKind[], girders: Object.keys(fieldOf("girder.kind").choices) as GirderKind[],
  };
}

/**
 * The brief that an open design answers: its rooms, criteria and windows, its length and the ceiling that it has, with
 * the width free. The roof counts as its two loads on the columns, for a roof of its own is designed once the floor is
 * chosen.
 *
 * @param ceilingFt - the ceiling that the design has now, ft
 * @param vary - what may vary; the usual if left out
 */
export function briefOf(design: Design, ceilingFt: number | undefined, vary: Partial<Vary> = {}): Brief {
  const {bay, consider} = design;
  const kinds = (Object.keys(DECK_KINDS) as DeckKind[]).filter((kind) => consider[kind]);
  return {
    name: design.name, setting: design.setting, base: design, ceilingFt, limits: {}, prices: {},
    outline: {lengthFt: bay.beamSpanFt * bay.baysAlong},
    vary: {...usualVary(design), baysAcross: [bay.baysAcross], beamSpansFt: [bay.beamSpanFt], edges: [design.edgeBeam.kind], girders: [design.girder.kind], ...(kinds.length > 0 ? {kinds} : {}), ...vary},
  };
}
