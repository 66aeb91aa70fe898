import {readCatalog} from "../../lib/catalog.js";
import {withValue} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {InputError} from "../../lib/errors.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {symbolMeanings} from "../components/shared/symbolMeanings.js";
import {symbolTex} from "../components/symbols.js";
import {mathMarkup} from "../components/worked.js";
import {readRawTables} from "../headless/readCatalog.js";
import {readSeeds} from "../headless/readSeeds.js";

// Gathered and set when the site is built, so that no page waits for a typesetter.
const catalog = readCatalog(readRawTables());
const choices = Object.entries(FIELDS).flatMap(([path, field]) => (field.kind === "choice" && !path.includes("*") ? Object.keys(field.choices).map((value) => ({path, value})) : []));
// The starters, and each with every choice that a design has: a choice may bring symbols of its own.
const results = readSeeds().flatMap(({design}) => [design, ...choices.map(({path, value}) => withValue(design, path, value))].flatMap((each): Evaluation[] => {
  try {
    return [evaluate(each, catalog)];
  } catch (problem) {
    // Parts that do not fit each other show no steps.
    if (problem instanceof InputError) return [];
    throw problem;
  }
}));
process.stdout.write(JSON.stringify(symbolMeanings(results).map((symbol) => ({...symbol, markup: mathMarkup(symbolTex(symbol.name))}))));
