import {execFileSync, spawn} from "node:child_process";
import {once} from "node:events";
import {existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {DuckDBInstance} from "@duckdb/node-api";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {schemesOf} from "../../lib/schemes/scheme.js";
import {readStudy} from "../../lib/schemes/study.js";
import {blocksOf} from "../../src/headless/studyPlan.js";
import {shardOf} from "../../src/headless/studyShard.js";
import {catalog} from "../support/designs.js";
import {commandOf, type Command} from "./run.js";

const ROOT = join(import.meta.dirname, "../..");
/** Most steps in the folder that a run is let take: a block is begun as text, done, begun as Parquet and done, while the next is begun. */
const STEPS = 10;
const STARTER = join(ROOT, "seeds/studies/spans-and-ceilings.json");

describe("a shard of a study", () => {
  test.each([
    ["3/16", {}, {index: 3, of: 16}],
    [undefined, {}, {index: 1, of: 1}],
    ["/16", {JOB_COMPLETION_INDEX: "0"}, {index: 1, of: 16}],
    ["/16", {SLURM_ARRAY_TASK_ID: "7", SLURM_ARRAY_TASK_MIN: "4"}, {index: 4, of: 16}],
    [undefined, {SLURM_ARRAY_TASK_ID: "16", SLURM_ARRAY_TASK_MIN: "1", SLURM_ARRAY_TASK_COUNT: "16"}, {index: 16, of: 16}],
  ])("%s in %j", (words, environment, shard) => {
    expect(shardOf(words, environment)).toEqual(shard);
  });

  test.each(["0/16", "17/16", "3", "a/b", "/16"])("%s is refused", (words) => {
    expect(() => shardOf(words, {})).toThrow(/shard/);
  });

  test("holds every so many-th block, and all shards together each scheme once", () => {
    const all = [1, 2, 3].flatMap((index) => blocksOf({count: 1234}, {index, of: 3}, 100)).flatMap(({first, count}) => Array.from({length: count}, (_, i) => first + i));
    expect(all.sort((a, b) => a - b)).toEqual(Array.from({length: 1234}, (_, i) => i));
  });
});

test("the starter study asks its one brief for every ceiling with every upstand", () => {
  const study = readStudy(readFileSync(STARTER, "utf8"), catalog);
  expect(study.cases.map(({values}) => values)).toEqual([[9, 0], [9, 30], [10, 0], [10, 30]]);
  expect(study.cases.map(({brief}) => [brief.ceilingFt, brief.base.edgeBeam.upstandIn])).toEqual([[9, 0], [9, 30], [10, 0], [10, 30]]);
  expect(study.count).toBe(4 * (study.cases[0]?.count ?? 0));
});

describe("a run of a study", () => {
  const folder = mkdtempSync(join(tmpdir(), "study-test-"));
  const file = join(folder, "study.json");
  const out = join(folder, "out");
  let command: Command;
  const words = () => [command.file, file, "--out", out, "--workers", "1", "--block", "1"];

  beforeAll(() => {
    command = commandOf("study");
    const study = JSON.parse(readFileSync(STARTER, "utf8")) as {briefs: {vary: object}[]};
    for (const brief of study.briefs) brief.vary = {...brief.vary, spanFt: [24, 28, 32, 36, 40], baysAcross: 1, deck: "planks", edge: "ledge"};
    writeFileSync(file, JSON.stringify(study));
  });
  afterAll(() => {
    command.close();
    rmSync(folder, {recursive: true, force: true});
  });

  test("killed twenty times and begun again loses no row and doubles none", {timeout: 240_000}, async () => {
    const files = () => (existsSync(out) ? readdirSync(out).sort().join() : "");
    let killed = 0;
    for (let time = 0; time < 20; time++) {
      const run = spawn(process.execPath, words(), {cwd: ROOT, stdio: "ignore"});
      // Each dies some steps after it has first touched the folder, so that all that it does there is cut short, on a fast machine as on a slow one.
      let seen = files();
      let steps = 0;
      const look = setInterval(() => {
        const now = files();
        if (now === seen) return;
        [seen, steps] = [now, steps + 1];
        if (steps > time % STEPS) run.kill("SIGKILL");
      }, 3);
      const [, signal] = await once(run, "exit") as [number | null, string | null];
      clearInterval(look);
      if (signal === "SIGKILL") killed += 1;
    }
    expect(killed).toBe(20);
    const last = JSON.parse(execFileSync(process.execPath, words(), {cwd: ROOT, encoding: "utf8", stdio: ["ignore", "pipe", "ignore"]})) as {schemes: number; made: number; there_before: number};
    expect(last.made + last.there_before).toBe(last.schemes);
    expect(Math.min(last.made, last.there_before)).toBeGreaterThan(0);
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    const table = `'${join(out, "*.parquet")}'`;
    const [counts] = (await connection.runAndReadAll(`SELECT count(*)::INTEGER AS rows, count(DISTINCT "index")::INTEGER AS distinct_rows, min("index")::INTEGER AS first, max("index")::INTEGER AS last FROM ${table}`)).getRowObjects();
    expect(counts).toEqual({rows: last.schemes, distinct_rows: last.schemes, first: 0, last: last.schemes - 1});
    // The rows are those that the library makes.
    const study = readStudy(readFileSync(file, "utf8"), catalog);
    const rows = (await connection.runAndReadAll(`SELECT "index"::INTEGER AS number, floor_to_floor_ft AS heightFt, fails, "ceilingFt" AS ceilingFt FROM ${table} ORDER BY "index"`)).getRowObjects() as {number: number; heightFt: number | null; fails: string; ceilingFt: number}[];
    for (const {brief, first, count} of study.cases) {
      const schemes = schemesOf(brief, catalog);
      for (let i = 0; i < count; i++) {
        const scheme = schemes.at(i);
        const row = rows[first + i];
        expect(row?.ceilingFt).toBe(brief.ceilingFt);
        expect(row?.heightFt ?? undefined).toBe("none" in scheme ? undefined : scheme.design.story.floorToFloorFt);
        expect(row?.fails).toBe("none" in scheme ? scheme.none : scheme.fails.map(({id}) => id).join("; "));
      }
    }
  });

  test("of another study into the same folder is refused", () => {
    const other = join(folder, "other.json");
    writeFileSync(other, JSON.stringify({...(JSON.parse(readFileSync(file, "utf8")) as object), name: "Another"}));
    let said = "";
    try {
      execFileSync(process.execPath, words().map((word) => (word === file ? other : word)), {cwd: ROOT, encoding: "utf8", stdio: "pipe"});
    } catch (problem) {
      said = (problem as {stderr: string}).stderr;
    }
    expect(said).toMatch(/holds the files of another study/);
  });
});
