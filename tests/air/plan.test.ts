import {describe, expect, test} from "vitest";
import {checkOf, library} from "./model.js";

type Changes = Readonly<Record<string, unknown>>;
const planOf = (changes: Changes) => library(changes).air.plan;
const risers = (changes: Changes) => planOf(changes).risers.map(({space}) => space.index);
const supply = (changes: Changes) => planOf(changes).supply.map(({index}) => index);

describe("risers take a space", () => {
  test("at the end wall, over the joint nearest to the middle, or at both ends of what their main serves", () => {
    expect([risers({}), risers({"air.riser": "middle"}), risers({"air.riser": "ends"})]).toEqual([[-1], [3], [-1, 7]]);
    // Of 50 ft the middle at 300 in is that of a feeder's own space; the joint 60 in before it is free, and of two as near the first.
    expect(risers({"air.riser": "middle", "services.servedFt2": 2000})).toEqual([3]);
  });

  test("that no feeder wants if one lies within two spaces' width, and else a feeder's", () => {
    // Where feeders want every space, the free ones are those at the end wall, 227 in from the middle: more than 2 x 52.25 in.
    expect([risers({"air.riser": "middle", "air.supplyEvery": 1}), supply({"air.riser": "middle", "air.supplyEvery": 1})]).toEqual([[3], [0, 1, 2, 4, 5, 6]]);
    // At the far end the joint beyond the last space is free.
    expect(risers({"air.riser": "ends", "air.supplyEvery": 1})).toEqual([-1, 7]);
  });

  test("of their own each, and no second one where a main serves less than a space", () => {
    // 5 ft of building: the second riser takes the space between the first two stems, and a feeder is left the next one, where none belongs.
    const short = {"air.riser": "ends", "services.servedFt2": 200};
    expect([risers(short), supply(short), planOf(short).spaced]).toEqual([[-1, 0], [1], false]);
    // With one riser at the end wall it is left the space nearest to its middle, 30 in from the wall.
    expect([supply({"services.servedFt2": 200}), planOf({"services.servedFt2": 200}).spaced]).toEqual([[0], false]);
    const hair = {"air.riser": "ends", "services.servedFt2": 50, "air.rows": 2};
    expect([risers(hair), supply(hair)]).toEqual([[-1], [0]]);
  });

  test("that the floor of their main reaches: up to a space's width past it", () => {
    // 200 ft2 end at 60 in, 240 ft2 at 72: the joint at 120 in lies more than 52.25 in past the one, and less past the other.
    expect(risers({"air.riser": "ends", "services.servedFt2": 200}).at(-1)).toBe(0);
    expect(risers({"air.riser": "ends", "services.servedFt2": 240}).at(-1)).toBe(1);
  });

  test("each with its share of the air, a duct as deep as the main is wide inside, and its return's beside it", () => {
    const [one] = planOf({}).risers;
    expect(one?.supply).toMatchObject({flowCfm: 1600, size: {depthIn: 24}});
    // 10 in inside carry 1,600 cfm, and 2 in of insulation.
    expect(one?.alongIn).toBe(12);
    const two = planOf({"air.riser": "ends", "air.way": "plenum", "air.exhaustPercent": 25}).risers;
    expect(two.map(({supply: up, back}) => [up.flowCfm, back?.flowCfm, back?.size.depthIn])).toEqual([[800, 600, 24], [800, 600, 24]]);
    // A return duct's riser is as wide as the duct: 32 in for all of the air.
    expect(planOf({"air.way": "trunk"}).risers[0]?.back?.size.depthIn).toBe(32);
    // The wider of the two must pass between the stems: up 1,600 cfm in 24 in, down in the 18 in of a return from the middle.
    const wide = planOf({"air.way": "trunk", "air.riser": "middle"});
    expect(wide.risers[0]).toMatchObject({supply: {size: {widthIn: 10}}, back: {size: {widthIn: 14}}, alongIn: 16});
  });
});

describe("a feeder that passes the columns between two rows of bays", () => {
  const passing = {"air.place": "middle", "air.rows": 2, "services.servedFt2": 4800, "air.supplyEvery": 1, "bay.beamSpanFt": 31.5};

  test("keeps an inch away from them, with half of its own width", () => {
    // Columns at 378 in, the joint at 360: 10 in of half a column, 7 in of half a feeder and an inch are 18 in.
    expect(supply(passing)).toContain(5);
    expect(supply({...passing, "column.sideIn": 20.2})).not.toContain(5);
    expect(supply({...passing, "column.sideIn": 20.2})).toHaveLength(supply(passing).length - 1);
    expect(supply({...passing, "services.branchWidthIn": 14.2})).not.toContain(5);
    expect(supply({...passing, "services.branchWidthIn": 13, "column.sideIn": 20.5})).toContain(5);
  });

  test("asks that of no main that serves one row", () => {
    expect(supply({...passing, "air.place": "ledge", "air.rows": 1, "services.servedFt2": 2400, "column.sideIn": 40})).toContain(5);
    // Nor of one in the second of four rows, whose girders only bound it.
    expect(supply({...passing, "bay.baysAcross": 4, "air.place": "across", "air.acrossFt": 60, "air.rows": 1, "services.servedFt2": 2400, "column.sideIn": 40})).toContain(5);
  });

  test("leaves the return only spaces without a column", () => {
    // Spaces over joints, 52.25 in wide: the column at 378 in stands in the one at 360 in.
    const returns = (changes: Changes) => planOf({...passing, "air.supplyEvery": 2, "air.way": "stems", ...changes}).returns.map(({index}) => index);
    expect(returns({})).toEqual([1, 3, 7, 9]);
    expect(returns({"air.rows": 1, "air.place": "ledge", "services.servedFt2": 2400})).toEqual([1, 3, 5, 7, 9]);
  });
});

describe("the return of a main", () => {
  test("is gathered where its feeders are, or along the main where it has grilles of its own", () => {
    const sections = (changes: Changes) => planOf({"air.way": "trunk", ...changes}).returnSections.map(({x1In, flowCfm}) => [x1In, Math.round(flowCfm)]);
    expect(sections({})).toEqual([[120, 1600], [240, 1067], [360, 533]]);
    expect(sections({"air.returnEvery": 0})).toEqual([[60, 1600], [180, 1200], [300, 800], [420, 400]]);
    expect(planOf({"air.way": "plenum"}).returnSections).toEqual([]);
  });

  test("of a cubic foot a minute has a duct and spaces of its own, and of less none", () => {
    // 1,600 ft2 at 0.0025 cfm: 4 cfm, a fourth or less of which comes back.
    const back = (exhaustPercent: number) => {
      const {returns, returnMain, risers: up, trunk} = planOf({"air.way": "trunk", "services.airCfmPerFt2": 0.0025, "air.exhaustPercent": exhaustPercent});
      return [returns.length, returnMain?.flowCfm, up[0]?.back?.flowCfm, trunk.backY0In === undefined];
    };
    expect(back(75)).toEqual([3, 1, 1, false]);
    expect(back(76)).toEqual([0, undefined, undefined, true]);
  });

  test("takes beside the main its duct with its insulation, or of another way a riser as wide as the main", () => {
    // 32 by 8 in inside carry 1,600 cfm.
    const beside = (changes: Changes) => {
      const {backY0In = NaN, backY1In = NaN, supplyY1In} = planOf(changes).trunk;
      return [backY0In - supplyY1In, backY1In - backY0In];
    };
    expect(beside({"air.way": "trunk"})).toEqual([2, 34]);
    expect(beside({"air.way": "rooms"})).toEqual([2, 26]);
  });
});

describe("the two sides of a main", () => {
  test("share its air by the floor from its middle to each, where it leaves 4 ft beside it for a feeder", () => {
    const sides = (acrossFt: number) => planOf({"air.place": "across", "air.acrossFt": acrossFt}).sides.map(({side, lengthIn, flowCfm}) => [side, lengthIn, flowCfm]);
    // 26 in of main around 61 in begin at 48 in: of 480 in 61 and 419 to either side.
    expect(sides(61 / 12)).toEqual([["near", expect.closeTo(61, 9), expect.closeTo((400 * 61) / 480, 6)], ["far", expect.closeTo(419, 9), expect.closeTo((400 * 419) / 480, 6)]]);
    expect(sides(60.9 / 12)).toEqual([["far", expect.closeTo(419.1, 9), 400]]);
  });

  test("are one where the row is too narrow for feeders beside it, 4 ft long at the least", () => {
    // A main of 94 in in 120 in of row, its middle at 53 in; one 40 in wide leaves 74 in beside it.
    const sides = (mainWidthIn: number) => planOf({"bay.spanFt": 10, "services.servedFt2": 1200, "services.mainWidthIn": mainWidthIn}).sides;
    expect(sides(94)).toEqual([{side: "far", lengthIn: 67, flowCfm: 100}]);
    expect(sides(40)).toEqual([{side: "far", lengthIn: 94, flowCfm: 100}]);
  });

  test("and its trunk keep away from the girder by the feeders' dip where one passes under it, and by 4 in elsewhere", () => {
    const rows = {"bay.baysAcross": 3, "air.rows": 3, "services.servedFt2": 3600, "air.place": "across", "air.acrossFt": 79, "story.ceiling": "below"};
    // The girder's foot ends 16 in before 960 in: 26 in of main, 4 in of air, and 11 in for a branch of 10 in with its joint.
    expect(planOf({...rows, "story.ceilingDropIn": 10}).trunk.y1In).toBe(960 - 16 - 4 - 11);
    expect(planOf({...rows, "story.ceilingDropIn": 9}).trunk.y1In).toBe(960 - 16 - 4);
    // Before the first girder nothing dips beside the edge beam: 2 in of ledge and 4 in of air.
    expect(planOf({...rows, "air.acrossFt": 1, "story.ceilingDropIn": 10}).trunk.y0In).toBe(6);
    // Past the last girder nothing dips: beside the edge beam 2 in of ledge and 4 in of air.
    expect(planOf({...rows, "air.acrossFt": 120, "story.ceilingDropIn": 10}).trunk.y1In).toBe(1440 - 2 - 4);
  });
});

test("a feeder that is left no place gets the free one nearest to the middle of its floor, and a check says so", () => {
  const {air, checks} = library({"services.servedFt2": 100});
  expect([air.plan.supply.map(({index}) => index), air.plan.spaced]).toEqual([[0], false]);
  expect(checkOf({checks}, "feeder spaces")?.verdict).toBe("fails");
});
