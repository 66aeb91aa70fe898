import {expect, test} from "vitest";
import {simpleSpanMomentKipIn, simpleSpanShearKip} from "../../lib/beams/statics.js";

test("simpleSpanMomentKipIn is w L^2 / 8", () => {
  // 2,000 plf on 30 ft: 225 kip-ft.
  expect(simpleSpanMomentKipIn(2000, 30)).toBeCloseTo(2700, 9);
});

test("simpleSpanShearKip falls evenly from the support to midspan and changes sign there", () => {
  expect(simpleSpanShearKip(2000, 30, 0)).toBeCloseTo(30, 12);
  expect(simpleSpanShearKip(2000, 30, 5)).toBeCloseTo(20, 12);
  expect(simpleSpanShearKip(2000, 30, 15)).toBeCloseTo(0, 12);
  expect(simpleSpanShearKip(2000, 30, 30)).toBeCloseTo(-30, 12);
});
