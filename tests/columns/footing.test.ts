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
    // As given; a small column on rock; a lighter one there, where punching decides; a wide one, whose perimeter is long beside a thin footing.
    for (const different of [{}, {columnSideIn: 10, allowablePsf: 20000}, {columnSideIn: 8, allowablePsf: 20000, serviceKip: 100, factoredKip: 150}, {columnSideIn: 60, allowablePsf: 8000, factoredKip: 700}]) {
      const {sideIn, thicknessIn, effectiveDepthIn, oneWay, punching} = of(different);
      const {factoredKip, columnSideIn: c} = {...INPUT, ...different};
      const q = factoredKip / sideIn ** 2;
      const shears = (t: number) => {
        const d = t - 4;
        const perimeter = 4 * (c + d);
        return {
          across: [q * sideIn * Math.max(0, (sideIn - c) / 2 - d), 0.75 * 8 * Math.cbrt((0.0018 * t) / d) * 0.0632455532 * sideIn * d] as const,
          around: [q * Math.max(0, sideIn ** 2 - (c + d) ** 2), 0.75 * Math.min(4, 2 + (40 * d) / perimeter) * 0.0632455532 * perimeter * d] as const,
        };
      };
      const carries = (t: number) => Object.values(shears(t)).every(([asked, there]) => asked <= there);
      expect(carries(thicknessIn)).toBe(true);
      expect(thicknessIn === 12 || !carries(thicknessIn - 3)).toBe(true);
      expect(thicknessIn % 3).toBe(0);
      // 3 in of cover against the earth, and a bar to the middle of two layers.
      expect(effectiveDepthIn).toBe(thicknessIn - 4);
      const {across, around} = shears(thicknessIn);
      expect([oneWay.shearKip, oneWay.designKip]).toEqual(across.map((kip) => expect.closeTo(kip, 5)));
      expect([punching.shearKip, punching.designKip, punching.perimeterIn]).toEqual([...around.map((kip) => expect.closeTo(kip, 5)), 4 * (c + effectiveDepthIn)]);
    }
    // 2 + 40 x 8 / 272 = 3.18 where the wide column's footing is 12 in thick.
    expect(of({columnSideIn: 60, allowablePsf: 8000, serviceKip: 300, factoredKip: 400})).toMatchObject({thicknessIn: 12, punching: {designKip: expect.closeTo(0.75 * (2 + 320 / 272) * 0.0632455532 * 272 * 8, 4)}});
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
    // A pressure that cannot spread beyond the footing's side: 90 in under 60 in is half as much again.
    const wide = of({columnSideIn: 60, allowablePsf: 8000, columnStrengthPsi: 12000});
    expect([wide.sideIn, wide.thicknessIn]).toEqual([87, expect.any(Number)]);
    expect(wide.checks.find((check) => check.id === "column bearing")?.capacity).toBeCloseTo(0.65 * 0.85 * 4 * 3600 * (Math.min(87, 60 + 4 * wide.thicknessIn) / 60), 6);
    // Stronger concrete in the footing helps where it is the weaker.
    const words = (different: Partial<FootingInput>) => of({factoredKip: 5000, ...different}).checks.find((check) => check.id === "column bearing")?.message;
    expect(words({columnStrengthPsi: 12000})).toContain("the footing needs stronger concrete");
    expect(words({})).not.toContain("stronger concrete");
    // Half of the column's strength in the footing is as good, for the pressure spreads there: neither alone would help.
    expect(words({columnStrengthPsi: 8000})).not.toContain("stronger concrete");
  });

  test("says that a footing beyond 20 ft is no sensible answer", () => {
    const result = of();
    const large = of({serviceKip: 1500, factoredKip: 2000, allowablePsf: 2000, columnSideIn: 30});
    // sqrt(1,500,000 / 2,000) = 27.39 ft: 27.5 ft.
    expect(large.checks[0]).toMatchObject({id: "footing side", verdict: "out of range", demand: 27.5, capacity: 20});
    expect(verdictOf(result, "footing side")).toBe("ok");
    // 2,000 kip on 5,000 psf: just 20 ft.
    expect(of({serviceKip: 2000, factoredKip: 2700, columnSideIn: 30}).checks[0]).toMatchObject({id: "footing side", verdict: "ok", demand: 20, capacity: 20});
  });

  test("is 6 ft thick at most, and says where that does not carry", () => {
    const crushed = of({serviceKip: 15000, factoredKip: 20000, allowablePsf: 40000, columnSideIn: 24});
    expect(crushed.thicknessIn).toBe(72);
    expect([verdictOf(crushed, "footing punching"), verdictOf(crushed, "footing one-way shear")]).toEqual(["fails", "fails"]);
  });

  test("refuses loads and pressures that cannot be", () => {
    refused(() => of({serviceKip: -10}), {path: "serviceKip"});
    refused(() => of({factoredKip: 0}), {path: "factoredKip"});
    refused(() => of({allowablePsf: 100}), {path: "allowablePsf", allowed: "500 to 40000 psf"});
  });
});
