import {readCatalog} from "../../lib/catalog.js";
import {handbookTrials} from "../../lib/published/handbookTrials.js";
import {readPublished} from "../../lib/published/tables.js";
import {readRawTables} from "../headless/readCatalog.js";

const tables = readRawTables();
process.stdout.write(JSON.stringify(handbookTrials(readCatalog(tables), readPublished(tables))));
