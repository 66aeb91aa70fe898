// PCI Design Handbook, MNL-120, chapter 3, preliminary design tables: section properties of 10DT24 bare and topped (sec. 3.4),
// 4HC8 and 4HC10 bare and topped (3.6), rectangular beams (3.9), inverted tees (3.11), all seen in text; 8DT24, 10DT32,
// 12DT28, 12DT32 and 20LB20 from memory.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, comparisons, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.handbook, comparisons.sections);

describe("section properties of the handbook", () => {
  it("has all its rows", () => expect(rows).toHaveLength(191));

  it("finds the bare 10DT24 to the printed digit, save the modulus printed from a rounded distance and V/S", () => {
    const tee = rows.filter((row) => row.group === "10DT24" && !/top$|surface/.test(row.quantity));
    expect(tee).toHaveLength(7);
    for (const {published, ours} of tee) {
      const places = String(published).split(".")[1]?.length ?? 0;
      expect(Number(ours.toFixed(places))).toBe(published);
    }
  });

  assertRows(rows);
});
