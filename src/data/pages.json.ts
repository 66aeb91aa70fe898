import {listPages} from "../headless/pages.js";

process.stdout.write(JSON.stringify(listPages()));
