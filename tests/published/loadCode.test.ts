// ASCE 7-16: 2.3.1 combinations, 4.3.2 partitions, 4.8.2 roof live load, 7.3 to 7.7 snow, 8.3 rain, Table 4.3-1 live loads, 4.7 reduction, Table 4.7-1 element factors. Each row
// says whether its number was seen in text, worked out from the clause, or comes from memory.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.asce);

describe("loads by ASCE 7", () => {
  it("has all its rows", () => expect(rows).toHaveLength(53));
  assertRows(rows);
});
