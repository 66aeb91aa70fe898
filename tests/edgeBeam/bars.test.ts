import {describe, expect, test} from "vitest";
import {barLayout, barsPerRow} from "../../lib/edgeBeam/bars.js";

const NO8 = {size: "#8", diameterIn: 1, areaIn2: 0.79};
const NO10 = {size: "#10", diameterIn: 1.27, areaIn2: 1.27};

describe("barsPerRow", () => {
  test("counts bars with an inch between them, inside cover and stirrups", () => {
    // 20 in wide, 1.5 in cover, #4 stirrups: 16 in of room; 1 + (16 - 1) / 2 = 8.5.
    expect(barsPerRow(20, 1.5, NO8)).toBe(8);
  });

  test("keeps a bar's own diameter clear where that is more than an inch", () => {
    // 16 in: 1 + (16 - 1.27) / 2.54 = 6.8.
    expect(barsPerRow(20, 1.5, NO10)).toBe(6);
  });

  test("does not lose the last bar to rounding", () => {
    // 10 in of room: 1 + 9 / 2 = 5.5; 11 in of room: exactly 6.
    expect(barsPerRow(15, 1.5, NO8)).toBe(6);
  });

  test("is nothing where not one bar fits", () => {
    expect(barsPerRow(4, 1.5, NO8)).toBe(0);
  });
});

describe("barLayout", () => {
  test("fills rows from the soffit up, an inch clear between them", () => {
    // First row at 1.5 + 0.5 + 0.5 = 2.5 in, second at 4.5; ten bars, eight below: (8 * 2.5 + 2 * 4.5) / 10 = 2.9.
    const layout = barLayout(10, 20, 1.5, NO8);
    expect(layout).toMatchObject({count: 10, rows: [8, 2], rowHeightsIn: [2.5, 4.5]});
    expect(layout.centroidIn).toBeCloseTo(2.9, 12);
    expect(layout.areaIn2).toBeCloseTo(7.9, 12);
  });

  test("stacks single bars where only one fits", () => {
    expect(barLayout(3, 4, 1.5, NO8).rows).toEqual([1, 1, 1]);
  });
});
