import {describe, expect, test} from "vitest";
import {FACTORED, type ColumnCombination} from "../../lib/columns/columnCombinations.js";
import {endMoments, levelMomentKipIn, seatEccentricityIn, type ColumnSeat} from "../../lib/columns/columnMoments.js";
import {refused} from "../support/errors.js";
import {floorLevel, roofLevel} from "./levels.js";

const ONE: ColumnSeat = {from: "face", distanceIn: 4, sides: "one"};
const TWO: ColumnSeat = {...ONE, sides: "two"};
const [DEAD, LIVE] = FACTORED as [ColumnCombination, ColumnCombination];

describe("levelMomentKipIn", () => {
  test("is the reaction times the distance from the centre line", () => {
    // 1.2 x 115 + 1.6 x 50 = 218 kip; half of 16 in and 4 in: 12 in.
    expect(seatEccentricityIn(ONE, 16)).toBe(12);
    expect(levelMomentKipIn(floorLevel(), ONE, 16, LIVE)).toBeCloseTo(218 * 12, 9);
    expect(levelMomentKipIn(floorLevel(), {...ONE, from: "centre"}, 16, LIVE)).toBeCloseTo(218 * 4, 9);
  });

  test("is one side's live load where beams balance each other", () => {
    // Half of 1.6 x 50 kip; of the roof half of 0.5 x 20.
    expect(levelMomentKipIn(floorLevel(), TWO, 16, LIVE)).toBeCloseTo(40 * 12, 9);
    expect(levelMomentKipIn(roofLevel(), TWO, 16, LIVE)).toBeCloseTo(5 * 12, 9);
    expect(levelMomentKipIn(floorLevel(), TWO, 16, DEAD)).toBe(0);
  });

  test("refuses a seat that cannot be", () => {
    refused(() => levelMomentKipIn(floorLevel(), {...ONE, distanceIn: -1}, 16, LIVE), {path: "seat.distanceIn"});
    refused(() => levelMomentKipIn(floorLevel(), {...ONE, sides: "three" as "two"}, 16, LIVE), {path: "seat.sides"});
  });
});

describe("endMoments", () => {
  const levels = [roofLevel(), floorLevel({name: "floor 3"}), floorLevel()];

  test("shares a floor's moment with the storey above, and gives the roof's whole to the one below", () => {
    // Roof 1.2 x 95 + 0.5 x 20 = 124 kip x 12 = 1,488; floors 2,616.
    expect(endMoments(levels, ONE, 16, LIVE)).toEqual([
      {topKipIn: expect.closeTo(1488, 9), bottomKipIn: expect.closeTo(1308, 9), curvature: "double"},
      {topKipIn: expect.closeTo(1308, 9), bottomKipIn: expect.closeTo(1308, 9), curvature: "double"},
      {topKipIn: expect.closeTo(1308, 9), bottomKipIn: 0, curvature: "double"},
    ]);
  });

  test("balances at every level: what goes up and down is what the level brings", () => {
    const ends = endMoments(levels, ONE, 16, LIVE);
    levels.forEach((level, i) => {
      const above = i > 0 ? ends[i - 1]?.bottomKipIn ?? NaN : 0;
      expect(above + (ends[i]?.topKipIn ?? NaN)).toBeCloseTo(levelMomentKipIn(level, ONE, 16, LIVE), 9);
    });
  });

  test("gives all to the storey below where the one above stands on a splice", () => {
    const ends = endMoments([roofLevel(), floorLevel({spliceAbove: true})], ONE, 16, LIVE);
    expect(ends[0]?.bottomKipIn).toBe(0);
    expect(ends[1]?.topKipIn).toBeCloseTo(2616, 9);
  });

  test("expects the worse bend between two pairs of beams", () => {
    expect(endMoments(levels, TWO, 16, LIVE).map((end) => end.curvature)).toEqual(["single", "single", "single"]);
  });
});
