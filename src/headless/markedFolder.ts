import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {csvFormatRows} from "d3-dsv";
import type {Catalog} from "../../lib/catalog.js";
import {markClass, marksRows, type HandedIn} from "../../lib/practice/classMarks.js";
import type {Recipe} from "../../lib/practice/recipe.js";
import {UsageError} from "./command.js";

/**
 * The marks of all answer files in a folder: as CSV, with files that were not marked named on standard error, or as JSON with all that is known.
 *
 * @throws UsageError where there is no such folder, or no file in it
 */
export function markedFolder(recipe: Recipe, folder: string, catalog: Catalog, json: boolean): string {
  const marks = markClass(recipe, filesIn(folder), catalog);
  if (json) return `${JSON.stringify(marks, null, 2)}\n`;
  for (const {fileName, says} of marks.refused) process.stderr.write(`${fileName}: ${says}\n`);
  for (const {fileName, student, counts, same} of marks.second) process.stderr.write(`${fileName}: another file of ${student}, ${same ? "with the same answers" : "with other answers"}; ${counts} counts\n`);
  const rows = marksRows(marks);
  const columns = Object.keys(rows[0] ?? {student: ""});
  return `${csvFormatRows([columns, ...rows.map((row) => columns.map((column) => String(row[column] ?? "")))])}\n`;
}

function filesIn(folder: string): HandedIn[] {
  let names: string[];
  try {
    names = readdirSync(folder).filter((name) => name.endsWith(".json")).sort();
  } catch {
    throw new UsageError(`${folder}: there is no such folder`);
  }
  if (names.length === 0) throw new UsageError(`${folder}: holds no file that ends in .json`);
  return names.map((fileName) => ({fileName, text: readFileSync(join(folder, fileName), "utf8")}));
}
