import {parseArgs} from "node:util";
import {readCatalog} from "../../lib/catalog.js";
import {readMemberFile} from "../../lib/report/memberFile.js";
import {memberReport} from "../../lib/report/memberReport.js";
import {UsageError, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {readRawTables} from "./readCatalog.js";

// npm run -s member -- FILE.json: all that the engine knows of one member as JSON; `-` reads the file from standard input.
await runCommand((words) => {
  const {positionals} = parseArgs({args: words, allowPositionals: true, options: {}});
  const [file] = positionals;
  if (!file || positionals.length > 1) throw new UsageError("usage: npm run -s member -- FILE.json");
  return fromFile(file, (content) => `${JSON.stringify(memberReport(readMemberFile(content, readCatalog(readRawTables()))), null, 2)}\n`);
});
