// ASTM A416/A416M, Table 1, Grade 270 strand: the 3/8 in row seen in text, others from memory. ASTM A615: bars, from memory.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.astm);

describe("strand and bar tables", () => {
  it("has all its rows", () => expect(rows).toHaveLength(34));
  assertRows(rows);
});
