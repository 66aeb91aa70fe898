import {csvFormatRows} from "d3-dsv";
import {ROW_COLUMNS} from "../../lib/schemes/row.js";
import type {SchemeRow} from "../../lib/schemes/schemeRow.js";

/** Digits of a number in a file: more than any measure is known to, and none of the noise of binary fractions. */
const DIGITS = 9;

/** A cell of a file: empty where a row has nothing. */
function cell(value: number | string | boolean | undefined): string {
  return typeof value === "number" ? String(Number(value.toPrecision(DIGITS))) : value === undefined ? "" : String(value);
}

/** Rows as lines of CSV without their header. */
export function csvLines(rows: readonly SchemeRow[], columns: readonly string[] = ROW_COLUMNS): string {
  return rows.length === 0 ? "" : `${csvFormatRows(rows.map((row) => columns.map((column) => cell(row[column]))))}\n`;
}

/** A row as JSON, one line, without what it has not. */
export function jsonLine(row: SchemeRow): string {
  return JSON.stringify(Object.fromEntries(ROW_COLUMNS.map((column) => [column, row[column]]).map(([column, value]) => [column, typeof value === "number" ? Number(value.toPrecision(DIGITS)) : value])));
}
