// J. C. McCormac, Design of Reinforced Concrete, ch. 19, example 19.5: shear of a prestressed rectangular beam by both ways
// to crack. Seen in text; the operators were lost in the copy and every step was worked out again.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.mccormac);

describe("worked example of a beam's web in shear", () => {
  it("has all its rows", () => expect(rows).toHaveLength(5));
  assertRows(rows);
});
