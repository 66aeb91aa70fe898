import {MEASURE_LIST} from "../../lib/schemes/measures/measureList.js";
import {ROW_COLUMNS} from "../../lib/schemes/row.js";
import type {Study} from "../../lib/schemes/study.js";

/** A column of a study's files and the type that it has in them. */
export interface ParquetColumn {
  readonly name: string;
  readonly type: "INTEGER" | "BIGINT" | "DOUBLE" | "VARCHAR" | "BOOLEAN";
}

const WHOLE: ReadonlySet<string> = new Set(["index", "bays_across", "bays_along"]);
const NUMBERS: ReadonlySet<string> = new Set(["span_ft", "beam_span_ft", ...MEASURE_LIST.map(({column}) => column)]);

/** Columns of rows of schemes with their types. */
const SCHEME_COLUMNS: readonly ParquetColumn[] = ROW_COLUMNS.map((name) => ({name, type: WHOLE.has(name) ? "INTEGER" : NUMBERS.has(name) ? "DOUBLE" : "VARCHAR"}));

/** Columns of a study's files: the brief's name and the varied fields before those of the schemes. */
export function studyColumns({cases, fields}: Pick<Study, "cases" | "fields">): ParquetColumn[] {
  const typeOf = (i: number): ParquetColumn["type"] => {
    const value = cases[0]?.values[i];
    return typeof value === "number" ? "DOUBLE" : typeof value === "boolean" ? "BOOLEAN" : "VARCHAR";
  };
  return [{name: "brief", type: "VARCHAR"}, ...fields.map((path, i) => ({name: fieldColumn(path), type: typeOf(i)})), ...SCHEME_COLUMNS.map((column) => (column.name === "index" ? {...column, type: "BIGINT" as const} : column))];
}

/** The column of a varied field: its path with low lines. */
export function fieldColumn(path: string): string {
  return path.replaceAll(".", "_");
}
