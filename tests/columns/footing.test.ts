import {describe, expect, test} from "vitest";
import {footing, type FootingInput} from "../../lib/columns/footing.js";
import {refused} from "../support/errors.js";

const INPUT: FootingInput = {
  serviceKip: 400, factoredKip: 540, columnSideIn: 16, columnStrengthPsi: 6000, footingStrengthPsi: 4000, allowablePsf: 5000,
};
const of = (different: Partial<FootingInput> = {}) => footing({...INPUT, ...different});
const verdictOf = (result: ReturnType<typeof of>, id: string) => result.checks.find((check) => check.id === id)?.verdict;

describe("footing", () => {
  test("has the area that the ground asks for, rounded up to 3 in", () => {
    const result = of();
    // sqrt(400,000 / 5,000) = 8.944 ft = 107.33 in: 108 in; pressure 400,000 / 81 = 4,938 psf.
    expect(result.neededSideIn).toBeCloseTo(107.331, 3);
    expect(result.sideIn).toBe(108);
    expect(result.servicePsf).toBeCloseTo(4938.27, 2);
    expect(result.factoredPsf).toBeCloseTo(6666.67, 2);
    expect(of({serviceKip: 405}).sideIn).toBe(108);
    expect(of({serviceKip: 405.1}).sideIn).toBe(111);
  });

  test("is the least thickness in steps of 3 in that carries both shears, by hand", () => {
    const result = of();
    const q = 540 / 108 ** 2;
    const shears = (thicknessIn: number) => {
      const d = thicknessIn - 4;
      const across = 0.75 * 8 * Math.cbrt((0.0018 * thicknessIn) / d) * 0.0632456 * 108 * d - q * 108 * (46 - d);
      const around = 0.75 * 4 * 0.0632456 * 4 * (16 + d) * d - q * (108 ** 2 - (16 + d) ** 2);
      return Math.min(across, around);
    };
    expect(shears(result.thicknessIn)).toBeGreaterThan(0);
    expect(shears(result.thicknessIn - 3)).toBeLessThan(0);
    expect(result.thicknessIn % 3).toBe(0);
  });

  test("bends as a cantilever from the column's face", () => {
    const result = of();
    // 0.046296 x 108 x 46^2 / 2 = 5,290 kip-in.
    expect(result.momentKipIn).toBeCloseTo(5290, 6);
    // The least steel, 0.0018 x 108 x 27, is more than bending asks here; a small one on rock needs more.
    expect(result.steelIn2).toBeCloseTo(0.0018 * 108 * result.thicknessIn, 9);
    const heavy = of({serviceKip: 3000, factoredKip: 4200, columnSideIn: 30, allowablePsf: 30000});
    expect(heavy.steelIn2).toBeGreaterThan(1.01 * 0.0018 * heavy.sideIn * heavy.thicknessIn);
    const a = (60 * heavy.steelIn2) / (0.85 * 4 * heavy.sideIn);
    expect(0.9 * 60 * heavy.steelIn2 * (heavy.effectiveDepthIn - a / 2)).toBeCloseTo(heavy.momentKipIn, 6);
  });

  test("grows with load and with softer ground", () => {
    const result = of();
    expect(of({allowablePsf: 2500}).sideIn).toBeGreaterThan(result.sideIn);
    expect(of({serviceKip: 600, factoredKip: 810}).thicknessIn).toBeGreaterThan(result.thicknessIn);
  });

  test("is never smaller than its column", () => {
    expect(of({serviceKip: 1, factoredKip: 1.4}).sideIn).toBe(24);
  });

  test("checks bearing by the weaker of column and footing", () => {
    const result = of();
    // Column 0.65 x 0.85 x 6 x 256 = 848.6 kip; footing 0.65 x 0.85 x 4 x 256 x 2 = 1,131.5 kip.
    expect(result.checks.find((check) => check.id === "column bearing")?.capacity).toBeCloseTo(848.64, 2);
    expect(of({columnStrengthPsi: 12000}).checks.find((check) => check.id === "column bearing")?.capacity).toBeCloseTo(1131.52, 2);
    expect(verdictOf(of({factoredKip: 900}), "column bearing")).toBe("fails");
  });

  test("says that a footing beyond 20 ft is no sensible answer", () => {
    const result = of();
    const large = of({serviceKip: 1500, factoredKip: 2000, allowablePsf: 2000, columnSideIn: 30});
    expect(verdictOf(large, "footing side")).toBe("out of range");
    expect(verdictOf(result, "footing side")).toBe("ok");
  });

  test("refuses loads and pressures that cannot be", () => {
    refused(() => of({serviceKip: -10}), {path: "serviceKip"});
    refused(() => of({factoredKip: 0}), {path: "factoredKip"});
    refused(() => of({allowablePsf: 100}), {path: "allowablePsf", allowed: "500 to 40000 psf"});
  });
});
