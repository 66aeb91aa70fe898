// T. G. Hicks (ed.), Handbook of Civil Engineering Calculations, 2nd ed., section 2, prestressed concrete, p. 2.69-2.71:
// a double-tee roof beam, its stresses, its camber and its least stirrups. Seen in text; the live load of 240 plf was found from the stresses.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.hicks);

describe("worked example of a double-tee roof beam", () => {
  it("has all its rows", () => expect(rows).toHaveLength(15));
  assertRows(rows);
});
