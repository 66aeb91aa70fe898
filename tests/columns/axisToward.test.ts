import {describe, expect, test} from "vitest";
import {axisToward, betweenBounds} from "../../lib/columns/axisToward.js";
import {biaxialState} from "../../lib/columns/biaxial.js";
import {COLUMNS} from "./sections.js";

describe.each(["12 in, four #7", "16 x 28 in, ten #9, 6 ksi"])("%s", (name) => {
  const of = COLUMNS[name] as (typeof COLUMNS)[string];

  test("the strength lies on the load's own side of the axes: compression for compression, tension for tension", () => {
    const section = of();
    for (const axialKip of [-300, -20, 30, 500, 1500]) {
      const at = axisToward(section, {axialKip, momentKipIn: 400, depth: 0.6, width: 0.8});
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
      const [found, bound] = [axisToward(section, ray), betweenBounds(section, ray)];
      expect(found.neutralAxisIn, `${axialKip} kip`).toBeCloseTo(bound.neutralAxisIn, 7);
      expect(found.angleRad).toBeCloseTo(bound.angleRad, 7);
    }
  });
});
