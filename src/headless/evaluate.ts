import {parseArgs} from "node:util";
import {readCatalogue} from "../../lib/catalogue.js";
import {parseDesign} from "../../lib/design/validate.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";
import {UsageError, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {readRawTables} from "./readCatalogue.js";

// npm run -s evaluate -- FILE.json: all results of a design file as JSON; `-` reads the file from standard input.
await runCommand((words) => {
  const {positionals} = parseArgs({args: words, allowPositionals: true, options: {}});
  const [file] = positionals;
  if (!file || positionals.length > 1) throw new UsageError("usage: npm run -s evaluate -- FILE.json");
  return fromFile(file, (content) => {
    const design = parseDesign(content);
    const catalogue = readCatalogue(readRawTables());
    const results = evaluate(design, catalogue);
    return `${JSON.stringify({...results, columns: columnsOf(results, catalogue), candidates: candidates(design, catalogue)}, null, 2)}\n`;
  });
});
