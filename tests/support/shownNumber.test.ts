import {describe, expect, test} from "vitest";
import {readShown, reads} from "./shownNumber.js";

describe("a number as a page shows it", () => {
  test.each([
    [`4'-10 3/4"`, "in", 58.75, 0.25], [`8"`, "in", 8, 0.25], [`3/4"`, "in", 0.75, 0.25], [`10 1/2"`, "in", 10.5, 0.25], [`0'-8"`, "in", 8, 0.25], [`12'-0"`, "in", 144, 0.25],
    ["0.71 in", "in", 0.71, 0.01], ["40 ft", "in", 480, 12], ["41.5 ft", "in", 498, 1.2], ["1,234 plf", "plf", 1234, 1],
    ["12.8 cubic yards", "yd3", 12.8, 0.1], ["62\u00a0%", "%", 62, 1], ["\u22120.31 in", "in", 0.31, 0.01], ["84", "psf", 84, 1],
  ])("%s", (text, unit, size, step) => {
    const read = readShown(text, unit);
    expect(read.size).toBeCloseTo(size, 9);
    expect(read.step).toBeCloseTo(step, 9);
  });

  test("reads as a value that rounds to it, and as no other", () => {
    expect(reads(readShown("0.71 in", "in"), 0.7149)).toBe(true);
    expect(reads(readShown("0.71 in", "in"), -0.706)).toBe(true);
    expect(reads(readShown("0.71 in", "in"), 0.76)).toBe(false);
    expect(reads(readShown(`2'-4 3/4"`, "in"), 28.8)).toBe(true);
    expect(reads(readShown(`2'-4 3/4"`, "in"), 30.75)).toBe(false);
  });

  test("is refused where there is none", () => expect(() => readShown("nothing", "in")).toThrow());
});
