import {describe, expect, test} from "vitest";
import {atMost, outOfRange, requires} from "../../lib/checks.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {checksBeside, checksIn, checksOf, outcome} from "../../lib/record/checkGroups.js";
import {frameSection} from "../../lib/record/frame.js";
import {storySection} from "../../lib/record/story.js";
import {catalog, seed} from "../support/designs.js";
import {plainSentence} from "../support/sentence.js";

const text = (label: string) => ({id: label, label, unit: "kip", clause: "ACI 318-19 22.4", holds: "", fails: "fails"});

describe("tables of checks", () => {
  test("have a title that is not said again in every row", () => {
    const [group] = checksOf("Girder", [atMost(text("Girder: strength in bending"), 1, 2), atMost(text("Shear"), 1, 2)]);
    expect(group?.rows.map(({label}) => label)).toEqual(["Strength in bending", "Shear"]);
    expect(checksOf("Girder", [])).toEqual([]);
  });

  test("set the checks of several parts side by side, and say where a part has none", () => {
    const [group] = checksBeside("Columns", [
      {name: "interior column", checks: [atMost(text("Interior column: axial load"), 1, 2), atMost(text("Interior column: corbel"), 1, 2)]},
      {name: "edge column", checks: [atMost({...text("Edge column: axial load"), clause: "another"}, 3, 2)]},
    ]);
    expect(group?.rows.map(({label, clause, cells}) => [label, clause, cells.map((check) => (check === "none" ? check : check.verdict))])).toEqual([
      ["Axial load", "ACI 318-19 22.4; another", ["ok", "fails"]], ["Corbel", "ACI 318-19 22.4", ["ok", "none"]],
    ]);
  });

  test("count how their checks end, and carry the remedies that hold some of them", () => {
    const needs = requires({...text("Top"), word: "needs top steel", message: "Two bars."}, 3, 2);
    const ends = (...checks: Parameters<typeof checksOf>[1][number][]) => checksOf("A", checks).map(outcome)[0];
    expect(ends(atMost(text("a"), 1, 2), atMost(text("b"), 1, 2))).toBe("all 2 hold");
    expect(ends(atMost(text("a"), 1, 2))).toBe("it holds");
    expect(ends(atMost(text("a"), 1, 2), atMost(text("b"), 3, 2), outOfRange({...text("c"), message: ""}, 1, 0), needs)).toBe("1 of 4 hold, 1 fails, 1 out of range, 1 near the limit or with a note");
    expect(checksOf("A", [atMost(text("a"), 1, 2), needs])[0]?.noted).toEqual([needs]);
  });
});

describe("the record's frame and story", () => {
  const evaluation = evaluate(seed("branch-library"), catalog);

  test("sets all columns of a grid into one table, every check of theirs in it", () => {
    const columns = columnsOf(evaluation, catalog);
    const groups = frameSection(evaluation, columns).checks;
    expect(groups.map(({title}) => title)).toEqual(["Girder", "Columns, corbels and footings", "Floor as a diaphragm"]);
    const [, table] = groups;
    expect(table?.parts).toEqual(["interior column", "edge column", "girder end column", "corner column"]);
    expect(checksIn(table?.rows ?? [])).toHaveLength(columns.checks.length);
    expect(table?.rows.length).toBeLessThan(columns.checks.length / 3);
  });

  test("leaves no check out that says a column is not sized", () => {
    const columns = columnsOf(evaluation, catalog);
    const lost = outOfRange({id: "lost", label: "Corner column: first size", unit: "", clause: "range of the methods", message: "Too much."}, 0, 0);
    const groups = frameSection(evaluation, {...columns, checks: [...columns.checks, lost]}).checks;
    expect(groups.find(({title}) => title === "Columns that are not sized")?.rows.flatMap(({cells}) => cells)).toEqual([lost]);
  });

  test("tells what the building encloses: walls with their glass, and the roof", () => {
    const facts = storySection(evaluation).facts.map(({label, value}) => `${label}: ${plainSentence(value)}`);
    // 4 bays of 30 ft by 2 of 40 ft; with panels 23 in out of the end column lines, and columns 10 in out of the long ones, 123'-10" by 81'-8"
    // by 30'-8" (a roof 26 in of tee, 6 1/4 in of layers and 10 in of fall high over a soffit at 27'-1 3/4") and a parapet of 3 ft: 2 x 205.5 x 33.667 = 13,837 ft2. Glass of 8'-3" between columns 28'-4" apart in 4 bays, 2 stories and 2 sides, 3,740 ft2, and 15 % of the short sides below the roof, 751 ft2.
    expect(facts).toContain("Building: 120 by 80 ft, 2 stories, 30'-8\" from the lowest floor to the roof");
    expect(facts).toContain("Outer wall: 13,837 ft\u00b2, of which 32\u00a0% is glass: 0.72 ft\u00b2 per ft\u00b2 of floor");
    expect(facts).toContain("Roof: 9,600 ft\u00b2");
  });
});
