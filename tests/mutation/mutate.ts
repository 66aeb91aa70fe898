/**
 * Mutation testing of the library: small faults are put into one folder of `lib/` at a time, and its tests must notice.
 *
 *     npm run mutate -- loads columns     the folders named; all of them without a name
 *     npm run mutate -- beams/torsion.ts  one file
 *     npm run mutate -- loads --fresh     every mutant anew, also those whose code and tests have not changed
 *
 * Prints what survived and writes the share that was killed of each whole folder into the table of DEVELOPERS.md.
 * Words are not mutated: what a message says is read by people, and a wrong word of a type does not compile.
 */
import {existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync} from "node:fs";
import {join} from "node:path";
import {parseArgs} from "node:util";
import {Stryker} from "@stryker-mutator/core";
import {ROOT} from "../../src/headless/root.js";

/** Folders of `lib/` whose share killed should reach 85 %; 75 % is the goal elsewhere. */
const HARD = ["beams", "columns", "deck", "edgeBeam", "girder", "loads", "member", "prestress"];
/** Tests that mutants of a folder are tried against, beside those of the folder's own name: fast ones that are about it. */
const MORE_TESTS: Readonly<Record<string, readonly string[]>> = {
  beams: ["edgeBeam", "girder"],
  deck: ["published/handbookDeckLoads.test.ts", "steps/cell.test.ts"],
  published: ["published"],
  roof: ["snow/roofLoads.test.ts"],
};
/**
 * Tests that mutants of a folder are not tried against, each with its reason. A sweep that takes seconds would be run anew for
 * every mutant that it passes by; what it alone notices belongs into a fast test beside it.
 */
const SLOW: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  air: {
    "air/collisionsAll.test.ts": "lays out the ducts of 2,000 random designs",
  },
  beams: {
    "edgeBeam/takesAll.test.ts": "searches over all ledges, webs, bars and strands of every starter design",
    "girder/takesAll.test.ts": "searches over all depths and strands, some thousand girders a test",
  },
  columns: {
    "columns/axisTowardSweep.test.ts": "searches nine hundred axes twice",
    "columns/biaxialSweep.test.ts": "sums up small squares for each of 36 axes, and searches some hundred rays",
    "columns/columnStoryAll.test.ts": "sizes every column of every starter design",
    "columns/columnsResultAll.test.ts": "sizes every column of every starter design, and of designs beyond the methods",
    "columns/firstSizeHeights.test.ts": "sizes every column of a design at seven heights",
    "columns/strips.test.ts": "sums up thin strips for each of 120 axes",
  },
  edgeBeam: {
    "edgeBeam/takesAll.test.ts": "searches over all ledges, webs, bars and strands of every starter design",
  },
  girder: {
    "girder/takesAll.test.ts": "searches over all depths and strands, some thousand girders a test",
  },
  member: {
    "member/shearPlaceSweep.test.ts": "searches the spans of the whole catalog place by place",
    "member/timeCamberSteps.test.ts": "compares camber with that of four times as many steps and places",
  },
  prestress: {
    "prestress/boundsSweep.test.ts": "searches the spans of the whole catalog with the weakest concrete",
  },
  deck: {
    "deck/chooseAll.test.ts": "puts every member into every starter design",
    "deck/deckShearAll.test.ts": "looks at 150 places of each of 60 tees",
    "deck/frontierAll.test.ts": "searches the whole catalog for every starter design",
    "deck/reachAll.test.ts": "looks at 800 spans of each of eight members",
    "deck/refusals.test.ts": "runs the whole pipeline for each refusal",
    "deck/safeLoadAll.test.ts": "looks at 140 places of each of 200 tees",
    "deck/searchAll.test.ts": "searches the whole catalog for every starter design and seven strengths",
    "deck/sweepAll.test.ts": "makes every member with every strand",
    "deck/tableAll.test.ts": "makes every member with every strand",
  },
  schemes: {
    "schemes/ends.test.ts": "sizes the beams of some thirty schemes, some of them twice",
    "schemes/laws.test.ts": "makes and measures some hundred random designs",
  },
  files: {
    "tradeOffs.test.ts": "searches the whole catalog",
  },
  design: {
    "design/refusedFields.test.ts": "tries both ends of every field through the whole pipeline",
    "design/used.test.ts": "works out columns twice for every field that is not used",
  },
};
/** Parts of the library that are files, not folders. */
const FILES = ["catalog", "check", "checks", "errors", "evaluate", "pair", "quantities", "tables", "told", "tradeOffs", "units"];
/** What the tool keeps between runs; not under version control. */
const KEPT = join(ROOT, ".mutation");
const TABLE = {file: join(ROOT, "DEVELOPERS.md"), from: "<!-- mutation: begin -->", to: "<!-- mutation: end -->"};

/** How the mutants of one part ended. */
interface Score {
  readonly part: string;
  readonly killed: number;
  readonly all: number;
}

const {values, positionals} = parseArgs({allowPositionals: true, options: {fresh: {type: "boolean", default: false}, processes: {type: "string", default: "2"}}});
const folders = readdirSync(join(ROOT, "lib")).filter((name) => statSync(join(ROOT, "lib", name)).isDirectory());
const parts = positionals.length > 0 ? positionals : [...folders, "files"];
for (const part of parts) {
  const score = await mutate(part);
  process.stdout.write(`${score.part}: ${score.killed} of ${score.all} mutants killed, ${percent(score)}\n`);
  if (!part.endsWith(".ts")) writeRow(score);
}

/** Tries every mutant of one folder, of one file of a folder, or of the files beside the folders. */
async function mutate(part: string): Promise<Score> {
  const folder = part.split("/")[0] as string;
  if (part !== "files" && !folders.includes(folder)) throw new Error(`${part}: the parts are ${folders.join(", ")}, files`);
  const tests = part === "files"
    ? FILES.map((name) => `${name}.test.ts`).filter((name) => existsSync(join(ROOT, "tests", name)))
    : [...existsSync(join(ROOT, "tests", folder)) ? [folder] : [], ...MORE_TESTS[folder] ?? []];
  const slow = Object.keys(SLOW[folder] ?? {});
  const missing = slow.find((name) => !existsSync(join(ROOT, "tests", name)));
  if (missing) throw new Error(`${missing}: no such file of tests, though it is listed as slow`);
  process.env["MUTATION_TESTS"] = tests.join(" ");
  process.env["MUTATION_SLOW"] = slow.join(" ");
  // One for the folder: what is known of its other files stays as it is when one is tried alone.
  const incrementalFile = join(KEPT, `${folder}.json`);
  mkdirSync(KEPT, {recursive: true});
  if (values.fresh) rmSync(incrementalFile, {force: true});
  const results = await new Stryker({
    testRunner: "vitest",
    plugins: ["@stryker-mutator/vitest-runner"],
    vitest: {configFile: "tests/mutation/vitest.config.ts", related: false},
    mutate: part === "files" ? FILES.map((name) => `lib/${name}.ts`) : [part.endsWith(".ts") ? `lib/${part}` : `lib/${part}/**/*.ts`],
    mutator: {excludedMutations: ["StringLiteral"], plugins: null},
    // The link to the library would be copied as a folder of its own.
    ignorePatterns: ["src/lib", "src/.observablehq", "src/images", "dist"],
    coverageAnalysis: "perTest",
    incremental: true,
    incrementalFile,
    concurrency: Number(values.processes),
    tempDirName: join(".mutation", "tree"),
    reporters: ["progress-append-only"],
    warnings: {slow: false, unknownOptions: true, preprocessorErrors: true, unserializableOptions: true},
    // On a busy machine a slow run is no endless one: a mutant that times out counts as noticed.
    timeoutMS: 60_000,
    fileLogLevel: "off",
    logLevel: "warn",
  } as never).runMutationTest();
  const counted = results.filter(({status, fileName}) => status !== "Ignored" && status !== "CompileError" && (!part.endsWith(".ts") || fileName.endsWith(`lib/${part}`)));
  for (const {status, fileName, location, mutatorName, replacement} of counted) {
    if (status === "Killed" || status === "Timeout") continue;
    const place = `${fileName.slice(fileName.indexOf("lib/"))}:${location.start.line}:${location.start.column + 1}`;
    process.stdout.write(`${status.toLowerCase()}  ${place}  ${mutatorName}  ${(replacement ?? "").replace(/\s+/g, " ").slice(0, 120)}\n`);
  }
  return {part, killed: counted.filter(({status}) => status === "Killed" || status === "Timeout").length, all: counted.length};
}

function percent({killed, all}: Score): string {
  return all === 0 ? "none" : `${((100 * killed) / all).toFixed(1)} %`;
}

/** Puts a part's row into the table of the contributors' guide, in the place of its older one. */
function writeRow(score: Score): void {
  const text = readFileSync(TABLE.file, "utf8");
  const [start, end] = [text.indexOf(TABLE.from), text.indexOf(TABLE.to)];
  if (start < 0 || end < start) throw new Error(`DEVELOPERS.md has no table between ${TABLE.from} and ${TABLE.to}`);
  const rows = text.slice(start, end).split("\n").filter((line) => line.startsWith("| `"));
  const goal = HARD.includes(score.part) ? 85 : 75;
  const row = `| \`${score.part}\` | ${score.all} | ${percent(score)} | ${goal} % |`;
  const others = rows.filter((line) => !line.startsWith(`| \`${score.part}\``));
  const table = ["| part of `lib/` | mutants | killed | goal |", "|---|---:|---:|---:|", ...[...others, row].sort()];
  writeFileSync(TABLE.file, `${text.slice(0, start)}${TABLE.from}\n\n${table.join("\n")}\n\n${text.slice(end)}`);
}
