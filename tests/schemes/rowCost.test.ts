import {describe, expect, test} from "vitest";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {amountsOf, measuresOf} from "../../lib/schemes/measures.js";
import {PRICE_LIST, type PriceName, type Prices} from "../../lib/schemes/measures/prices.js";
import {pricesMissing} from "../../lib/schemes/measures.js";
import {amountsIn, pricesLacking, withCost} from "../../lib/schemes/rowCost.js";
import {designRow, schemeRows} from "../../lib/schemes/rows.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {roofAsLoads} from "../../lib/schemes/roofRule.js";
import {judged} from "../../lib/schemes/cells.js";
import {measureNamed, valueOf} from "../../lib/schemes/schemeRow.js";
import {catalog, seed, seeds} from "../support/designs.js";

const NAMES = Object.keys(PRICE_LIST) as PriceName[];
/** Prices of no place and no year: each another number, so that none can stand for another. */
const PRICES: Prices = Object.fromEntries(NAMES.map((name, i) => [name, 3 + 2 * i]));
const ASKED = {columns: true, ownFactors: {}, prices: {}, measures: ["floor_ft2"], amounts: true};

describe("the cost of a row", () => {
  test.each(seeds.map(({id}) => id))("is that of its measures: %s, with and without columns", (id) => {
    const design = seed(id);
    // Beside schemes a roof of its own counts as loads, as theirs do.
    const floor = evaluate(roofAsLoads(design, catalog), catalog);
    const by = {factors: catalog.carbonFactors, prices: PRICES};
    for (const columns of [true, false]) {
      const measures = measuresOf(floor, columns ? columnsOf(floor, catalog) : undefined, by);
      const row = withCost(designRow(catalog, design, {...ASKED, columns}), PRICES, columns);
      const key = columns ? "costPerFt2" : "costWithoutColumnsPerFt2";
      expect(valueOf(row, key)).toBeCloseTo(measures[key] as number, 9);
      expect(measures[key]).toBeGreaterThan(0);
    }
  });

  test("is made of the amounts of the whole building over its floors", () => {
    const floor = evaluate(seed("branch-library"), catalog);
    const [bare, whole] = [amountsOf(floor, undefined), amountsOf(floor, columnsOf(floor, catalog))];
    const {floorFt2, piecesWithoutColumns} = measuresOf(floor, undefined, {factors: catalog.carbonFactors, prices: {}});
    expect((bare?.settingPerPiece ?? 0) * floorFt2).toBeCloseTo(piecesWithoutColumns, 9);
    expect([bare?.columnPerYd3, bare?.footingPerYd3]).toEqual([0, 0]);
    expect(whole?.columnPerYd3).toBeGreaterThan(0);
    expect(whole?.deckPerYd3).toBe(bare?.deckPerYd3);
  });

  test("is not known while a price is blank that the row needs, and the price is named; what it does not need is not missed", () => {
    const row = designRow(catalog, seed("parking-structure"), ASKED);
    const floor = evaluate(seed("parking-structure"), catalog);
    expect(pricesLacking([row], {})).toEqual(pricesMissing(floor, columnsOf(floor, catalog), {}));
    const needed = pricesLacking([row], {});
    const {[needed[0] as PriceName]: _, ...others} = PRICES;
    expect(valueOf(withCost(row, others, true), "costPerFt2")).toBeUndefined();
    expect(pricesLacking([row], others)).toEqual([needed[0]]);
    expect(pricesLacking([row], PRICES)).toEqual([]);
    // A price that nothing is bought for may stay blank: a pretopped deck has no topping.
    expect(needed).not.toContain("toppingPerYd3");
    const {toppingPerYd3: __, ...bare} = PRICES;
    expect(valueOf(withCost(row, bare, true), "costPerFt2")).toBe(valueOf(withCost(row, PRICES, true), "costPerFt2"));
    // Nothing is a price too.
    const free = Object.fromEntries(NAMES.map((name) => [name, 0]));
    expect(valueOf(withCost(row, free, true), "costPerFt2")).toBe(0);
  });

  test("stands in rows of schemes where it is asked for, and never where none can be made", () => {
    const brief = briefOf(seed("classroom-wing"), 9.5, {spansFt: [28, 70]});
    const [made, none] = [...schemeRows(catalog, {brief, order: [0, 1], ...ASKED})].map((row) => withCost(row, PRICES, true));
    expect(made && valueOf(made, "costPerFt2")).toBeGreaterThan(0);
    expect(none && amountsIn(none)).toBeUndefined();
    expect(none && valueOf(none, "costPerFt2")).toBeUndefined();
    expect(none && pricesLacking([none], {})).toEqual([]);
    const [plain] = schemeRows(catalog, {brief, order: [0], ...ASKED, amounts: false});
    expect(plain && amountsIn(plain)).toBeUndefined();
  });

  test("is a measure to judge by only where the page has prices", () => {
    const cost = measureNamed("costPerFt2");
    expect(judged(true, true)).toContain(cost);
    expect(judged(true)).not.toContain(cost);
    expect(judged(false, true).map(({key}) => key)).toContain("costWithoutColumnsPerFt2");
    expect(judged(false, true)).not.toContain(cost);
  });
});
