// PCI Design Handbook, MNL-120, 7th ed., design aid 15.3.3: design curve of Grade 270 low-relaxation strand (from memory; the
// cells of load tables that come back with it confirm it). R. E. Devalapura and M. K. Tadros, PCI Journal, March-April
// 1992, p. 100: power formula; general form and the 243 ksi at 1 % seen in text, constants from memory.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.designCurve);

describe("stress of strand", () => {
  it("has all its rows", () => expect(rows).toHaveLength(9));
  assertRows(rows);
});
