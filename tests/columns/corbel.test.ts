import {describe, expect, test} from "vitest";
import {corbel, type CorbelInput} from "../../lib/columns/corbel.js";
import {steelForMomentIn2} from "../../lib/beams/rectangularSteel.js";
import {refused} from "../support/errors.js";

const INPUT: CorbelInput = {
  shearKip: 100, armIn: 5, depthIn: 18, effectiveDepthIn: 16, widthIn: 16, strengthPsi: 5000, bearingLengthIn: 5, bearingWidthIn: 14,
};
const of = (different: Partial<CorbelInput> = {}) => corbel({...INPUT, ...different});
const verdictOf = (result: ReturnType<typeof of>, id: string) => result.checks.find((check) => check.id === id)?.verdict;

describe("corbel", () => {
  test("by hand: 100 kip at 5 in", () => {
    const result = of();
    // Pull 20 kip; moment 500 + 20 x 2; section 0.75 min(1,000, 880, 1,600) x 256.
    expect(result).toMatchObject({pullKip: 20, momentKipIn: 540, armRatio: 0.3125});
    expect(result.sectionShearKip).toBeCloseTo(168.96, 9);
    // 100 / (0.75 x 60 x 1.4) and 20 / 45.
    expect(result.frictionSteelIn2).toBeCloseTo(1.5873, 4);
    expect(result.pullSteelIn2).toBeCloseTo(0.4444, 4);
    // a = 60 As / 68: 45 As (16 - a/2) = 540 gives 0.7667.
    const steel = result.bendingSteelIn2;
    expect(45 * steel * (16 - (60 * steel) / 68 / 2)).toBeCloseTo(540, 9);
    expect(steel).toBeCloseTo(0.7665, 3);
    // 0.767 + 0.444 = 1.211; 2/3 x 1.587 + 0.444 = 1.503; 0.04 x 5/60 x 256 = 0.853.
    expect(result).toMatchObject({mainSteelRule: "shear friction and pull"});
    expect(result.mainSteelIn2).toBeCloseTo(1.50265, 4);
    expect(result.stirrupSteelIn2).toBeCloseTo(0.5 * (1.50265 - 0.4444), 4);
    expect(result.checks.map((check) => check.verdict)).toEqual(["ok", "ok", "ok", "ok"]);
  });

  test("of a textbook: 24 kip dead, 37.5 kip live, a pull of 20 kip", () => {
    // PCA, Notes on ACI 318-08, Example 15.2 (from memory): Vu 88.8, Nuc 32.0; Avf 1.41, An 0.71, 2/3 Avf + An 1.65, Ah 0.47 in2.
    const found = of({shearKip: 1.2 * 24 + 1.6 * 37.5, pullKip: 1.6 * 20, armIn: 4, depthIn: 15, effectiveDepthIn: 13, widthIn: 14, bearingWidthIn: 12});
    expect(found.frictionSteelIn2).toBeCloseTo(1.41, 2);
    expect(found.pullSteelIn2).toBeCloseTo(0.711, 3);
    expect(found).toMatchObject({mainSteelRule: "shear friction and pull", mainSteelIn2: expect.closeTo(1.651, 3), stirrupSteelIn2: expect.closeTo(0.47, 3)});
  });

  test("changes its rule with the arm and with the load", () => {
    expect(of({armIn: 14}).mainSteelRule).toBe("bending and pull");
    expect(of({shearKip: 20}).mainSteelRule).toBe("least steel");
  });

  test("takes a pull that is given, and a fifth of the reaction at least", () => {
    expect(of({pullKip: 50}).pullKip).toBe(50);
    expect(of({pullKip: 5}).pullKip).toBe(20);
    // A beam that pulls harder than it presses is beyond the method.
    refused(() => of({pullKip: 101}), {path: "pullKip", allowed: "0 to 100 kip"});
  });

  test("fails when too long, too small, or under too small a pad", () => {
    expect(verdictOf(of({armIn: 16}), "corbel arm")).toBe("ok");
    expect(verdictOf(of({armIn: 16.1}), "corbel arm")).toBe("fails");
    expect(verdictOf(of({shearKip: 170}), "corbel shear")).toBe("fails");
    const crushed = of({shearKip: 900, armIn: 16});
    expect(verdictOf(crushed, "corbel bending")).toBe("fails");
    // Steel at half the depth as lever stands for what no steel does: 900 x 16 + 180 x 2 over 0.75 x 60 x 8.
    expect(crushed.bendingSteelIn2).toBeCloseTo(14760 / (45 * 8), 9);
    // The most that a block down to the steel carries: 0.75 x 0.85 x 5 x 16 x 16^2 / 2 = 6,528 kip-in.
    expect(crushed.checks.find(({id}) => id === "corbel bending")).toMatchObject({demand: 14760, capacity: expect.closeTo(6528, 9)});
    // 0.65 x 0.85 x 5 x 36 = 99.45 kip.
    expect(verdictOf(of({bearingLengthIn: 6, bearingWidthIn: 6}), "corbel bearing")).toBe("fails");
  });

  test("limits the shear stress to the least of three bounds", () => {
    // 3,000 psi: 600 psi; 5,000: 880; 12,000: 1,440, below 1,600.
    const stress = (strengthPsi: number) => (of({strengthPsi}).sectionShearKip * 1000) / (0.75 * 256);
    expect([3000, 5000, 12000].map(stress)).toEqual([600, 880, 1440].map((psi) => expect.closeTo(psi, 9)));
  });

  test("refuses negative loads, steel outside its depth, a pad wider than the corbel", () => {
    refused(() => of({shearKip: -1}), {path: "shearKip"});
    refused(() => of({pullKip: -1}), {path: "pullKip"});
    refused(() => of({effectiveDepthIn: 18}), {path: "effectiveDepthIn", allowed: "3 to 17 in"});
    refused(() => of({bearingWidthIn: 17}), {path: "bearingWidthIn"});
  });
});

test("steelForMomentIn2 gives none where the block would pass the steel", () => {
  // 0.9 x 0.85 x 4 x 12 x 20^2 / 2 = 7,344 kip-in.
  const section = {widthIn: 12, depthIn: 20, strengthPsi: 4000, phi: 0.9};
  expect(steelForMomentIn2({...section, momentKipIn: 7343})).toBeLessThan((0.85 * 4 * 12 * 20) / 60);
  expect(steelForMomentIn2({...section, momentKipIn: 7345})).toBeUndefined();
  expect(steelForMomentIn2({...section, momentKipIn: 0})).toBe(0);
});
