// IBC 2021, as adopted by Alabama: Table 722.2.2.1 slab thickness, Table 722.2.3(2) strand cover, seen in text; 722.2.2.1.3
// ribbed soffits: the ranges seen in text, the equation between them from memory.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.fire);

describe("fire tables and rules by the building code", () => {
  it("has all its rows", () => expect(rows).toHaveLength(36));
  assertRows(rows);
});
