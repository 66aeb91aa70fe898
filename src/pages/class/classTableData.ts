import {desc, escape, table, type ColumnTable} from "arquero";
import type {ClassFilter, ClassSort, FlatRow} from "./classData.js";

/* What the table library does for the page: fetched once the reader filters, orders or saves. */

const PASSES: Readonly<Record<string, (row: FlatRow) => boolean>> = {
  all: () => true,
  fails: ({fails, problem}) => Number(fails) > 0 || problem !== "",
  holds: ({fails}) => fails === 0,
  reasons: ({reasons_standing: standing, decisions}) => Number(standing) < Number(decisions),
  uncommented: ({comments}) => comments === 0,
};

/** The files of the rows that the filter lets through, in the order asked for; blanks stand last either way, and rows alike in the order in which they came. */
export function shownFiles(rows: readonly FlatRow[], filter: ClassFilter, {by, down}: ClassSort): string[] {
  const passes = PASSES[filter] ?? ((row: FlatRow) => row["family"] === Number(filter.slice("family ".length)));
  const held = table({row: [...rows], made: rows.map((_, i) => i), blank: rows.map((row) => row[by] === "" || row[by] === undefined), key: rows.map((row) => keyOf(row[by]))});
  return (held.filter(escape(({row}: {row: FlatRow}) => passes(row))).orderby("blank", down ? desc("key") : "key", "made").array("row") as FlatRow[]).map(({file}) => file);
}

/** Words are ordered as a reader looks them up, whatever their case. */
function keyOf(value: string | number | undefined): string | number {
  return typeof value === "string" ? value.toLowerCase() : (value ?? "");
}

/** The rows as a table to be saved. */
export function savedTable(rows: readonly FlatRow[]): ColumnTable {
  return table(Object.fromEntries(Object.keys(rows[0] ?? {}).map((name) => [name, rows.map((row) => row[name])])));
}
