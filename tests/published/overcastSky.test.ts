// CIE S 011, standard overcast sky: three times as bright overhead as at the horizon, seen in text; the rest worked out.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.sky);

describe("overcast sky", () => {
  it("has all its rows", () => expect(rows).toHaveLength(4));
  assertRows(rows);
});
