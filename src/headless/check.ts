/**
 * `npm run check`: types, lint, the cells of pages and unused exports, each in a process of its own and as many at a time
 * as the machine has cores. With the word `build` it builds the site beside them, as `npm test` does. All parts run to
 * their end, and each that fails is printed whole, so that one reading shows all that is to be mended.
 */
import {spawn} from "node:child_process";
import {availableParallelism} from "node:os";
import {join} from "node:path";
import {prepare} from "./prepare.js";
import {ROOT} from "./root.js";

/** A part of the check: what it is called, and the words that Node runs it by. */
interface Part {
  readonly name: string;
  readonly words: readonly string[];
}

const packaged = (...path: string[]) => join(ROOT, "node_modules", ...path);
const own = (name: string) => ["--import", "tsx", join("src", "headless", `${name}.ts`)];

/** What takes longest begins first. */
const PARTS: readonly Part[] = [
  {name: "types", words: [packaged("typescript", "bin", "tsc")]},
  {name: "lint", words: [packaged("eslint", "bin", "eslint.js"), "."]},
  {name: "pages", words: own("checkPages")},
  {name: "types of the library alone", words: [packaged("typescript", "bin", "tsc"), "-p", "lib"]},
  {name: "unused exports", words: own("unusedExports")},
];
const BUILD: Part = {name: "build", words: own("build")};

/** Runs a part; resolves to whether it passed, after its words are printed. */
function passes({name, words}: Part): Promise<boolean> {
  const child = spawn(process.execPath, words, {cwd: ROOT, stdio: ["ignore", "pipe", "pipe"]});
  let printed = "";
  child.stdout.on("data", (chunk) => (printed += String(chunk)));
  child.stderr.on("data", (chunk) => (printed += String(chunk)));
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => {
      if (code !== 0) console.error(`${name}: failed\n${printed.trimEnd()}`);
      else if (printed.trim()) console.log(printed.trimEnd());
      resolve(code === 0);
    });
  });
}

prepare();
const waiting = process.argv.includes("build") ? [BUILD, ...PARTS] : [...PARTS];
const outcomes: boolean[] = [];
await Promise.all(Array.from({length: Math.max(1, availableParallelism())}, async () => {
  for (let part = waiting.shift(); part; part = waiting.shift()) outcomes.push(await passes(part));
}));
if (outcomes.includes(false)) process.exitCode = 1;
