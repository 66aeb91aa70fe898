import {readRawTables} from "../headless/readCatalog.js";

process.stdout.write(JSON.stringify(readRawTables()["glossary"]));
