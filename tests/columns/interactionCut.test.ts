import {describe, expect, test} from "vitest";
import {biaxialCapacity, biaxialUse} from "../../lib/columns/biaxial.js";
import {axialCapKip, capacityAlong, squashLoadKip, utilisationOf} from "../../lib/columns/interaction.js";
import {interactionCut} from "../../lib/columns/interactionCut.js";
import {columnOf} from "./sections.js";

const column = columnOf();
const at = (degrees: number) => {
  const [depth, width] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  return {cut: interactionCut(column, {axialKip: 100, depthMomentKipIn: 500 * depth, widthMomentKipIn: 500 * width}), depth, width};
};

describe("the interaction cut at an angle", () => {
  test("is used in full at each of its points", () => {
    for (const degrees of [10, 45, 70]) {
      const {cut, depth, width} = at(degrees);
      for (const {axialKip, momentKipIn} of cut.design) {
        expect(biaxialUse(column, {axialKip, depthMomentKipIn: depth * momentKipIn, widthMomentKipIn: width * momentKipIn})).toBeCloseTo(1, 5);
      }
    }
  });

  test("ends at pure tension and squash load, and level at the cap", () => {
    const {cut} = at(30);
    expect(cut.nominal[0]).toEqual({axialKip: -60 * 6.32, momentKipIn: 0});
    expect(cut.nominal.at(-1)).toEqual({axialKip: squashLoadKip(column), momentKipIn: 0});
    expect(cut.design.at(-1)).toEqual({axialKip: axialCapKip(column), momentKipIn: 0});
    expect(cut.design.at(-2)).toEqual(cut.cap);
    expect(cut.cap.momentKipIn).toBeGreaterThan(0);
    expect(cut.design[0]?.axialKip).toBeCloseTo(-0.9 * 379.2, 9);
  });

  test("is the interaction about one axis at either end, and for a load without moments", () => {
    for (const degrees of [0, 90]) {
      for (const {axialKip, momentKipIn} of at(degrees).cut.design) expect(utilisationOf(column, {axialKip, momentKipIn})).toBeCloseTo(1, 5);
    }
    const bare = interactionCut(column, {axialKip: 100, depthMomentKipIn: 0, widthMomentKipIn: 0});
    expect(bare.cap.momentKipIn).toBeCloseTo(at(90).cut.cap.momentKipIn, 5);
  });

  test("lies within the interaction about one axis, and alike on both sides of 45 degrees in a square", () => {
    const bending = (degrees: number) => {
      const {depth, width} = at(degrees);
      return Math.hypot(...[biaxialCapacity(column, {axialKip: 0, depthMomentKipIn: depth, widthMomentKipIn: width})].flatMap(({depthMomentKipIn, widthMomentKipIn}) => [depthMomentKipIn, widthMomentKipIn]));
    };
    expect(bending(45)).toBeLessThan(capacityAlong(column, {axialKip: 0, momentKipIn: 1}).momentKipIn);
    expect(bending(20)).toBeCloseTo(bending(70), 6);
  });
});
