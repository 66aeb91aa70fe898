import {spawn} from "node:child_process";
import {mkdirSync, openSync, closeSync, readdirSync, renameSync, rmSync} from "node:fs";
import {join} from "node:path";
import {CACHE} from "./prepare.js";
import {ROOT} from "./root.js";

const LOADERS = join("src", "data");

/**
 * Runs the data loaders while the generator still reads the pages, and leaves their output where it looks for it. It
 * would run them later and wait for each, a fifth of a build. What a loader that fails has to say is left to the
 * generator, which finds no output and runs it again.
 */
export async function dataAhead(): Promise<void> {
  mkdirSync(join(CACHE, "data"), {recursive: true});
  for (const loader of readdirSync(join(ROOT, LOADERS)).filter((name) => name.endsWith(".json.ts"))) {
    const output = join(CACHE, "data", loader.replace(/\.ts$/, ""));
    const unfinished = `${output}.ahead`;
    if (await outputOf(join(LOADERS, loader), unfinished)) renameSync(unfinished, output);
    else rmSync(unfinished);
  }
}

/** Writes what a loader prints into a file; resolves to whether it ended well. */
function outputOf(loader: string, file: string): Promise<boolean> {
  const output = openSync(file, "w");
  const child = spawn(process.execPath, ["--import", "tsx", loader], {cwd: ROOT, stdio: ["ignore", output, "ignore"]});
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => {
      closeSync(output);
      resolve(code === 0);
    });
  });
}
