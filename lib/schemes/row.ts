import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {ColumnsResult} from "../columns/columnsResult.js";
import {deckName} from "../deck/deckName.js";
import type {Evaluation} from "../evaluate.js";
import {DECK_KINDS} from "./brief.js";
import {kindOf, type Choices} from "./grid.js";
import {measuresOf, type MeasuredBy} from "./measures.js";
import {MEASURE_LIST, type MeasureEntry} from "./measures/measureList.js";
import type {SchemeMeasures} from "./measures/schemeMeasures.js";
import {roofCounted} from "./roofRule.js";
import type {NoScheme, Scheme} from "./scheme.js";
import type {RowHead, SchemeRow} from "./schemeRow.js";

/** Columns of a row in the order in which a file has them: what it is, its measures, what fails. */
export const ROW_COLUMNS: readonly string[] = [
  "index", "span_ft", "beam_span_ft", "bays_across", "bays_along", "kind", "deck", "edge", "girder", "roof",
  ...MEASURE_LIST.map(({column}) => column), "deck_governs", "governs_part", "governs", "fails",
];

/** Which measures a row holds; all if left out. A page that draws few asks for few. */
export type Wanted = readonly MeasureEntry[];

/** A scheme as a row; without measures where it cannot be made. */
export function rowOf(scheme: Scheme | NoScheme, by: MeasuredBy, wanted: Wanted = MEASURE_LIST): SchemeRow {
  const {index, choices} = scheme;
  const head = headOf(index, choices);
  if ("none" in scheme) return Object.assign(head, {deck: "", roof: "", deck_governs: "", governs_part: "", governs: "", fails: scheme.none});
  const {floor, columns, fails} = scheme;
  return withResults(head, floor, columns, by, wanted, fails);
}

/** A design as it is, as a row beside those of schemes. */
export function rowOfDesign(floor: Evaluation, columns: ColumnsResult | undefined, catalog: Catalog, by: MeasuredBy, wanted: Wanted = MEASURE_LIST): SchemeRow {
  const {design: {bay, deck, edgeBeam, girder}, checks} = floor;
  const failed = [...checks, ...columns?.checks ?? []].filter(({verdict}) => verdict === "fails");
  const head = headOf(-1, {...bay, kind: kindOf(catalog, deck.member), edge: edgeBeam.kind, girder: bay.baysAcross > 1 ? girder.kind : undefined});
  return withResults(head, floor, columns, by, wanted, failed);
}

type Head = ReturnType<typeof headOf>;
/** A row that is being filled. */
type Filled = {-readonly [Column in keyof RowHead]: RowHead[Column]} & Record<string, number | string | undefined>;

function headOf(index: number, {spanFt, beamSpanFt, baysAcross, baysAlong, kind, edge, girder}: Pick<Choices, "spanFt" | "beamSpanFt" | "baysAcross" | "baysAlong" | "kind" | "edge" | "girder">) {
  return {index, span_ft: spanFt, beam_span_ft: beamSpanFt, bays_across: baysAcross, bays_along: baysAlong, kind: DECK_KINDS[kind], edge, girder: girder ?? ""};
}

/** A row's head with all that is measured of its design. */
function withResults(head: Head, floor: Evaluation, columns: ColumnsResult | undefined, by: MeasuredBy, wanted: Wanted, failed: readonly Check[]): SchemeRow {
  const {design, member, deck: {safe}} = floor;
  const {deck} = design;
  const measures = measuresOf(floor, columns, by);
  const row: Filled = {...emptyRow(head, wanted), ...head};
  for (const {column, key} of wanted) row[column] = measures[key];
  row.deck = deckName(member.shape.designation, deck.toppingIn, deck.pattern);
  row.roof = roofCounted(design);
  row.deck_governs = safe.governs;
  [row.governs_part, row.governs] = nearest(measures);
  row.fails = failed.map(({id}) => id).join("; ");
  return row;
}

/** Rows without anything in them, by what is wanted of them. */
const EMPTY = new WeakMap<Wanted, Filled>();

/** A row with all of its columns in their order, empty: a copy of it is made at once, where one that grows column by column is made anew again and again. */
function emptyRow(head: Head, wanted: Wanted): Filled {
  let row = EMPTY.get(wanted);
  if (!row) {
    const columns = [...Object.keys(head), ...wanted.map(({column}) => column), "deck", "roof", "deck_governs", "governs_part", "governs", "fails"];
    EMPTY.set(wanted, row = Object.fromEntries(columns.map((column) => [column, undefined])) as unknown as Filled);
  }
  return row;
}

/** Parts with the measures of their greatest use and of the check behind it. */
const USES = [
  ["deck", "deckUse", "deckUseCheck"], ["edge beam", "edgeBeamUse", "edgeBeamUseCheck"], ["girder", "girderUse", "girderUseCheck"],
  ["columns and footings", "columnsUse", "columnsUseCheck"], ["story", "storyUse", "storyUseCheck"],
] as const;

/** The part that is nearest to its limit, and that limit's check. */
function nearest(measures: SchemeMeasures): readonly [part: string, check: string] {
  let [most, found] = [-Infinity, ["", ""] as readonly [string, string]];
  for (const [part, useKey, checkKey] of USES) {
    const use = measures[useKey];
    if (use !== undefined && use > most) [most, found] = [use, [part, measures[checkKey] ?? ""]];
  }
  return found;
}
