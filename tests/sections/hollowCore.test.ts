import {describe, expect, test} from "vitest";
import {hollowCore} from "../../lib/sections/hollowCore.js";
import {sectionProperties} from "../../lib/sections/shape.js";
import {refused} from "../support/errors.js";

const EIGHT = {widthIn: 48, depthIn: 8, voidCount: 6, voidDiameterIn: 6};

describe("hollowCore", () => {
  test("is a rectangle less its voids", () => {
    // 48 * 8 - 6 * pi * 9 = 214.354; 48 * 512 / 12 - 6 * pi * 6^4 / 64 = 2,048 - 381.70 = 1,666.3.
    const {areaIn2, inertiaIn4, ybIn} = sectionProperties(hollowCore("4HC8", EIGHT));
    expect(areaIn2).toBeCloseTo(214.354, 3);
    expect(inertiaIn4).toBeCloseTo(1666.3, 0);
    expect(ybIn).toBeCloseTo(4, 10);
  });

  test("has a web between each pair of voids and one at each edge", () => {
    expect(hollowCore("4HC8", EIGHT).webCentersIn).toEqual([1, 8, 16, 24, 32, 40, 47]);
  });

  test("refuses voids that leave less than 3/4 in of concrete around them", () => {
    expect(() => hollowCore("x", {...EIGHT, voidDiameterIn: 7.25})).not.toThrow();
    refused(() => hollowCore("x", {...EIGHT, voidDiameterIn: 7.3}), {path: "dimensions.voidDiameterIn", allowed: "above 0 to 7.25 in"});
    refused(() => hollowCore("x", {...EIGHT, voidDiameterIn: 0}), {path: "dimensions.voidDiameterIn"});
    refused(() => hollowCore("x", {...EIGHT, voidDiameterIn: NaN}), {path: "dimensions.voidDiameterIn"});
    refused(() => hollowCore("x", {...EIGHT, voidCount: 12}), {path: "dimensions.voidDiameterIn"});
  });

  test("refuses a part of a void, and sizes that no bed casts", () => {
    refused(() => hollowCore("x", {...EIGHT, voidCount: 5.5}), {path: "dimensions.voidCount", allowed: "whole number, 1 to 24"});
    refused(() => hollowCore("x", {...EIGHT, widthIn: 200}), {path: "dimensions.widthIn"});
    refused(() => hollowCore("x", {...EIGHT, depthIn: 3}), {path: "dimensions.depthIn"});
  });
});
