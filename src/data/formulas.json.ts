import {readCatalog} from "../../lib/catalog.js";
import {evaluate} from "../../lib/evaluate.js";
import {formulasOf} from "../components/worked/formulas.js";
import {readRawTables} from "../headless/readCatalog.js";
import {readSeeds} from "../headless/readSeeds.js";

// Set when the site is built, so that no page waits for a typesetter.
const catalog = readCatalog(readRawTables());
process.stdout.write(JSON.stringify(formulasOf(readSeeds().map(({design}) => evaluate(design, catalog)))));
