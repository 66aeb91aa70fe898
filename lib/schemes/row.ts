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
import type {SchemeRow} from "./schemeRow.js";

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

function headOf(index: number, {spanFt, beamSpanFt, baysAcross, baysAlong, kind, edge, girder}: Pick<Choices, "spanFt" | "beamSpanFt" | "baysAcross" | "baysAlong" | "kind" | "edge" | "girder">) {
  return {index, span_ft: spanFt, beam_span_ft: beamSpanFt, bays_across: baysAcross, bays_along: baysAlong, kind: DECK_KINDS[kind], edge, girder: girder ?? ""};
}

/** A row's head, which was just made, with all that is measured of its design. */
function withResults(head: ReturnType<typeof headOf>, floor: Evaluation, columns: ColumnsResult | undefined, by: MeasuredBy, wanted: Wanted, failed: readonly Check[]): SchemeRow {
  const {design, member, deck: {safe}} = floor;
  const {deck} = design;
  const measures = measuresOf(floor, columns, by);
  const row: Record<string, number | string | undefined> = head;
  for (const {column, read} of wanted) row[column] = read(measures);
  return Object.assign(head, {deck: deckName(member.shape.designation, deck.toppingIn, deck.pattern), roof: roofCounted(design), deck_governs: safe.governs}, nearest(measures), {fails: failed.map(({id}) => id).join("; ")});
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
