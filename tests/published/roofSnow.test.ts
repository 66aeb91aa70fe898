// Metal Building Systems Manual 2006, 1.3.5.14 example c: balanced snow by ASCE 7-05, whose equations are those of 7-16. Seen in text.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.snow);

describe("worked example of snow on a roof", () => {
  it("has all its rows", () => expect(rows).toHaveLength(5));
  assertRows(rows);
});
