import {describe, expect, test} from "vitest";
import {LOAD_ELEMENTS} from "../../lib/loads/elements.js";
import {loadAreas, type ColumnGrid} from "../../lib/loads/tributary.js";

const GRID: ColumnGrid = {spanFt: 60, beamSpanFt: 30, baysAlong: 4, baysAcross: 3};
const areasOf = (grid: ColumnGrid, widthFt = 10) => new Map(loadAreas(grid, widthFt).map((area) => [area.element, area]));

describe("loadAreas", () => {
  test("gives each kind of element its tributary area and the code's factor", () => {
    const facts = Object.fromEntries([...areasOf(GRID)].map(([element, {tributaryFt2, elementFactor, influenceFt2}]) => [element, [tributaryFt2, elementFactor, influenceFt2]]));
    expect(facts).toEqual({
      "deck member": [600, 1, 600],
      "edge beam": [900, 2, 1800],
      "interior beam": [1800, 2, 3600],
      "interior column": [1800, 4, 7200],
      "edge column": [900, 4, 3600],
      "girder end column": [900, 4, 3600],
      "corner column": [450, 4, 1800],
    });
  });

  test("draws an influence area as large as the factor says, and inside the building", () => {
    for (const {element, influence, influenceFt2, tributary} of areasOf(GRID).values()) {
      expect(influence.widthFt * influence.heightFt, element).toBe(influenceFt2);
      for (const rect of [influence, tributary]) {
        expect(rect.xFt, element).toBeGreaterThanOrEqual(0);
        expect(rect.yFt, element).toBeGreaterThanOrEqual(0);
        expect(rect.xFt + rect.widthFt, element).toBeLessThanOrEqual(120);
        expect(rect.yFt + rect.heightFt, element).toBeLessThanOrEqual(180);
      }
    }
  });

  test("lays each area where its element stands: halfway to its neighbors, and all that a load there is felt by", () => {
    // Bays of 30 by 60 ft: the second bay from 30 to 60 ft, the first inner column line at 30 ft.
    const at = (xFt: number, yFt: number, widthFt: number, heightFt: number) => ({xFt, yFt, widthFt, heightFt});
    const laid = Object.fromEntries([...areasOf(GRID)].map(([element, {tributary, influence}]) => [element, [tributary, influence]]));
    expect(laid).toEqual({
      "deck member": [at(40, 0, 10, 60), at(40, 0, 10, 60)],
      "edge beam": [at(30, 0, 30, 30), at(30, 0, 30, 60)],
      "interior beam": [at(30, 30, 30, 60), at(30, 0, 30, 120)],
      "interior column": [at(15, 30, 30, 60), at(0, 0, 60, 120)],
      "edge column": [at(15, 0, 30, 30), at(0, 0, 60, 60)],
      "girder end column": [at(0, 30, 15, 60), at(0, 0, 30, 120)],
      "corner column": [at(0, 0, 15, 30), at(0, 0, 30, 60)],
    });
  });

  test("counts a deck member no wider than one and a half times its span", () => {
    // 15 ft of a member on 8 ft: 12 ft count.
    expect(areasOf({...GRID, spanFt: 8}, 15).get("deck member")?.tributaryFt2).toBe(96);
    expect(areasOf({...GRID, spanFt: 10}, 15).get("deck member")?.tributaryFt2).toBe(150);
  });

  test("has no interior element in a building of one bay across", () => {
    expect([...areasOf({...GRID, baysAcross: 1}).keys()]).toEqual(["deck member", "edge beam", "edge column", "corner column"]);
  });

  test("has only corner columns where one bay is all", () => {
    expect([...areasOf({...GRID, baysAcross: 1, baysAlong: 1}).keys()]).toEqual(["deck member", "edge beam", "corner column"]);
    expect([...areasOf({...GRID, baysAlong: 1}).keys()]).not.toContain("interior column");
  });

  test("has a column of its own where a line of girders ends, also where one bay along has no other inside", () => {
    for (const baysAlong of [1, 2, 5]) expect([...areasOf({...GRID, baysAlong}).keys()]).toContain("girder end column");
  });

  test("shows a deck member where it lies, counted from the building's corner on and past column lines", () => {
    // The middle of the second bay of 8 ft is 12 ft from the corner: still on the first piece of 15 ft.
    expect(areasOf({...GRID, beamSpanFt: 8}, 15).get("deck member")?.tributary).toMatchObject({xFt: 0, widthFt: 15});
    // The middle of the second bay of 30 ft is 45 ft from it: on the fourth piece of 12 ft, from 36 to 48 ft.
    expect(areasOf({...GRID, beamSpanFt: 30}, 12).get("deck member")?.tributary).toMatchObject({xFt: 36, widthFt: 12});
    // A building shorter than a piece has one that is cut.
    expect(areasOf({...GRID, beamSpanFt: 8, baysAlong: 1}, 15).get("deck member")?.tributary).toMatchObject({xFt: 0, widthFt: 8});
  });

  test("names no element twice and none that has no factor", () => {
    expect(areasOf(GRID).size).toBe(LOAD_ELEMENTS.length);
  });
});
