import {mkdtempSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {csvParseRows} from "d3-dsv";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {UNANSWERED, answerFileText} from "../../lib/practice/answerFile.js";
import {recipeText, type Recipe} from "../../lib/practice/recipe.js";
import {commandOf, expectRefusal, type Command} from "./run.js";

let command: Command;
beforeAll(() => {
  command = commandOf("practice");
});
afterAll(() => command.close());

interface Printed {
  readonly kind: string;
  readonly question: string;
  readonly givens: readonly {readonly name: string; readonly value: unknown; readonly unit: string}[];
  readonly answer?: unknown;
  readonly tolerance?: unknown;
  readonly slips?: readonly unknown[];
  readonly steps?: readonly unknown[];
  readonly parts: readonly {readonly answer: unknown; readonly unit?: string}[];
}
const items = (...words: string[]) => JSON.parse(command.run(...words).stdout) as Printed[];

describe("practice prints", () => {
  test("as many exercises as are wanted, each with its kind, question and givens with units; the same for the same seed", () => {
    const words = ["--kinds", "all", "--count", "70", "--seed", "7"];
    const set = items(...words);
    expect(set).toHaveLength(70);
    for (const {kind, question, givens, answer} of set) {
      expect(kind).toMatch(/^[a-z-]+$/);
      expect(question.length).toBeGreaterThan(20);
      expect(givens.length).toBeGreaterThan(0);
      for (const each of givens) expect(Object.keys(each).sort()).toEqual(["name", "unit", "value"]);
      expect(answer).toBeUndefined();
    }
    expect(new Set(set.slice(0, 60).map(({kind}) => kind)).size).toBe(60);
    expect(command.run(...words).stdout).toBe(command.run(...words, "--json").stdout);
    const other = items("--kinds", "all", "--count", "70", "--seed", "8");
    set.forEach(({givens, kind}, i) => expect(JSON.stringify(givens), kind).not.toBe(JSON.stringify(other[i]?.givens)));
  });

  test("with the key the answer, its tolerance, slips and worked steps; it marks itself as right", () => {
    const words = ["--kinds", "camber,size-a-bay", "--seed", "3"];
    const set = items(...words, "--key");
    for (const {answer, tolerance, slips, steps, parts} of set) {
      expect([answer, tolerance, slips, steps]).not.toContain(undefined);
      expect(answer).toEqual(parts.at(-1)?.answer);
    }
    const answers = JSON.stringify(set.map(({parts}) => parts.map(({answer, unit}) => (unit ? `${String(answer)} ${unit}` : answer))));
    const marks = JSON.parse(command.runOn(answers, ...words, "--answers", "-").stdout) as {points: number; of: number}[];
    expect(marks.map(({points}) => points)).toEqual(marks.map(({of}) => of));
  });

  test("a page to print, with its key on pages of their own or without", () => {
    const page = command.run("--kinds", "snow", "--seed", "3", "--html", "--key", "--units", "both").stdout;
    expect(page).toMatch(/^<!doctype html>/);
    expect(page).toContain('<section class="key">');
    expect(page).toContain("kPa");
    expect(command.run("--kinds", "snow", "--seed", "3", "--html").stdout).not.toContain('<section class="key">');
  });
});

describe("a set's file", () => {
  const recipe: Recipe = {title: "Week 3", seed: 40, variants: true, hints: false, checked: false, kinds: [{kind: "factored-load", count: 2, points: 2}]};
  const folder = mkdtempSync(join(tmpdir(), "sets-"));
  const set = join(folder, "set.txt");
  beforeAll(() => writeFileSync(set, recipeText(recipe)));
  afterAll(() => rmSync(folder, {recursive: true}));

  test("prints its exercises with its points, the same for the same student and other for another", () => {
    const [all, seven, eight] = [[], ["--student", "7"], ["--student", "8"]].map((more) => items("--set", set, "--key", ...more)) as [Printed[], Printed[], Printed[]];
    expect(all).toHaveLength(2);
    expect(new Set([all, seven, eight].map((printed) => JSON.stringify(printed[0]?.givens))).size).toBe(3);
    expect(items("--set", set, "--key", "--student", " 07")).toEqual(seven);
    const html = command.run("--set", set, "--html", "--student", "Ada Quill").stdout;
    expect(html).toContain("<b>Ada Quill</b>");
    expect(html).toContain("of 4</p>");
  });

  test("marks a folder of answers as CSV, and names what it does not mark", () => {
    const answers = (student: string, given: (number: number) => string) => answerFileText({recipe, student, units: "US", answers: [0, 1].map((i) => [{...UNANSWERED, tries: [given(i)]}])});
    const key = items("--set", set, "--key", "--student", "7").map(({parts}) => `${String(parts[0]?.answer)} ${parts[0]?.unit}`);
    writeFileSync(join(folder, "a.json"), answers("7", (i) => key[i] ?? ""));
    writeFileSync(join(folder, "b.json"), answers("8", () => "1 psf"));
    writeFileSync(join(folder, "c.json"), answers("9", () => "1 psf").replace("1 psf", "2 psf"));
    const {stdout, stderr, code} = command.run("--set", set, "--mark", folder);
    expect(code).toBe(0);
    expect(csvParseRows(stdout).slice(0, 3).map((cells) => cells.slice(0, 3))).toEqual([["student", "points", "of"], ["7", "4", "4"], ["8", "0", "4"]]);
    expect(stderr).toMatch(/^c\.json: answer file: a file that was changed after it was saved/);
    expect(JSON.parse(command.run("--set", set, "--mark", folder, "--json").stdout)).toMatchObject({refused: [{fileName: "c.json"}], exercises: [{shareRight: 0.5}, {shareRight: 0.5}]});
  });

  test.each([[["--mark", "x", "--seed", "1"], "usage:"], [["--set", "SET", "--seed", "1"], "usage:"], [["--set", "SET", "--mark", "x", "--key"], "usage:"], [["--student", "7", "--seed", "1"], "usage:"], [["--set", "SET", "--mark", "no-such-folder"], "no-such-folder: there is no such folder"], [["--set", "package.json"], "package.json: set: a file of another kind"], [["--set", "SET", "--student", " "], "name or number: missing"]])(
    "is refused with %j", (words, says) => expectRefusal(command.run(...words.map((word) => (word === "SET" ? set : word))), says));
});

describe("practice refuses", () => {
  test.each([
    [["--kinds", "stairs", "--seed", "1"], "kinds: stairs is not possible (all; topics loads, "], [["--seed", "1", "--count", "0"], "count: 0 is not possible (whole number, 1 to 500)"], [["--seed", "1", "--count", "ten"], "count: ten is not possible (a whole number)"],
    [["--seed", "5000000000"], "seed: 5000000000 is not possible (whole number, 0 to 4294967295)"], [["--seed=-1"], "seed: -1 is not possible"], [["--seed", "1", "--units", "metric"], "units: \"metric\" is not possible (US, SI, both)"], [["--kinds", "all"], "usage:"],
    [["--seed", "1", "--json", "--html"], "usage:"], [["--seed", "1", "--seed", "2"], "--seed is given more than once"], [["--seed", "1", "all"], "usage:"], [["--seed", "1", "--answers", "no-such-file.json"], "no-such-file.json: there is no such file"],
  ])("%j in one line that names the field", (words, says) => {
    expectRefusal(command.run(...words), says);
  });

  test.each([["{}", "answers"], ["[[\"1\"]]", "a list of 5"], ["[[],[],[],[],[]]", "answers to exercise 1"], ["[[1], [1], [1], [1, {}], [1]]", "answers to exercise 4"]])("answers %s that do not fit the set", (content, says) => {
    expectRefusal(command.runOn(content, "--kinds", "loads", "--seed", "1", "--answers", "-"), says);
  });
});
