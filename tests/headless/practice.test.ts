import {afterAll, beforeAll, describe, expect, test} from "vitest";
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
