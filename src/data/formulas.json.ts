import {readCatalogue} from "../../lib/catalogue.js";
import {evaluate} from "../../lib/evaluate.js";
import {formulasOf} from "../components/worked/formulas.js";
import {readRawTables} from "../headless/readCatalogue.js";
import {readSeeds} from "../headless/readSeeds.js";

// Set when the site is built, so that no page waits for a typesetter.
const catalogue = readCatalogue(readRawTables());
process.stdout.write(JSON.stringify(formulasOf(readSeeds().map(({design}) => evaluate(design, catalogue)))));
