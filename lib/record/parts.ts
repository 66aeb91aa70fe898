import type {Check} from "../checks.js";
import type {ReasonName} from "../design/design.js";
import type {ReasonState} from "../design/reasons.js";
import type {Sentence} from "../sentence.js";

/** One line of facts. */
export interface Fact {
  readonly label: string;
  readonly value: Sentence;
}

/** Ways not taken that belong together, such as other decks or other kinds of deck. */
export interface Alternatives {
  readonly title: string;
  readonly ways: readonly {readonly name: string; readonly outcome: string}[];
}

/** A small table of texts. */
export interface RecordTable {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Checks as they stand in one table: a row for each thing that is checked, a cell for each part that it is checked of. */
export interface CheckGroup {
  readonly title: string;
  /** The parts, where there are several, such as the columns of a grid; empty where there is one. */
  readonly parts: readonly string[];
  readonly rows: readonly CheckRow[];
  /** Checks that hold with a remedy or a note of their own, which stands below the table. */
  readonly noted: readonly Check[];
}

export interface CheckRow {
  readonly label: string;
  readonly clause: string;
  /** One for each part, in their order; "none" where a part has no such check. */
  readonly cells: readonly (Check | "none")[];
}

/** One decision with what speaks for it. */
export interface RecordSection {
  readonly id: ReasonName;
  readonly title: string;
  /** What was decided, in a sentence with its numbers. */
  readonly decision: Sentence;
  readonly facts: readonly Fact[];
  readonly alternatives: readonly Alternatives[];
  readonly tables: readonly RecordTable[];
  readonly checks: readonly CheckGroup[];
  /** Why so, in words, and whether they were written for this choice. */
  readonly reason: ReasonState;
}

/** A section's parts that most sections have not. */
export const NO_TABLES = {alternatives: [], tables: []} as const;
