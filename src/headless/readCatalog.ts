import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {csvParseRows} from "d3-dsv";
import {InputError} from "../../lib/errors.js";
import {ROOT} from "./root.js";

/** The catalog's tables as they stand in `data/`: every cell a text, nothing guessed. */
export type RawTables = Record<string, Record<string, string>[]>;

/** Reads every table of a folder (by default `data/`); a table is named after its file. Throws {@link InputError} with file and line where a row has not as many cells as the header. */
export function readRawTables(folder = join(ROOT, "data")): RawTables {
  const files = readdirSync(folder).filter((file) => file.endsWith(".csv")).sort();
  return Object.fromEntries(files.map((file) => [file.replace(/\.csv$/, ""), rowsOf(readFileSync(join(folder, file), "utf8"), file)]));
}

/** The rows of a table by its header's names; the reader itself would drop cells beyond the header without a word. */
function rowsOf(text: string, file: string): Record<string, string>[] {
  const [header = [], ...rows] = csvParseRows(text.trimEnd()).map((cells) => cells.map((cell) => cell.trim()));
  return rows.map((cells, i) => {
    if (cells.length !== header.length) {
      const line = lineOf(text, i + 1);
      throw new InputError({path: `${file}:${line}`, label: `${file}, line ${line}, cells`, value: cells.length, allowed: `${header.length}, as in the header`});
    }
    return Object.fromEntries(header.map((name, column) => [name, cells[column] as string]));
  });
}

/** The line of the file on which a row begins, counted from 1; the header is row 0. A cell in quotes may take several lines. */
function lineOf(text: string, row: number): number {
  let [line, left, quoted] = [1, row, false];
  for (const letter of text) {
    if (left === 0) break;
    if (letter === '"') quoted = !quoted;
    if (letter !== "\n") continue;
    line += 1;
    if (!quoted) left -= 1;
  }
  return line;
}
