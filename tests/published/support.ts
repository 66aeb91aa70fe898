import {expect, it} from "vitest";
import type {Comparison} from "../../lib/published/compare.js";
import {comparePublished} from "../../lib/published/published.js";
import {readPublished} from "../../lib/published/tables.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {catalog} from "../support/designs.js";

export const published = readPublished(readRawTables());
export const comparisons = comparePublished(catalog, published);

/** Sources by the test file that asserts their values; every row belongs to exactly one. */
export const SOURCES = {
  handbook: /^PCI Design Handbook \(MNL-120\) ch\. 3/,
  designCurve: /^PCI Design Handbook \(MNL-120\), 7th ed\.|^Devalapura/,
  astm: /^ASTM /,
  hicks: /^Hicks/,
  mccormac: /^McCormac/,
  quimby: /^Quimby/,
  asce: /^ASCE 7/,
  snow: /^Metal Building Systems Manual/,
  aci: /^ACI 318/,
  fire: /^IBC 2021/,
  sky: /^CIE /,
  ducts: /^ASHVE|^ASHRAE|^Bell|^Engineering ToolBox|^Dusling/,
  lossesAndCamber: /^Zia|^Martin/,
} as const;

/** All values of a source beside ours. */
export function rowsFrom(source: RegExp, rows: readonly Comparison[] = comparisons.all): Comparison[] {
  return rows.filter((row) => source.test(row.source));
}

/** One test for each row, whose title carries source and confidence. */
export function assertRows(rows: readonly Comparison[]): void {
  for (const row of rows) {
    const title = `${row.group}: ${row.quantity} is ${row.published} ${row.unit}`.trim();
    if (row.asserted) {
      it(`${title} within ${Number(row.tolerance.toPrecision(3))} (${row.source}; ${row.confidence})`, () => {
        expect(row.within, `ours ${row.ours}, off by ${row.difference}`).toBe(true);
        expect(Math.abs(row.difference)).toBeLessThanOrEqual(row.tolerance + 1e-9 * Math.abs(row.published));
      });
    } else {
      it(`${title}: compared, not asserted, because ${row.note} (${row.source}; ${row.confidence})`, () => {
        expect(row.note).not.toBe("");
        expect(Number.isFinite(row.ours)).toBe(true);
      });
    }
  }
}
