import {deckName as nameOf} from "../../lib/deck/deckName.js";
import type {DeckMemberRow} from "../../lib/catalog.js";
import type {FrontierDeck} from "../../lib/deck/frontier.js";
import type {MeasureName} from "../../lib/deck/measures.js";
import {decimals} from "../../lib/units.js";

/** A measure in words. */
export interface MeasureLook {
  readonly name: string;
  readonly axis: string;
  readonly unit: string;
  readonly places: number;
  /** The deck that has the least of it: "the shallowest". */
  readonly best: string;
  /** What the unit is of, in a sentence: "0.52 lb of strand". */
  readonly of: string;
}

export const MEASURE_LOOKS: Readonly<Record<MeasureName, MeasureLook>> = {
  depthIn: {name: "depth", axis: "depth, in", unit: "in", places: 1, best: "shallowest", of: "in of depth"},
  weightPsf: {name: "weight", axis: "weight, psf", unit: "psf", places: 0, best: "lightest", of: "psf of weight"},
  strandPsf: {name: "strand", axis: "strand, lb/ft²", unit: "lb/ft²", places: 2, best: "leanest in strand", of: "lb of strand"},
  concreteFt: {name: "concrete", axis: "concrete, ft³/ft²", unit: "ft³/ft²", places: 2, best: "leanest in concrete", of: "ft³ of concrete"},
  carbonKgPerFt2: {name: "carbon", axis: "carbon, kgCO₂e/ft²", unit: "kg/ft²", places: 1, best: "lowest in carbon", of: "kg of carbon"},
};

/** A measure's number as it is shown: no more decimals than tell decks apart. */
export function measureText(name: MeasureName, value: number): string {
  const {places} = MEASURE_LOOKS[name];
  return decimals(value, name === "depthIn" && Number.isInteger(value) ? 0 : places);
}

/** Kinds of deck by the shape of their marks. */
export const KIND_MARKS: Readonly<Record<DeckMemberRow["use"], {readonly shape: "circle" | "square" | "triangle"; readonly word: string}>> = {
  "field-topped": {shape: "circle", word: "field-topped tee"},
  "pretopped": {shape: "square", word: "pretopped tee"},
  "plank": {shape: "triangle", word: "plank or slab"},
};

/** Member, topping and pattern, as decks are named on other pages. */
export function deckName({designation, toppingIn, pattern}: Pick<FrontierDeck, "designation" | "toppingIn" | "pattern">): string {
  return nameOf(designation, toppingIn, pattern);
}

/** The concrete of a deck in words. */
export function concreteWords({strengthPsi, concreteKind}: Pick<FrontierDeck, "strengthPsi" | "concreteKind">): string {
  return `${decimals(strengthPsi)} psi ${concreteKind}`;
}
