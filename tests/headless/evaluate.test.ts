import {mkdtempSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {feederForRate, mainForRate, straightLossIn} from "../../lib/air/air.js";
import type {Check} from "../../lib/checks.js";
import {DESIGN_VERSION} from "../../lib/design/fields.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {commandOf, expectRefusal, script, throughTsx, type Command} from "./run.js";

let command: Command;
const folder = mkdtempSync(join(tmpdir(), "designs-"));
beforeAll(() => {
  command = commandOf("evaluate");
});
afterAll(() => {
  command.close();
  rmSync(folder, {recursive: true});
});

/** A file of the given text. */
function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const LIBRARY = JSON.stringify(seed("branch-library"));
/** The library's design with one piece of its text changed. */
const changed = (from: string, to: string): string => {
  expect(LIBRARY).toContain(from);
  return LIBRARY.replace(from, to);
};

/** Paths at which a value is null; JSON writes null for what is not a finite number. */
function nulls(value: unknown, path = ""): string[] {
  if (value === null) return [path];
  if (typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, entry]) => nulls(entry, `${path}.${key}`));
}

/** What is not printed because it stands elsewhere, besides lists of checks that do; the last two are told by names that the catalog and the design explain. */
const LEFT_OUT = [
  "air.ducts", "laid.shape", "roof.snow", "columns.columns.*.foot", "columns.columns.*.column.takedown.stories", "columns.columns.*.column.worst",
  "candidates.*.member", "roof.design", "story.roof", "openTop.snow",
];

const asJson = (value: unknown): object => JSON.parse(JSON.stringify(value)) as object;

/** What a value has and another, which has nothing else, has not, by path with `*` for a place in a list. */
function leftOut(all: object, printed: object, path = ""): {path: string; value: unknown}[] {
  return Object.entries(all).flatMap(([key, value]: [string, unknown]) => {
    const at = `${path}${Array.isArray(all) ? "*" : key}`;
    if (!Object.hasOwn(printed, key)) return [{path: at, value}];
    return typeof value === "object" && value !== null ? leftOut(value, (printed as Record<string, object>)[key] as object, `${at}.`) : [];
  });
}

describe("evaluate prints", () => {
  test.each(seeds)("all results of $id as JSON, every number of them finite", ({id, design}) => {
    const {code, stdout, stderr} = command.run(join("seeds", `${id}.json`));
    expect(stderr).toBe("");
    expect(code).toBe(0);
    const printed = JSON.parse(stdout) as Record<string, unknown>;
    expect(nulls(printed)).toEqual([]);
    const results = evaluate(design, catalog);
    const {air} = results;
    // What the air's rate asks for and what its main loses is worked out to be printed.
    const ofAir = air && {air: {...air, mainForRate: mainForRate(air), feederForRate: feederForRate(air), straightLossIn: straightLossIn(air)}};
    const all = asJson({...results, ...ofAir, columns: columnsOf(results, catalog), candidates: candidates(design, catalog)});
    if (air) expect(printed["air"]).toHaveProperty("straightLossIn", straightLossIn(air));
    expect(all).toMatchObject(printed);
    const left = leftOut(all, printed);
    const had = (path: string) => !((path.startsWith("roof.") || path === "story.roof") && !results.roof) && !(path.startsWith("air.") && !results.air) && !(path.startsWith("openTop.") && !results.openTop);
    expect(new Set(left.map(({path}) => path).filter((path) => !path.endsWith("checks")))).toEqual(new Set(LEFT_OUT.filter(had)));
    // Each of them stands elsewhere in what is printed.
    const said = new Set([...printed["checks"] as Check[], ...(printed["columns"] as {checks: Check[]}).checks].map(({message}) => message));
    for (const {path, value} of left.filter((one) => one.path.endsWith("checks"))) for (const check of value as Check[]) expect(said, path).toContain(check.message);
    expect(asJson(results.laid.shape)).toEqual(asJson(results.member.shape));
    expect(asJson(results.roof?.snow ?? results.roofLoads)).toEqual(asJson(results.roofLoads));
    expect(asJson(results.air?.ducts ?? results.services.ducts ?? {})).toEqual(asJson(results.services.ducts ?? {}));
    for (const {column, foot} of columnsOf(results, catalog).columns) {
      expect(column.takedown.stories).toEqual(column.stories.map(({load}) => load));
      expect(column.takedown.stories).toContainEqual(foot);
      expect(column.stories).toContainEqual(column.worst);
    }
    // What a pipe or another program reads at once; the starters take 270 to 430 kB.
    expect(stdout.length).toBeLessThan(450_000);
    expect(Object.keys(printed)).toEqual(expect.arrayContaining(["design", "loads", "member", "deck", "edgeBeam", "story", "checks", "verdict", "candidates"]));
  });

  test("the same through npm, through tsx and through a bundle", () => {
    const path = join("seeds", "branch-library.json");
    const bundled = command.run(path);
    expect(throughTsx("evaluate", path)).toEqual(bundled);
    expect(script("evaluate", path)).toBe(bundled.stdout);
  });

  test("results of a design that fails, with exit code 0: that is a finding, not a fault", () => {
    const {code, stdout} = command.run(file("long.json", changed(`"spanFt":40`, `"spanFt":120`)));
    expect(code).toBe(0);
    const printed = JSON.parse(stdout) as {verdict: string};
    expect(printed.verdict).toBe("fails");
    expect(nulls(printed)).toEqual([]);
  });
});

describe("evaluate refuses", () => {
  const cases: readonly [string, () => string[], string | RegExp][] = [
    ["no file", () => [], /^usage: /],
    ["an empty name", () => [""], /^usage: /],
    ["two files", () => ["a.json", "b.json"], /^usage: /],
    ["an unknown option", () => ["--all"], "--all"],
    ["a file that is missing", () => [join(folder, "nowhere.json")], /nowhere\.json: there is no such file/],
    ["a directory", () => [folder], /directory/],
    ["a file below a file", () => [join(file("plain.txt", "x"), "design.json")], /directory/],
    ["an empty file", () => [file("empty.json", "")], "design file: an empty file is not possible (JSON text)"],
    ["what is not JSON", () => [file("song.json", "la la\nla")], "is not possible (JSON text)"],
    ["bytes that are no text", () => [file("bytes.json", "\u0000\u0001\ufffd")], "is not possible (JSON text)"],
    ["a JSON list", () => [file("list.json", `[${LIBRARY}]`)], "an object with the fields of a design"],
    ["JSON null", () => [file("null.json", "null")], "design file: null is not possible"],
    ["another format", () => [file("format.json", changed("plank-and-tee-design", "song"))], `format: "song" is not possible (plank-and-tee-design)`],
    ["a later version", () => [file("version.json", changed(`"version":${DESIGN_VERSION}`, `"version":${DESIGN_VERSION + 1}`))], `version of the design file: ${DESIGN_VERSION + 1} is not possible`],
    ["a value out of range", () => [file("range.json", changed(`"spanFt":40`, `"spanFt":-3`))], "span: -3 ft is not possible (10 to 150 ft)"],
    ["a value of a wrong type", () => [file("type.json", changed(`"spanFt":40`, `"spanFt":"40"`))], `span: "40" is not possible (a number, 10 to 150 ft)`],
    ["a misspelled field", () => [file("misspelled.json", changed(`"spanFt"`, `"spanFeet"`))], "bay.spanFeet: 40 is not possible"],
    ["a member that is not in the catalog", () => [file("member.json", changed("10DT32", "10DT33"))], `deck member: "10DT33" is not possible`],
    ["a pattern that does not fit its member", () => [file("pattern.json", changed("108-S", "98-S"))], `strand pattern: "98-S" is not possible`],
    ["an occupancy that is not in the table", () => [file("room.json", changed("library-stacks", "cellar"))], `occupancy: "cellar" is not possible`],
  ];
  test.each(cases)("%s", (_, words, says) => {
    expectRefusal(command.run(...words()), says);
  });

  test("in the same way through tsx", () => {
    expectRefusal(throughTsx("evaluate", "nowhere.json"), /no such file/);
  });
});
