/** `npm start`: serves the notebook to this machine alone and prints its address. Arguments are passed on: `npm start -- --port 4000`. */
import {runGenerator} from "./framework.js";
import {clearCache, prepare} from "./prepare.js";

clearCache();
prepare();
const {code} = await runGenerator(["preview", "--host", "127.0.0.1", "--no-open", ...process.argv.slice(2)]);
process.exitCode = code;
