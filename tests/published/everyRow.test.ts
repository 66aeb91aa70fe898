// The tables of published values as a whole: each row has its test, and each test can fail.
import {describe, expect, it} from "vitest";
import {InputError} from "../../lib/errors.js";
import {compare} from "../../lib/published/compare.js";
import {tally} from "../../lib/published/published.js";
import {readPublished} from "../../lib/published/tables.js";
import {compareValues} from "../../lib/published/values.js";
import {folds} from "../../src/components/shared/trustTables.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {catalog} from "../support/designs.js";
import {SOURCES, comparisons, published} from "./support.js";

describe("published values", () => {
  it("gives every row to exactly one test file", () => {
    for (const row of comparisons.all) {
      const files = Object.values(SOURCES).filter((source) => source.test(row.source));
      expect(files, row.source).toHaveLength(1);
    }
  });

  it("shows every row on the page of trust, under one source", () => {
    const shown = folds(comparisons).flatMap((fold) => fold.rows);
    expect(new Set(shown).size).toBe(shown.length);
    expect(comparisons.all.filter((row) => !shown.includes(row)).map((row) => `${row.source}: ${row.quantity}`)).toEqual([]);
  });

  it("agrees in every asserted row, and says why where it does not assert", () => {
    const {asserted, agree} = tally(comparisons.all);
    expect(agree).toBe(asserted);
    for (const row of comparisons.all) if (!row.asserted) expect(row.note, `${row.group}: ${row.quantity}`).not.toBe("");
  });

  it("would notice a published value moved by more than its tolerance", () => {
    for (const row of comparisons.all.filter((entry) => entry.asserted)) {
      const off = Math.abs(row.difference) + 2 * row.tolerance + 1e-6 * Math.abs(row.published) + 1e-9;
      for (const moved of [row.published + off, row.published - off]) {
        // Away from ours, on the side that does not pass it.
        if (Math.abs(row.ours - moved) < off) continue;
        expect(compare({...row, published: moved}, row.ours, row).within, `${row.group}: ${row.quantity}`).toBe(false);
      }
    }
  });

  it("names table, row and column of a cell that cannot be used", () => {
    const tables = readRawTables();
    const [first, ...rest] = tables["published-values"]!;
    const spoiled = {...tables, "published-values": [{...first, confidence: "certain"}, ...rest]};
    expect(() => readPublished(spoiled)).toThrow(/published-values\[1\] confidence.*seen in text/);
  });

  it("throws one typed error for a kind or key that leads nowhere", () => {
    const row = published.values[0]!;
    for (const wrong of [{...row, kind: "weather"}, {...row, key: "nowhere"}]) {
      expect(() => compareValues(catalog, [wrong])).toThrow(InputError);
    }
  });
});
