import {expect, test} from "vitest";
import {factoredLoad} from "../../lib/loads/combinations.js";

test("factoredLoad takes the larger of 1.4D and 1.2D + 1.6L", () => {
  expect(factoredLoad(100, 50)).toBeCloseTo(200, 12);
  expect(factoredLoad(100, 0)).toBeCloseTo(140, 12);
  // Both are 140 where the live load is an eighth of the dead.
  expect(factoredLoad(100, 12.5)).toBeCloseTo(140, 12);
  expect(factoredLoad(100, 12)).toBeCloseTo(140, 12);
  expect(factoredLoad(0, 0)).toBe(0);
});
