import type {Catalog} from "../catalog.js";
import type {ColumnsResult} from "../columns/columnsResult.js";
import {deckName} from "../deck/deckName.js";
import {deckRow} from "../deck/deckMember.js";
import type {Evaluation} from "../evaluate.js";
import {DECK_KINDS, type DeckKind} from "./brief.js";
import type {Choices} from "./grid.js";
import {measuresOf, type MeasuredBy} from "./measures.js";
import {MEASURE_LIST, type MeasureEntry} from "./measures/measureList.js";
import type {SchemeMeasures} from "./measures/schemeMeasures.js";
import type {NoScheme, Scheme} from "./scheme.js";

/** What a row says of its scheme besides the measures. Of what is not there the text is empty. */
export interface RowHead {
  /** The scheme's number in its brief; -1 for a design that is none of its schemes. */
  readonly index: number;
  readonly span_ft: number;
  readonly beam_span_ft: number;
  readonly bays_across: number;
  readonly bays_along: number;
  /** Field-topped tees, pretopped tees or planks. */
  readonly kind: string;
  /** Member, topping and strands, `12DT32+2 188-S`; empty where no deck of the kind carries the span. */
  readonly deck: string;
  readonly edge: string;
  readonly girder: string;
  /** What allows the deck no more load. */
  readonly deck_governs: string;
  /** Of all parts the one that is nearest to its limit, or beyond it most; and that limit's check. */
  readonly governs_part: string;
  readonly governs: string;
  /** Names of the checks that fail, joined by "; "; why there is no scheme where none can be made. */
  readonly fails: string;
}

/** One scheme as plain numbers and words: a line of a file, or a mark of a chart. Measures stand under their columns' names. */
export type SchemeRow = RowHead & {readonly [column: string]: number | string | undefined};

/** Columns of a row in the order in which a file has them: what it is, its measures, what fails. */
export const ROW_COLUMNS: readonly string[] = [
  "index", "span_ft", "beam_span_ft", "bays_across", "bays_along", "kind", "deck", "edge", "girder",
  ...MEASURE_LIST.map(({column}) => column), "deck_governs", "governs_part", "governs", "fails",
];

/** Which measures a row holds; all if left out. A page that draws few asks for few. */
export type Wanted = readonly MeasureEntry[];

/** A scheme as a row; without measures where it cannot be made. */
export function rowOf(scheme: Scheme | NoScheme, by: MeasuredBy, wanted: Wanted = MEASURE_LIST): SchemeRow {
  const {index, choices} = scheme;
  if ("none" in scheme) return {...headOf(index, choices), deck: "", deck_governs: "", governs_part: "", governs: "", fails: scheme.none};
  const {floor, columns, fails} = scheme;
  return {...headOf(index, choices), ...resultsOf(floor, columns, by, wanted), fails: fails.map(({id}) => id).join("; ")};
}

/** A design as it is, as a row beside those of schemes. */
export function rowOfDesign(floor: Evaluation, columns: ColumnsResult | undefined, catalog: Catalog, by: MeasuredBy, wanted: Wanted = MEASURE_LIST): SchemeRow {
  const {design: {bay, deck, edgeBeam, girder}, checks} = floor;
  const failed = [...checks, ...columns?.checks ?? []].filter(({verdict}) => verdict === "fails");
  return {
    ...headOf(-1, {...bay, kind: kindOf(catalog, deck.member), edge: edgeBeam.kind, girder: bay.baysAcross > 1 ? girder.kind : undefined}),
    ...resultsOf(floor, columns, by, wanted), fails: failed.map(({id}) => id).join("; "),
  };
}

/** The kind of a deck member, by its designation. */
export function kindOf(catalog: Catalog, designation: string): DeckKind {
  const {use} = deckRow(catalog, designation);
  return use === "plank" ? "planks" : use === "pretopped" ? "pretoppedTees" : "fieldToppedTees";
}

/** A measure of a row; undefined where it is not known. */
export function measureOf(row: SchemeRow, {column}: Pick<MeasureEntry, "column">): number | undefined {
  const value = row[column];
  return typeof value === "number" ? value : undefined;
}

/** Whether a scheme could be made at all. */
export function isMade({deck}: Pick<SchemeRow, "deck">): boolean {
  return deck !== "";
}

/** Whether a scheme was made and all its checks hold. */
export function holds({deck, fails}: Pick<SchemeRow, "deck" | "fails">): boolean {
  return deck !== "" && fails === "";
}

function headOf(index: number, {spanFt, beamSpanFt, baysAcross, baysAlong, kind, edge, girder}: Pick<Choices, "spanFt" | "beamSpanFt" | "baysAcross" | "baysAlong" | "kind" | "edge" | "girder">) {
  return {index, span_ft: spanFt, beam_span_ft: beamSpanFt, bays_across: baysAcross, bays_along: baysAlong, kind: DECK_KINDS[kind], edge, girder: girder ?? ""};
}

function resultsOf(floor: Evaluation, columns: ColumnsResult | undefined, by: MeasuredBy, wanted: Wanted) {
  const {design: {deck}, member, deck: {safe}} = floor;
  const measures = measuresOf(floor, columns, by);
  const found: Record<string, number | undefined> = {};
  for (const {column, read} of wanted) found[column] = read(measures);
  return {...found, deck: deckName(member.shape.designation, deck.toppingIn, deck.pattern), deck_governs: safe.governs, ...nearest(measures)};
}

/** Parts by the measure of their greatest use. */
const USES = {deck: "deckUse", "edge beam": "edgeBeamUse", girder: "girderUse", "columns and footings": "columnsUse", story: "storyUse"} as const;

function nearest(measures: SchemeMeasures): {governs_part: string; governs: string} {
  let found = {use: -Infinity, governs_part: "", governs: ""};
  for (const [part, key] of Object.entries(USES)) {
    const use = measures[key];
    if (use !== undefined && use > found.use) found = {use, governs_part: part, governs: measures[`${key}Check`] ?? ""};
  }
  return {governs_part: found.governs_part, governs: found.governs};
}
