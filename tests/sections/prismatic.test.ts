import {describe, expect, test} from "vitest";
import {flatSlab, invertedTee, lBeam, rectangularBeam} from "../../lib/sections/prismatic.js";
import {integrate} from "../../lib/sections/polygon.js";
import {sectionProperties} from "../../lib/sections/shape.js";
import {refused} from "../support/errors.js";

const LEDGE = {webWidthIn: 12, depthIn: 20, ledgeProjectionIn: 8, ledgeDepthIn: 8};

describe("lBeam", () => {
  test("is a web with one ledge at its foot", () => {
    // Web 12 * 20 = 240 at 10, ledge 8 * 8 = 64 at 4: A = 304, yb = 2,656 / 304 = 8.7368;
    // I = 8,000 + 240 * 1.2632^2 + 341.33 + 64 * 4.7368^2 = 10,160.3.
    const {areaIn2, ybIn, inertiaIn4} = sectionProperties(lBeam("20LB20", LEDGE));
    expect(areaIn2).toBe(304);
    expect(ybIn).toBeCloseTo(8.73684, 5);
    expect(inertiaIn4).toBeCloseTo(10160.3, 1);
  });

  test("is as wide at its foot as web and ledge together", () => {
    expect(lBeam("20LB20", LEDGE)).toMatchObject({family: "L-beam", widthIn: 20, depthIn: 20});
  });

  test("refuses a ledge as deep as the beam", () => {
    refused(() => lBeam("x", {...LEDGE, ledgeDepthIn: 19}), {path: "dimensions.ledgeDepthIn", allowed: "3 to 18 in"});
  });

  test("refuses a web, ledge or depth out of range", () => {
    refused(() => lBeam("x", {...LEDGE, webWidthIn: 5}), {path: "dimensions.webWidthIn"});
    refused(() => lBeam("x", {...LEDGE, ledgeProjectionIn: 25}), {path: "dimensions.ledgeProjectionIn"});
    refused(() => lBeam("x", {...LEDGE, depthIn: 145}), {path: "dimensions.depthIn"});
  });
});

describe("invertedTee", () => {
  test("has a ledge on each side", () => {
    // 12 * 20 + 2 * 64 = 368; yb = (2,400 + 512) / 368 = 7.913; I = 8,000 + 240 * 2.087^2 + 682.67 + 128 * 3.913^2 = 11,688.
    const {areaIn2, ybIn, inertiaIn4} = sectionProperties(invertedTee("28IT20", LEDGE));
    expect(areaIn2).toBe(368);
    expect(ybIn).toBeCloseTo(7.91304, 5);
    expect(inertiaIn4).toBeCloseTo(11687.9, 0);
  });

  test("runs counterclockwise, like every outline", () => {
    for (const shape of [invertedTee("28IT20", LEDGE), lBeam("20LB20", LEDGE), flatSlab("4FS8", {widthIn: 48, depthIn: 8})]) {
      expect(integrate(shape.rings).areaIn2).toBeGreaterThan(0);
    }
  });
});

describe("rectangularBeam and flatSlab", () => {
  test("are rectangles of their family", () => {
    expect(rectangularBeam("12RB24", {widthIn: 12, depthIn: 24})).toMatchObject({family: "rectangular beam", rings: [[[0, 0], [12, 0], [12, 24], [0, 24]]]});
    expect(flatSlab("4FS8", {widthIn: 48, depthIn: 8}).family).toBe("flat slab");
  });

  test("place strands symmetrically, two inches clear of the sides", () => {
    expect(rectangularBeam("12RB24", {widthIn: 12, depthIn: 24}).webCentersIn).toEqual([2, 4, 6, 8, 10]);
    expect(flatSlab("4FS8", {widthIn: 48, depthIn: 8}).webCentersIn).toEqual([6, 18, 30, 42]);
    expect(rectangularBeam("6RB12", {widthIn: 6, depthIn: 12}).webCentersIn).toEqual([2, 4]);
  });

  test("refuse widths and depths out of range", () => {
    refused(() => rectangularBeam("x", {widthIn: 5, depthIn: 24}), {path: "dimensions.widthIn", message: "width: 5 in is not possible (6 to 192 in)"});
    refused(() => flatSlab("x", {widthIn: 48, depthIn: 2}), {path: "dimensions.depthIn"});
  });
});
