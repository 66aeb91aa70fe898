import {describe, expect, test} from "vitest";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {gridOf, kindOf} from "../../lib/schemes/grid.js";
import {MEASURE_LIST} from "../../lib/schemes/measures/measureList.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import {coarseToFine, sharedOut} from "../../lib/schemes/order.js";
import {ROW_COLUMNS, rowOf} from "../../lib/schemes/row.js";
import {designRow, schemeDesign, schemeRows} from "../../lib/schemes/rows.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {holds, isMade, measureOf} from "../../lib/schemes/schemeRow.js";
import {once} from "../support/once.js";
import {catalog, seed} from "../support/designs.js";

const BY = {factors: catalog.carbonFactors, prices: {}};
const ASKED = {columns: true, ownFactors: {}, prices: {}};
/** Planks of a classroom wing: they reach over 28 ft, and never over 70. */
const planks = once(() => briefOf(seed("classroom-wing"), 9.5, {spansFt: [28, 70]}));

describe("the row of a scheme", () => {
  test("names it, and holds every measure under its column", () => {
    const scheme = schemesOf(planks(), catalog, {columns: true}).at(0);
    if ("none" in scheme) throw new Error(scheme.none);
    const row = rowOf(scheme, BY);
    expect(row).toMatchObject({index: 0, span_ft: 28, beam_span_ft: 24, bays_across: 2, bays_along: 4, kind: "planks", edge: "ledge", girder: seed("classroom-wing").girder.kind});
    expect(row.deck).toBe(`${scheme.design.deck.member}+2 ${scheme.design.deck.pattern}`);
    expect(row.deck_governs).toBe(scheme.floor.deck.safe.governs);
    expect(row.fails).toBe(scheme.fails.map(({id}) => id).join("; "));
    const measures = measuresOf(scheme.floor, scheme.columns, BY);
    for (const entry of MEASURE_LIST) expect(measureOf(row, entry), entry.column).toBe(entry.read(measures));
    expect(Object.keys(row).sort()).toEqual([...ROW_COLUMNS].sort());
    // What governs is the part with the greatest use.
    const uses = {deck: measures.deckUse, "edge beam": measures.edgeBeamUse, girder: measures.girderUse ?? 0, "columns and footings": measures.columnsUse ?? 0, story: measures.storyUse};
    expect(uses[row.governs_part as keyof typeof uses]).toBe(Math.max(...Object.values(uses) as number[]));
    expect(row.governs).not.toBe("");
  });

  test("is plain: a worker and a file pass it on as it is", () => {
    for (const row of schemeRows(catalog, {brief: planks(), order: [0, 1], ...ASKED})) {
      expect(structuredClone(row)).toEqual(row);
      for (const value of Object.values(row)) {
        expect(["number", "string", "undefined"]).toContain(typeof value);
        if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
      }
    }
  });

  test("says why where no scheme can be made, and has no measures then", () => {
    const [row] = schemeRows(catalog, {brief: planks(), order: [1], ...ASKED});
    expect(row).toMatchObject({index: 1, span_ft: 70, kind: "planks", deck: ""});
    expect(row?.fails).toMatch(/strongest/);
    expect(row && isMade(row)).toBe(false);
    expect(row && holds(row)).toBe(false);
    for (const entry of MEASURE_LIST) expect(row && measureOf(row, entry)).toBeUndefined();
  });

  test("holds the measures alone that are asked for", () => {
    const [row] = schemeRows(catalog, {brief: planks(), order: [0], ...ASKED, measures: ["deck_depth_in"]});
    expect(MEASURE_LIST.filter((entry) => row && measureOf(row, entry) !== undefined).map(({column}) => column)).toEqual(["deck_depth_in"]);
  });

  test("holds where nothing fails and not where anything does", () => {
    expect(holds({deck: "4HC8+2 58-S", fails: ""})).toBe(true);
    expect(holds({deck: "4HC8+2 58-S", fails: "room depth"})).toBe(false);
    expect(isMade({deck: "4HC8+2 58-S"})).toBe(true);
  });
});

test("a design as it is has a row with its own results", () => {
  const design = seed("parking-structure");
  const floor = evaluate(design, catalog);
  const row = designRow(catalog, design, ASKED);
  expect(row).toMatchObject({index: -1, span_ft: 60, kind: "pretopped tees", bays_across: 2});
  const measures = measuresOf(floor, columnsOf(floor, catalog), BY);
  for (const entry of MEASURE_LIST) expect(measureOf(row, entry), entry.column).toBe(entry.read(measures));
  expect(designRow(catalog, design, {...ASKED, columns: false})["carbon_kg_per_ft2"]).toBeUndefined();
});

test("the kind of a member is by its row in the catalog", () => {
  expect([kindOf(catalog, "12DT32"), kindOf(catalog, "4HC8"), kindOf(catalog, "12DT34")]).toEqual(["fieldToppedTees", "planks", "pretoppedTees"]);
});

test("the scheme that is drawn is the one of the row", () => {
  const schemes = schemesOf(planks(), catalog, {columns: true});
  const plain = schemeDesign(schemes, 0);
  expect("design" in plain && plain.design).toEqual((schemes.at(0) as Scheme).design);
  expect(schemeDesign(schemes, 1)).toMatchObject({index: 1, none: expect.stringMatching(/strongest/) as string});
});

describe("the order in which schemes are made", () => {
  test.each([0, 1, 2, 7, 81, 100])("has each of %i numbers once, coarse ones first", (count) => {
    const order = coarseToFine(count);
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({length: count}, (_, i) => i));
    // Whatever its first part, no two neighbors of it lie farther apart than twice their even distance.
    for (const many of [4, 8, 16].filter((many) => many < count)) {
      const first = order.slice(0, many).sort((a, b) => a - b);
      const gaps = first.map((at, i) => at - (first[i - 1] ?? 0));
      expect(Math.max(...gaps)).toBeLessThanOrEqual(Math.ceil((4 * count) / many));
    }
  });

  test("has every number once, and none beyond, of however many schemes", () => {
    for (const count of [0, 1, 2, 3, 5, 8, 13, 33, 100]) expect([...coarseToFine(count)].sort((a, b) => a - b), String(count)).toEqual(Array.from({length: count}, (_, i) => i));
  });

  test("is shared out without loss: every worker's part by stride, whole groups together", () => {
    const groups = [[0, 1], [4, 5], [2, 3]];
    expect(sharedOut(groups, 2)).toEqual([[0, 1, 2, 3], [4, 5]]);
    expect(sharedOut(groups, 1)).toEqual([[0, 1, 4, 5, 2, 3]]);
  });

  test("does not change the rows", () => {
    const brief = briefOf(seed("classroom-wing"), 9.5, {spansFt: [24, 28, 32]});
    const {count} = gridOf(brief, catalog);
    const rows = (orders: readonly (readonly number[])[]) => orders.flatMap((order) => [...schemeRows(catalog, {brief, order, ...ASKED})]).sort((a, b) => a.index - b.index);
    const forth = Array.from({length: count}, (_, i) => i);
    expect(rows(sharedOut(coarseToFine(count).map((i) => [i]), 2))).toEqual(rows([forth]));
  });
});
