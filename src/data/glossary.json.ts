import {readRawTables} from "../headless/readCatalogue.js";

process.stdout.write(JSON.stringify(readRawTables()["glossary"]));
