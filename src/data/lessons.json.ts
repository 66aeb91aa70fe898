import {readLessons} from "../headless/readLessons.js";

process.stdout.write(JSON.stringify(readLessons()));
