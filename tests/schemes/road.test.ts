import {describe, expect, test} from "vitest";
import {bothHauls, haulOf, perTruck, ROAD_LIMITS, type HauledKind} from "../../lib/schemes/measures/road.js";

/** A piece that needs no permit: 8 ft wide, 2 ft high, 40 ft long, 30 kip. */
const plain: HauledKind = {count: 1, weightLb: 30_000, lengthFt: 40, acrossFt: 8, highFt: 2};
const hair = 1e-6;

describe("on the road", () => {
  test("the limits are 102 in across, 13'-6\" over a trailer of 3 ft, 53 ft long, and 48 kip of the 80 in all", () => {
    expect(ROAD_LIMITS).toEqual({widthFt: 102 / 12, heightFt: 10.5, lengthFt: 53, weightLb: 48_000});
  });

  test.each([
    ["wide", "acrossFt", 8.5, "overWidth"], ["high", "highFt", 10.5, "overHeight"], ["long", "lengthFt", 53, "overLength"], ["heavy", "weightLb", 48_000, "overWeight"],
  ] as const)("a piece as %s as the limit needs no permit, and one just beyond it does", (_, field, limit, over) => {
    const at = haulOf([{...plain, [field]: limit}]);
    expect([at[over], at.permits]).toEqual([0, 0]);
    const beyond = haulOf([{...plain, count: 7, [field]: limit * (1 + hair)}, plain]);
    expect([beyond[over], beyond.permits, beyond.pieces]).toEqual([7, 7, 8]);
    const others = (["overWidth", "overHeight", "overLength", "overWeight"] as const).filter((name) => name !== over);
    expect(others.map((name) => beyond[name])).toEqual([0, 0, 0]);
  });

  test("a piece that is over several limits needs one permit", () => {
    const load = haulOf([{...plain, count: 3, acrossFt: 12, lengthFt: 60, weightLb: 60_000}]);
    expect([load.overWidth, load.overHeight, load.overLength, load.overWeight, load.permits]).toEqual([3, 0, 3, 3, 3]);
  });

  test("a truck brings what its payload carries, no more than has room, and one at least", () => {
    // By weight: six of 8 kip to the pound, five of a hair more.
    const slab = {...plain, weightLb: 8000, acrossFt: 4, highFt: 8 / 12, lengthFt: 20};
    expect(perTruck(slab)).toBe(6);
    expect(perTruck({...slab, weightLb: 8001})).toBe(5);
    // By room: two side by side, three above each other, one along; each factor by itself.
    const light = {...plain, weightLb: 100, acrossFt: 4.25, highFt: 3.5, lengthFt: 40};
    expect(perTruck(light)).toBe(6);
    expect(perTruck({...light, acrossFt: 4.26})).toBe(3);
    expect(perTruck({...light, highFt: 3.51})).toBe(4);
    expect(perTruck({...light, lengthFt: 26.5})).toBe(12);
    expect(perTruck({...light, lengthFt: 26.6})).toBe(6);
    // What is too large for any of them rides alone.
    expect(perTruck({...plain, weightLb: 70_000})).toBe(1);
    expect(perTruck({...plain, acrossFt: 12, highFt: 11, lengthFt: 70})).toBe(1);
  });

  test("trucks bring pieces of several kinds, and the last may be part full", () => {
    const sixth = {...plain, weightLb: 8000, acrossFt: 4, highFt: 8 / 12, lengthFt: 20};
    expect(haulOf([{...sixth, count: 6}]).truckloads).toBe(1);
    expect(haulOf([{...sixth, count: 7}]).truckloads).toBe(2);
    // Three sixths and half of one: one truck.
    const half = {...plain, weightLb: 24_000};
    expect(haulOf([{...sixth, count: 3}, {...half, count: 1}]).truckloads).toBe(1);
    expect(haulOf([{...sixth, count: 4}, {...half, count: 1}]).truckloads).toBe(2);
    // A third and two thirds add up to one, rounding or not.
    const third = {...plain, weightLb: 16_000, highFt: 2};
    expect(haulOf([{...third, count: 1}, {...third, count: 2}]).truckloads).toBe(1);
  });

  test("nothing is hauled of nothing, and the heaviest of all is told in short tons", () => {
    expect(haulOf([])).toEqual({pieces: 0, truckloads: 0, heaviestTons: 0, overWidth: 0, overHeight: 0, overLength: 0, overWeight: 0, permits: 0});
    expect(haulOf([{...plain, count: 0, weightLb: 90_000}, plain]).heaviestTons).toBe(15);
    const both = bothHauls(haulOf([{...plain, count: 2, acrossFt: 9}]), haulOf([{...plain, count: 3, lengthFt: 54, weightLb: 50_000}]));
    expect(both).toEqual({pieces: 5, truckloads: 5, heaviestTons: 25, overWidth: 2, overHeight: 0, overLength: 3, overWeight: 3, permits: 5});
    const tall = haulOf([{...plain, highFt: 11}]);
    expect(bothHauls(tall, tall)).toMatchObject({overHeight: 2, heaviestTons: 15});
  });
});
