import type {ComparedDesign} from "../compare/column.js";
import {differenceWords} from "../compare/difference.js";
import {measureRows, type MeasureRow} from "../compare/standings.js";
import type {MeasureEntry} from "../schemes/measures/measureList.js";
import type {MeasureKey} from "../schemes/measures/schemeMeasures.js";
import {decimals} from "../units.js";
import type {RecordTable} from "./parts.js";

/** A design that was compared with the record's own. */
export interface Alternative {
  readonly letter: string;
  readonly name: string;
  /** What the reader says of it; may be empty. */
  readonly note: string;
  readonly compared: ComparedDesign;
}

/** The alternatives considered, as the record has them. */
export interface AlternativesConsidered {
  readonly tables: readonly RecordTable[];
  /** What "better" means in them. */
  readonly better: string;
  /** One for each design: what it is, what fails, and the reader's note. */
  readonly notes: readonly {readonly title: string; readonly words: string; readonly note: string}[];
  /** How many sheets of letter paper they take at most. */
  readonly mostSheets: number;
}

/** Pieces by the law that they break; the record tells how many break any. */
const LEFT_OUT: ReadonlySet<MeasureKey> = new Set(["overWidthPieces", "overHeightPieces", "overLengthPieces", "overWeightPieces"]);

/** The record is brief: totals without their parts, and no uses of limits, which its checks tell. */
function isBrief({measure: {key, group, partOf}}: MeasureRow): boolean {
  return partOf === undefined && group !== "limits" && !LEFT_OUT.has(key);
}

/** Designs of one table; a sheet has no room for more columns. */
const DESIGNS_A_TABLE = 4;

/**
 * The alternatives beside the design, in brief.
 *
 * @param nameOf - a measure with its unit, as the reader meets it
 */
export function alternativesConsidered(own: ComparedDesign, alternatives: readonly Alternative[], nameOf: (measure: MeasureEntry) => string): AlternativesConsidered {
  const groups = Array.from({length: Math.ceil(alternatives.length / DESIGNS_A_TABLE)}, (_, i) => alternatives.slice(DESIGNS_A_TABLE * i, DESIGNS_A_TABLE * (i + 1)));
  const tables = groups.map((some, i) => tableOf(own, some, i, nameOf));
  const notes = alternatives.map(({letter, name, note, compared: {deck, fails, uncovered}}) => ({
    title: `${letter}: ${name}`,
    words: `${deck}. ${fails.length === 0 ? "No check fails" : `${fails.length === 1 ? "One check fails" : `${fails.length} checks fail`}: ${fails.join("; ")}`}.${uncovered.length > 0 ? ` Beyond the methods: ${uncovered.join("; ")}.` : ""}`,
    note: note.trim(),
  }));
  const rows = measureRows(own.measures, alternatives.map(({compared}) => compared.measures)).filter(isBrief);
  return {tables, better: betterWords(rows.map(({measure}) => measure)), notes, mostSheets: alternatives.length === 0 ? 0 : sheetsOf(tables, notes)};
}

function betterWords(measures: readonly MeasureEntry[]): string {
  const names = (better: MeasureEntry["better"]) => measures.filter((measure) => measure.better === better).map(({name}) => name).join(", ");
  const [more, neither] = [names("more"), names("neither")];
  return `\u201cBetter\u201d is said of one measure at a time. More is better of ${more}; neither more nor less of ${neither}; of all others less.${measures.some(({group}) => group === "cost") ? " Cost goes by unit prices that the writer entered." : ""}`;
}

function tableOf(own: ComparedDesign, some: readonly Alternative[], index: number, nameOf: (measure: MeasureEntry) => string): RecordTable {
  const rows = measureRows(own.measures, some.map(({compared}) => compared.measures)).filter(isBrief);
  return {
    title: `Beside this design${index > 0 ? ", continued" : ""}`,
    heads: ["", "This design", ...some.map(({letter, name}) => `${letter}: ${name}`)],
    rows: [
      ["Deck", own.deck, ...some.map(({compared}) => compared.deck)],
      ["Checks that fail", String(own.fails.length), ...some.map(({compared}) => String(compared.fails.length))],
      ...rows.map((row) => measureCells(row, nameOf)),
    ],
  };
}

function measureCells({measure, open, others}: MeasureRow, nameOf: (measure: MeasureEntry) => string): string[] {
  const value = (number: number | undefined) => (number === undefined ? "none" : decimals(number, measure.decimals));
  return [capital(nameOf(measure)), value(open), ...others.map(({value: other, difference}) => {
    const words = differenceWords(difference, measure.decimals);
    return `${value(other)}${words ? ` (${words.replace(/ \(.*\)$/, "")})` : ""}`;
  })];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Room of a sheet between its margins, and what lines of the record take of it, mm; with something to spare. */
const SHEET_MM = 245;
const ROW_MM = 3.9;
const NOTE_LINE_MM = 4.4;
const NOTE_LETTERS = 105;
const HEADING_MM = 14;

function sheetsOf(tables: readonly RecordTable[], notes: AlternativesConsidered["notes"]): number {
  // A cell that is longer than its column takes a second line: each row is counted by its longest.
  const rowLines = (row: readonly string[]) => Math.max(...row.map((text) => Math.ceil(text.length / 26)));
  const tablesMm = tables.reduce((sum, {heads, rows}) => sum + ROW_MM * (2 + rowLines(heads) + rows.reduce((lines, row) => lines + rowLines(row), 0)), 0);
  const lines = (text: string) => text.split("\n").reduce((sum, part) => sum + Math.max(1, Math.ceil(part.length / NOTE_LETTERS)), 0);
  const notesMm = notes.reduce((sum, {title, words, note}) => sum + NOTE_LINE_MM * (lines(`${title} ${words}`) + (note ? lines(note) : 0)), 0);
  return Math.ceil((HEADING_MM + tablesMm + notesMm) / SHEET_MM);
}
