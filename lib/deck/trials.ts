import type {Catalog, DeckMemberRow} from "../catalog.js";
import type {Consider, Design} from "../design/design.js";
import {InputError} from "../errors.js";
import {Kept} from "../kept.js";
import {makeMember, type Member} from "../member/member.js";
import {usualLayout, type StrandLayout} from "../prestress/layout.js";
import {parsePattern} from "../prestress/pattern.js";
import {shapeOf} from "../sections/designation.js";
import type {Shape} from "../sections/shape.js";
import {deckRow, strandOf} from "./deckMember.js";
import {isPlank, usualPatterns, usualStrands, type DeckConditions} from "./table.js";

/** Topping that a member gets when it needs one and the design has none, in (common practice). */
export const USUAL_TOPPING_IN = 2;

/** The strand of a design, which its own kind of member is tried with beside the usual sizes. */
export interface OwnStrand {
  readonly plank: boolean;
  /** Diameter in sixteenths of an inch. */
  readonly sixteenths: number;
}

/** What of a floor decides which decks are tried for it. */
export interface TrialDemand {
  /** The design's own concrete, topping and climate. */
  readonly conditions: DeckConditions;
  readonly consider: Consider;
  readonly own: OwnStrand;
}

/** What a search varies besides member and strand. */
export interface Variety {
  /** Toppings beside the design's own, in. */
  readonly toppingsIn: readonly number[];
  /** Concretes, as conditions without their topping. */
  readonly concretes: readonly DeckConditions[];
}

/** The decks to try of one member with one topping: each of its patterns in each of the concretes. */
export interface DeckTrials {
  readonly row: DeckMemberRow;
  readonly shape: Shape;
  /** The smallest strand first; of one size the straight patterns first; of one profile the fewest strands first. */
  readonly patterns: readonly string[];
  readonly conditions: readonly DeckConditions[];
}

/** The switch that lets members of a kind into a search. */
const KIND: Readonly<Record<DeckMemberRow["use"], keyof Consider>> = {
  "field-topped": "fieldToppedTees", "pretopped": "pretoppedTees", "plank": "planks",
};

/** The strand of a design's deck, and the kind of member that it is for; throws {@link InputError} where there is no such member. */
export function ownStrand(catalog: Catalog, {member, pattern}: Pick<Design["deck"], "member" | "pattern">): OwnStrand {
  return {plank: isPlank(deckRow(catalog, member, "deck.member")), sixteenths: parsePattern(pattern, "deck.pattern").sixteenths};
}

/** Whether a design's strand is among those that its kind of member is tried with anyway. */
export function isUsual({plank, sixteenths}: OwnStrand): boolean {
  return usualStrands({use: plank ? "plank" : "pretopped"}).includes(sixteenths);
}

/** All decks that a search tries, member by member of the catalog and topping by topping, the thinnest first. */
export function deckTrials(catalog: Catalog, {conditions, consider, own}: TrialDemand, {toppingsIn, concretes}: Variety): DeckTrials[] {
  const topped = conditions.toppingIn > 0 ? ordered([...toppingsIn, conditions.toppingIn]) : toppingsIn.length > 0 ? toppingsIn : [USUAL_TOPPING_IN];
  return catalog.deckMembers.filter(({use}) => consider[KIND[use]]).flatMap((row) => {
    const shape = shapeOfRow(catalog, row);
    const patterns = strandsOf(row, own).flatMap((sixteenths) => usualPatterns(row, sixteenths));
    return toppingsOf(row, topped).map((toppingIn) => ({row, shape, patterns, conditions: concretes.map((concrete) => ({...concrete, toppingIn}))}));
  });
}

/** A deck to try as a member; undefined where its strands do not fit. */
export function trialMember(catalog: Catalog, {row, shape}: DeckTrials, pattern: string, conditions: DeckConditions): Member | undefined {
  const layout = layoutThatFits(catalog, row, shape, pattern);
  return layout && unlessRefused(() => makeMember({...conditions, shape, layout}));
}

/** Whether the strands of a deck to try fit its member. */
export function strandsFit(catalog: Catalog, {row, shape}: DeckTrials, pattern: string): boolean {
  return layoutThatFits(catalog, row, shape, pattern) !== undefined;
}

/** Shapes of the catalog's members that are still in use: one search after the other tries the same ones. */
const SHAPES = new WeakMap<DeckMemberRow, Shape>();

function shapeOfRow(catalog: Catalog, row: DeckMemberRow): Shape {
  let shape = SHAPES.get(row);
  if (!shape) SHAPES.set(row, (shape = shapeOf(catalog, row.designation)));
  return shape;
}

/** Layouts of a shape that is still in use, undefined for strands that do not fit: neither concrete nor topping changes them. */
const LAYOUTS = new WeakMap<Shape, Kept<StrandLayout | undefined>>();
/** Layouts of one shape that are kept: more than there are patterns of a member in all sizes of strand. */
const OF_SHAPE = 200;

function layoutThatFits(catalog: Catalog, {lowestStrandIn}: DeckMemberRow, shape: Shape, text: string): StrandLayout | undefined {
  return unlessRefused(() => {
    const pattern = parsePattern(text);
    const strand = strandOf(catalog, pattern);
    let layouts = LAYOUTS.get(shape);
    if (!layouts) LAYOUTS.set(shape, (layouts = new Kept(OF_SHAPE)));
    const {diameterIn, areaIn2, weightPlf} = strand;
    return layouts.get(`${text} ${diameterIn} ${areaIn2} ${weightPlf} ${lowestStrandIn}`, () => unlessRefused(() => usualLayout(shape, pattern, strand, lowestStrandIn)));
  });
}

/** What is made, or undefined where its input is refused: strands that do not fit make no deck; anything else is a fault. */
function unlessRefused<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** Numbers without repeats, least first. */
export function ordered(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

/** A pretopped tee takes no topping, a plank may go without. */
function toppingsOf({use}: DeckMemberRow, topped: readonly number[]): readonly number[] {
  if (use === "pretopped") return [0];
  return use === "plank" ? [0, ...topped] : topped;
}

function strandsOf(row: DeckMemberRow, {plank, sixteenths}: OwnStrand): readonly number[] {
  return ordered([...usualStrands(row), ...(plank === isPlank(row) ? [sixteenths] : [])]);
}
