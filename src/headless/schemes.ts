import {parseArgs} from "node:util";
import {readCatalog, type Catalog} from "../../lib/catalog.js";
import type {Brief} from "../../lib/schemes/brief.js";
import {gridOf} from "../../lib/schemes/grid.js";
import {pricesMissing} from "../../lib/schemes/measures.js";
import {PRICE_LIST, type PriceName} from "../../lib/schemes/measures/prices.js";
import {readBrief} from "../../lib/schemes/readBrief.js";
import {ROW_COLUMNS} from "../../lib/schemes/row.js";
import {schemeRows} from "../../lib/schemes/rows.js";
import {schemesOf} from "../../lib/schemes/scheme.js";
import {isMade, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {nothingHolds} from "../../lib/schemes/stops.js";
import {UsageError, requireOnce, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {readRawTables} from "./readCatalog.js";
import {csvLines, jsonLine} from "./rowText.js";

const USAGE = "usage: npm run -s schemes -- BRIEF.json [--csv | --json] [--columns]";
/** Schemes that are printed at most; a study writes more of them to files. */
const MOST = 200_000;

// npm run -s schemes: every scheme of a brief, one a row, as CSV or JSON; `-` reads the brief from standard input.
await runCommand((words) => {
  const {positionals, values, tokens} = parseArgs({args: words, allowPositionals: true, tokens: true, options: {
    csv: {type: "boolean"}, json: {type: "boolean"}, columns: {type: "boolean"},
  }});
  requireOnce(tokens);
  const [file] = positionals;
  if (!file || positionals.length > 1 || (values.csv && values.json)) throw new UsageError(USAGE);
  const catalog = readCatalog(readRawTables());
  return fromFile(file, (content) => {
    const brief = readBrief(content, catalog);
    const {count} = gridOf(brief, catalog);
    if (count > MOST) throw new UsageError(`the brief has ${count} schemes, more than the ${MOST} that are printed: npm run -s study writes them to files`);
    const order = Array.from({length: count}, (_, i) => i);
    const rows = [...schemeRows(catalog, {brief, order, columns: values.columns === true, ownFactors: {}, prices: brief.prices})];
    const stopped = nothingHolds(rows);
    if (stopped) process.stderr.write(`${stopped}\n`);
    const missing = missingPrices(catalog, brief, rows, values.columns === true);
    if (missing.length > 0) process.stderr.write(`cost is left blank: no price is given for ${missing.map((name) => PRICE_LIST[name].name).join(", ")}\n`);
    return values.json ? `[\n${rows.map(jsonLine).join(",\n")}\n]\n` : `${ROW_COLUMNS.join(",")}\n${csvLines(rows)}`;
  });
});

/** Prices without which the brief's schemes have no cost, where it gives some. */
function missingPrices(catalog: Catalog, brief: Brief, rows: readonly SchemeRow[], columns: boolean): PriceName[] {
  const made = rows.find(isMade);
  if (!made || Object.keys(brief.prices).length === 0) return [];
  const scheme = schemesOf(brief, catalog, {columns}).at(made.index);
  return "none" in scheme ? [] : pricesMissing(scheme.floor, scheme.columns, brief.prices);
}
