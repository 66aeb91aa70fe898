import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {bestCell, failCounts, growingCells, isWithin, judged, leastFailingCell, lessIsBetter, unbeaten, type BayCell} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {measureNamed, type SchemeRow} from "../../lib/schemes/schemeRow.js";

const CARBON = measureNamed("carbonKgPerFt2");
const HEIGHT = measureNamed("floorToFloorFt");
const LIGHT = measureNamed("daylitPercent");

/** Cells of rows that come all at once. */
const cellsOf = (rows: readonly SchemeRow[], entry: MeasureEntry): BayCell[] => growingCells()(rows, entry);

function row(index: number, values: {carbon?: number | undefined; height?: number; light?: number} = {}, over: Partial<SchemeRow> = {}): SchemeRow {
  return {
    index, span_ft: 60, beam_span_ft: 30, bays_across: 1, bays_along: 6, kind: "planks", deck: "12DT32+2 188-S", edge: "ledge", girder: "", roof: "loads", deck_governs: "strength", governs_part: "deck", governs: "", fails: "",
    [CARBON.column]: "carbon" in values ? values.carbon : 20, [HEIGHT.column]: values.height ?? 14, [LIGHT.column]: values.light ?? 50, ...over,
  };
}

describe("a cell of the map", () => {
  test("shows the best that holds, by the measure: the least or the most of it", () => {
    const rows = [row(0, {carbon: 22, light: 70}), row(1, {carbon: 20, light: 50}), row(2, {carbon: 10}, {fails: "deck edge"}), row(3, {}, {span_ft: 64})];
    const [cell, other] = cellsOf(rows, CARBON);
    expect(cell).toMatchObject({spanFt: 60, beamSpanFt: 30, holds: true, fails: "", tried: 3, holding: 2});
    expect(cell?.best?.index).toBe(1);
    expect(cellsOf(rows, LIGHT)[0]?.best?.index).toBe(0);
    expect(other).toMatchObject({spanFt: 64, tried: 1});
    expect(cellsOf([row(5), row(4)], CARBON)[0]?.best?.index).toBe(4);
  });

  test("shows the one that fails least where none holds, with what fails, and why where none can be made", () => {
    expect(cellsOf([row(0, {carbon: 1}, {fails: "a; b"}), row(1, {carbon: 9}, {fails: "b"})], CARBON)[0]).toMatchObject({holds: false, fails: "b", holding: 0});
    expect(cellsOf([row(0, {}, {deck: "", fails: "Too weak."})], CARBON)[0]).toMatchObject({best: undefined, holds: false, fails: "Too weak."});
  });
});

test("cells of rows that grow are those of all rows at once, and a cell that no new row falls into is the very same", () => {
  const scheme = fc.record({span: fc.integer({min: 1, max: 3}), beam: fc.integer({min: 1, max: 3}), carbon: fc.integer({min: 1, max: 5}), light: fc.integer({min: 1, max: 5}), deck: fc.constantFrom("", "12DT32+2 188-S", "12DT32+2 188-S"), fails: fc.constantFrom("", "sag", "sag; shear")});
  const step = fc.record({more: fc.array(scheme, {maxLength: 6}), anew: fc.constantFrom(false, false, false, true), entry: fc.constantFrom(CARBON, CARBON, CARBON, LIGHT)});
  fc.assert(fc.property(fc.array(step, {maxLength: 8}), (steps) => {
    const cellsNow = growingCells();
    let [rows, entry]: [readonly SchemeRow[], typeof CARBON] = [[], CARBON];
    let before: BayCell[] = [];
    let made = 0;
    for (const {more, anew, entry: next} of steps) {
      const added = more.map(({span, beam, carbon, light, deck, fails}) => row(made++, {carbon, light}, {span_ft: span, beam_span_ft: beam, deck, fails}));
      const same = !anew && next === entry;
      // Other rows in the place of the first, as when a price changes or a range narrows.
      [rows, entry] = [[...(anew ? rows.slice(1) : rows), ...added], next];
      const cells = cellsNow(rows, entry);
      expect(cells).toEqual(cellsOf(rows, entry));
      if (same) for (const cell of before) if (!added.some(({span_ft, beam_span_ft}) => span_ft === cell.spanFt && beam_span_ft === cell.beamSpanFt)) expect(cells).toContain(cell);
      before = cells;
    }
  }));
});

describe("of all cells", () => {
  const cells = (...rows: SchemeRow[]) => cellsOf(rows.map((one, i) => ({...one, span_ft: 40 + 4 * i})), CARBON);
  const spanOf = (cell: BayCell | undefined) => cell?.spanFt;

  test("the best is one that holds, whatever less another would take; of equals the first", () => {
    expect(spanOf(bestCell(cells(row(0, {carbon: 20}), row(1, {carbon: 18}), row(2, {carbon: 10}, {fails: "shear"}), row(3, {carbon: 18})), CARBON))).toBe(44);
    expect(spanOf(bestCell(cells(row(0, {light: 40}), row(1, {light: 60})), LIGHT))).toBe(44);
    expect(bestCell(cells(row(0, {}, {fails: "shear"}), row(1, {}, {deck: "", fails: "Too weak."})), CARBON)).toBeUndefined();
    // What is not known is better than nothing and worse than all that is known.
    expect(spanOf(bestCell(cells(row(0, {carbon: undefined}), row(1, {carbon: 90})), CARBON))).toBe(44);
    expect(spanOf(bestCell(cells(row(0, {carbon: undefined})), CARBON))).toBe(40);
  });

  test("the one that fails least fails in the fewest checks, and of these is best; one that cannot be made is none", () => {
    const found = (...rows: SchemeRow[]) => spanOf(leastFailingCell(cells(...rows), CARBON));
    expect(found(row(0, {carbon: 5}, {fails: "shear; sag"}), row(1, {carbon: 30}, {fails: "shear"}), row(2, {carbon: 25}, {fails: "sag"}), row(3, {}, {deck: "", fails: "Too weak."}))).toBe(48);
    expect(found(row(0, {}, {deck: "", fails: "Too weak."}))).toBeUndefined();
    expect(found()).toBeUndefined();
  });
});

describe("the schemes that no other beats", () => {
  test("are those of the definition, tried one against the other", () => {
    const scheme = fc.record({carbon: fc.integer({min: 1, max: 6}), height: fc.integer({min: 1, max: 6}), light: fc.integer({min: 1, max: 6}), fails: fc.constantFrom("", "", "deck edge")});
    fc.assert(fc.property(fc.array(scheme, {maxLength: 40}), fc.subarray([CARBON, HEIGHT, LIGHT], {minLength: 1}), (list, entries) => {
      const rows = list.map(({fails, ...values}, i) => row(i, values, {fails}));
      // At least as good in all, and better in one or else the same with a lower number.
      const beats = (a: SchemeRow, b: SchemeRow) => {
        const pairs = entries.map((entry) => [lessIsBetter(a, entry) as number, lessIsBetter(b, entry) as number] as const);
        return pairs.every(([x, y]) => x <= y) && (pairs.some(([x, y]) => x < y) || a.index < b.index);
      };
      const good = rows.filter(({fails}) => fails === "");
      const brute = good.filter((one) => !good.some((other) => other !== one && beats(other, one)));
      expect(unbeaten(rows, entries).map(({index}) => index).sort((a, b) => a - b)).toEqual(brute.map(({index}) => index));
    }));
  });

  test("leave out what is not known, and are none where nothing counts", () => {
    expect(unbeaten([row(0, {carbon: undefined}), row(1)], [CARBON]).map(({index}) => index)).toEqual([1]);
    expect(unbeaten([row(0)], [])).toEqual([]);
  });
});

test("a range holds at both of its ends and not beyond, and never for what is not known", () => {
  const at = (least: number | undefined, most: number | undefined) => isWithin(row(0, {carbon: 20}), new Map([["carbonKgPerFt2", [least, most]]] as const));
  expect([at(20, 20), at(20.01, undefined), at(undefined, 19.99), at(undefined, undefined)]).toEqual([true, false, false, true]);
  expect(isWithin(row(0, {carbon: undefined}), new Map([["carbonKgPerFt2", [undefined, undefined]]] as const))).toBe(false);
  expect(isWithin(row(0), new Map())).toBe(true);
});

test("measures are judged once: with columns by the totals, without by what leaves them out", () => {
  const [withColumns, without] = [judged(true).map(({key}) => key), judged(false).map(({key}) => key)];
  expect(withColumns).toContain("carbonKgPerFt2");
  expect(withColumns).not.toContain("carbonWithoutColumnsKgPerFt2");
  expect(without).toContain("carbonWithoutColumnsKgPerFt2");
  expect(without).not.toContain("carbonKgPerFt2");
  for (const key of ["costPerFt2", "deckUse", "deckCarbonKgPerFt2"] as const) expect([...withColumns, ...without]).not.toContain(key);
});

test("of checks that stop as many the first by name comes first", () => {
  expect(failCounts([row(0, {}, {fails: "walking"}), row(1, {}, {fails: "sag; walking"}), row(2, {}, {fails: "sag"}), row(3, {}, {fails: "ledge"}), row(4, {}, {fails: "walking"})])).toEqual([["walking", 3], ["sag", 2], ["ledge", 1]]);
  expect(failCounts([row(0, {}, {fails: "sag"}), row(1, {}, {fails: "ledge"})])).toEqual([["ledge", 1], ["sag", 1]]);
});

test("what fails is counted by check, most first", () => {
  expect(failCounts([row(0, {}, {fails: "b; a"}), row(1, {}, {fails: "b"}), row(2), row(3, {}, {deck: "", fails: "no deck; none"})])).toEqual([["b", 2], ["a", 1]]);
});
