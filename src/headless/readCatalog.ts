import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {fromCSV} from "arquero";
import {ROOT} from "./prepare.js";

/** The catalog's tables as they stand in `data/`: every cell a text, nothing guessed. */
export type RawTables = Record<string, Record<string, string>[]>;

/** Reads every table of a folder (by default `data/`); a table is named after its file. */
export function readRawTables(folder = join(ROOT, "data")): RawTables {
  const files = readdirSync(folder).filter((file) => file.endsWith(".csv")).sort();
  return Object.fromEntries(
    files.map((file) => {
      const table = fromCSV(readFileSync(join(folder, file), "utf8").trimEnd(), {autoType: false});
      return [file.replace(/\.csv$/, ""), table.objects().map((row) => asText(row as Record<string, unknown>))];
    }),
  );
}

/** An empty cell is an empty text, so that the library meets one kind of value only. */
function asText(row: Record<string, unknown>): Record<string, string> {
  return Object.fromEntries(Object.entries(row).map(([name, value]) => [name.trim(), String(value ?? "").trim()]));
}
