import {describe, expect, test} from "vitest";
import {gaussLegendre} from "../../lib/daylight/gauss.js";

describe("gaussLegendre", () => {
  test("has the textbook's nodes and weights", () => {
    const {nodes, weights} = gaussLegendre(3);
    expect([...nodes].sort((a, b) => a - b)).toEqual([-Math.sqrt(0.6), 0, Math.sqrt(0.6)].map((x) => expect.closeTo(x, 14)));
    expect([...weights].sort((a, b) => a - b)).toEqual([5 / 9, 5 / 9, 8 / 9].map((w) => expect.closeTo(w, 14)));
  });

  test.each([1, 2, 5, 8, 24])("of %d nodes integrates powers up to twice that less one exactly, and no further", (order) => {
    const {nodes, weights} = gaussLegendre(order);
    const power = (n: number) => nodes.reduce((sum, x, i) => sum + (weights[i] as number) * x ** n, 0);
    for (let n = 0; n < 2 * order; n++) expect(power(n)).toBeCloseTo(n % 2 === 0 ? 2 / (n + 1) : 0, 12);
    if (order < 8) expect(Math.abs(power(2 * order) - 2 / (2 * order + 1))).toBeGreaterThan(1e-6);
  });
});
