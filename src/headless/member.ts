import {readFileSync} from "node:fs";
import {parseArgs} from "node:util";
import {readCatalogue} from "../../lib/catalogue.js";
import {readMemberFile} from "../../lib/report/memberFile.js";
import {memberReport} from "../../lib/report/memberReport.js";
import {UsageError, runCommand} from "./command.js";
import {readRawTables} from "./readCatalogue.js";

// npm run -s member -- FILE.json: all that the engine knows of one member as JSON.
runCommand((words) => {
  const {positionals} = parseArgs({args: words, allowPositionals: true, options: {}});
  const [file] = positionals;
  if (!file || positionals.length > 1) throw new UsageError("usage: npm run -s member -- FILE.json");
  const found = readMemberFile(readFileSync(file, "utf8"), readCatalogue(readRawTables()));
  return `${JSON.stringify(memberReport(found), null, 2)}\n`;
});
