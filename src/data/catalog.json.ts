import {readRawTables} from "../headless/readCatalog.js";

// Tables for reading have loaders of their own, so that every page stays light.
const FOR_READING = /^(glossary$|glossary-forms$|published-)/;

process.stdout.write(JSON.stringify(Object.fromEntries(Object.entries(readRawTables()).filter(([table]) => !FOR_READING.test(table)))));
