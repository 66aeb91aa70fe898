import {describe, expect, test} from "vitest";
import {comparisonText} from "../../lib/compare/comparisonFile.js";
import {MOST_FILES, MOST_LETTERS, readClassFiles} from "../../lib/classroom/classFiles.js";
import {classRow, classRows} from "../../lib/classroom/classRow.js";
import {madeUpClass} from "../../lib/classroom/madeUpClass.js";
import {withValue, withValues} from "../../lib/design/edit.js";
import {catalog, seed, seeds} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const file = (fileName: string, content: unknown) => ({fileName, text: typeof content === "string" ? content : JSON.stringify(content)});
const by = {factors: catalog.carbonFactors, prices: {}};

describe("files of a class", () => {
  test("two hundred and more, some broken: each stands for itself", () => {
    const good = Array.from({length: 196}, (_, i) => file(`student-${i}.json`, withValue(LIBRARY, "bay.spanFt", 30 + i / 10)));
    const broken = [
      file("empty.json", ""), file("half.json", JSON.stringify(LIBRARY).slice(0, 900)), file("picture.json", "\x89PNG\r\n\x1a\n\0\0"), file("list.json", []),
      file("other.json", {format: "something else", version: 1}), file("newer.json", {...LIBRARY, version: LIBRARY.version + 1}),
      file("span.json", {...LIBRARY, bay: {...LIBRARY.bay, spanFt: -3}}), file("comparison.json", comparisonText({open: LIBRARY, pins: []})),
      file("long.json", "x".repeat(MOST_LETTERS + 1)), file("deep.json", "[".repeat(200_000)),
    ];
    // Broken ones before, among and behind the others.
    const mixed = [...broken.slice(0, 3), ...good.slice(0, 100), ...broken.slice(3, 7), ...good.slice(100), ...broken.slice(7)];
    const {designs, refused} = readClassFiles([], mixed);
    expect(designs.map(({fileName}) => fileName)).toEqual(good.map(({fileName}) => fileName));
    const problems = Object.fromEntries(refused.map(({fileName, problem}) => [fileName, problem]));
    expect(Object.keys(problems).sort()).toEqual(broken.map(({fileName}) => fileName).sort());
    expect(problems["empty.json"]).toMatch(/an empty file/);
    expect(problems["picture.json"]).toMatch(/a file that is not text/);
    expect(problems["newer.json"]).toMatch(/saved by a newer version of the kit/);
    expect(problems["span.json"]).toBe("span: -3 ft is not possible (10 to 150 ft)");
    expect(problems["comparison.json"]).toMatch(/saved comparison/);
    expect(problems["long.json"]).toMatch(/500,001 characters \(500,000 at most\)/);
    for (const problem of Object.values(problems)) expect(problem.length).toBeGreaterThan(10);
    // The same files in the same order come to the same, and none is taken twice.
    expect(readClassFiles([], mixed)).toEqual({designs, refused});
    const again = readClassFiles(designs, good.slice(0, 5));
    expect([again.designs.length, again.refused.map(({problem}) => problem)]).toEqual([0, Array.from({length: 5}, () => "It is in the list already.")]);
  });

  test("beyond the most are named, not dropped in silence", () => {
    const many = Array.from({length: MOST_FILES + 3}, (_, i) => file(`${i}.json`, withValue(LIBRARY, "bay.spanFt", 30 + i / 10)));
    const {designs, refused} = readClassFiles([], many);
    expect(designs).toHaveLength(MOST_FILES);
    expect(refused.map(({fileName}) => fileName)).toEqual(["200.json", "201.json", "202.json"]);
    expect(refused[0]?.problem).toMatch(/at most 200 designs/);
  });

  test("named alike are told apart by a number; one with comments is the same design", () => {
    const other = withValue(LIBRARY, "bay.spanFt", 44);
    const {designs} = readClassFiles([], [file("design.json", LIBRARY), file("design.json", other), file("notes", LIBRARY), file("notes", other)]);
    expect(designs.map(({fileName}) => fileName)).toEqual(["design.json", "design (2).json", "notes", "notes (2)"]);
    const commented = withValue(other, "comments", [{words: "Why?", on: "deck", by: "Ms. Oduya"}]);
    expect(readClassFiles(designs, [file("design.json", commented), file("design (2).json", commented)]).designs).toEqual([]);
    expect(readClassFiles(designs, [file("copied.json", commented)]).designs).toHaveLength(1);
  });
});

describe("a row of the class", () => {
  test("says what a design chose, what fails and how its reasons stand", () => {
    const row = classRow(withValues(LIBRARY, {"bay.spanFt": 90, "roof.given": "loads", "reasons.light": ""}), catalog, by);
    expect(row).toMatchObject({spanFt: 90, beamSpanFt: LIBRARY.bay.beamSpanFt, edge: "L-beam"});
    expect(row.deck).toContain("+");
    expect(row.fails.length).toBeGreaterThan(0);
    expect(new Set(row.fails).size).toBe(row.fails.length);
    // Eight decisions, for the roof is two loads; the span is part of the deck's, so its reason belongs to an earlier choice.
    expect(row.reasons.map(({name}) => name)).not.toContain("roof");
    expect(row.count.all).toBe(8);
    expect(row.reasons.find(({name}) => name === "deck")?.standing).toBe("earlier choice");
    expect(row.reasons.find(({name}) => name === "light")?.standing).toBe("none");
    expect(row.reasons.find(({name}) => name === "loads")).toEqual({name: "loads", standing: "stands", by: "starter"});
  });

  test("comes for each design, also where one cannot be computed", () => {
    const misfit = withValue(LIBRARY, "deck.pattern", "9999-S");
    const found = [...classRows(catalog, {designs: [LIBRARY, misfit, LIBRARY], by})];
    expect(found.map(({index}) => index)).toEqual([0, 1, 2]);
    expect(found.map((one) => "problem" in one.found)).toEqual([false, true, false]);
    expect(found[2]?.found).toEqual(found[0]?.found);
  });
});

test("the made-up class reads and computes, but for its three files that are no design", () => {
  const {designs, refused} = readClassFiles([], madeUpClass(seeds.map(({design}) => design)));
  expect(refused.map(({fileName}) => fileName)).toEqual(["lior.json", "mina.json", "notes.txt"]);
  const rows = [...classRows(catalog, {designs: designs.map(({design}) => design), by})].map(({found}) => found);
  expect(rows.filter((row) => "problem" in row)).toEqual([]);
  const fails = rows.map((row) => ("fails" in row ? row.fails.length : 0));
  expect(Math.max(...fails)).toBeGreaterThan(0);
  expect(Math.min(...fails)).toBe(0);
});
