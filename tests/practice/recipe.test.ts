import {describe, expect, test} from "vitest";
import {readCatalog} from "../../lib/catalog.js";
import {UNANSWERED, answerFileText, readAnswerFile, type AnswerFile} from "../../lib/practice/answerFile.js";
import {keysOf} from "../../lib/practice/keys.js";
import {KINDS} from "../../lib/practice/kinds.js";
import {check} from "../../lib/practice/marks.js";
import {countOf, readRecipe, recipeKey, recipeText, type Recipe} from "../../lib/practice/recipe.js";
import {itemsOfSet, ownPoints} from "../../lib/practice/setItems.js";
import {studentSeed, studentsIn} from "../../lib/practice/student.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {once} from "../support/once.js";

const catalog = once(() => readCatalog(readRawTables()));
const RECIPE: Recipe = {
  title: "Loads and spans", seed: 7, variants: true, hints: true, checked: false,
  kinds: [{kind: "reduced-live-load", count: 1, points: 4}, {kind: "factored-load", count: 2, points: 2.5}, {kind: "camber-order", count: 1, points: 1}],
};
/** A recipe's file with one thing changed. */
const changed = (change: Record<string, unknown>) => JSON.stringify({...JSON.parse(recipeText(RECIPE)) as object, ...change});

describe("a set's recipe", () => {
  test("is read back from its file as it was, and holds no exercise and no answer", () => {
    const text = recipeText(RECIPE);
    expect(readRecipe(text)).toEqual(RECIPE);
    expect(recipeKey(readRecipe(text))).toBe(recipeKey(RECIPE));
    expect(Object.keys(JSON.parse(text) as object)).toEqual(["format", "version", "title", "seed", "kinds", "variants", "hints", "checked"]);
  });

  test.each([
    ["{", "set: "], ["[]", "set: [] is not possible (an object)"], [changed({format: "letter"}), "set: a file of another kind"], [changed({version: 2}), "version of the set: 2 is not possible (this kit reads version 1)"],
    [changed({title: " "}), "title: "], [changed({title: "x".repeat(101)}), "title: "], [changed({seed: -1}), "seed: -1 is not possible (whole number, 0 to 4294967295)"], [changed({seed: 1.5}), "seed: 1.5"],
    [changed({kinds: []}), "kinds: none is not possible (at least one)"], [changed({kinds: undefined}), "kinds: missing"], [changed({kinds: [{kind: "stairs", count: 1, points: 1}]}), "kind: \"stairs\" is not possible"], [changed({kinds: [{kind: 3}]}), "kind: 3"], [changed({kinds: [3]}), "kind of exercise: 3"],
    [changed({kinds: [{kind: "factored-load", count: 0, points: 1}]}), "number of exercises: 0 is not possible (whole number, 1 to 20)"], [changed({kinds: [{kind: "factored-load", count: 21, points: 1}]}), "number of exercises: 21"], [changed({kinds: [{kind: "factored-load", count: 1, points: 0}]}), "points: 0 is not possible (0.5 to 100)"],
    [changed({kinds: [RECIPE.kinds[0], RECIPE.kinds[0]]}), "kinds: reduced-live-load twice is not possible"], [changed({kinds: KINDS.slice(0, 6).map(({id}) => ({kind: id, count: 17, points: 1}))}), "number of exercises of the set: 102 is not possible (1 to 100)"],
    [changed({variants: "yes"}), "numbers of their own: \"yes\" is not possible (true or false)"], [changed({hints: undefined}), "hints: missing"], [changed({checked: 1}), "answers checked in the page: 1"],
  ])("is refused where it cannot be (%#)", (text, says) => {
    expect(() => readRecipe(text)).toThrow(says);
  });

  test("makes its exercises in order, with its points shared among their parts", () => {
    const items = itemsOfSet(RECIPE, catalog());
    expect(items.map(({kind, turn, number}) => [kind, turn, number])).toEqual([["reduced-live-load", 1, 1], ["factored-load", 1, 2], ["factored-load", 2, 3], ["camber-order", 1, 4]]);
    expect(items.map(ownPoints)).toEqual([4, 2.5, 2.5, 1]);
    expect(countOf(RECIPE)).toBe(4);
    // Three parts of one point each share 4 points.
    expect(items[0]?.parts.map(({points}) => points)).toEqual([4 / 3, 4 / 3, 4 / 3]);
    const all = items.map((item) => check(item, keysOf(item).map((key, i) => { const part = item.parts[i]; return part?.type === "number" ? `${key} ${part.unit}` : String(key); })));
    expect(all.reduce((sum, {points}) => sum + points, 0)).toBeCloseTo(10, 9);
  });
});

describe("a student's numbers", () => {
  test("follow from the name whatever its capitals, spaces and accents, and differ from another's", () => {
    expect(studentSeed(7, "Ada  Quill ")).toBe(studentSeed(7, "ada quill"));
    expect(studentSeed(7, "Zo\u00eb")).toBe(studentSeed(7, "zoe"));
    expect(studentSeed(7, "Ada Quill")).not.toBe(studentSeed(7, "Ida Quill"));
    expect(studentSeed(2 ** 32 - 1, "Ada Quill")).toBeLessThan(2 ** 32);
    const seeds = Array.from({length: 2000}, (_, i) => studentSeed(3, `student ${i.toString(36)} x`));
    expect(new Set(seeds).size).toBe(2000);
  });

  test("of a class by numbers follow each other, so that no two are alike in any exercise", () => {
    expect([studentSeed(7, "1"), studentSeed(7, "007"), studentSeed(2 ** 32 - 1, "2")]).toEqual([8, 14, 1]);
    const seats = Array.from({length: 60}, (_, i) => String(i + 1));
    for (const {kind} of RECIPE.kinds) {
      const given = seats.map((seat) => JSON.stringify(itemsOfSet({...RECIPE, kinds: [{kind, count: 1, points: 1}]}, catalog(), seat).map(({givens, table}) => [givens, table?.rows])));
      expect(new Set(given).size, kind).toBe(60);
    }
  });

  test("are everyone's where the recipe says so", () => {
    const same = {...RECIPE, variants: false};
    expect(itemsOfSet(same, catalog(), "Ada").map(({seed}) => seed)).toEqual([7, 7, 7, 7]);
    expect(itemsOfSet(RECIPE, catalog(), "Ada")[0]?.seed).toBe(studentSeed(7, "Ada"));
  });

  test("names come one a line, each once", () => {
    expect(studentsIn(" Ada  Quill\r\n\n17\nada quill\nBen\n")).toEqual(["Ada Quill", "17", "Ben"]);
    expect(studentsIn("  \n")).toEqual([]);
    expect(() => studentsIn("x".repeat(81))).toThrow("name or number: ");
    expect(() => studentsIn(Array.from({length: 4}, (_, i) => `s${i}`).join("\n"), 3)).toThrow("names: 4 is not possible (at most 3)");
  });
});

describe("an answer file", () => {
  const part = (...tries: string[]) => ({tries, hints: 1, shown: false});
  const FILE: AnswerFile = {
    recipe: RECIPE, student: "Ada Quill", units: "US",
    answers: [[part("900 ft2"), part("1", "3600 ft2"), UNANSWERED], [part("12 klf")], [UNANSWERED], [part("a,b,c,d")]],
  };
  const text = answerFileText(FILE);

  test("is read back as it was, however it is spaced, and holds no time", () => {
    expect(readAnswerFile(text)).toEqual(FILE);
    expect(readAnswerFile(`\uFEFF${JSON.stringify(JSON.parse(text))}`)).toEqual(FILE);
    expect(text).not.toMatch(/date|time|\b20\d\d-/);
  });

  test("that was changed by hand says so, whatever was changed", () => {
    const tampered = [["3600 ft2", "3601 ft2"], ["Ada Quill", "Ida Quill"], ["\"points\": 4", "\"points\": 5"], ["\"seed\": 7", "\"seed\": 8"], ["\"hints\": 1", "\"hints\": 0"], ["\"hints\": true", "\"hints\": false"], ["\"units\": \"US\"", "\"units\": \"SI\""], ["\"sum\": \"", "\"sum\": \"0"]] as const;
    for (const [from, to] of tampered) {
      expect(text).toContain(from);
      expect(() => readAnswerFile(text.replace(from, to)), to).toThrow("answer file: a file that was changed after it was saved is not possible (as the page saved it). Ask for it anew");
    }
    expect(() => readAnswerFile(JSON.stringify({...JSON.parse(text) as object, sum: undefined}))).toThrow("answer file: missing");
  });

  test("that is cut, of another kind, or holds what cannot be names it", () => {
    const with_ = (change: Record<string, unknown>) => JSON.stringify({...JSON.parse(text) as object, ...change});
    expect(() => readAnswerFile(text.slice(0, 200))).toThrow("answer file: ");
    expect(() => readAnswerFile("")).toThrow("answer file: an empty file");
    expect(() => readAnswerFile(recipeText(RECIPE))).toThrow("answer file: a file of another kind");
    expect(() => readAnswerFile(with_({version: 9}))).toThrow("version of the answer file: 9");
    expect(() => readAnswerFile(with_({student: " "}))).toThrow("name or number: missing");
    expect(() => readAnswerFile(with_({units: "cubits"}))).toThrow("units: \"cubits\"");
    expect(() => readAnswerFile(with_({answers: []}))).toThrow("answers: 0 is not possible (a list of 4, one for each exercise)");
    expect(() => readAnswerFile(with_({answers: [1, [], [], []]}))).toThrow("answers to exercise 1: 1");
    for (const wrong of [{}, {tries: "x"}, {tries: ["x".repeat(201)], hints: 0, shown: false}, {tries: [], hints: -1, shown: false}, {tries: [], hints: 0, shown: 1}, {tries: [1], hints: 0, shown: true}]) {
      expect(() => readAnswerFile(with_({answers: [[wrong], [], [], []]})), JSON.stringify(wrong)).toThrow("answer to exercise 1, part 1: ");
    }
    expect(() => readAnswerFile(with_({recipe: {...RECIPE, seed: -3}}))).toThrow("seed: -3");
  });
});
