import type {Catalog} from "../catalog.js";
import {deckName} from "../deck/deckName.js";
import {spanScan} from "../deck/reach.js";
import type {Design} from "../design/design.js";
import {InputError} from "../errors.js";
import {columnsOf, evaluate} from "../evaluate.js";
import {measuresOf, pricesMissing, type MeasuredBy} from "../schemes/measures.js";
import type {PriceName} from "../schemes/measures/prices.js";
import type {SchemeMeasures} from "../schemes/measures/schemeMeasures.js";

/** All that a comparison tells of one design, as plain data. */
export interface ComparedDesign {
  /** Member, topping and strands. */
  readonly deck: string;
  readonly measures: SchemeMeasures;
  /** Checks that fail, and those that no method covers, by their labels. */
  readonly fails: readonly string[];
  readonly uncovered: readonly string[];
  /** Prices that are blank and that its cost needs. */
  readonly lacks: readonly PriceName[];
  readonly curves: ComparedCurves;
}

/** What is overlaid: the deck's safe load over the span, and daylight over the depth of the floor. */
export interface ComparedCurves {
  readonly spanFt: number;
  readonly demandPsf: number;
  readonly safeLoad: readonly {readonly spanFt: number; readonly psf: number}[];
  readonly daylight: readonly {readonly distanceFt: number; readonly percent: number}[];
}

/** A design that could not be computed, and why. */
export interface NotComputed {
  readonly problem: string;
}

/** What {@link compareDesigns} takes. */
export interface CompareInput {
  readonly designs: readonly Design[];
  readonly by: MeasuredBy;
}

/**
 * Measures, failing checks and curves of one design, columns included.
 *
 * @throws InputError if parts of the design do not fit each other
 */
export function compareDesign(design: Design, catalog: Catalog, by: MeasuredBy): ComparedDesign {
  const evaluation = evaluate(design, catalog);
  const columns = columnsOf(evaluation, catalog);
  const {member, deck, daylight} = evaluation;
  const checks = [...evaluation.checks, ...columns.checks];
  const labels = (verdict: string) => checks.filter((check) => check.verdict === verdict).map(({label}) => label);
  return {
    deck: deckName(member.shape.designation, design.deck.toppingIn, design.deck.pattern),
    measures: measuresOf(evaluation, columns, by),
    fails: labels("fails"), uncovered: labels("out of range"), lacks: pricesMissing(evaluation, columns, by.prices),
    curves: {
      spanFt: design.bay.spanFt, demandPsf: deck.demandPsf,
      safeLoad: spanScan(member, deck.criteria).map(({spanFt, safeLoadPsf}) => ({spanFt, psf: safeLoadPsf})),
      daylight: daylight?.result.points.map(({distanceFt, factorPercent}) => ({distanceFt, percent: factorPercent})) ?? [],
    },
  };
}

/** Work beside the page: one design after the other, each handed over as soon as it is known; a design that cannot be computed says why. */
export function* compareDesigns(catalog: Catalog, {designs, by}: CompareInput): Generator<{readonly index: number; readonly found: ComparedDesign | NotComputed}, void> {
  for (const [index, design] of designs.entries()) yield {index, found: computed(design, catalog, by)};
}

function computed(design: Design, catalog: Catalog, by: MeasuredBy): ComparedDesign | NotComputed {
  try {
    return compareDesign(design, catalog, by);
  } catch (problem) {
    if (problem instanceof InputError) return {problem: problem.message};
    throw problem;
  }
}
