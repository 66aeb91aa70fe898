// ASTM A416/A416M, Table 1, Grade 270 strand: seen in text, save the strength of the 9/16 in strand. ASTM A615: bars, seen in a
// textbook that prints its table.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.astm);

describe("strand and bar tables", () => {
  it("has all its rows", () => expect(rows).toHaveLength(34));
  assertRows(rows);
});
