import {parseArgs} from "node:util";
import {readCatalog} from "../../lib/catalog.js";
import {parseDesign} from "../../lib/design/validate.js";
import {UsageError, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {jsonText} from "./jsonText.js";
import {readRawTables} from "./readCatalog.js";
import {wholeResults} from "./wholeResults.js";

// npm run -s evaluate -- FILE.json: all results of a design file as JSON; `-` reads the file from standard input.
await runCommand((words) => {
  const {positionals} = parseArgs({args: words, allowPositionals: true, options: {}});
  const [file] = positionals;
  if (!file || positionals.length > 1) throw new UsageError("usage: npm run -s evaluate -- FILE.json");
  return fromFile(file, (content) => `${jsonText(wholeResults(parseDesign(content), readCatalog(readRawTables())))}\n`);
});
