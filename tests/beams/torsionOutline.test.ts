import fc from "fast-check";
import {expect, test} from "vitest";
import {torsionDimensionsOf, torsionOutline, torsionOutlineOf} from "../../lib/beams/torsionOutline.js";
import {integrate} from "../../lib/sections/polygon.js";
import {flatSlab, invertedTee, lBeam, rectangularBeam} from "../../lib/sections/prismatic.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";

const L = {webWidthIn: 14, depthIn: 74, ledges: 1, ledgeProjectionIn: 8, ledgeDepthIn: 10} as const;

test("an L-beam is counted with its ledge", () => {
  // Acp = 14 * 74 + 8 * 10 = 1,116; pcp = 2 (74 + 22) = 192; 1,116^2 / 192 = 6,486.75, above 1,036^2 / 176 = 6,098.3.
  expect(torsionOutline(L)).toEqual({areaIn2: 1116, perimeterIn: 192, modulusIn3: 6486.75, countedLedgeIn: 8});
});

test("a ledge that lowers Acp^2 / pcp is left out", () => {
  // A 3 in ledge counts 12 of its 16 in: (1,036 + 36)^2 / (176 + 24) = 5,745.9, below 6,098.27.
  expect(torsionOutline({...L, ledgeProjectionIn: 16, ledgeDepthIn: 3})).toEqual({
    areaIn2: 1036, perimeterIn: 176, modulusIn3: 1036 ** 2 / 176, countedLedgeIn: 0,
  });
});

test("a ledge counts no further than four times its depth, nor than the web stands above it", () => {
  // Web 20 x 40, ledge 6 deep: 24 in at most. (800 + 24 * 6)^2 / (120 + 48) = 5,304.4 is below 800^2 / 120 = 5,333.3: left out.
  expect(torsionOutline({webWidthIn: 20, depthIn: 40, ledges: 1, ledgeProjectionIn: 30, ledgeDepthIn: 6}).countedLedgeIn).toBe(0);
  // 8 deep: 32 in, and the web stands 32 in above: (800 + 256)^2 / (120 + 64) = 6,060.5.
  expect(torsionOutline({webWidthIn: 20, depthIn: 40, ledges: 1, ledgeProjectionIn: 36, ledgeDepthIn: 8})).toMatchObject({countedLedgeIn: 32, areaIn2: 1056, perimeterIn: 184});
  // 30 deep: the web stands 10 in above.
  expect(torsionOutline({webWidthIn: 20, depthIn: 40, ledges: 1, ledgeProjectionIn: 24, ledgeDepthIn: 30}).countedLedgeIn).toBe(10);
});

test("a rectangle has no ledge to count", () => {
  // 12 x 24: 288^2 / 72 = 1,152.
  const web = {areaIn2: 288, perimeterIn: 72, modulusIn3: 1152, countedLedgeIn: 0};
  expect(torsionOutlineOf(rectangularBeam("beam", {widthIn: 12, depthIn: 24}))).toEqual(web);
  expect(torsionOutline({...L, webWidthIn: 12, depthIn: 24, ledges: 0})).toEqual(web);
});

test("the shape's own outline gives the same, where the whole ledge counts", () => {
  hold(300, fc.property(within(10, 24), within(20, 90), within(4, 10), within(6, 12), fc.constantFrom(lBeam, invertedTee), (webWidthIn, depthIn, ledgeProjectionIn, ledgeDepthIn, make) => {
    const shape = make("beam", {webWidthIn, depthIn, ledgeProjectionIn, ledgeDepthIn});
    const outline = torsionOutlineOf(shape);
    const {areaIn2, perimeterIn} = integrate(shape.rings);
    const web = (webWidthIn * depthIn) ** 2 / (2 * (webWidthIn + depthIn));
    expect(outline.modulusIn3).toBeGreaterThanOrEqual(web * (1 - 1e-12));
    if (outline.countedLedgeIn === ledgeProjectionIn) {
      expect(outline.areaIn2).toBeCloseTo(areaIn2, 8);
      expect(outline.perimeterIn).toBeCloseTo(perimeterIn, 8);
    }
  }));
});

test("shapes that are beams give their dimensions, others are refused", () => {
  expect(torsionDimensionsOf(rectangularBeam("beam", {widthIn: 12, depthIn: 24}))).toMatchObject({webWidthIn: 12, depthIn: 24, ledges: 0});
  expect(torsionDimensionsOf(invertedTee("beam", {webWidthIn: 12, depthIn: 28, ledgeProjectionIn: 8, ledgeDepthIn: 12})).ledges).toBe(2);
  refused(() => torsionOutlineOf(flatSlab("slab", {widthIn: 48, depthIn: 8})), {path: "shape.family", value: "flat slab"});
  refused(() => torsionOutline({...L, webWidthIn: 0}), {path: "webWidthIn", allowed: "4 to 60 in"});
  refused(() => torsionOutline({...L, ledges: 1.5 as never}), {path: "ledges"});
  refused(() => torsionOutline({...L, ledgeDepthIn: 73}), {path: "ledgeDepthIn", allowed: "3 to 72 in"});
  refused(() => torsionOutline({...L, ledges: 3 as 2}), {path: "ledges"});
});
