import {describe, expect, test} from "vitest";
import {compareDesign} from "../../lib/compare/column.js";
import {withValue} from "../../lib/design/edit.js";
import {alternativesConsidered, type Alternative} from "../../lib/record/alternatives.js";
import {PRICE_LIST, type Prices} from "../../lib/schemes/measures/prices.js";
import {catalog, seeds} from "../support/designs.js";
import {once} from "../support/once.js";

const made = once(() => {
  const {design} = seeds.find(({id}) => id === "branch-library") as (typeof seeds)[number];
  const compared = (spanFt: number) => compareDesign(withValue(design, "bay.spanFt", spanFt), catalog, {factors: catalog.carbonFactors, prices: {}});
  const [own, longer] = [compared(design.bay.spanFt), compared(60)];
  const alternatives = (count: number): Alternative[] => Array.from({length: count}, (_, i) => ({letter: String.fromCharCode(65 + i), name: `Way ${i + 1}`, note: "", compared: longer}));
  return {own, longer, alternatives};
});

const plain = ({name, unit}: {readonly name: string; readonly unit: string}) => `${name}, ${unit}`;

describe("the alternatives of a record", () => {
  test("stand in a table beside the design, with what is better and by how much, and what fails below it", () => {
    const {own, longer} = made();
    const {tables, notes} = alternativesConsidered(own, [{letter: "A", name: "Longer", note: " Fewer columns. ", compared: longer}], plain);
    expect(tables).toHaveLength(1);
    const [table] = tables;
    expect(table?.heads).toEqual(["", "This design", "A: Longer"]);
    expect(table?.rows.every((row) => row.length === 3)).toBe(true);
    expect(table?.rows.find(([name]) => name === "Checks that fail")).toEqual(["Checks that fail", "0", String(longer.fails.length)]);
    const words = table?.rows.map((row) => row[2] ?? "").join("\n") ?? "";
    expect(words).toMatch(/\(worse by [\d.,]+\)/);
    expect(words).not.toContain("%)");
    expect(notes).toHaveLength(1);
    expect(notes[0]).toMatchObject({title: "A: Longer", note: "Fewer columns."});
    for (const label of longer.fails) expect(notes[0]?.words).toContain(label);
  });

  test("have a cost where all of them have one, and say whose prices it goes by", () => {
    const {design} = seeds.find(({id}) => id === "branch-library") as (typeof seeds)[number];
    const prices = Object.fromEntries(Object.keys(PRICE_LIST).map((name, i) => [name, 5 + i]));
    const at = (spanFt: number, by: Prices) => compareDesign(withValue(design, "bay.spanFt", spanFt), catalog, {factors: catalog.carbonFactors, prices: by});
    const considered = (other: Prices) => alternativesConsidered(at(design.bay.spanFt, prices), [{letter: "A", name: "Longer", note: "", compared: at(44, other)}], plain);
    const costs = (found: ReturnType<typeof considered>) => found.tables[0]?.rows.filter(([name]) => /^cost/i.test(name ?? ""));
    expect(at(44, prices).lacks).toEqual([]);
    expect(costs(considered(prices))).toHaveLength(1);
    expect(considered(prices).better).toContain("unit prices that the writer entered");
    // A strand without its price: the other's cost beside nothing would mislead.
    const {strandPerLb: _, ...others} = prices;
    expect(at(44, others).lacks).toEqual(["strandPerLb"]);
    expect(costs(considered(others))).toEqual([]);
    expect(considered(others).better).not.toContain("prices");
  });

  test("take another table for each four, and none where there are none", () => {
    const {own, alternatives} = made();
    expect(alternativesConsidered(own, [], plain)).toMatchObject({tables: [], notes: [], mostSheets: 0});
    const nine = alternativesConsidered(own, alternatives(9), plain);
    expect(nine.tables.map(({title, heads}) => [title, heads.length - 2])).toEqual([["Beside this design", 4], ["Beside this design, continued", 4], ["Beside this design, continued", 1]]);
    expect(nine.notes.map(({title}) => title.slice(0, 2))).toEqual(["A:", "B:", "C:", "D:", "E:", "F:", "G:", "H:", "I:"]);
  });

  test("take more sheets the more there are, and the more is said of them", () => {
    const {own, alternatives} = made();
    const sheets = (list: readonly Alternative[]) => alternativesConsidered(own, list, plain).mostSheets;
    expect(sheets(alternatives(1))).toBe(1);
    expect(sheets(alternatives(24))).toBeGreaterThan(2);
    const talkative = alternatives(4).map((one) => ({...one, note: "word ".repeat(400)}));
    expect(sheets(talkative)).toBeGreaterThan(sheets(alternatives(4)));
  });
});
