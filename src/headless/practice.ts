import {parseArgs} from "node:util";
import {readCatalog} from "../../lib/catalog.js";
import {readJson, requireChoice} from "../../lib/check.js";
import {InputError} from "../../lib/errors.js";
import type {Item} from "../../lib/practice/item.js";
import {itemsOf, kindsNamed} from "../../lib/practice/kinds.js";
import {check} from "../../lib/practice/marks.js";
import {plainItem} from "../../lib/practice/plain.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {readRecipe} from "../../lib/practice/recipe.js";
import {itemsOfSet} from "../../lib/practice/setItems.js";
import {requireName} from "../../lib/practice/student.js";
import {stepMarkup} from "../components/practice/sheetSteps.js";
import {setPage} from "../components/practice/sheetText.js";
import {UsageError, requireOnce, runCommand} from "./command.js";
import {fromFile} from "./inputFile.js";
import {markedFolder} from "./markedFolder.js";
import {readRawTables} from "./readCatalog.js";

const USAGE = "usage: npm run -s practice -- (--kinds all --count 60 --seed 7 | --set SET.json [--student NAME]) [--key] [--hints] [--json | --html] [--units US | SI | both] [--answers FILE.json], or --set SET.json --mark FOLDER [--json]";

/** Options that make sense only without a set, and those that make sense only where exercises are printed. */
const WITHOUT_SET = ["kinds", "count", "seed"] as const;
const PRINTED = ["student", "units", "answers", "key", "hints", "html"] as const;

// npm run -s practice: a set of exercises, from a seed or from its file, as JSON or as a page to print; with `--answers` or `--mark` the marks of answers.
await runCommand(async (words) => {
  const {positionals, values, tokens} = parseArgs({args: words, allowPositionals: true, tokens: true, options: {
    kinds: {type: "string"}, count: {type: "string"}, seed: {type: "string"}, units: {type: "string"}, answers: {type: "string"}, set: {type: "string"}, student: {type: "string"}, mark: {type: "string"},
    key: {type: "boolean"}, hints: {type: "boolean"}, json: {type: "boolean"}, html: {type: "boolean"},
  }});
  requireOnce(tokens);
  const {set, mark} = values;
  const without = set === undefined && (values.seed === undefined || values.student !== undefined || mark !== undefined);
  const both = set !== undefined && WITHOUT_SET.some((name) => values[name] !== undefined);
  if (positionals.length > 0 || (values.json && values.html) || (values.html && values.answers !== undefined) || without || both || (mark !== undefined && PRINTED.some((name) => values[name] !== undefined))) throw new UsageError(USAGE);
  const system = requireChoice(values.units ?? "US", {path: "units", label: "units", choices: ["US", "SI", "both"]});
  const catalog = readCatalog(readRawTables());
  const print = (items: readonly Item[], title: string): string | Promise<string> => {
    if (values.answers !== undefined) return fromFile(values.answers, (content) => jsonOf(marksOf(items, readJson(content, "answers"), system)));
    const choices = {key: values.key === true, hints: values.hints === true, system};
    return values.html ? setPage(items, {...choices, title, steps: stepMarkup, ...(values.student === undefined ? {} : {student: requireName(values.student)})}) : jsonOf(items.map((item) => plainItem(item, choices)));
  };
  if (set !== undefined) {
    const recipe = await fromFile(set, readRecipe);
    if (mark !== undefined) return markedFolder(recipe, mark, catalog, values.json === true);
    return print(itemsOfSet(recipe, catalog, values.student === undefined ? undefined : requireName(values.student)), recipe.title);
  }
  const kinds = kindsNamed(values.kinds ?? "all");
  return print(itemsOf(kinds, values.count === undefined ? kinds.length : whole("count", values.count), whole("seed", values.seed ?? ""), catalog), `Practice set, seed ${values.seed}`);
});

function jsonOf(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** Marks of answers that stand in a file as a list with a list of texts for each exercise, one for each of its parts. */
function marksOf(items: readonly Item[], content: unknown, system: UnitSystem): object[] {
  if (!Array.isArray(content) || content.length !== items.length) {
    throw new InputError({path: "answers", label: "answers", value: Array.isArray(content) ? content.length : content, allowed: `a list of ${items.length}, one for each exercise`});
  }
  return items.map((item, i) => {
    const {kind, number, parts} = item;
    const given: unknown = content[i];
    const fits = Array.isArray(given) && given.length === parts.length && given.every((each) => each === null || typeof each === "string" || typeof each === "number");
    if (!fits) throw new InputError({path: `answers.${i}`, label: `answers to exercise ${number}`, value: given, allowed: `a list of ${parts.length}, each a text, a number or null`});
    return {kind, number, ...check(item, given.map((each: string | number | null) => (each === null ? undefined : String(each))), system)};
  });
}

/** A whole number as a word of the command; what it may be is said where it is used. */
function whole(label: string, text: string): number {
  if (/^\d{1,15}$/.test(text)) return Number(text);
  throw new InputError({path: label, label, value: text, reads: text, allowed: "a whole number"});
}
