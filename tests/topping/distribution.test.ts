import {describe, expect, test} from "vitest";
import {distribution, quantile, quantileOf} from "../../lib/topping/distribution.js";

describe("distribution", () => {
  test("tells mean, deviation, ends and quantiles as by hand", () => {
    const d = distribution(Float64Array.from([4, 2, 8, 6]));
    expect(d).toMatchObject({count: 4, mean: 5, least: 2, greatest: 8});
    expect(d.deviation).toBeCloseTo(Math.sqrt(20 / 3), 12);
    expect(d.quantiles.find(({share}) => share === 0.5)?.value).toBe(5);
    expect(d.quantiles.find(({share}) => share === 0.25)?.value).toBe(3.5);
  });

  test("counts each value in one bar", () => {
    const d = distribution(Float64Array.from({length: 1001}, (_, i) => i / 1000), 10);
    expect(d.histogram).toHaveLength(10);
    expect(d.histogram.reduce((sum, bar) => sum + bar.count, 0)).toBe(1001);
    expect(d.histogram[0]).toEqual({from: 0, to: 0.1, count: 100});
    expect(d.histogram[9]?.count).toBe(101);
  });

  test("cuts its bars between its ends, wherever these are", () => {
    // 12 to 20 in four bars of 2; what lies on a border belongs above it, the greatest into the last bar.
    expect(distribution(Float64Array.from([12, 13, 14, 19.9, 20]), 4).histogram).toEqual([
      {from: 12, to: 14, count: 2}, {from: 14, to: 16, count: 1}, {from: 16, to: 18, count: 0}, {from: 18, to: 20, count: 2},
    ]);
  });

  test("of one value has no deviation, and of nothings one bar", () => {
    expect(distribution(Float64Array.from([3]))).toMatchObject({mean: 3, deviation: 0, least: 3, greatest: 3});
    expect(distribution(new Float64Array(5)).histogram).toEqual([{from: 0, to: 0, count: 5}]);
  });

  test("names a twentieth's quantile", () => {
    // 0 to 20: the twentieth lies at 1.
    expect(quantileOf(distribution(Float64Array.from({length: 21}, (_, i) => i)), 0.05)).toBe(1);
  });

  test("gives equal values back to the last digit", () => {
    const d = distribution(new Float64Array(777).fill(0.1 + 0.2));
    expect(d).toMatchObject({mean: 0.1 + 0.2, deviation: 0, least: 0.1 + 0.2, greatest: 0.1 + 0.2});
    expect(d.histogram).toEqual([{from: 0.1 + 0.2, to: 0.1 + 0.2, count: 777}]);
  });

  test("has its ends as the outermost quantiles", () => {
    const sorted = Float64Array.from([1, 2, 5]);
    expect([0, 0.5, 1].map((share) => quantile(sorted, share))).toEqual([1, 2, 5]);
  });
});
