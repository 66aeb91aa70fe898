import {execFileSync, spawn, spawnSync} from "node:child_process";
import {mkdtempSync, rmSync} from "node:fs";
import {join} from "node:path";
import {pathToFileURL} from "node:url";
import {buildSync} from "esbuild";
import {expect} from "vitest";
import {ROOT} from "../../src/headless/root.js";

/** What a command left behind. */
export interface Outcome {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** A command of `src/headless/`, made ready to be started many times. */
export interface Command {
  /** The one file that it is. */
  readonly file: string;
  run(...words: string[]): Outcome;
  /** Runs it with a text on standard input. */
  runOn(input: string, ...words: string[]): Outcome;
  /** Runs it into a pipe that nobody reads any more: its exit code, and what it said on standard error. */
  runIntoClosedPipe(...words: string[]): Promise<{readonly code: number | null; readonly stderr: string}>;
  close(): void;
}

/**
 * Makes one file of a command, so that a child process starts in a tenth of the time that `tsx` takes. The command
 * itself is the same; see {@link throughTsx} for the way a reader starts it.
 */
export function commandOf(name: string): Command {
  // Among the packages, so that it finds those that are no JavaScript alone.
  const folder = mkdtempSync(join(ROOT, "node_modules", ".command-"));
  const outfile = join(folder, `${name}.mjs`);
  buildSync({
    entryPoints: [join(ROOT, "src", "headless", `${name}.ts`)], outfile, bundle: true, platform: "node", format: "esm", target: "node20", logLevel: "error",
    external: ["esbuild", "@duckdb/node-api"],
    // The project's folder is found from where this module stands.
    define: {"import.meta.url": JSON.stringify(pathToFileURL(join(ROOT, "src", "headless", "prepare.ts")).href), "import.meta.dirname": JSON.stringify(join(ROOT, "src", "headless"))},
  });
  return {
    file: outfile,
    run: (...words) => outcome(process.execPath, [outfile, ...words]),
    runOn: (input, ...words) => outcome(process.execPath, [outfile, ...words], input),
    runIntoClosedPipe: (...words) => intoClosedPipe([outfile, ...words]),
    close: () => rmSync(folder, {recursive: true}),
  };
}

/** Runs a command as the package's scripts do. */
export function throughTsx(name: string, ...words: string[]): Outcome {
  return outcome(process.execPath, ["--import", "tsx", join("src", "headless", `${name}.ts`), ...words]);
}

/** Most that a command may print, bytes: all results of a design are more than the megabyte that a child process is given. */
const OUTPUT_BYTES = 16 * 2 ** 20;

function outcome(program: string, words: string[], input?: string): Outcome {
  const {status, stdout, stderr} = spawnSync(program, words, {cwd: ROOT, encoding: "utf8", input, maxBuffer: OUTPUT_BYTES});
  return {code: status, stdout, stderr};
}

function intoClosedPipe(words: string[]): Promise<{code: number | null; stderr: string}> {
  const child = spawn(process.execPath, words, {cwd: ROOT, stdio: ["ignore", "pipe", "pipe"]});
  let stderr = "";
  child.stdout.destroy();
  child.stderr.on("data", (chunk) => (stderr += String(chunk)));
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => resolve({code, stderr}));
  });
}

/** One clear line on standard error, nothing on standard output, no stack trace, exit code 2. */
export function expectRefusal({code, stdout, stderr}: Outcome, says: string | RegExp): void {
  expect(stderr).toMatch(/^[^\n]+\n$/);
  expect(stderr).not.toMatch(/\n\s+at |node:internal|Error:/);
  expect(stderr).toMatch(says instanceof RegExp ? says : new RegExp(says.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")));
  expect(stdout).toBe("");
  expect(code).toBe(2);
}

/** Runs one of the package's scripts as a reader types it. */
export function script(name: string, ...words: string[]): string {
  return execFileSync("npm", ["run", "-s", name, "--", ...words], {cwd: ROOT, encoding: "utf8"});
}
