import {readFileSync} from "node:fs";
import {parseArgs} from "node:util";
import {readCatalogue} from "../../lib/catalogue.js";
import {parseDesign} from "../../lib/design/validate.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";
import {UsageError, runCommand} from "./command.js";
import {readRawTables} from "./readCatalogue.js";

// npm run -s evaluate -- FILE.json: all results of a design file as JSON.
runCommand((words) => {
  const {positionals} = parseArgs({args: words, allowPositionals: true, options: {}});
  const [file] = positionals;
  if (!file || positionals.length > 1) throw new UsageError("usage: npm run -s evaluate -- FILE.json");
  const design = parseDesign(readFileSync(file, "utf8"));
  const catalogue = readCatalogue(readRawTables());
  const results = evaluate(design, catalogue);
  return `${JSON.stringify({...results, columns: columnsOf(results, catalogue), candidates: candidates(design, catalogue)}, null, 2)}\n`;
});
