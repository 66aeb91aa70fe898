import MiniSearch from "minisearch";
import {readCatalog} from "../../lib/catalog.js";
import {INDEX_OPTIONS} from "../components/search/searchIndex.js";
import {listPages} from "../headless/pages.js";
import {readRawTables} from "../headless/readCatalog.js";
import {readSeeds} from "../headless/readSeeds.js";
import {searchDocuments} from "../headless/searchDocuments.js";

// Indexed when the site is built, so that the first letter that a reader types finds something.
const tables = readRawTables();
const index = new MiniSearch(INDEX_OPTIONS);
index.addAll(searchDocuments(listPages(), tables, readSeeds().map(({design}) => design), readCatalog(tables)));
process.stdout.write(JSON.stringify(index));
