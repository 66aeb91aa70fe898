import {describe, expect, test} from "vitest";
import {concrete} from "../../lib/materials/concrete.js";
import {compositeSection} from "../../lib/sections/composite.js";
import {fromMoments} from "../../lib/sections/shape.js";

// A rectangle 10 in wide and 12 in deep: A = 120, I = 1,440.
const PRECAST = fromMoments(120, 6, 1440, 12);
const CONCRETE = concrete("normalweight", 5000);

describe("compositeSection", () => {
  test("with a topping of the member's own concrete is the deeper rectangle", () => {
    // 10 by 15: A = 150, I = 10 * 3,375 / 12 = 2,812.5, yb = 7.5.
    const section = compositeSection(PRECAST, CONCRETE, {thicknessIn: 3, widthIn: 10, concrete: CONCRETE});
    expect(section.modularRatio).toBe(1);
    expect(section.areaIn2).toBe(150);
    expect(section.inertiaIn4).toBeCloseTo(2812.5, 10);
    expect(section).toMatchObject({ybIn: 7.5, ytIn: 7.5, depthIn: 15, interfaceAboveCentroidIn: 4.5});
  });

  test("narrows a weaker topping by the ratio of the moduli", () => {
    // Equal weights leave sqrt(3,000 / 5,000) = 0.7746; A = 120 + 7.746 * 3 = 143.24.
    const section = compositeSection(PRECAST, CONCRETE, {thicknessIn: 3, widthIn: 10, concrete: concrete("normalweight", 3000)});
    expect(section.modularRatio).toBeCloseTo(0.774597, 6);
    expect(section.areaIn2).toBeCloseTo(143.2379, 4);
    // yb = (720 + 23.2379 * 13.5) / 143.2379 = 7.2167.
    expect(section.ybIn).toBeCloseTo(7.21675, 4);
    // I = 1,440 + 120 * 1.2167^2 + 7.74597 * 27 / 12 + 23.2379 * 6.2833^2 = 2,552.5.
    expect(section.inertiaIn4).toBeCloseTo(2552.5, 0);
    expect(section.stIn3).toBeCloseTo(2552.5 / 7.7833, 1);
  });

  test("widens a stiffer topping on lightweight concrete", () => {
    // (150 / 115)^1.5 = 1.48967 at equal strengths.
    const section = compositeSection(PRECAST, concrete("sand-lightweight", 5000), {thicknessIn: 2, widthIn: 10, concrete: CONCRETE});
    expect(section.modularRatio).toBeCloseTo(1.48967, 4);
  });

  test("says when its centroid lies in the topping", () => {
    const section = compositeSection(PRECAST, CONCRETE, {thicknessIn: 6, widthIn: 200, concrete: CONCRETE});
    expect(section.interfaceAboveCentroidIn).toBeLessThan(0);
  });
});
