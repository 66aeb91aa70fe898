import {readCatalogue} from "../../lib/catalogue.js";
import {evaluate} from "../../lib/evaluate.js";
import {symbolMeanings} from "../components/pages/symbolMeanings.js";
import {symbolTex} from "../components/symbols.js";
import {mathMarkup} from "../components/worked.js";
import {readRawTables} from "../headless/readCatalogue.js";
import {readSeeds} from "../headless/readSeeds.js";

// Gathered and set when the site is built, so that no page waits for a typesetter.
const catalogue = readCatalogue(readRawTables());
const results = readSeeds().map(({design}) => evaluate(design, catalogue));
process.stdout.write(JSON.stringify(symbolMeanings(results).map((symbol) => ({...symbol, markup: mathMarkup(symbolTex(symbol.name))}))));
