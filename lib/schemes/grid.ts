import type {ConcreteKind} from "../materials/concrete.js";
import {fieldOf} from "../design/fields.js";
import type {Catalog} from "../catalog.js";
import {deckRow} from "../deck/deckMember.js";
import type {Brief, DeckKind, EdgeKind, GirderKind, StrandChoice} from "./brief.js";

/** The free numbers of one scheme. */
export interface Choices {
  readonly spanFt: number;
  readonly baysAcross: number;
  readonly beamSpanFt: number;
  readonly baysAlong: number;
  readonly kind: DeckKind;
  /** Designation of the one member that is tried; undefined where the best of its kind is. */
  readonly member: string | undefined;
  readonly strand: StrandChoice;
  readonly toppingIn: number;
  readonly concrete: ConcreteKind;
  readonly strengthPsi: number;
  readonly edge: EdgeKind;
  /** Undefined where one bay across needs no girder. */
  readonly girder: GirderKind | undefined;
}

type Deck = Pick<Choices, "kind" | "member" | "strand" | "toppingIn" | "concrete" | "strengthPsi">;

/** A deck with the edges that are tried with it, and the number of its first scheme in a block of schemes that share all slower choices. */
interface Edged {
  readonly deck: Deck;
  readonly edges: readonly EdgeKind[];
  readonly start: number;
}

interface Plan {
  readonly spanFt: number;
  readonly baysAcross: number;
}

interface Frame {
  readonly plan: Plan;
  readonly girder: GirderKind | undefined;
}

/** The choices of a brief by number, from 0: a plain list that is never written out, so that it may be as long as it likes. */
export interface Grid {
  readonly count: number;
  /** @throws RangeError for a number that the brief does not have */
  at(index: number): Choices;
}

/**
 * Numbers a brief's choices: spans slowest, then decks, beam spans, frames, edges fastest, so that schemes next to each
 * other share most of their parts. A topping is no choice for a pretopped tee, nor a girder for one bay across: such
 * choices are counted once. Planks have no stems for pockets, which are tried with them only where nothing else is.
 */
export function gridOf({outline, vary}: Pick<Brief, "outline" | "vary">, catalog: Catalog): Grid {
  const tried = [...vary.kinds.map((kind) => ({kind, member: undefined})), ...vary.members.map((member) => ({kind: kindOf(catalog, member), member}))];
  const decks: Deck[] = tried.flatMap(({kind, member}) => toppingsOf(kind, vary.toppingsIn).flatMap((toppingIn) => strandsOf(kind, vary.strands).flatMap((strand) =>
    vary.concretes.flatMap((concrete) => vary.strengthsPsi.map((strengthPsi) => ({kind, member, strand, toppingIn, concrete, strengthPsi}))))));
  const spans = plansOf(outline, vary).map((plans) => plans.flatMap((plan) => (plan.baysAcross > 1 ? vary.girders : [undefined]).map((girder): Frame => ({plan, girder}))))
    .filter((frames) => frames.length > 0);
  const {beamSpansFt} = vary;
  const edged: Edged[] = [];
  let pairs = 0;
  for (const deck of decks) {
    const edges = edgesOf(deck.kind, vary.edges);
    edged.push({deck, edges, start: pairs});
    pairs += edges.length;
  }
  const starts: number[] = [];
  let count = 0;
  for (const ofSpan of spans) {
    starts.push(count);
    count += ofSpan.length * pairs * beamSpansFt.length;
  }
  return {
    count,
    at(index) {
      if (!Number.isInteger(index) || index < 0 || index >= count) throw new RangeError(`no scheme ${index} of ${count}`);
      const span = starts.findLastIndex((start) => start <= index);
      const ofSpan = spans[span] as Frame[];
      const each = ofSpan.length * beamSpansFt.length;
      let rest = index - (starts[span] as number);
      const {deck, edges, start} = edged.findLast((one) => one.start * each <= rest) as Edged;
      rest -= start * each;
      const take = <T>(list: readonly T[]): T => {
        const found = list[rest % list.length] as T;
        rest = Math.floor(rest / list.length);
        return found;
      };
      const edge = take(edges);
      const {plan: {spanFt, baysAcross}, girder} = take(ofSpan);
      const beamSpanFt = take(beamSpansFt);
      return {spanFt, baysAcross, beamSpanFt, baysAlong: baysAlong(outline, spanFt * baysAcross, beamSpanFt), ...deck, edge, girder};
    },
  };
}

/** Deck spans and bays across, those of one span together: what the outline's width allows, or every span with every number of bays. */
function plansOf(outline: Brief["outline"], {spansFt, baysAcross}: Brief["vary"]): Plan[][] {
  const widthFt = widthOf(outline);
  if (widthFt === undefined) return spansFt.map((spanFt) => baysAcross.map((bays) => ({spanFt, baysAcross: bays})));
  const {min, max} = fieldOf("bay.spanFt");
  return baysAcross.map((bays) => [{spanFt: widthFt / bays, baysAcross: bays}]).filter((plans) => plans.every(({spanFt}) => spanFt >= min && spanFt <= max));
}

/** The width that an outline fixes, ft; undefined where it follows from the span. */
export function widthOf({lengthFt, widthFt, floorFt2}: Brief["outline"]): number | undefined {
  return widthFt ?? (lengthFt !== undefined && floorFt2 !== undefined ? floorFt2 / lengthFt : undefined);
}

/** Bays along the building: as many whole ones as come nearest to its length, one at least. */
function baysAlong({lengthFt, floorFt2}: Brief["outline"], widthFt: number, beamSpanFt: number): number {
  const wantedFt = lengthFt ?? (floorFt2 as number) / widthFt;
  const {max} = fieldOf("bay.baysAlong");
  return Math.min(max, Math.max(1, Math.round(wantedFt / beamSpanFt)));
}

function toppingsOf(kind: DeckKind, toppingsIn: readonly number[]): readonly number[] {
  if (kind === "pretoppedTees") return [0];
  const topped = toppingsIn.filter((toppingIn) => toppingIn > 0);
  return kind === "planks" ? toppingsIn : topped;
}

/** Strands of planks are straight: for them there is no choice. */
function strandsOf(kind: DeckKind, strands: readonly StrandChoice[]): readonly StrandChoice[] {
  return kind === "planks" ? ["any"] : strands;
}

/** Edges that are tried with a kind of deck: pockets want stems. */
function edgesOf(kind: DeckKind, edges: readonly EdgeKind[]): readonly EdgeKind[] {
  const carried = kind === "planks" ? edges.filter((edge) => edge !== "pockets") : edges;
  return carried.length > 0 ? carried : edges;
}

/** The kind of a deck member, by its designation; throws {@link InputError} for one that is not in the catalog. */
export function kindOf(catalog: Catalog, designation: string): DeckKind {
  return ({"field-topped": "fieldToppedTees", "pretopped": "pretoppedTees", "plank": "planks"} as const)[deckRow(catalog, designation).use];
}
