// PCI Design Handbook, MNL-120, chapter 3, preliminary design tables: safe loads and cambers of 10DT24 with 68-S and 88-S (sec.
// 3.4) and 4HC8 with 66-S (3.6). Numbers seen in text; which span each belongs to was reconstructed and then confirmed.
// Safe loads to 1 psf where strength limits them, cambers to 0.2 in: the tables do not print what cambers depend on.
import {describe, expect, it} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {handbookMember} from "../../lib/published/deckLoads.js";
import {catalog} from "../support/designs.js";
import {SOURCES, assertRows, comparisons, rowsFrom} from "./support.js";

const {deckLoads} = comparisons;

describe("safe loads of the handbook", () => {
  it("has all its cells", () => expect(deckLoads.map((cell) => cell.page)).toHaveLength(14 + 16 + 24));
  assertRows(deckLoads.map((cell) => cell.safeLoad));

  it("are bounded in no cell by development or bearing, which count beside what the tables were made by", () => {
    for (const {row} of deckLoads) {
      const {governs} = safeLoad(handbookMember(catalog, row), row.spanFt, handbookCriteria(row.toppingIn > 0));
      expect(["development", "bearing"], `${row.member} ${row.pattern} ${row.spanFt} ft`).not.toContain(governs);
    }
  });

  it("leaves out no cell that strength limits", () => {
    for (const {row, safeLoad} of deckLoads) expect(safeLoad.asserted).toBe(row.limit === "strength");
  });
});

describe("cambers of the handbook", () => {
  assertRows(deckLoads.flatMap((cell) => [cell.erectionCamber, cell.longTimeCamber]));
});

describe("criteria of the handbook's tables", () => {
  const rows = rowsFrom(SOURCES.handbook, comparisons.values);
  it("has all its rows", () => expect(rows).toHaveLength(8));
  assertRows(rows);
});
