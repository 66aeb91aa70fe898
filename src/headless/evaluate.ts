import {parseArgs} from "node:util";
import {readCatalog} from "../../lib/catalog.js";
import {parseDesign} from "../../lib/design/validate.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";
import {UsageError, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {readRawTables} from "./readCatalog.js";

// npm run -s evaluate -- FILE.json: all results of a design file as JSON; `-` reads the file from standard input.
await runCommand((words) => {
  const {positionals} = parseArgs({args: words, allowPositionals: true, options: {}});
  const [file] = positionals;
  if (!file || positionals.length > 1) throw new UsageError("usage: npm run -s evaluate -- FILE.json");
  return fromFile(file, (content) => {
    const design = parseDesign(content);
    const catalog = readCatalog(readRawTables());
    const results = evaluate(design, catalog);
    return `${JSON.stringify({...results, columns: columnsOf(results, catalog), candidates: candidates(design, catalog)}, null, 2)}\n`;
  });
});
