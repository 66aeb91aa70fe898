import type {Catalog} from "../catalog.js";
import {exceeds} from "../checks.js";
import {designCriteria} from "../deck/criteria.js";
import {deckMember, deckRow} from "../deck/deckMember.js";
import {failedWorkingGates} from "../deck/gates.js";
import type {LimitName} from "../deck/limits.js";
import {SPAN_RANGE_FT, safeLoad} from "../deck/safeLoad.js";
import {searchDeck, type Candidate} from "../deck/search.js";
import type {Consider, Design} from "../design/design.js";
import {withValue} from "../design/edit.js";
import {demandOf} from "../evaluate.js";
import {floorLoads} from "../loads/floorLoads.js";

/** The nearest that one kind of deck comes to doing this floor's work. */
export interface KindTried {
  readonly name: string;
  /** Whether the design's own search looks at this kind. */
  readonly considered: boolean;
  /** The best by the design's weights where any works, or else the strongest. */
  readonly nearest: Candidate;
}

/** The floor on another span: what the chosen deck does there, and what the search would take. */
export interface SpanTried {
  readonly spanFt: number;
  /** What is required of the chosen deck there, and what it carries safely, psf; live load is reduced by that span's area. */
  readonly askedPsf: number;
  readonly safePsf: number;
  readonly governs: LimitName;
  /** What the chosen deck fails of transfer, vibration and fire. */
  readonly gates: readonly LimitName[];
  readonly carries: boolean;
  /** The search's first; undefined where none works. */
  readonly first: Candidate | undefined;
}

/** What a design was compared with: other decks, the kinds that fail among them, and other spans. */
export interface Compared {
  readonly candidates: readonly Candidate[];
  readonly kinds: readonly KindTried[];
  readonly spans: readonly SpanTried[];
}

interface Kind {
  readonly name: string;
  readonly choice: keyof Consider;
  readonly holds: (use: string, family: string) => boolean;
}

const KINDS: readonly Kind[] = [
  {name: "Tees topped in the field", choice: "fieldToppedTees", holds: (use) => use === "field-topped"},
  {name: "Pretopped tees", choice: "pretoppedTees", holds: (use) => use === "pretopped"},
  {name: "Hollow-core planks", choice: "planks", holds: (use, family) => use === "plank" && family === "hollow core"},
  {name: "Solid slabs", choice: "planks", holds: (use, family) => use === "plank" && family !== "hollow core"},
];

/** Spans that are compared lie this far apart, as a share of the design's; two of them on either side, in whole feet. */
const SPAN_STEP = 0.1;
const LEAST_STEP_FT = 2;
const STEPS = [-2, -1, 0, 1, 2] as const;

/**
 * A design beside the decks, the kinds of deck and the spans that it might have had. It takes five searches, so the last
 * one is kept for as long as nothing but words of the design changes.
 */
export function compared(design: Design, catalog: Catalog): Compared {
  if (last && last.catalog === catalog && alike(last.design, design)) return last.result;
  const found = searchAt(design, catalog);
  const result = {candidates: found, kinds: kindsTried(design, catalog, found), spans: spansTried(design, catalog, found)};
  last = {design, catalog, result};
  return result;
}

let last: {readonly design: Design; readonly catalog: Catalog; readonly result: Compared} | undefined;

/** What of a design no number depends on. */
const WORDS: ReadonlySet<string> = new Set<keyof Design>(["name", "setting", "brief", "author", "firm", "reasons", "writtenFor", "comments"]);

function alike(one: Design, other: Design): boolean {
  return (Object.keys(other) as (keyof Design)[]).every((key) => WORDS.has(key) || one[key] === other[key]);
}

function searchAt(design: Design, catalog: Catalog): Candidate[] {
  return searchDeck(catalog, demandOf(design, catalog, floorLoads(design, catalog, deckMember(design, catalog).widthFt)));
}

/** Every kind of deck in the catalog with the nearest that it comes, those too that the design's search leaves out. */
function kindsTried(design: Design, catalog: Catalog, found: readonly Candidate[]): KindTried[] {
  const {consider} = design;
  const others: Consider = {fieldToppedTees: !consider.fieldToppedTees, pretoppedTees: !consider.pretoppedTees, planks: !consider.planks};
  const left = Object.values(others).includes(true) ? searchAt({...design, consider: others}, catalog) : [];
  return KINDS.flatMap(({name, choice, holds}) => {
    const nearest = (consider[choice] ? found : left).find(({designation, member}) => holds(deckRow(catalog, designation, "deck.member").use, member.shape.family));
    return nearest ? [{name, considered: consider[choice], nearest}] : [];
  });
}

function spansTried(design: Design, catalog: Catalog, found: readonly Candidate[]): SpanTried[] {
  const {spanFt} = design.bay;
  const stepFt = Math.max(LEAST_STEP_FT, Math.round(SPAN_STEP * spanFt));
  return STEPS.map((steps) => (steps === 0 ? spanFt : Math.round(spanFt) + steps * stepFt))
    .filter((ft) => ft >= SPAN_RANGE_FT.min && ft <= SPAN_RANGE_FT.max)
    .map((ft) => (ft === spanFt ? spanTried(design, catalog, found) : spanTried(withValue(design, "bay.spanFt", ft), catalog)));
}

function spanTried(design: Design, catalog: Catalog, found: readonly Candidate[] = searchAt(design, catalog)): SpanTried {
  const {spanFt} = design.bay;
  const member = deckMember(design, catalog);
  const loads = floorLoads(design, catalog, member.widthFt);
  const criteria = designCriteria(design, catalog, loads.superimposedDeadPsf);
  const askedPsf = demandOf(design, catalog, loads).demandPsf(member.widthFt);
  const {safeLoadPsf, governs} = safeLoad(member, spanFt, criteria);
  const gates = failedWorkingGates(member, spanFt, criteria);
  return {spanFt, askedPsf, safePsf: safeLoadPsf, governs, gates, carries: !exceeds(askedPsf, safeLoadPsf) && gates.length === 0, first: found.find(({works}) => works)};
}
