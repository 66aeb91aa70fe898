import fc from "fast-check";
import {expect, test} from "vitest";
import {axisToward, betweenBounds, type Toward} from "../../lib/columns/axisToward.js";
import {biaxialState} from "../../lib/columns/biaxial.js";
import {numbersOf} from "../../lib/columns/inclinedForces.js";
import type {ColumnSection} from "../../lib/columns/section.js";
import {within} from "../properties/arbitrary.js";
import {bar, columnOf} from "./sections.js";

const SECTIONS: Readonly<Record<string, () => ColumnSection>> = {
  "12 in, four #7": () => columnOf({widthIn: 12, depthIn: 12, count: 4, bar: bar("#7")}),
  "16 x 28 in, ten #9 on two faces": () => columnOf({depthIn: 28, count: 10, bar: bar("#9"), faces: "two"}),
  "48 in, sixteen #11, 9 ksi": () => columnOf({widthIn: 48, depthIn: 48, count: 16, bar: bar("#11"), strengthPsi: 9000}),
};

/** Any proportion of axial load, tension among it, to any moment in any direction. */
const toward: fc.Arbitrary<Toward> = fc.record({
  axialKip: within(-400, 2000),
  moment: within(0, 5),
  angle: within(0.001, Math.PI / 2),
}).map(({axialKip, moment, angle}) => ({axialKip, momentKipIn: 10 ** moment, depth: Math.cos(angle), width: Math.sin(angle)}));

test.each(Object.entries(SECTIONS))("%s: steps from one axis to the next end where the search between bounds does", (_, of) => {
  const section = of();
  const size = ({axialKip, depthMomentKipIn, widthMomentKipIn}: ReturnType<typeof biaxialState>) => Math.hypot(axialKip * section.depthIn, depthMomentKipIn, widthMomentKipIn);
  fc.assert(fc.property(toward, (ray) => {
    const [found, bound] = [axisToward(numbersOf(section), ray), betweenBounds(numbersOf(section), ray)].map((at) => biaxialState(section, at.neutralAxisIn, at.angleRad));
    expect(size(found as never) / size(bound as never)).toBeCloseTo(1, 8);
  }), {numRuns: 300, seed: 5});
});
