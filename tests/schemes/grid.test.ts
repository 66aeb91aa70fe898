import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {briefOf, steps, usualVary} from "../../lib/schemes/brief.js";
import {gridOf} from "../../lib/schemes/grid.js";
import {catalog, seed} from "../support/designs.js";

const base = seed("branch-library");
const gridFor = (brief: Parameters<typeof gridOf>[0]) => gridOf(brief, catalog);
const briefWith = (outline: {lengthFt?: number; widthFt?: number; floorFt2?: number}, vary = {}) => ({...briefOf(base, 9.5, {...usualVary(base), ...vary}), outline});

test("a design's own kinds of deck are tried, and every kind where it considers none", () => {
  const kinds = (changes: Readonly<Record<string, boolean>>) => briefOf(withValues(base, changes), 9.5).vary.kinds;
  expect(kinds({"consider.fieldToppedTees": false, "consider.pretoppedTees": true, "consider.planks": true})).toEqual(["pretoppedTees", "planks"]);
  const none = kinds({"consider.fieldToppedTees": false, "consider.pretoppedTees": false, "consider.planks": false});
  expect([...none].sort()).toEqual(["fieldToppedTees", "planks", "pretoppedTees"]);
});

describe("the numbers of a brief's choices", () => {
  test("count a topping for those that take one alone, a girder where two bays meet, and pockets where there are stems", () => {
    const grid = gridFor(briefWith({lengthFt: 120}, {spansFt: [40], beamSpansFt: [30], toppingsIn: [0, 2, 3]}));
    // Topped tees with 2 and 3 in and pretopped tees with three edges each, planks bare and with 2 and 3 in with two; one frame of one bay, two of two.
    expect(grid.count).toBe((3 * 3 + 3 * 2) * 3);
    const all = Array.from({length: grid.count}, (_, i) => JSON.stringify(grid.at(i)));
    expect(new Set(all).size).toBe(grid.count);
    const planks = all.filter((choices) => choices.includes("planks"));
    expect(planks).toHaveLength(3 * 2 * 3);
    expect(planks.some((choices) => choices.includes("pockets"))).toBe(false);
  });

  test("number every pair of deck and edge with every span, beam span and frame once, in any order of kinds", () => {
    const grid = gridFor(briefWith({lengthFt: 120}, {spansFt: [30, 40], baysAcross: [1, 2, 3], beamSpansFt: [24, 30], kinds: ["planks", "fieldToppedTees"], toppingsIn: [2], edges: ["pockets", "below"]}));
    // Planks with one edge, tees with two; one frame of one bay, two each of two and three.
    expect(grid.count).toBe(2 * 2 * 5 * 3);
    expect(new Set(Array.from({length: grid.count}, (_, i) => JSON.stringify(grid.at(i)))).size).toBe(grid.count);
  });

  test("try pockets with planks where nothing else is allowed, so that a check says why not", () => {
    const grid = gridFor(briefWith({lengthFt: 120}, {spansFt: [30], baysAcross: [1], beamSpansFt: [24], kinds: ["planks"], toppingsIn: [2], edges: ["pockets"]}));
    expect([grid.count, grid.at(0).edge]).toEqual([1, "pockets"]);
  });

  test("take the span from a width that is given, and the length from an area", () => {
    const ofWidth = gridFor(briefWith({lengthFt: 180, widthFt: 60}));
    expect(new Set(Array.from({length: ofWidth.count}, (_, i) => ofWidth.at(i).spanFt))).toEqual(new Set([60, 30]));
    const ofArea = gridFor(briefWith({floorFt2: 10_800}, {spansFt: [60], baysAcross: [1], beamSpansFt: [30]}));
    expect(ofArea.at(0)).toMatchObject({spanFt: 60, baysAcross: 1, beamSpanFt: 30, baysAlong: 6});
  });

  test("take as many whole bays as come nearest to the length", () => {
    const grid = gridFor(briefWith({lengthFt: 180}, {spansFt: [60], baysAcross: [1], beamSpansFt: [25, 28, 400], kinds: ["planks"], edges: ["ledge"]}));
    expect([0, 1, 2].map((i) => grid.at(i).baysAlong)).toEqual([7, 6, 1]);
  });

  test("refuse a number that there is none of", () => {
    const grid = gridFor(briefWith({lengthFt: 180}));
    expect(() => grid.at(grid.count)).toThrow(RangeError);
    expect(() => grid.at(-1)).toThrow(RangeError);
    expect(() => grid.at(0.5)).toThrow(RangeError);
  });

  test("step evenly, both ends included", () => {
    expect(steps({from: 20, to: 21, by: 0.1})).toHaveLength(11);
    expect(steps({from: 20, to: 100, by: 4})).toEqual([20, 24, 28, 32, 36, 40, 44, 48, 52, 56, 60, 64, 68, 72, 76, 80, 84, 88, 92, 96, 100]);
  });
});
