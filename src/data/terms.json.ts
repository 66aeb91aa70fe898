import {termForms, type FormsRow} from "../components/words/termList.js";
import {readRawTables} from "../headless/readCatalog.js";

// What it takes to find the words of the trade on a page; what they mean comes when one is first opened.
const tables = readRawTables();
process.stdout.write(JSON.stringify(termForms(tables["glossary"] as unknown as {term: string; page: string}[], tables["glossary-forms"] as unknown as FormsRow[])));
