import {describe, expect, test} from "vitest";
import {otherMains} from "../../lib/air/zone.js";
import {library} from "./model.js";

describe("the other mains of a floor of 120 by 80 ft", () => {
  const others = (changes: Readonly<Record<string, unknown>>) => {
    const {design, air} = library(changes);
    return otherMains(design, air.plan.zone).map(({x0In, x1In, y0In, y1In}) => [x0In / 12, x1In / 12, y0In / 12, y1In / 12]);
  };

  test("share what the first leaves: along its row, and along the rows beside it", () => {
    // 1,600 ft2 of a row 40 ft wide are 40 ft along it.
    expect(others({})).toEqual([[40, 80, 0, 40], [80, 120, 0, 40], [0, 40, 40, 80], [40, 80, 40, 80], [80, 120, 40, 80]]);
    // The last is as long as the building leaves it.
    expect(others({"services.servedFt2": 2000})).toEqual([[50, 100, 0, 40], [100, 120, 0, 40], [0, 50, 40, 80], [50, 100, 40, 80], [100, 120, 40, 80]]);
    expect(others({"services.servedFt2": 9600})).toEqual([]);
  });

  test("lie on both sides of one down the middle", () => {
    expect(others({"bay.baysAcross": 3, "air.place": "middle", "services.servedFt2": 4800})).toEqual([[0, 120, 0, 40], [0, 120, 80, 120]]);
    expect(others({"bay.baysAcross": 3, "air.rows": 2, "services.servedFt2": 9600})).toEqual([[0, 120, 80, 120]]);
  });

  test("lie on both sides of rows around a stated place", () => {
    const rows = (acrossFt: number) => library({"bay.baysAcross": 3, "air.place": "across", "air.acrossFt": acrossFt, "air.rows": 2, "services.servedFt2": 9600}).air.plan.zone.firstRow;
    // Two rows of three around 30 ft are the first two, around 60 ft the middle of the building, and around 90 ft the last two.
    expect([rows(30), rows(90)]).toEqual([0, 1]);
    expect(others({"bay.baysAcross": 3, "air.place": "across", "air.acrossFt": 90, "air.rows": 2, "services.servedFt2": 9600})).toEqual([[0, 120, 0, 40]]);
  });

  test("are listed up to sixty: a drawing can show no more", () => {
    expect(others({"services.servedFt2": 100})).toHaveLength(60);
  });
});
