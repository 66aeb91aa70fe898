import {describe, expect, test} from "vitest";
import {simpson} from "../../lib/member/simpson.js";

describe("simpson", () => {
  test("is exact for the mean of a cubic", () => {
    // Mean of 1 + 2 x + 3 x^2 + 4 x^3 over 0 to 1: 1 + 1 + 1 + 1.
    expect(simpson([0, 0.25, 0.5, 0.75, 1].map((x) => 1 + 2 * x + 3 * x ** 2 + 4 * x ** 3))).toBeCloseTo(4, 12);
  });

  test("comes near the mean of a quartic as the strips grow finer", () => {
    const off = (strips: number) => Math.abs(simpson(Array.from({length: strips + 1}, (_, i) => (i / strips) ** 4)) - 1 / 5);
    expect(off(4) / off(8)).toBeCloseTo(16, 9);
    expect(off(80)).toBeLessThan(1e-8);
  });
});
