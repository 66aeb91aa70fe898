import {describe, expect, test} from "vitest";
import {readCatalog} from "../../lib/catalog.js";
import {UNANSWERED, answerFileText, type PartAnswer} from "../../lib/practice/answerFile.js";
import {markClass, marksRows, slipText, type HandedIn} from "../../lib/practice/classMarks.js";
import {keysOf, slipsOf} from "../../lib/practice/keys.js";
import type {NumberPart} from "../../lib/practice/item.js";
import {recipeText, type Recipe} from "../../lib/practice/recipe.js";
import {itemsOfSet} from "../../lib/practice/setItems.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {once} from "../support/once.js";

const catalog = once(() => readCatalog(readRawTables()));
const RECIPE: Recipe = {title: "Week 3", seed: 40, variants: true, hints: false, checked: true, kinds: [{kind: "factored-load", count: 1, points: 2}, {kind: "reduced-live-load", count: 1, points: 6}]};

const of = (...tries: string[]): PartAnswer => ({...UNANSWERED, tries});
/** The right answers of a student, to be changed. */
function right(student: string, recipe = RECIPE): PartAnswer[][] {
  return itemsOfSet(recipe, catalog(), student).map((item) => keysOf(item).map((key, i) => of(`${key} ${(item.parts[i] as NumberPart).unit}`)));
}
/** The answer that the first slip of the first part leads a student to. */
function slipOf(student: string, exercise: number): {name: string; answer: string} {
  const part = itemsOfSet(RECIPE, catalog(), student)[exercise]?.parts[0] as NumberPart;
  const [slip] = slipsOf(part, []);
  if (!slip) throw new Error("no slip");
  return {name: slip.name, answer: `${slip.value} ${part.unit}`};
}
const file = (student: string, answers: PartAnswer[][] = right(student), recipe = RECIPE, fileName = `${student}.json`): HandedIn => ({fileName, text: answerFileText({recipe, student, units: "US", answers})});

describe("the marks of a class", () => {
  test("are each by the student's own numbers: the key of one is wrong for another", () => {
    const copied = file("Ben", right("Ada"));
    const {students, refused} = markClass(RECIPE, [file("Ada"), copied], catalog());
    expect(refused).toEqual([]);
    expect(students.map(({student, points, of: most}) => [student, points, most])).toEqual([["Ada", 8, 8], ["Ben", expect.any(Number), 8]]);
    expect(students[1]?.points).toBeLessThan(8);
    // With numbers in common it is right.
    const same = {...RECIPE, variants: false};
    expect(markClass(same, [file("Ben", right("Ada", same), same)], catalog()).students[0]?.points).toBe(8);
  });

  test("say what went wrong where, mended slips too, and how hard each exercise was", () => {
    const [ada, ben] = [right("Ada"), right("Ben")];
    const slips = [slipOf("Ada", 0), slipOf("Ben", 0)];
    ada[0] = [of(slips[0]?.answer ?? "")];
    ben[0] = [of(slips[1]?.answer ?? "", ben[0]?.[0]?.tries[0] ?? "")];
    const cem = right("Cem").map((parts) => parts.map(() => UNANSWERED));
    const {students, exercises} = markClass(RECIPE, [file("Ada", ada), file("Ben", ben), file("Cem", cem)], catalog());
    expect(students.map(({points}) => points)).toEqual([6, 8, 0]);
    expect(students[0]?.slips).toEqual([{exercise: 1, part: 1, name: slips[0]?.name, mended: false}]);
    expect(students[1]?.slips).toEqual([{exercise: 1, part: 1, name: slips[1]?.name, mended: true}]);
    expect(slipText(students[1]!.slips[0]!)).toBe(`1: ${slips[1]?.name} (mended)`);
    expect(students[1]?.exercises[0]).toMatchObject({tries: 2, outcomes: ["right"]});
    expect(students[2]?.exercises[1]?.outcomes).toEqual(["missing", "missing", "missing"]);
    // By hand: 0, 2 and 0 of 2 points; 6, 6 and 0 of 6.
    expect(exercises.map(({number, of: most, mean, shareRight, shareUnanswered}) => [number, most, mean, shareRight, shareUnanswered])).toEqual([[1, 2, 2 / 3, 1 / 3, 1 / 3], [2, 6, 4, 2 / 3, 1 / 3]]);
    expect(exercises[0]?.slips.reduce((sum, {students: count}) => sum + count, 0)).toBe(2);
    const rows = marksRows(markClass(RECIPE, [file("Ada", ada), file("Ben", ben)], catalog(), ["Ada", "Ben", "=SUM(A1)"]));
    expect(rows[1]).toEqual({student: "Ben", points: 8, of: 8, "1 factored-load": 2, "2 reduced-live-load": 6, unanswered: 0, tries: 5, hints: 0, slips: `1: ${slips[1]?.name} (mended)`, file: "Ben.json"});
    expect(rows[2]).toMatchObject({student: "'=SUM(A1)", points: "", file: "no file"});
  });

  test("name each file that is broken, was changed or is of another set, and go on with the others: 30 files, 9 of them bad", () => {
    const good = Array.from({length: 21}, (_, i) => file(`${i + 1}`));
    const other: Recipe = {...RECIPE, title: "Week 4"};
    const bad: [HandedIn, string][] = [
      [{fileName: "cut.json", text: good[0]!.text.slice(0, 300)}, "JSON text"], [{fileName: "empty.json", text: ""}, "an empty file"], [{fileName: "picture.json", text: "\u0000\u0001PNG"}, "not text"],
      [{fileName: "changed.json", text: good[1]!.text.replace("\"tries\": [", "\"tries\": [\n\"1\",")}, "changed after it was saved"], [{fileName: "set.json", text: recipeText(RECIPE)}, "another kind"], [{fileName: "null.json", text: "null"}, "null"],
      [file("22", right("22", other), other), "Its answers are to another set, \u201cWeek 4\u201d."], [file("23", right("23", {...RECIPE, seed: 41}), {...RECIPE, seed: 41}), "with seed 41, not 40"], [file("24", [[UNANSWERED], [UNANSWERED]]), "answers to exercise 2: 1 is not possible (a list of 3"],
    ];
    const mixed = [...bad.slice(0, 4).map(([each]) => each), ...good, ...bad.slice(4).map(([each]) => each)];
    const {students, refused, exercises, otherSets} = markClass(RECIPE, mixed, catalog());
    expect(students.map(({student, points}) => [student, points])).toEqual(good.map((_, i) => [`${i + 1}`, 8]));
    expect(refused.map(({fileName}) => fileName)).toEqual(bad.map(([{fileName}]) => fileName));
    bad.forEach(([, says], i) => expect(refused[i]?.says).toContain(says));
    expect(exercises.map(({shareRight}) => shareRight)).toEqual([1, 1]);
    expect(otherSets.map(({title, seed}) => [title, seed])).toEqual([["Week 4", 40], ["Week 3", 41]]);
  });

  test("tell two files of one student apart, and count the first or the one that is chosen", () => {
    const worse = right("Ada");
    worse[0] = [UNANSWERED];
    const files = [file("Ada", worse, RECIPE, "first.json"), file("ADA", right("Ada"), RECIPE, "second.json"), file("Ada", worse, RECIPE, "copy.json")];
    const first = markClass(RECIPE, files, catalog());
    expect(first.students.map(({fileName, points}) => [fileName, points])).toEqual([["first.json", 6]]);
    expect(first.second).toEqual([{fileName: "second.json", student: "ADA", counts: "first.json", same: false, points: 8, of: 8}, {fileName: "copy.json", student: "Ada", counts: "first.json", same: true, points: 6, of: 8}]);
    const chosen = markClass(RECIPE, files, catalog(), [], new Set(["second.json"]));
    expect(chosen.students.map(({fileName, points}) => [fileName, points])).toEqual([["second.json", 8]]);
    expect(chosen.exercises[0]?.shareRight).toBe(1);
  });

  test("tell who handed in nothing and who is not of the class", () => {
    const marks = markClass(RECIPE, [file("Ada"), file("Bne")], catalog(), ["ADA", "Ben"]);
    expect([marks.missing, marks.unexpected]).toEqual([["Ben"], ["Bne"]]);
    expect(markClass(RECIPE, [file("Ada")], catalog())).toMatchObject({missing: [], unexpected: []});
    expect(markClass(RECIPE, [], catalog())).toMatchObject({students: [], exercises: [{mean: 0, of: 2, shareRight: 0}, {of: 6}]});
  });
});
