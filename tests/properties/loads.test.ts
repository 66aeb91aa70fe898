import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {reduceLiveLoad, type ReductionInput} from "../../lib/loads/reduction.js";
import {loadAreas} from "../../lib/loads/tributary.js";
import {hold, within} from "./arbitrary.js";

const anyInput: fc.Arbitrary<ReductionInput> = fc.record({
  livePsf: within(0, 300), rule: fc.constantFrom("yes" as const, "no" as const, "heavy" as const, "garage" as const),
  influenceFt2: fc.oneof(within(1, 1000), within(1, 1e6)), floors: fc.integer({min: 1, max: 12}),
});

describe("the reduction of a live load", () => {
  test("never falls below the least that its rule allows, and never rises above 1", () => {
    hold(1500, fc.property(anyInput, (input) => {
      const {factor, reducedPsf, leastFactor} = reduceLiveLoad(input);
      const heavy = input.rule === "heavy" || input.rule === "garage" || input.livePsf > 100;
      const floor = input.rule === "no" ? 1 : heavy ? (input.floors > 1 ? 0.8 : 1) : leastFactor;
      expect(factor).toBeGreaterThanOrEqual(floor);
      expect(factor).toBeLessThanOrEqual(1);
      expect(reducedPsf).toBe(factor * input.livePsf);
    }));
  });

  test("never rises as the area grows", () => {
    hold(1000, fc.property(anyInput, within(1, 20), (input, times) => {
      const larger = Math.min(1e6, input.influenceFt2 * times);
      expect(reduceLiveLoad({...input, influenceFt2: larger}).factor).toBeLessThanOrEqual(reduceLiveLoad(input).factor);
    }));
  });

  test("is continuous where it begins and where it ends", () => {
    hold(300, fc.property(within(1e-6, 1e-3), (hair) => {
      const at = (influenceFt2: number) => reduceLiveLoad({livePsf: 50, rule: "yes", influenceFt2, floors: 1}).factor;
      for (const edge of [400, 3600]) expect(Math.abs(at(edge + hair) - at(edge - hair))).toBeLessThan(1e-5);
    }));
  });
});

describe("the areas that load an element", () => {
  const anyGrid = fc.record({
    spanFt: within(10, 150), beamSpanFt: within(8, 80), baysAlong: fc.integer({min: 1, max: 30}), baysAcross: fc.integer({min: 1, max: 10}),
  });

  test("lie within the building and share it out: columns carry no more than the floor", () => {
    hold(500, fc.property(anyGrid, fc.constantFrom(4, 8, 10, 12, 15), (grid, memberWidthFt) => {
      for (const {element, tributary, influence, tributaryFt2, influenceFt2, elementFactor} of loadAreas(grid, memberWidthFt)) {
        expect(influenceFt2).toBe(elementFactor * tributaryFt2);
        expect(tributaryFt2).toBeLessThanOrEqual(tributary.widthFt * tributary.heightFt * (1 + 1e-12));
        for (const rect of [tributary, influence]) {
          expect(rect.xFt, element).toBeGreaterThanOrEqual(0);
          expect(rect.yFt, element).toBeGreaterThanOrEqual(0);
          if (element !== "deck member") expect(rect.xFt + rect.widthFt, element).toBeLessThanOrEqual(grid.baysAlong * grid.beamSpanFt * (1 + 1e-12));
          expect(rect.yFt + rect.heightFt, element).toBeLessThanOrEqual(grid.baysAcross * grid.spanFt * (1 + 1e-12));
        }
      }
    }));
  });
});
