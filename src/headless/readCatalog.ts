import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {csvParse} from "d3-dsv";
import {ROOT} from "./root.js";

/** The catalog's tables as they stand in `data/`: every cell a text, nothing guessed. */
export type RawTables = Record<string, Record<string, string>[]>;

/** Reads every table of a folder (by default `data/`); a table is named after its file. */
export function readRawTables(folder = join(ROOT, "data")): RawTables {
  const files = readdirSync(folder).filter((file) => file.endsWith(".csv")).sort();
  return Object.fromEntries(files.map((file) => [file.replace(/\.csv$/, ""), csvParse(readFileSync(join(folder, file), "utf8").trimEnd(), trimmed)]));
}

/** Cells without the space around them. */
function trimmed(row: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(row).map(([name, value]) => [name.trim(), value.trim()]));
}
