import {describe, expect, test} from "vitest";
import {axisToward, betweenBounds} from "../../lib/columns/axisToward.js";
import {cosineOf, emptySum, numbersOf, sineOf} from "../../lib/columns/inclinedForces.js";
import {biaxialState} from "../../lib/columns/biaxial.js";
import {COLUMNS} from "./sections.js";

describe.each(["12 in, four #7", "16 x 28 in, ten #9, 6 ksi"])("%s", (name) => {
  const of = COLUMNS[name] as (typeof COLUMNS)[string];

  test("the strength lies on the load's own side of the axes: compression for compression, tension for tension", () => {
    const section = of();
    for (const axialKip of [-300, -20, 30, 500, 1500]) {
      const at = axisToward(numbersOf(section), {axialKip, momentKipIn: 400, depth: 0.6, width: 0.8});
      const {axialKip: kip, depthMomentKipIn, widthMomentKipIn} = biaxialState(section, at.neutralAxisIn, at.angleRad);
      expect(Math.sign(kip)).toBe(Math.sign(axialKip));
      expect(widthMomentKipIn / depthMomentKipIn).toBeCloseTo(0.8 / 0.6, 8);
      expect(depthMomentKipIn / kip).toBeCloseTo((0.6 * 400) / axialKip, 8);
    }
  });

  test("steps from one axis to the next end where the search between bounds does", () => {
    const section = of();
    for (const [axialKip, momentKipIn, angle] of [[0, 100, 0.8], [250, 900, 0.1], [250, 900, 1.5], [-200, 5, 0.6], [1200, 3000, 0.5]] as const) {
      const ray = {axialKip, momentKipIn, depth: Math.cos(angle), width: Math.sin(angle)};
      const [found, bound] = [axisToward(numbersOf(section), ray), betweenBounds(numbersOf(section), ray)];
      expect(found.neutralAxisIn, `${axialKip} kip`).toBeCloseTo(bound.neutralAxisIn, 7);
      expect(found.angleRad).toBeCloseTo(bound.angleRad, 7);
    }
  });
});

describe("Newton's steps", () => {
  /** Sums of forces that a search asks for. */
  function sumsFor(name: string, [axialKip, momentKipIn, angle]: readonly [number, number, number], search = axisToward): number {
    const sum = emptySum();
    search(numbersOf((COLUMNS[name] as (typeof COLUMNS)[string])()), {axialKip, momentKipIn, depth: cosineOf(angle), width: sineOf(angle)}, sum);
    return sum.times;
  }
  /** Loads between 0.1 of a quarter turn and its end, pressed and pulled, nearly straight and much bent. */
  const LOADS = [250, 1200, 40, -20, -100].flatMap((kip) => [100, 900, 3000].flatMap((kipIn) => [0.2, 0.6, 1, 1.4].map((angle) => [kip, kipIn, angle] as const)));

  test.each(["16 in, eight #8", "24 in, sixteen #11, 9 ksi"])("find the axis of a %s in some twenty sums of forces, where the bounds ask for two hundred", (name) => {
    const sums = LOADS.map((load) => sumsFor(name, load)).sort((a, b) => a - b);
    expect(sums[Math.floor(sums.length / 2)]).toBeLessThanOrEqual(24);
    // One or two loads of the sixty have a bar that just enters the block, and are left to the bounds.
    expect(sums.at(-3)).toBeLessThanOrEqual(33);
    expect(sumsFor(name, [1200, 3000, 0.6], betweenBounds)).toBeGreaterThan(100);
  });

  test("are not begun where the moment bends one side alone: its angle is known, and only the distance is searched", () => {
    for (const angle of [0, Math.PI / 2]) for (const [axialKip, momentKipIn] of [[250, 900], [-50, 400]] as const) {
      expect(sumsFor("16 in, eight #8", [axialKip, momentKipIn, angle])).toBeLessThanOrEqual(14);
    }
  });
});
