// D. Quimby, A Beginner's Guide to ASCE 7-10, chapter 5, example 5.1: a basement column under three floors. Seen in text.
import {describe, expect, it} from "vitest";
import {SOURCES, assertRows, rowsFrom} from "./support.js";

const rows = rowsFrom(SOURCES.quimby);

describe("worked example of a column's live load", () => {
  it("has all its rows", () => expect(rows).toHaveLength(3));
  assertRows(rows);
});
