// Columns that one moment bends, all over their interaction: against thin strips, and by the shape of the curve.
import {describe, expect, test} from "vitest";
import {fullyPressedIn} from "../../lib/columns/inclinedForces.js";
import {interactionCut, type AxialMoment} from "../../lib/columns/interactionCut.js";
import {once} from "../support/once.js";
import {fiberStrength} from "./fibers.js";
import {capacityAt, stateAt, useOf} from "./oneAxis.js";
import {COLUMNS} from "./sections.js";

/** How far the points, in the order of their axial load, lie below their upper hull at most. */
function dentIn(points: readonly AxialMoment[]): number {
  const over = (a: AxialMoment, b: AxialMoment, at: AxialMoment) =>
    a.momentKipIn + ((b.momentKipIn - a.momentKipIn) * (at.axialKip - a.axialKip)) / (b.axialKip - a.axialKip) - at.momentKipIn;
  let worst = 0;
  // Every chord over every point between its ends, by the slow way that needs no cleverness.
  for (let i = 0; i < points.length; i += 4) {
    for (let k = i + 2; k < points.length; k += 4) {
      for (let j = i + 1; j < k; j++) {
        const [a, at, b] = [points[i], points[j], points[k]] as [AxialMoment, AxialMoment, AxialMoment];
        if (b.axialKip - a.axialKip > 1e-6) worst = Math.max(worst, over(a, b, at));
      }
    }
  }
  return worst;
}

describe.each(Object.entries(COLUMNS))("%s", (_, of) => {
  const its = once(() => {
    const column = of();
    const curve = interactionCut(column, {axialKip: 0, depthMomentKipIn: 1, widthMomentKipIn: 0}, 200);
    const fibers = {...column, areaIn2: column.bar.areaIn2, barDepthsIn: column.bars.places.map((place) => place.yIn)};
    return {column, curve, fibers, greatest: Math.max(...curve.nominal.map((point) => point.momentKipIn))};
  });

  test("agrees with thin strips to 0.5 % of squash load and greatest moment", () => {
    const {column, curve, fibers, greatest} = its();
    for (let i = 1; i <= 120; i++) {
      const c = (fullyPressedIn(column, 0) * i) / 120;
      const ours = stateAt(column, c);
      const theirs = fiberStrength(fibers, c);
      expect(Math.abs(ours.axialKip - theirs.axialKip) / curve.squashKip, `c ${c}`).toBeLessThan(0.005);
      expect(Math.abs(ours.depthMomentKipIn - theirs.momentKipIn) / greatest, `c ${c}`).toBeLessThan(0.005);
      expect(ours.tensileStrain).toBeCloseTo(theirs.strain, 12);
    }
  });

  test("finds the point on a ray where the strips do, to 0.5 %", () => {
    const {column, curve, fibers} = its();
    for (const share of [0.05, 0.15, 0.3, 0.6, 1, 2, 5]) {
      const e = share * column.depthIn;
      // The strips are searched on their own for the neutral axis whose moment is e times the axial load.
      let low = 0.02 * column.depthIn;
      let high = 4 * column.depthIn;
      for (let i = 0; i < 40; i++) {
        const c = (low + high) / 2;
        const {axialKip, momentKipIn} = fiberStrength(fibers, c, 2000);
        if (momentKipIn < e * axialKip) high = c;
        else low = c;
      }
      const {state, axialKip, depthMomentKipIn, capped} = capacityAt(column, e);
      const theirs = fiberStrength(fibers, low, 2000);
      expect(Math.abs(state.axialKip / theirs.axialKip - 1), `e/h ${share}`).toBeLessThan(0.005);
      expect(depthMomentKipIn).toBeCloseTo(e * axialKip, 4);
      expect(capped).toBe(state.phi * state.axialKip > curve.capKip);
    }
  });

  test("axial load only grows as the neutral axis goes deeper", () => {
    const {nominal} = its().curve;
    nominal.slice(1).forEach((point, i) => expect(point.axialKip).toBeGreaterThanOrEqual((nominal[i] as AxialMoment).axialKip - 1e-9));
  });

  test("the nominal curve is convex until the block covers the section, which is above the cap", () => {
    // Beyond that depth only the far bars' stress still changes, and the curve runs straight to the squash load, up to 4 % of
    // the greatest moment inside its hull. Below it a bar that the block swallows leaves a dent of less than 0.05 % of it.
    const {column, curve, greatest} = its();
    const covered = stateAt(column, column.depthIn / column.blockFactor).axialKip;
    expect(covered).toBeGreaterThan(0.8 * curve.squashKip);
    expect(dentIn(curve.nominal.filter((point) => point.axialKip <= covered)) / greatest).toBeLessThan(0.0005);
    expect(dentIn(curve.nominal) / greatest).toBeLessThan(0.04);
  });

  test("a point on the design curve is used in full, and half of it by half; it ends level at the cap", () => {
    const {column, curve} = its();
    for (const {axialKip, momentKipIn} of curve.design) {
      expect(useOf(column, {axialKip, momentKipIn})).toBeCloseTo(1, 6);
      expect(useOf(column, {axialKip: axialKip / 2, momentKipIn: momentKipIn / 2})).toBeCloseTo(0.5, 6);
    }
    expect(curve.design.at(-1)).toEqual({axialKip: curve.capKip, momentKipIn: 0});
    for (const point of [...curve.design, ...curve.nominal]) {
      expect(Number.isFinite(point.axialKip) && Number.isFinite(point.momentKipIn)).toBe(true);
      expect(point.axialKip).toBeLessThanOrEqual(curve.squashKip + 1e-6);
    }
  });

  test("more steel of the same places never carries less", () => {
    const {column} = its();
    const more = {...column, steelIn2: 1.1 * column.steelIn2, bar: {...column.bar, areaIn2: 1.1 * column.bar.areaIn2}};
    for (let angle = -80; angle < 90; angle += 10) {
      const ray = {axialKip: Math.sin((angle * Math.PI) / 180) * 1000, momentKipIn: Math.cos((angle * Math.PI) / 180) * 8000};
      expect(useOf(more, ray), `angle ${angle}`).toBeLessThan(useOf(column, ray));
    }
  });
});
