import {describe, expect, test} from "vitest";
import {doubleTee} from "../../lib/sections/doubleTee.js";
import {sectionProperties} from "../../lib/sections/shape.js";
import {refused} from "../support/errors.js";

const TEN = {widthIn: 120, depthIn: 24, flangeIn: 2, stemBottomIn: 3.75, stemTopIn: 5.75, stemSpacingIn: 60, chamferIn: 0};
const TWELVE = {widthIn: 144, depthIn: 32, flangeIn: 2, stemBottomIn: 4.75, stemTopIn: 7.75, stemSpacingIn: 72, chamferIn: 3};

describe("doubleTee", () => {
  test("is a flange on two trapezoids", () => {
    // Flange 120 * 2 = 240 at 23; stems 2 * 22 * (3.75 + 5.75) / 2 = 209, whose centroid lies
    // 22 / 3 * (3.75 + 2 * 5.75) / (3.75 + 5.75) = 11.7719 up. A = 449, yb = (5,520 + 2,460.33) / 449 = 17.7736.
    const {areaIn2, ybIn, inertiaIn4} = sectionProperties(doubleTee("10DT24", TEN));
    expect(areaIn2).toBeCloseTo(449, 10);
    expect(ybIn).toBeCloseTo(17.77357, 5);
    // Flange 80 + 240 * 5.22643^2 = 6,635.7; a trapezoid about its own centroid h^3 (a^2 + 4ab + b^2) / (36 (a + b)) with
    // a = 3.75, b = 5.75: 10,648 * 133.375 / 342 = 4,152.6; two of them 8,305.1, moved 209 * 6.00164^2 = 7,528.1.
    expect(inertiaIn4).toBeCloseTo(22468.9, 0);
  });

  test("adds four triangles where the stems flare", () => {
    // Flange 288; stems 2 * 27 * (4.75 + 7.75) / 2 = 337.5; between foot of the chamfer and flange 2 * 3 * (7.75 + 13.75) / 2 = 64.5.
    expect(sectionProperties(doubleTee("12DT32", TWELVE)).areaIn2).toBeCloseTo(690, 10);
  });

  test("places its stems symmetrically", () => {
    expect(doubleTee("10DT24", TEN).webCentersIn).toEqual([30, 90]);
  });

  test("draws each stem about the center that it names, at the soffit and at the flange", () => {
    for (const shape of [doubleTee("10DT24", TEN), doubleTee("12DT32", TWELVE)]) {
      const {stemBottomIn, stemTopIn, flangeIn, chamferIn} = shape.dimensions as unknown as typeof TEN;
      const at = (heightIn: number) => (shape.rings[0] ?? []).filter(([, y]) => y === heightIn).map(([x]) => x);
      const sides = (widthIn: number) => shape.webCentersIn.flatMap((x) => [x - widthIn / 2, x + widthIn / 2]);
      expect(at(0)).toEqual(sides(stemBottomIn));
      if (chamferIn > 0) expect(at(shape.depthIn - flangeIn - chamferIn)).toEqual(sides(stemTopIn));
      expect(at(shape.depthIn - flangeIn)).toEqual([0, ...sides(stemTopIn + 2 * chamferIn), shape.widthIn]);
    }
  });

  test("leaves room for both chamfers of a stem to its neighbor and to the flange's edge", () => {
    // 7.75 in of stem and two legs of 3 in: 13.75 in from one center to the other at least.
    refused(() => doubleTee("x", {...TWELVE, stemSpacingIn: 13}), {path: "dimensions.stemSpacingIn", allowed: "13.75 to 130.25 in"});
  });

  test("keeps the dimensions that made it", () => {
    const shape = doubleTee("12DT32", TWELVE);
    expect(shape).toMatchObject({designation: "12DT32", family: "double tee", depthIn: 32, widthIn: 144, dimensions: TWELVE});
  });

  test("refuses a dimension out of its range, naming it", () => {
    refused(() => doubleTee("x", {...TEN, widthIn: 40}), {path: "dimensions.widthIn", message: "width: 40 in is not possible (48 to 192 in)"});
    refused(() => doubleTee("x", {...TEN, depthIn: 61}), {path: "dimensions.depthIn"});
    refused(() => doubleTee("x", {...TEN, flangeIn: 1}), {path: "dimensions.flangeIn"});
    refused(() => doubleTee("x", {...TEN, stemBottomIn: 2}), {path: "dimensions.stemBottomIn"});
    refused(() => doubleTee("x", {...TEN, chamferIn: -1}), {path: "dimensions.chamferIn"});
    refused(() => doubleTee("x", {...TEN, flangeIn: NaN}), {path: "dimensions.flangeIn"});
  });

  test("refuses stems that are narrower at the flange than at the soffit", () => {
    refused(() => doubleTee("x", {...TEN, stemTopIn: 3}), {path: "dimensions.stemTopIn", allowed: "3.75 to 30 in"});
  });

  test("refuses a chamfer that leaves no stem below it", () => {
    refused(() => doubleTee("x", {...TWELVE, chamferIn: 27}), {path: "dimensions.chamferIn", allowed: "0 to 26 in"});
  });

  test("refuses stems that run into each other or past the flange", () => {
    refused(() => doubleTee("x", {...TEN, stemSpacingIn: 5}), {path: "dimensions.stemSpacingIn", allowed: "5.75 to 114.25 in"});
    refused(() => doubleTee("x", {...TEN, stemSpacingIn: 115}), {path: "dimensions.stemSpacingIn"});
    refused(() => doubleTee("x", {...TEN, stemSpacingIn: NaN}), {path: "dimensions.stemSpacingIn"});
  });
});
