import {expect, it} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {loadOn} from "../../lib/loads/floorLoads.js";
import {influenceOf, reductionCurve} from "../../lib/loads/reductionCurve.js";
import {catalog, seed} from "../support/designs.js";

it("starts without reduction and ends at the least factor for one floor and for more", () => {
  for (const [floors, least] of [[1, 0.5], [2, 0.4]] as const) {
    const curve = reductionCurve(floors, 100, 40000);
    expect(curve[0]).toEqual({influenceFt2: 100, factor: 1});
    expect(curve.at(-1)?.factor).toBe(least);
    curve.slice(1).forEach((point, i) => expect(point.factor).toBeLessThanOrEqual(curve[i]?.factor ?? 0));
  }
});

it("has as many places before 2,000 ft2, the geometric middle of 100 and 40,000, as after it", () => {
  expect(reductionCurve(1, 100, 40000)).toHaveLength(121);
  expect(reductionCurve(1, 100, 40000)[60]?.influenceFt2).toBeCloseTo(2000, 8);
  expect(reductionCurve(1, 100, 40000)[120]?.influenceFt2).toBeCloseTo(40000, 8);
});

it("counts a column's influence area once for each floor above", () => {
  const {loads} = evaluate(seed("classroom-wing"), catalog);
  expect(influenceOf(loadOn(loads, "interior column"))).toBe(5376);
  expect(influenceOf(loadOn(loads, "edge beam"))).toBe(672);
});
