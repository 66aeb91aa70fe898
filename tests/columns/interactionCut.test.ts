import {describe, expect, test} from "vitest";
import {axialCapKip, squashLoadKip} from "../../lib/columns/axialLimits.js";
import {biaxialCapacity, biaxialUse, resultantKipIn} from "../../lib/columns/biaxial.js";
import {interactionCut} from "../../lib/columns/interactionCut.js";
import {capacityAlong, useOf} from "./oneAxis.js";
import {columnOf} from "./sections.js";

const at = (degrees: number, places = 12) => {
  const column = columnOf();
  const [depth, width] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  return {column, cut: interactionCut(column, {axialKip: 100, depthMomentKipIn: 500 * depth, widthMomentKipIn: -500 * width}, places), depth, width};
};

describe("the interaction cut at an angle", () => {
  test("is used in full at each of its points", () => {
    for (const degrees of [10, 45, 70]) {
      const {column, cut, depth, width} = at(degrees);
      for (const {axialKip, momentKipIn} of cut.design) {
        expect(biaxialUse(column, {axialKip, depthMomentKipIn: depth * momentKipIn, widthMomentKipIn: width * momentKipIn})).toBeCloseTo(1, 5);
      }
    }
  });

  test("ends at pure tension and squash load, and level at the cap", () => {
    const {column, cut} = at(30);
    expect(cut.nominal[0]).toEqual({axialKip: -60 * 6.32, momentKipIn: 0});
    expect(cut.nominal.at(-1)).toEqual({axialKip: squashLoadKip(column), momentKipIn: 0});
    expect(cut.design.at(-1)).toEqual({axialKip: axialCapKip(column), momentKipIn: 0});
    expect(cut.design.at(-2)).toEqual(cut.cap);
    expect(cut.cap.momentKipIn).toBeGreaterThan(0);
    expect(cut.design[0]?.axialKip).toBeCloseTo(-0.9 * 379.2, 9);
  });

  test("is drawn through as many places as are asked for, from tension to compression, none of them twice", () => {
    const {nominal, design, capKip} = at(30, 40).cut;
    expect(nominal).toHaveLength(41);
    for (const points of [nominal, design.slice(0, -1)]) points.slice(1).forEach(({axialKip}, i) => expect(axialKip).toBeGreaterThan(points[i]?.axialKip ?? NaN));
    // Below the cap lie all points but those of the last quarter of the axis' way or so.
    expect(design.length).toBeGreaterThan(20);
    expect(Math.max(...design.map(({axialKip}) => axialKip))).toBe(capKip);
    // The points lie closer where the axis is shallow, so that no step of the nominal curve is a fifth of its height.
    const height = (nominal.at(-1)?.axialKip ?? NaN) - (nominal[0]?.axialKip ?? NaN);
    nominal.slice(1).forEach(({axialKip}, i) => expect(axialKip - (nominal[i]?.axialKip ?? NaN)).toBeLessThan(height / 5));
    expect(interactionCut(columnOf(), {axialKip: 1, depthMomentKipIn: 1, widthMomentKipIn: 0}).nominal).toHaveLength(61);
  });

  test("is the interaction about one axis at either end, and for a load without moments", () => {
    for (const degrees of [0, 90]) {
      const {column, cut} = at(degrees);
      for (const {axialKip, momentKipIn} of cut.design) expect(useOf(column, {axialKip, momentKipIn})).toBeCloseTo(1, 5);
    }
    const bare = interactionCut(columnOf(), {axialKip: 100, depthMomentKipIn: 0, widthMomentKipIn: 0}, 12);
    expect(bare.cap.momentKipIn).toBeCloseTo(at(90).cut.cap.momentKipIn, 5);
  });

  test("lies within the interaction about one axis, and alike on both sides of 45 degrees in a square", () => {
    const bending = (degrees: number) => resultantKipIn(biaxialCapacity(columnOf(), {axialKip: 0, depthMomentKipIn: Math.sin((degrees * Math.PI) / 180), widthMomentKipIn: Math.cos((degrees * Math.PI) / 180)}));
    expect(bending(45)).toBeLessThan(capacityAlong(columnOf(), {axialKip: 0, momentKipIn: 1}).depthMomentKipIn);
    expect(bending(20)).toBeCloseTo(bending(70), 6);
  });
});
