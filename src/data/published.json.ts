import {readRawTables} from "../headless/readCatalog.js";

/** The tables of published values alone: only the page that compares asks for them. */
const published = Object.entries(readRawTables()).filter(([name]) => name.startsWith("published-"));

process.stdout.write(JSON.stringify(Object.fromEntries(published)));
