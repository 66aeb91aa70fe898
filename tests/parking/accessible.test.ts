import {describe, expect, test} from "vitest";
import {accessibleNeeded, accessibleUnits, stallsOfUnits, vansNeeded} from "../../lib/parking/accessible.js";

describe("accessible stalls (ADA 2010 Standards, Table 208.2)", () => {
  // The table's rows, each at its ends.
  test.each([
    [0, 0], [1, 1], [25, 1], [26, 2], [50, 2], [51, 3], [75, 3], [76, 4], [100, 4], [101, 5], [150, 5], [151, 6], [200, 6], [201, 7],
    [300, 7], [301, 8], [400, 8], [401, 9], [500, 9], [501, 11], [550, 11], [551, 12], [1000, 20], [1001, 21], [1100, 21], [1101, 22],
  ])("of %i are %i", (stalls, needed) => expect(accessibleNeeded(stalls)).toBe(needed));

  test.each([[0, 0], [1, 1], [6, 1], [7, 2], [12, 2], [13, 3]])("%i of them have %i for vans: one in six, or part of six (208.2.4)", (accessible, vans) =>
    expect(vansNeeded(accessible)).toBe(vans));
});

describe("accessible stalls in pairs", () => {
  const widths = (cars: number, vans: number) => accessibleUnits(cars, vans).map(({parts}) => parts.map(({widthIn}) => widthIn));

  test("share an aisle of 60 in, beside a van one of 96 (502.2, its exception, 502.3)", () => {
    expect(widths(1, 1)).toEqual([[96, 96, 96]]);
    expect(widths(2, 0)).toEqual([[96, 60, 96]]);
    expect(widths(3, 1)).toEqual([[96, 96, 96], [96, 60, 96]]);
    expect(widths(0, 1)).toEqual([[96, 96]]);
    expect(widths(1, 0)).toEqual([[96, 60]]);
    expect(widths(0, 0)).toEqual([]);
  });

  test("are all there, each van with an aisle", () => {
    for (let cars = 0; cars < 12; cars++) {
      for (let vans = 0; vans < 4; vans++) {
        const units = accessibleUnits(cars, vans);
        const kinds = units.flatMap(({parts}) => parts.map(({kind}) => kind));
        expect(stallsOfUnits(units)).toBe(cars + vans);
        expect(kinds.filter((kind) => kind === "van")).toHaveLength(vans);
        expect(kinds.filter((kind) => kind === "accessible")).toHaveLength(cars);
      }
    }
  });
});
