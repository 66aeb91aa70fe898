import {dirname, join} from "node:path";
import {fileURLToPath} from "node:url";

/** The project's own folder. Commands read it from here, so that they carry nothing of what builds the site. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
