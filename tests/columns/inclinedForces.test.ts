import {expect, test} from "vitest";
import {barPullKsi, cosineOf, inclinedDepthIn, shareInBlock, sineOf} from "../../lib/columns/inclinedForces.js";
import {biaxialState} from "../../lib/columns/biaxial.js";
import {columnOf} from "./sections.js";

test("an axis that lies square to a side has sine and cosine without rounding", () => {
  expect([sineOf(0), cosineOf(0), sineOf(Math.PI / 2), cosineOf(Math.PI / 2)]).toEqual([0, 1, 1, 0]);
  // Steps of a search may pass the quarter turn by their rounding.
  expect([sineOf(-1e-9), cosineOf(-1e-9), sineOf(Math.PI / 2 + 1e-9), cosineOf(Math.PI / 2 + 1e-9)]).toEqual([0, 1, 1, 0]);
  expect([sineOf(Math.PI / 6), cosineOf(Math.PI / 3), sineOf(3 * Math.PI / 8)]).toEqual([expect.closeTo(0.5, 12), expect.closeTo(0.5, 12), expect.closeTo(0.92388, 5)]);
});

test("a place 3 in across and 4 in down lies 4 in from the corner straight down, 3 in across, and 7 / sqrt(2) in between", () => {
  const place = {xIn: 3, yIn: 4};
  expect([0, Math.PI / 2, Math.PI / 4].map((angle) => inclinedDepthIn(place, angle))).toEqual([4, 3, expect.closeTo(7 / Math.SQRT2, 12)]);
});

test("a bar enters the block over its own diameter, and gives up the concrete that it displaces", () => {
  // #8 bars, block 0.8 of the axis: 10 in of axis are 8 in of block.
  const section = columnOf();
  expect([7, 7.5, 8, 8.25, 8.5, 9].map((depthIn) => shareInBlock(section, depthIn, 10))).toEqual([1, 1, 0.5, 0.25, 0, 0].map((share) => expect.closeTo(share, 9)));
  // 87 x (4 - 10) / 10 = -52.2 ksi, with 4.25 of the concrete; 87 x 0.5 = 43.5 at 15 in; all yield where the axis is at the corner.
  expect(barPullKsi(section, 4, 10)).toBeCloseTo(-52.2 + 4.25, 9);
  expect(barPullKsi(section, 15, 10)).toBeCloseTo(43.5, 9);
  expect(barPullKsi(section, 4, 0)).toBe(60);
});

test("the block's area by hand: a corner, a slanting strip, and all but a corner", () => {
  // 16 x 28 in at 45 degrees, block 0.8 c deep: legs of 0.8 c sqrt(2).
  const section = columnOf({depthIn: 28, count: 10});
  const area = (legIn: number) => biaxialState(section, legIn / Math.SQRT2 / 0.8, Math.PI / 4).block.areaIn2;
  expect(area(10)).toBeCloseTo(50, 9);
  expect(area(20)).toBeCloseTo(200 - 8, 9);
  expect(area(30)).toBeCloseTo(450 - 98 - 2, 9);
  expect(area(40)).toBeCloseTo(16 * 28 - 8, 9);
  expect(area(50)).toBeCloseTo(16 * 28, 9);
  // Square to a side: straight strips.
  const strip = (angle: number, blockIn: number) => biaxialState(section, blockIn / 0.8, angle).block;
  expect(strip(0, 10)).toEqual({areaIn2: expect.closeTo(160, 9), xIn: 8, yIn: expect.closeTo(5, 9)});
  expect(strip(Math.PI / 2, 10)).toEqual({areaIn2: expect.closeTo(280, 9), xIn: expect.closeTo(5, 9), yIn: 14});
  expect(strip(Math.PI / 2, 16).areaIn2).toBeCloseTo(448, 9);
  expect(strip(Math.PI / 2, 20).areaIn2).toBeCloseTo(448, 9);
});
