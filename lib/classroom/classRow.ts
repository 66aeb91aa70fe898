import type {Catalog} from "../catalog.js";
import type {NotComputed} from "../compare/column.js";
import {deckName} from "../deck/deckName.js";
import type {Design, ReasonName} from "../design/design.js";
import {REASON_NAMES, countReasons, reasonState, type ReasonCount, type ReasonState} from "../design/reasons.js";
import {hasRoofDeck} from "../design/used.js";
import {InputError} from "../errors.js";
import {columnsOf, evaluate} from "../evaluate.js";
import {measuresOf, type MeasuredBy} from "../schemes/measures.js";
import type {SchemeMeasures} from "../schemes/measures/schemeMeasures.js";

/** What one design of a class chose, what it comes to and what fails, as plain data. */
export interface ClassRow {
  /** Member, topping and strands. */
  readonly deck: string;
  readonly spanFt: number;
  readonly beamSpanFt: number;
  readonly edge: string;
  readonly measures: SchemeMeasures;
  /** Checks that fail, and those that no method covers, by their labels; columns and footings among them. */
  readonly fails: readonly string[];
  readonly uncovered: readonly string[];
  /** How each decision's reason stands, and how many do. */
  readonly reasons: readonly {readonly name: ReasonName; readonly standing: ReasonState["standing"]; readonly by: ReasonState["by"]}[];
  readonly count: ReasonCount;
}

/** What {@link classRows} takes. */
export interface ClassRowsInput {
  readonly designs: readonly Design[];
  readonly by: MeasuredBy;
}

const EDGES: Readonly<Record<Design["edgeBeam"]["kind"], string>> = {ledge: "L-beam", pockets: "pocketed spandrel", below: "beam below the deck"};

/**
 * The row of one design.
 *
 * @throws InputError if parts of the design do not fit each other
 */
export function classRow(design: Design, catalog: Catalog, by: MeasuredBy): ClassRow {
  const evaluation = evaluate(design, catalog);
  const columns = columnsOf(evaluation, catalog);
  const checks = [...evaluation.checks, ...columns.checks];
  const labels = (verdict: string) => [...new Set(checks.filter((check) => check.verdict === verdict).map(({label}) => label))];
  const states = decisionsOf(design).map((name) => ({name, state: reasonState(design, name)}));
  return {
    deck: deckName(evaluation.member.shape.designation, design.deck.toppingIn, design.deck.pattern),
    spanFt: design.bay.spanFt, beamSpanFt: design.bay.beamSpanFt, edge: EDGES[design.edgeBeam.kind],
    measures: measuresOf(evaluation, columns, by), fails: labels("fails"), uncovered: labels("out of range"),
    reasons: states.map(({name, state: {standing, by: hand}}) => ({name, standing, by: hand})), count: countReasons(states.map(({state}) => state)),
  };
}

/** The decisions that a design has to give reasons for: one on the roof only where that is a level of its own, as on the record. */
export function decisionsOf(design: Design): ReasonName[] {
  return REASON_NAMES.filter((name) => name !== "roof" || hasRoofDeck(design));
}

/** Work beside the page: one design after the other, each handed over as soon as it is known; a design that cannot be computed says why. */
export function* classRows(catalog: Catalog, {designs, by}: ClassRowsInput): Generator<{readonly index: number; readonly found: ClassRow | NotComputed}, void> {
  for (const [index, design] of designs.entries()) yield {index, found: computed(design, catalog, by)};
}

function computed(design: Design, catalog: Catalog, by: MeasuredBy): ClassRow | NotComputed {
  try {
    return classRow(design, catalog, by);
  } catch (problem) {
    if (problem instanceof InputError) return {problem: problem.message};
    throw problem;
  }
}
