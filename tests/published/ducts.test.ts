// ASHVE Guide 1956, ASHRAE Handbook, Bell, open course notes and web tables: round equivalents, friction, velocity and noise of ducts. Seen in text.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.ducts);

describe("ducts", () => {
  it("have all their rows", () => expect(rows).toHaveLength(24));
  assertRows(rows);
});
