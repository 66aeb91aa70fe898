import {isReference, listPages} from "../headless/pages.js";

process.stdout.write(JSON.stringify(listPages().map((page) => ({...page, reference: isReference(page)}))));
