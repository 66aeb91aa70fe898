import {expect, test} from "vitest";
import {uniformMomentKipIn} from "../../lib/member/moments.js";

test("uniformMomentKipIn is w x (L - x) / 2", () => {
  // 1,000 plf on 40 ft: 1 * 1,600 / 8 = 200 kip-ft = 2,400 kip-in at midspan, three quarters of it at the quarter.
  expect(uniformMomentKipIn(1000, 40, 0.5)).toBeCloseTo(2400, 9);
  expect(uniformMomentKipIn(1000, 40, 0.25)).toBeCloseTo(1800, 9);
  expect(uniformMomentKipIn(1000, 40, 0)).toBe(0);
  expect(uniformMomentKipIn(1000, 40, 1)).toBe(0);
});
