import {describe, expect, test} from "vitest";
import {reduceLiveLoad, type ReductionInput} from "../../lib/loads/reduction.js";
import {refused} from "../support/errors.js";

const reduced = (different: Partial<ReductionInput>) => reduceLiveLoad({livePsf: 50, rule: "yes", influenceFt2: 1600, floors: 1, ...different});

describe("an ordinary live load", () => {
  test("is multiplied by 0.25 + 15/sqrt(KLL AT)", () => {
    // 15 / 40 = 0.375; 0.625 * 50 = 31.25.
    expect(reduced({})).toEqual({factor: 0.625, reducedPsf: 31.25, formulaFactor: 0.625, leastFactor: 0.5, decides: "formula", clause: "ASCE 7-16 4.7.2"});
  });

  test("is not reduced below 400 ft2 of influence area, and just begins to be at it", () => {
    expect(reduced({influenceFt2: 399.99})).toMatchObject({factor: 1, reducedPsf: 50, decides: "area too small"});
    // 0.25 + 15 / 20 = 1.
    expect(reduced({influenceFt2: 400})).toMatchObject({factor: 1, decides: "formula"});
    expect(reduced({influenceFt2: 401}).factor).toBeLessThan(1);
  });

  test("is not reduced below a half for one floor: 3,600 ft2 is where that limit is met", () => {
    // 0.25 + 15 / 60 = 0.5.
    expect(reduced({influenceFt2: 3600})).toMatchObject({factor: 0.5, decides: "formula"});
    expect(reduced({influenceFt2: 3601})).toMatchObject({factor: 0.5, decides: "lower limit"});
    expect(reduced({influenceFt2: 1e6}).factor).toBe(0.5);
  });

  test("is not reduced below four tenths for two floors and more: 10,000 ft2", () => {
    expect(reduced({influenceFt2: 10000, floors: 2})).toMatchObject({factor: 0.4, leastFactor: 0.4, decides: "formula"});
    expect(reduced({influenceFt2: 10001, floors: 2})).toMatchObject({factor: 0.4, decides: "lower limit"});
  });

  test("of exactly 100 psf is ordinary still", () => {
    expect(reduced({livePsf: 100}).factor).toBe(0.625);
  });
});

describe("a heavy live load", () => {
  test("is not reduced on one floor", () => {
    expect(reduced({livePsf: 100.1})).toMatchObject({factor: 1, decides: "heavy load", clause: "ASCE 7-16 4.7.3"});
    expect(reduced({livePsf: 150, rule: "heavy"}).factor).toBe(1);
    // A room of goods keeps its rule where its load is no more than 100 psf.
    expect(reduced({livePsf: 90, rule: "heavy"})).toMatchObject({factor: 1, decides: "heavy load"});
  });

  test("may lose a fifth on members under two floors, and no more than the formula gives", () => {
    expect(reduced({livePsf: 150, rule: "heavy", floors: 2})).toMatchObject({factor: 0.8, decides: "heavy load on several floors"});
    // 0.25 + 15 / sqrt(500) = 0.92082.
    expect(reduced({livePsf: 150, rule: "heavy", floors: 2, influenceFt2: 500}).factor).toBeCloseTo(0.92082, 5);
    expect(reduced({livePsf: 150, rule: "heavy", floors: 2, influenceFt2: 300}).factor).toBe(1);
  });
});

describe("other rules", () => {
  test("let a garage lose a fifth on several floors only", () => {
    expect(reduced({rule: "garage", livePsf: 40})).toMatchObject({factor: 1, decides: "garage", clause: "ASCE 7-16 4.7.4"});
    expect(reduced({rule: "garage", livePsf: 40, floors: 2})).toMatchObject({factor: 0.8, decides: "garage on several floors"});
    expect(reduced({rule: "garage", livePsf: 40, floors: 3})).toMatchObject({factor: 0.8, reducedPsf: 32, decides: "garage on several floors"});
  });

  test("let assembly lose nothing, however large its area", () => {
    expect(reduced({rule: "no", influenceFt2: 20000, floors: 5})).toMatchObject({factor: 1, decides: "no reduction", clause: "ASCE 7-16 4.7.5"});
  });
});

test("a load, area or number of floors that cannot be is refused", () => {
  refused(() => reduced({livePsf: -1}), {path: "livePsf", message: "live load: -1 psf is not possible (0 to 1000 psf)"});
  refused(() => reduced({influenceFt2: 0}), {path: "influenceFt2"});
  refused(() => reduced({influenceFt2: Infinity}), {path: "influenceFt2"});
  refused(() => reduced({floors: 0}), {path: "floors"});
  refused(() => reduced({floors: 1.5}), {path: "floors", allowed: "whole number, 1 to 200"});
});
