import {readSeeds} from "../headless/readSeeds.js";

process.stdout.write(JSON.stringify(readSeeds()));
