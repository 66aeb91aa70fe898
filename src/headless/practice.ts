import {parseArgs} from "node:util";
import {readCatalog} from "../../lib/catalog.js";
import {requireChoice} from "../../lib/check.js";
import {InputError} from "../../lib/errors.js";
import {itemsOf, kindsNamed} from "../../lib/practice/kinds.js";
import {plainItem} from "../../lib/practice/plain.js";
import {setPage} from "../components/practice/sheetText.js";
import {UsageError, requireOnce, runCommand} from "./command.js";
import {readRawTables} from "./readCatalog.js";

const USAGE = "usage: npm run -s practice -- --kinds all --count 60 --seed 7 [--key] [--hints] [--json | --html] [--units US | SI | both]";

// npm run -s practice: a set of exercises from a seed, as JSON or as a page to print.
await runCommand((words) => {
  const {positionals, values, tokens} = parseArgs({args: words, allowPositionals: true, tokens: true, options: {
    kinds: {type: "string"}, count: {type: "string"}, seed: {type: "string"}, units: {type: "string"},
    key: {type: "boolean"}, hints: {type: "boolean"}, json: {type: "boolean"}, html: {type: "boolean"},
  }});
  requireOnce(tokens);
  if (positionals.length > 0 || (values.json && values.html) || values.seed === undefined) throw new UsageError(USAGE);
  const system = requireChoice(values.units ?? "US", {path: "units", label: "units", choices: ["US", "SI", "both"]});
  const kinds = kindsNamed(values.kinds ?? "all");
  const items = itemsOf(kinds, values.count === undefined ? kinds.length : whole("count", values.count), whole("seed", values.seed), readCatalog(readRawTables()));
  if (values.html) return setPage(items, {title: `Practice set, seed ${values.seed}`, key: values.key === true, system});
  const choices = {key: values.key === true, hints: values.hints === true, system};
  return `${JSON.stringify(items.map((item) => plainItem(item, choices)), null, 2)}\n`;
});

/** A whole number as a word of the command; what it may be is said where it is used. */
function whole(label: string, text: string): number {
  if (/^\d{1,15}$/.test(text)) return Number(text);
  throw new InputError({path: label, label, value: text, reads: text, allowed: "a whole number"});
}
