import {expect, test} from "vitest";
import {fallsThroughZero} from "../../lib/columns/root.js";

/** Where a function falls through 0, and how often it was asked. */
function found(of: (at: number) => number, high: number, share?: number) {
  let asked = 0;
  const at = fallsThroughZero((x) => (asked++, of(x)), 0, high, share);
  return {at, asked};
}

test("a straight line is met at its first guess, a curve in few", () => {
  expect(found((x) => 2 - x, 5)).toEqual({at: 2, asked: 3});
  expect(found((x) => 8 - x ** 3, 3).at).toBeCloseTo(2, 11);
  expect(found((x) => 8 - x ** 3, 3).asked).toBeLessThan(20);
});

test("one end that hardly moves does not hold the other up", () => {
  // By the straight line alone this takes some millions of steps.
  const steep = found((x) => 1 - x ** 20, 10);
  expect(steep.at).toBeCloseTo(1, 11);
  expect(steep.asked).toBeLessThan(120);
  const flat = found((x) => (10 - x) ** 20 - 1, 10);
  expect(flat.at).toBeCloseTo(9, 10);
  expect(flat.asked).toBeLessThan(120);
});

test("a rough place takes fewer steps, and lies as near as was asked", () => {
  const rough = found((x) => 8 - x ** 3, 3, 0.01);
  expect(Math.abs(rough.at - 2)).toBeLessThan(0.03);
  expect(rough.asked).toBeLessThan(found((x) => 8 - x ** 3, 3).asked);
});

test("a function that is below 0 from the start, or above it to the end, has its place there", () => {
  expect(found((x) => -1 - x, 5).at).toBe(0);
  expect(found((x) => -x, 5).at).toBe(0);
  expect(found((x) => 10 - x, 5).at).toBe(5);
  expect(found((x) => 5 - x, 5).at).toBe(5);
});

test("where it jumps over 0 the place is on the side that is nearer to 0", () => {
  const below = found((x) => (x < Math.PI ? 1 : -5), 4).at;
  expect(below).toBeLessThan(Math.PI);
  expect(below).toBeCloseTo(Math.PI, 11);
  const above = found((x) => (x < Math.PI ? 5 : -1), 4).at;
  expect(above).toBeGreaterThanOrEqual(Math.PI);
  expect(above).toBeCloseTo(Math.PI, 11);
});
