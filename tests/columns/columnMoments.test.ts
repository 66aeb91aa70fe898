import {describe, expect, test} from "vitest";
import {corbelLeverIn} from "../../lib/columns/columnBending.js";
import {combined, FACTORED, greatest, momentUnder, SERVICE, type ColumnCombination} from "../../lib/columns/columnCombinations.js";
import {endMoments, shareBelow} from "../../lib/columns/columnMoments.js";
import {refused} from "../support/errors.js";
import {floorLevel, roofLevel} from "./levels.js";

const [DEAD, LIVE, ROOF] = FACTORED as [ColumnCombination, ColumnCombination, ColumnCombination];

describe("corbelLeverIn", () => {
  test("is the same on every column narrower than that for which the beams' ends are cut", () => {
    expect(corbelLeverIn({seatIn: 4, cutForIn: 18}, 12)).toBe(13);
    expect(corbelLeverIn({seatIn: 4, cutForIn: 18}, 18)).toBe(13);
  });

  test("grows with a column that is wider, for which the beams must be cut anew", () => {
    expect(corbelLeverIn({seatIn: 4, cutForIn: 18}, 20)).toBe(14);
  });

  test("refuses a seat that cannot be", () => {
    refused(() => corbelLeverIn({seatIn: -1, cutForIn: 18}, 12), {path: "seat.seatIn"});
  });
});

test("a moment is factored by the kind of load that causes it", () => {
  const moment = {deadKipIn: 100, liveKipIn: 50, roofKipIn: 20};
  expect(momentUnder(moment, DEAD)).toBeCloseTo(140, 12);
  expect(momentUnder(moment, LIVE)).toBeCloseTo(120 + 80 + 10, 12);
  expect(momentUnder(moment, ROOF)).toBeCloseTo(120 + 50 + 32, 12);
});

test("of two combinations that come to the same the first is reported, as where there is no roof", () => {
  expect(greatest(combined({deadKip: 100, liveKip: 50, roofKip: 0}, FACTORED))).toMatchObject({kip: expect.closeTo(200, 9), combination: {name: "1.2D + 1.6L + 0.5Lr"}});
  expect(greatest(combined({deadKip: 100, liveKip: 50, roofKip: 0}, SERVICE))).toMatchObject({kip: 150, combination: {name: "D + L"}});
});

describe("endMoments", () => {
  const levels = [roofLevel(), floorLevel({name: "floor 3"}), floorLevel()];
  const brought = [1488, 2616, 2600];

  test("shares a floor's moment with the story above, and gives the roof's whole to the one below", () => {
    expect(endMoments(levels, brought, "double")).toMatchObject([
      {topKipIn: 1488, bottomKipIn: 1308, curvature: "double"}, {topKipIn: 1308, bottomKipIn: 1300, curvature: "double"},
      {topKipIn: 1300, bottomKipIn: 0, curvature: "double"},
    ]);
  });

  test("balances at every level: what goes up and down is what the level brings", () => {
    const ends = endMoments(levels, brought, "single");
    brought.forEach((moment, i) => {
      const above = i > 0 ? ends[i - 1]?.bottomKipIn ?? NaN : 0;
      expect(above + (ends[i]?.topKipIn ?? NaN)).toBeCloseTo(moment, 9);
    });
  });

  test("gives all to the story below where the one above stands on a splice", () => {
    const spliced = [roofLevel(), floorLevel({spliceAbove: true})];
    expect(spliced.map((_, i) => shareBelow(spliced, i))).toEqual([1, 1]);
    const ends = endMoments(spliced, [100, 200], "double");
    expect(ends[0]?.bottomKipIn).toBe(0);
    expect(ends[1]?.topKipIn).toBe(200);
  });
});
