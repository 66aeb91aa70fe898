import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {capacityCurve, patternMember, safeLoadTable, usualPatterns, type DeckConditions} from "../../lib/deck/table.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";
import {once} from "../support/once.js";

const CONDITIONS: DeckConditions = {concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 0, toppingStrengthPsi: 3000, humidityPercent: 70};
const row = once(() => deckRow(catalog, "10DT24"));

describe("usualPatterns", () => {
  test("offer even numbers of strands in tees, straight first, then depressed from eight on", () => {
    expect(usualPatterns(row())).toEqual(["48-S", "68-S", "88-S", "108-S", "128-S", "148-S", "168-S", "88-D1", "108-D1", "128-D1", "148-D1", "168-D1"]);
  });

  test("offer no more strands than the stems of a tee have rows for, straight or depressed", () => {
    const patterns = usualPatterns({...row(), mostStrands: 30});
    expect(patterns.filter((text) => text.endsWith("S")).at(-1)).toBe("228-S");
    expect(patterns.filter((text) => text.endsWith("D1")).at(-1)).toBe("208-D1");
  });

  test("offer any number of straight strands in planks, of 3/8 in unless otherwise stated", () => {
    expect(usualPatterns(deckRow(catalog, "4HC8"))).toEqual(["46-S", "56-S", "66-S", "76-S"]);
    expect(usualPatterns(deckRow(catalog, "4HC10"), 8)).toEqual(["48-S", "58-S", "68-S"]);
  });
});

describe("safeLoadTable", () => {
  const spans = [30, 40, 50];
  const table = () => safeLoadTable(catalog, row(), ["68-S", "128-D1"], spans, CONDITIONS, handbookCriteria(false));

  test("has a row for each pattern and a cell for each span", () => {
    expect(table().map(({pattern, cells}) => [pattern, cells.map((cell) => cell.spanFt)])).toEqual([["68-S", spans], ["128-D1", spans]]);
  });

  test("holds what the single evaluation gives", () => {
    const member = patternMember(catalog, row(), "128-D1", CONDITIONS);
    expect(table()[1]?.cells).toEqual(capacityCurve(member, spans, handbookCriteria(false)));
    expect(table()[1]?.cells[2]).toEqual(safeLoad(member, 50, handbookCriteria(false)));
  });

  test("refuses a pattern that does not fit", () => {
    refused(() => safeLoadTable(catalog, row(), ["968-S"], spans, CONDITIONS, handbookCriteria(false)), {path: "pattern"});
  });

  test("is empty without patterns", () => {
    expect(safeLoadTable(catalog, row(), [], spans, CONDITIONS, handbookCriteria(false))).toEqual([]);
  });
});
