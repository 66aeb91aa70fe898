import type {Catalog, DeckMemberRow} from "../catalog.js";
import {requireNumber} from "../check.js";
import {fieldOf} from "../design/fields.js";
import {InputError} from "../errors.js";
import {camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {parsePattern, type Profile} from "../prestress/pattern.js";
import {shapeOf} from "../sections/designation.js";
import type {Criteria} from "./criteria.js";
import {deckRow} from "./deckMember.js";
import type {LimitName} from "./limits.js";
import {SPAN_RANGE_FT, safeLoad} from "./safeLoad.js";
import {patternMember, usualPatterns, type DeckConditions} from "./table.js";

/** What a sweep runs over, and by what rules. Plain data, so that it can be sent to a worker. */
export interface SweepInput {
  /** Designations of catalog members. */
  readonly members: readonly string[];
  /** Strand diameters in sixteenths of an inch. */
  readonly sixteenths: readonly number[];
  /** Toppings, in, 0 for none; pretopped members take none whatever stands here. */
  readonly toppingsIn: readonly number[];
  readonly spansFt: SpanSteps;
  /** Concrete and climate that all rows share. */
  readonly conditions: Omit<DeckConditions, "toppingIn">;
  /** Rules for rows without and with a topping. */
  readonly criteria: Readonly<Record<"untopped" | "topped", Criteria>>;
}

/** Spans from one to another in equal steps, ft. */
export interface SpanSteps {
  readonly fromFt: number;
  readonly toFt: number;
  readonly stepFt: number;
}

/** One member with one strand pattern and topping, over all spans. */
export interface SweepRow {
  readonly member: string;
  readonly use: DeckMemberRow["use"];
  readonly pattern: string;
  readonly profile: Profile;
  readonly sixteenths: number;
  readonly toppingIn: number;
  /** Member and topping, in. */
  readonly depthIn: number;
  /** Member and topping, psf. */
  readonly weightPsf: number;
  readonly strands: number;
  /** Strand per square foot of floor, lb. */
  readonly strandPsf: number;
  readonly cells: readonly SweepCell[];
}

/** A row at one span. */
export interface SweepCell {
  readonly spanFt: number;
  /** Beyond member and topping, psf; 0 where a limit allows no load. */
  readonly safeLoadPsf: number;
  readonly governs: LimitName;
  /** Camber at midspan when the member is set and in the long term under dead load, in; up is positive. */
  readonly erectionCamberIn: number;
  readonly longTermCamberIn: number;
}

/** How far a sweep is, with the rows that were finished since the last word of it. */
export interface SweepProgress {
  readonly cellsDone: number;
  readonly cellsInAll: number;
  readonly rows: readonly SweepRow[];
}

/** How much a sweep was; its rows have been handed over on the way. */
export interface SweepSize {
  readonly rows: number;
  readonly cells: number;
}

/** Most cells of one sweep: beyond it nobody reads the table, and the browser's memory is felt. */
export const MOST_SWEEP_CELLS = 100_000;

/** Cells between two words of progress, some tens of milliseconds of work. */
const CELLS_PER_STEP = 250;

/**
 * The spans of a sweep, ft, the last one included where the steps meet it.
 *
 * @throws InputError if a span is outside 10 to 150 ft, the last lies before the first, or the step is not above 0
 */
export function sweepSpansFt({fromFt, toFt, stepFt}: SpanSteps): number[] {
  const {min, max} = SPAN_RANGE_FT;
  requireNumber(fromFt, {path: "spansFt.fromFt", label: "first span", unit: "ft", min, max});
  requireNumber(toFt, {path: "spansFt.toFt", label: "last span", unit: "ft", min: fromFt, max});
  requireNumber(stepFt, {path: "spansFt.stepFt", label: "step of the spans", unit: "ft", min: LEAST_STEP_FT, max: max - min});
  return Array.from({length: Math.floor((toFt - fromFt) / stepFt + 1e-9) + 1}, (_, i) => Number((fromFt + i * stepFt).toFixed(6)));
}

/** An inch and a bit: no table is read more finely. */
const LEAST_STEP_FT = 0.1;

/**
 * How many rows and cells a sweep has.
 *
 * @throws InputError where a choice is empty or out of range, or where there are more than {@link MOST_SWEEP_CELLS} cells
 */
export function sweepSize(catalog: Catalog, input: SweepInput): SweepSize {
  const spans = sweepSpansFt(input.spansFt).length;
  const planned = plannedRows(catalog, input);
  const cells = planned.length * spans;
  if (cells > MOST_SWEEP_CELLS) {
    throw new InputError({
      path: "spansFt.stepFt", label: "table", value: `${cells} cells`, allowed: `at most ${MOST_SWEEP_CELLS}`,
      advice: "Choose fewer members, strands or toppings, or a larger step of span.",
    });
  }
  // What is wrong with the concrete or a strand size shows in any row that has it.
  for (const plan of new Map(planned.map((one) => [parsePattern(one.pattern).sixteenths, one])).values()) memberOf(catalog, plan, input);
  return {rows: planned.length, cells};
}

/**
 * Safe loads and cambers of every member, topping and usual strand pattern over every span: the whole of the trade's
 * load tables by the reader's own rules. Each row is the same as one of `safeLoadTable`.
 *
 * Yields progress every few hundred cells; the caller may stop at any of them.
 *
 * @throws InputError as {@link sweepSize} does, before anything is computed
 */
export function* sweep(catalog: Catalog, input: SweepInput): Generator<SweepProgress, SweepSize> {
  const size = sweepSize(catalog, input);
  const spansFt = sweepSpansFt(input.spansFt);
  let rows: SweepRow[] = [];
  let cells: SweepCell[] = [];
  let cellsDone = 0;
  for (const plan of plannedRows(catalog, input)) {
    const member = memberOf(catalog, plan, input);
    const criteria = input.criteria[plan.toppingIn > 0 ? "topped" : "untopped"];
    for (const spanFt of spansFt) {
      cells.push(sweepCell(member, spanFt, criteria));
      cellsDone += 1;
      if (cells.length === spansFt.length) {
        rows.push(sweepRow(plan, member, cells));
        cells = [];
      }
      if (cellsDone % CELLS_PER_STEP === 0 || cellsDone === size.cells) {
        yield {cellsDone, cellsInAll: size.cells, rows};
        rows = [];
      }
    }
  }
  return size;
}

interface PlannedRow {
  readonly row: DeckMemberRow;
  readonly shape: ReturnType<typeof shapeOf>;
  readonly toppingIn: number;
  readonly pattern: string;
}

function plannedRows(catalog: Catalog, {members, sixteenths, toppingsIn}: SweepInput): PlannedRow[] {
  requireSome(members, "members", "members");
  requireSome(sixteenths, "sixteenths", "strand sizes");
  requireSome(toppingsIn, "toppingsIn", "toppings");
  for (const toppingIn of toppingsIn) requireNumber(toppingIn, {...fieldOf("deck.toppingIn"), path: "toppingsIn"});
  return [...new Set(members)].flatMap((designation) => {
    const row = deckRow(catalog, designation, "members");
    const shape = shapeOf(catalog, designation);
    return (row.use === "pretopped" ? [0] : [...new Set(toppingsIn)]).flatMap((toppingIn) =>
      [...new Set(sixteenths)].flatMap((size) => usualPatterns(row, size).map((pattern) => ({row, shape, toppingIn, pattern}))));
  });
}

function memberOf(catalog: Catalog, {row, pattern, toppingIn, shape}: PlannedRow, {conditions}: SweepInput): Member {
  return patternMember(catalog, row, pattern, {...conditions, toppingIn}, shape);
}

function requireSome(list: readonly unknown[], path: string, label: string): void {
  if (list.length === 0) throw new InputError({path, label, value: undefined, allowed: "at least one"});
}

function sweepCell(member: Member, spanFt: number, criteria: Criteria): SweepCell {
  const {safeLoadPsf, governs} = safeLoad(member, spanFt, criteria);
  const {erectionIn, longTermIn} = camber(member, spanFt, criteria.superimposedDeadPsf * member.widthFt);
  return {spanFt, safeLoadPsf, governs, erectionCamberIn: erectionIn, longTermCamberIn: longTermIn};
}

function sweepRow({row, toppingIn, pattern}: PlannedRow, member: Member, cells: readonly SweepCell[]): SweepRow {
  const {layout, widthFt} = member;
  const {profile, sixteenths} = parsePattern(pattern);
  return {
    member: row.designation, use: row.use, pattern, profile, sixteenths, toppingIn,
    depthIn: member.compression.depthIn,
    weightPsf: (member.selfWeightPlf + member.toppingWeightPlf) / widthFt,
    strands: layout.count,
    strandPsf: (layout.count * layout.strand.weightPlf) / widthFt,
    cells,
  };
}
