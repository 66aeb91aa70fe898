import {describe, expect, test} from "vitest";
import {kinships} from "../../lib/classroom/kinship.js";
import {classRow} from "../../lib/classroom/classRow.js";
import {withValue} from "../../lib/design/edit.js";
import {flatRows, type Student} from "../../src/pages/class/classData.js";
import {classList, type ClassStorage} from "../../src/pages/class/classList.js";
import {savedTable, shownFiles} from "../../src/pages/class/classTableData.js";
import {classSentence} from "../../src/pages/class/classWords.js";
import {refused} from "../support/errors.js";
import {catalog, seed} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const fileOf = (fileName: string, spanFt: number) => ({fileName, text: JSON.stringify(withValue(LIBRARY, "bay.spanFt", spanFt))});

/** A browser's storage with a room for so many letters. */
function storageOf(room = Infinity): ClassStorage & {readonly held: Map<string, string>} {
  const held = new Map<string, string>();
  return {
    held, getItem: (key) => held.get(key) ?? null, removeItem: (key) => void held.delete(key),
    setItem(key, value) {
      if (value.length > room) throw new Error("full");
      held.set(key, value);
    },
  };
}

describe("the list of a class", () => {
  test("is there again after a reload with its comments, and gone once it is forgotten", () => {
    const storage = storageOf();
    const list = classList(storage);
    list.add([fileOf("a.json", 42), {fileName: "b.json", text: "{"}, fileOf("c.json", 44)]);
    expect(list.get().refused.map(({fileName}) => fileName)).toEqual(["b.json"]);
    list.comment("c.json", [{words: "Why?", on: "deck", by: "Ms. Oduya"}]);
    const again = classList(storage).get();
    expect(again.designs).toEqual(list.get().designs);
    expect(again.designs[1]?.design.comments).toHaveLength(1);
    list.remove("a.json");
    expect(classList(storage).get().designs.map(({fileName}) => fileName)).toEqual(["c.json"]);
    list.forget();
    expect([storage.held.size, classList(storage).get().designs.length, list.get().refused.length]).toEqual([0, 0, 0]);
  });

  test("that finds no room says so, and leaves no older one behind", () => {
    const storage = storageOf(20_000);
    const list = classList(storage);
    list.add([fileOf("a.json", 42)]);
    expect(list.get().kept).toBe(true);
    list.add([fileOf("b.json", 43), fileOf("c.json", 44)]);
    expect([list.get().kept, list.get().designs.length, storage.held.size]).toEqual([false, 3, 0]);
    const without = classList(undefined);
    without.add([fileOf("a.json", 42)]);
    expect([without.get().kept, without.get().designs.length]).toEqual([false, 1]);
  });

  test("refuses a comment that no file can hold, and begins empty where what was kept is broken", () => {
    const storage = storageOf();
    const list = classList(storage);
    list.add([fileOf("a.json", 42)]);
    refused(() => list.comment("a.json", [{words: "x".repeat(1201), on: "deck", by: ""}]), {path: "comments.0.words"});
    expect(list.get().designs[0]?.design.comments).toEqual([]);
    for (const text of ["{", "3", "[null]"]) {
      storage.setItem("plank-and-tee/class", text);
      expect(classList(storage).get().designs).toEqual([]);
    }
  });
});

describe("the table of a class", () => {
  const students = (): Student[] => {
    const designs = [["c.json", 44], ["a.json", 90], ["B.json", 40]].map(([fileName, spanFt]) => ({fileName: fileName as string, design: withValue(LIBRARY, "bay.spanFt", spanFt)}));
    const kin = kinships(designs.map(({fileName: name, design}) => ({name, design})), []);
    return designs.map((one, i) => ({...one, who: one.fileName, kin: kin[i] as Student["kin"], found: i === 0 ? {problem: "It does not fit."} : classRow(one.design, catalog, {factors: catalog.carbonFactors, prices: {}})}));
  };

  test("is ordered by words and numbers, either way, what is blank last", () => {
    const rows = flatRows(students());
    const files = (by: string, down = false) => shownFiles(rows, "all", {by, down});
    expect(files("")).toEqual(["c.json", "a.json", "B.json"]);
    expect([files("file"), files("file", true)]).toEqual([["a.json", "B.json", "c.json"], ["c.json", "B.json", "a.json"]]);
    expect([files("span_ft"), files("span_ft", true)]).toEqual([["B.json", "c.json", "a.json"], ["a.json", "c.json", "B.json"]]);
    for (const down of [false, true]) expect(files("deck_depth_in", down).at(-1)).toBe("c.json");
  });

  test("shows those that fail, or cannot be computed, and those that hold", () => {
    const rows = flatRows(students());
    const files = (filter: Parameters<typeof shownFiles>[1]) => shownFiles(rows, filter, {by: "", down: false});
    expect(files("fails")).toEqual(["c.json", "a.json"]);
    expect(files("holds")).toEqual(["B.json"]);
    expect(files("family 1")).toEqual(["c.json", "a.json", "B.json"]);
    expect(files("family 2")).toEqual([]);
    expect(files("uncommented")).toHaveLength(3);
  });

  test("is saved with a line for each design, what it fails, and why one has no numbers", () => {
    const text = savedTable(flatRows(students())).toCSV();
    const [head, ...lines] = text.trim().split("\n");
    expect(head).toMatch(/^file,author,.*deck_depth_in.*,problem,use$/);
    expect(lines).toHaveLength(3);
    expect(lines[0]).toContain("It does not fit.");
    expect(lines.every((line) => line.includes("learning and preliminary sizing only"))).toBe(true);
    expect(savedTable([]).numRows()).toBe(0);
  });

  test("is summed up in a sentence", () => {
    const [computed, ...rest] = [...students()].reverse() as [Student, ...Student[]];
    expect(classSentence([])).toMatch(/^Drop your class/);
    expect(classSentence([computed])).toMatch(/^One design with a span of 40 ft\. None fails a check; /);
    expect(classSentence([computed, ...rest])).toBe("3 designs with spans from 40 ft to 90 ft.");
  });
});
