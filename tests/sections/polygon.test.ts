import {describe, expect, test} from "vitest";
import {bands, circularHole, integrate, widthAt, type Ring} from "../../lib/sections/polygon.js";

const rectangle = (x: number, y: number, width: number, height: number): Ring =>
  [[x, y], [x + width, y], [x + width, y + height], [x, y + height]];
const hole = (ring: Ring): Ring => [...ring].reverse();

describe("integrate", () => {
  test("is nothing for no rings", () => {
    expect(integrate([])).toEqual({areaIn2: 0, firstMomentIn3: 0, secondMomentIn4: 0, perimeterIn: 0});
  });

  test("gives a rectangle's moments about its base", () => {
    // 12 by 24: A = 288, Q = 288 * 12, I = 12 * 24^3 / 3.
    expect(integrate([rectangle(3, 0, 12, 24)])).toEqual({areaIn2: 288, firstMomentIn3: 3456, secondMomentIn4: 55296, perimeterIn: 72});
  });

  test("gives a triangle's moments about its base", () => {
    // Base 6, height 3: A = 9, Q = 9 * 1, I = 6 * 27 / 12 = 13.5; sides 6, 3 and sqrt(45).
    const triangle = integrate([[[0, 0], [6, 0], [0, 3]]]);
    expect(triangle).toMatchObject({areaIn2: 9, firstMomentIn3: 9, secondMomentIn4: 13.5});
    expect(triangle.perimeterIn).toBeCloseTo(9 + Math.sqrt(45), 12);
  });

  test("takes a hole away, and counts its edge as boundary", () => {
    // A 4 by 2 hole centered at 5 above the soffit: 8, 8 * 5, 4 * 8 / 12 + 8 * 25 = 202.667.
    const {areaIn2, firstMomentIn3, secondMomentIn4, perimeterIn} = integrate([rectangle(0, 0, 10, 10), hole(rectangle(3, 4, 4, 2))]);
    expect(areaIn2).toBe(92);
    expect(firstMomentIn3).toBe(460);
    expect(secondMomentIn4).toBeCloseTo(10000 / 3 - 202.6667, 3);
    expect(perimeterIn).toBe(52);
  });
});

describe("widthAt", () => {
  const tee: Ring = [[4, 0], [8, 0], [8, 10], [12, 10], [12, 12], [0, 12], [0, 10], [4, 10]];

  test("adds up the concrete between the edges", () => {
    expect(widthAt([tee], 5)).toBe(4);
    expect(widthAt([tee], 11)).toBe(12);
    expect(widthAt([tee, hole(rectangle(5, 2, 2, 3))], 4)).toBe(2);
  });

  test("gives the width just above a horizontal edge", () => {
    expect(widthAt([tee], 10)).toBe(12);
    expect(widthAt([tee], 0)).toBe(4);
  });

  test("is nothing at the top and outside", () => {
    expect(widthAt([tee], 12)).toBe(0);
    expect(widthAt([tee], -1)).toBe(0);
  });

  test("follows sloping sides", () => {
    // A trapezoid 2 wide at the foot and 6 wide 8 above: half way it is 4 wide.
    expect(widthAt([[[2, 0], [4, 0], [6, 8], [0, 8]]], 4)).toBeCloseTo(4, 12);
  });
});

describe("bands", () => {
  test("cut a section at every corner's height, lowest first", () => {
    const tee: Ring = [[4, 0], [8, 0], [8, 10], [12, 10], [12, 12], [0, 12], [0, 10], [4, 10]];
    const cut = bands([tee]);
    expect(cut.map(({bottomIn, topIn}) => [bottomIn, topIn])).toEqual([[0, 10], [10, 12]]);
    expect(cut[0]?.widthBottomIn).toBeCloseTo(4, 12);
    expect(cut[1]?.widthTopIn).toBeCloseTo(12, 12);
  });

  test("make no band of corners that differ by rounding alone", () => {
    expect(bands([[[0, 0], [4, 1e-12], [4, 10], [0, 10]]])).toHaveLength(1);
  });

  test("together hold the area of the section", () => {
    const rings = [rectangle(0, 0, 48, 8), circularHole(12, 4, 6), circularHole(36, 4, 6)];
    const area = bands(rings).reduce((sum, b) => sum + ((b.widthBottomIn + b.widthTopIn) / 2) * (b.topIn - b.bottomIn), 0);
    expect(area).toBeCloseTo(integrate(rings).areaIn2, 9);
  });
});

describe("circularHole", () => {
  test("takes away exactly the circle's area, and its second moment to a thousandth", () => {
    const {areaIn2, firstMomentIn3, secondMomentIn4} = integrate([circularHole(5, 0, 6)]);
    expect(areaIn2).toBeCloseTo(-Math.PI * 9, 12);
    expect(firstMomentIn3).toBeCloseTo(0, 10);
    // pi d^4 / 64 = 63.617.
    expect(-secondMomentIn4 / ((Math.PI * 6 ** 4) / 64)).toBeCloseTo(1, 3);
  });
});
