import {describe, expect, test} from "vitest";
import {rectangularBeam} from "../../lib/sections/prismatic.js";
import {fromMoments, sectionProperties, shapeFrom, volumeToSurfaceIn} from "../../lib/sections/shape.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog} from "../support/designs.js";

describe("sectionProperties", () => {
  test("gives a rectangle its textbook values", () => {
    // 12 by 24: I = 12 * 24^3 / 12 = 13,824; S = 13,824 / 12 = 1,152.
    expect(sectionProperties(rectangularBeam("12RB24", {widthIn: 12, depthIn: 24}))).toEqual({
      areaIn2: 288, inertiaIn4: 13824, ybIn: 12, ytIn: 12, sbIn3: 1152, stIn3: 1152, depthIn: 24,
    });
  });
});

describe("fromMoments", () => {
  test("derives the moduli of both faces", () => {
    expect(fromMoments(449, 18, 21600, 24)).toEqual({areaIn2: 449, inertiaIn4: 21600, ybIn: 18, ytIn: 6, sbIn3: 1200, stIn3: 3600, depthIn: 24});
  });
});

describe("volumeToSurfaceIn", () => {
  test("is the area over the outline", () => {
    // 288 / (2 * 36) = 4.
    expect(volumeToSurfaceIn(rectangularBeam("12RB24", {widthIn: 12, depthIn: 24}))).toBe(4);
  });

  test("leaves the surfaces of voids out", () => {
    // (48 * 8 - 6 * pi * 9) / (2 * 56) = 214.354 / 112.
    expect(volumeToSurfaceIn(shapeOf(catalog, "4HC8"))).toBeCloseTo(214.354 / 112, 5);
  });
});

describe("shapeFrom", () => {
  test("works out the properties of an outline with the shape", () => {
    const shape = shapeOf(catalog, "12DT32");
    expect(shape.section).toEqual(sectionProperties(shape));
    expect(shape.volumeToSurfaceIn).toBe(volumeToSurfaceIn(shape));
    expect(shapeFrom(shape)).toEqual(shape);
  });

  test("cuts bands from the soffit to the top without a gap", () => {
    const {bands, depthIn} = shapeOf(catalog, "12DT32");
    expect(bands[0]?.bottomIn).toBe(0);
    expect(bands.at(-1)?.topIn).toBe(depthIn);
    for (let i = 1; i < bands.length; i++) expect(bands[i]?.bottomIn).toBe(bands[i - 1]?.topIn);
  });

  test("knows the width of the webs that resist shear", () => {
    // Two stems of (3.75 + 5.75) / 2 in; 48 - 6 * 6 in between the voids at their widest.
    expect(shapeOf(catalog, "10DT24").webWidthIn).toBe(9.5);
    expect(shapeOf(catalog, "4HC8").webWidthIn).toBe(12);
    expect(shapeOf(catalog, "20LB20").webWidthIn).toBe(12);
    expect(shapeOf(catalog, "4FS8").webWidthIn).toBe(48);
  });
});
