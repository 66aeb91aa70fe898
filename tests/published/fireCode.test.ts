// IBC 2021: Table 722.2.2.1 slab thickness, 722.2.2.1.3 ribbed soffits, Table 722.2.3 strand cover. The numbers of the
// thickness table were seen in the one for walls; that slabs ask the same, the covers and the ribs' equation are from memory.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.fire);

describe("fire tables and rules by the building code", () => {
  it("has all its rows", () => expect(rows).toHaveLength(36));
  assertRows(rows);
});
