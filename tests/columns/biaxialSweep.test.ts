// Columns that two moments bend, all over their interaction: against small squares, ray by ray, and from load to load.
import {describe, expect, test} from "vitest";
import {axialCapKip, squashLoadKip} from "../../lib/columns/axialLimits.js";
import {biaxialCapacity, biaxialState, biaxialUse, resultantKipIn, type BiaxialLoad} from "../../lib/columns/biaxial.js";
import {fullyPressedIn} from "../../lib/columns/inclinedForces.js";
import {once} from "../support/once.js";
import {gridStrength} from "./gridFibers.js";
import {capacityAlong, useOf} from "./oneAxis.js";
import {columnOf, COLUMNS} from "./sections.js";

const load = (axialKip: number, depthMomentKipIn: number, widthMomentKipIn: number): BiaxialLoad => ({axialKip, depthMomentKipIn, widthMomentKipIn});
const degrees = (angle: number) => (angle * Math.PI) / 180;

describe.each(["16 in, eight #8", "12 in, four #7", "16 x 28 in, ten #9, 6 ksi", "24 in, sixteen #11, 9 ksi"])("%s", (name) => {
  const its = once(() => {
    const column = COLUMNS[name]?.() as ReturnType<typeof columnOf>;
    return {column, squashKip: squashLoadKip(column), capKip: axialCapKip(column), bending: capacityAlong(column, {axialKip: 0, momentKipIn: 1}).depthMomentKipIn};
  });

  test("agrees with a grid of small squares to 0.6 % of squash load and of the moment at a sixth of its depth", () => {
    const {column, squashKip} = its();
    const grid = {...column, areaIn2: column.bar.areaIn2, places: column.bars.places};
    const most = squashKip * (column.depthIn / 6);
    for (const angle of [0, 10, 30, 45, 62, 85]) {
      for (const share of [0.15, 0.3, 0.45, 0.6, 0.8, 1]) {
        const c = share * fullyPressedIn(column, degrees(angle));
        const ours = biaxialState(column, c, degrees(angle));
        const theirs = gridStrength(grid, c, degrees(angle));
        expect(Math.abs(ours.axialKip - theirs.axialKip) / squashKip, `${angle} deg, c ${c}`).toBeLessThan(0.006);
        expect(Math.abs(ours.depthMomentKipIn - theirs.depthMomentKipIn) / most, `${angle} deg, c ${c}`).toBeLessThan(0.006);
        expect(Math.abs(ours.widthMomentKipIn - theirs.widthMomentKipIn) / most, `${angle} deg, c ${c}`).toBeLessThan(0.006);
        expect(ours.phi).toBeCloseTo(theirs.phi, 12);
      }
    }
  });

  test("carries on every ray a load in the ray's direction, that the state times phi is, under the cap", () => {
    const {column, capKip} = its();
    for (let tilt = -80; tilt <= 89; tilt += 13) {
      for (let turn = 0; turn <= 90; turn += 7.5) {
        const ray = load(Math.sin(degrees(tilt)) * 100, Math.cos(degrees(tilt)) * Math.cos(degrees(turn)) * 1000, Math.cos(degrees(tilt)) * Math.sin(degrees(turn)) * 1000);
        const found = biaxialCapacity(column, ray);
        const at = `tilt ${tilt}, turn ${turn}`;
        const size = Math.hypot(found.axialKip * 10, resultantKipIn(found));
        const asked = Math.hypot(ray.axialKip * 10, resultantKipIn(ray));
        expect(size, at).toBeGreaterThan(0);
        expect(Math.abs(found.axialKip / size - ray.axialKip / asked), at).toBeLessThan(1e-6);
        expect(Math.abs(found.depthMomentKipIn / size - ray.depthMomentKipIn / asked), at).toBeLessThan(1e-6);
        expect(Math.abs(found.widthMomentKipIn / size - ray.widthMomentKipIn / asked), at).toBeLessThan(1e-6);
        expect(found.axialKip).toBeLessThanOrEqual(capKip * (1 + 1e-12));
        expect(found.capped).toBe(found.state.design.axialKip > capKip);
        expect(biaxialUse(column, found)).toBeCloseTo(1, 8);
      }
    }
  });

  test("changes little where the load changes little: no place at which the search fails", () => {
    const {column, capKip, bending} = its();
    for (const axialKip of [-40, 1, 0.3 * capKip, 0.7 * capKip]) {
      let before: number | undefined;
      for (let turn = 0; turn <= 90; turn += 0.5) {
        const use = biaxialUse(column, load(axialKip, bending * Math.cos(degrees(turn)), bending * Math.sin(degrees(turn))));
        if (before !== undefined) expect(Math.abs(use / before - 1), `${axialKip} kip, ${turn} deg`).toBeLessThan(0.03);
        before = use;
      }
      const alone = useOf(column, {axialKip, momentKipIn: bending});
      for (const trace of [1e-12, 1e-9, 1e-6, 1e-3]) expect(biaxialUse(column, load(axialKip, bending, trace * bending))).toBeCloseTo(alone, trace < 1e-3 ? 5 : 2);
    }
  });

  test("is no weaker with more steel in the same places", () => {
    const {column, bending} = its();
    const more = columnOf({...column, bar: {...column.bar, areaIn2: 1.1 * column.bar.areaIn2}});
    for (let turn = 5; turn < 90; turn += 17) {
      const asked = load(200, bending * Math.cos(degrees(turn)), bending * Math.sin(degrees(turn)));
      expect(biaxialUse(more, asked)).toBeLessThan(biaxialUse(column, asked));
    }
  });

  test("lies near the reciprocal of the loads about each axis where compression leads", () => {
    const {column, squashKip} = its();
    // Bresler's 1/P = 1/Px + 1/Py - 1/Po, for nominal strength; authors find it within some tenths either way.
    for (const [ex, ey] of [[0.15, 0.1], [0.2, 0.2], [0.1, 0.3]] as const) {
      const about = (depth: number, width: number) => biaxialCapacity(column, load(1, depth, width)).state.axialKip;
      const [px, py] = [about(ex * column.depthIn, 0), about(0, ey * column.widthIn)];
      const both = about(ex * column.depthIn, ey * column.widthIn);
      const reciprocal = 1 / (1 / px + 1 / py - 1 / squashKip);
      expect(both / reciprocal).toBeGreaterThan(0.85);
      expect(both / reciprocal).toBeLessThan(1.15);
      expect(both).toBeLessThan(Math.min(px, py));
    }
  });
});
