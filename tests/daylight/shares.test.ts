import {describe, expect, test} from "vitest";
import {floorShares, sharePercents} from "../../lib/daylight/shares.js";
import {refused} from "../support/errors.js";

describe("floorShares", () => {
  test("finds the parts of a straight fall exactly", () => {
    // From 10 at the window to 0 at the back: 5, 2 and 1 are met at 1/2, 8/10 and 9/10 of the depth.
    const values = Array.from({length: 40}, (_, i) => 10 - (10 * (i + 0.5)) / 40);
    const shares = floorShares(values);
    expect(shares.good).toBeCloseTo(0.5, 12);
    expect(shares.partial).toBeCloseTo(0.3, 12);
    expect(shares.little).toBeCloseTo(0.1, 12);
    expect(shares.dark).toBeCloseTo(0.1, 12);
  });

  test("adds up to 1, also where the middle is darkest, and counts both bright ends", () => {
    const values = Array.from({length: 41}, (_, i) => Math.abs(i - 20) / 4);
    const {good, partial, little, dark} = floorShares(values, {goodPercent: 4, partialPercent: 3, littlePercent: 2});
    expect(good + partial + little + dark).toBeCloseTo(1, 12);
    // Two ends of 4 strips each and half a strip beyond.
    expect(good).toBeCloseTo(9 / 41, 12);
  });

  test("gives all to one where all are alike", () => {
    expect(floorShares([3, 3, 3])).toEqual({good: 0, partial: 1, little: 0, dark: 0});
  });

  test("refuses thresholds out of order", () => {
    refused(() => floorShares([1, 1], {goodPercent: 2, partialPercent: 3, littlePercent: 1}), {path: "partialPercent"});
  });
});

describe("sharePercents", () => {
  test("tells shares that add up to 100, where each rounded by itself would make 101", () => {
    const told = sharePercents({good: 0.265, partial: 0.265, little: 0.46, dark: 0.01});
    expect(told.good + told.partial + told.little + told.dark).toBe(100);
    expect(told.daylit).toBe(told.good + told.partial);
  });
});
