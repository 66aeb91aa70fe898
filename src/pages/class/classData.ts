import type {ClassDesign} from "../../lib/classroom/classFiles.js";
import type {ClassRow} from "../../lib/classroom/classRow.js";
import {kinshipWords, type Kinship} from "../../lib/classroom/kinship.js";
import type {NotComputed} from "../../lib/compare/column.js";
import {COMPARED_MEASURES} from "../../lib/compare/measures.js";
import {plain} from "../../lib/design/fieldWords.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import type {SchemeMeasures} from "../../lib/schemes/measures/schemeMeasures.js";
import {measureUnit} from "../../components/compare/words.js";

/** One design of the class with all that is known of it by now. */
export interface Student extends ClassDesign {
  /** The author whom the file names, or the file's own name. */
  readonly who: string;
  /** Undefined while it is being computed. */
  readonly found: ClassRow | NotComputed | undefined;
  /** Undefined while it is being found. */
  readonly kin: Kinship | undefined;
}

/** What is known of designs that were computed. */
export function rowOf({found}: Student): ClassRow | undefined {
  return found && !("problem" in found) ? found : undefined;
}

const measure = (key: keyof SchemeMeasures) => COMPARED_MEASURES.find((one) => one.key === key) as MeasureEntry;
/** The measures of the table and the charts, under names that fit the head of a column. */
export const SHOWN_MEASURES: readonly {readonly measure: MeasureEntry; readonly name: string; readonly unit: string}[] = [
  {measure: measure("deckDepthIn"), name: "Deck depth", unit: "in"}, {measure: measure("ceilingFt"), name: "Ceiling", unit: "ft"},
  {measure: measure("carbonKgPerFt2"), name: "Carbon", unit: measureUnit(measure("carbonKgPerFt2").unit)},
];

/** A measure as it is read: no more decimals than it has. */
export function measureText({decimals}: MeasureEntry, value: number | undefined): string {
  return value === undefined ? "none" : plain(Number(value.toFixed(decimals)));
}

/** A row of the table as it is ordered and saved: plain values by the names of columns. */
export type FlatRow = Readonly<Record<string, string | number>> & {readonly file: string};

/** The class as plain rows: what is blank is not known, or cannot be computed, which `problem` says. */
export function flatRows(students: readonly Student[]): FlatRow[] {
  return students.map((student): FlatRow => {
    const row = rowOf(student);
    const {design, kin} = student;
    return {
      file: student.fileName, author: design.author.trim(), firm_or_class: design.firm.trim(), design: design.name,
      deck: row?.deck ?? `${design.deck.member} ${design.deck.pattern}`, span_ft: design.bay.spanFt, beam_span_ft: design.bay.beamSpanFt, edge: row?.edge ?? "",
      ...Object.fromEntries(COMPARED_MEASURES.map((one) => [one.column, shown(one, row?.measures)])),
      fails: row?.fails.length ?? "", failing: row?.fails.join("; ") ?? "", not_covered: row?.uncovered.join("; ") ?? "",
      reasons_standing: row ? row.count.reader + row.count.starter + row.count.rule : "", reasons_own: row?.count.reader ?? "", reasons_earlier: row?.count.earlier ?? "",
      decisions: row?.count.all ?? "",
      family: kin?.family ?? "", comes_from: kin?.from?.name ?? "", differs_in: (kin?.differs ?? []).map(({label, values: [then, now]}) => `${label}: ${then} \u2192 ${now}`).join("; "),
      same_decisions_as: (kin?.same ?? []).join("; "), told_apart: kin ? kinshipWords(kin) : "", comments: design.comments.length,
      problem: student.found && "problem" in student.found ? student.found.problem : "", use: "for learning and preliminary sizing only",
    };
  });
}

function shown(one: MeasureEntry, measures: SchemeMeasures | undefined): number | "" {
  const value = measures && one.read(measures);
  return value === undefined ? "" : Number(value.toFixed(Math.max(one.decimals, 3)));
}

/** Which of the class are shown. */
export type ClassFilter = "all" | "fails" | "holds" | "reasons" | "uncommented" | `family ${number}`;

/** By which column, and which way. */
export interface ClassSort {
  readonly by: string;
  readonly down: boolean;
}
