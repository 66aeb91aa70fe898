import {describe, expect, test} from "vitest";
import {levelPlan} from "../../lib/parking/level.js";
import {lowestLevel} from "../../lib/parking/parking.js";
import {parkingOf, structure} from "./support.js";

describe("the modules of a level", () => {
  const plan = (changes: Readonly<Record<string, unknown>> = {}) => levelPlan(structure(changes));

  test("take so many bays each, and leave those over that make no other", () => {
    const bays = (baysAcross: number, baysPerModule: number) => {
      const {modules, baysLeft} = plan({"bay.baysAcross": baysAcross, "parking.baysPerModule": baysPerModule});
      return [modules.length, baysLeft];
    };
    expect([bays(2, 1), bays(2, 2), bays(3, 2), bays(1, 2), bays(4, 3)]).toEqual([[2, 0], [1, 0], [1, 1], [0, 1], [1, 1]]);
  });

  test("hold two rows where their aisle fits between, one where it fits beside one, and none where not even that", () => {
    const {modules: [two], geometry} = plan();
    const {setbackIn} = structure().parking;
    const rowIn = setbackIn + geometry.depthIn;
    expect(two?.rows).toHaveLength(2);
    expect(two?.aisle).toEqual({fromIn: (two?.fromIn as number) + rowIn, toIn: (two?.toIn as number) - rowIn});
    // 33 ft: a row of 18 ft leaves 15 ft for the aisle and more for none.
    const {modules: [one]} = plan({"bay.spanFt": 36, "parking.aisleIn": 200});
    expect(one?.rows.map(({out}) => out)).toEqual([1]);
    expect(one?.aisle).toEqual({fromIn: (one?.fromIn as number) + rowIn, toIn: one?.toIn});
    const {modules: [none]} = plan({"bay.spanFt": 20, "parking.aisleIn": 240});
    expect(none?.rows).toEqual([]);
    expect(none?.aisle).toEqual({fromIn: none?.fromIn, toIn: none?.toIn});
  });
});

describe("the room of a row", () => {
  test("never grows with what is kept free at its ends: a wall wants air beside doors, however near it the row begins", () => {
    // 410 in between the columns of one bay of 36 ft, less 24 in at either wall: three stalls of 92 in, where 12 in more at each end would hold four.
    const level = (endFt: number) => parkingOf(structure({"bay.baysAlong": 1, "parking.stallWidthIn": 92, "parking.doorIn": 24, "parking.endFt": endFt})).perLevel;
    expect([0, 1, 2, 6].map(level)).toEqual([12, 12, 12, 8]);
  });

  test("has columns in it as far as they reach past its heads, on either side of a module", () => {
    // Columns of 22 in stand in line with a web 12 in wide whose face is 4 1/2 in past the bearings: 5 in inside it. At the line between the bays they stand 11 in to either side.
    const reach = levelPlan(structure()).modules.flatMap(({rows}) => rows.map(({obstacles}) => [...new Set(obstacles.filter(({fromOutIn, toOutIn}) => toOutIn - fromOutIn < 1000).map(({fromOutIn, toOutIn}) => `${fromOutIn} to ${toOutIn}`))]));
    expect(reach).toEqual([["-17 to 5"], ["-11 to 11"], ["-11 to 11"], ["-17 to 5"]]);
  });

  test("ends at walls and at columns of its own bays, and a ramp within takes the first row, of two runs both", () => {
    const rows = (changes: Readonly<Record<string, unknown>>) => levelPlan(structure(changes)).modules.map(({rows: of}) => of.filter(({obstacles}) => obstacles.some(({doors}) => !doors)).length);
    expect(rows({"parking.ramp": "none"})).toEqual([0, 0]);
    expect(rows({"parking.ramp": "beside"})).toEqual([0, 0]);
    expect(rows({"parking.ramp": "within", "parking.rampRuns": 1})).toEqual([1, 0]);
    expect(rows({"parking.ramp": "within", "parking.rampRuns": 2})).toEqual([2, 0]);
  });
});

test("the lane that columns leave in an aisle is the widest between them and beside them", () => {
  // Two bays of 30 ft to a module: the column of 22 in at the middle of 60 ft leaves half of the rest of the aisle of 24 ft and more on either side.
  const lane = (changes: Readonly<Record<string, unknown>>) => levelPlan(structure({"parking.baysPerModule": 2, "bay.spanFt": 30, ...changes})).modules[0]?.clearAisleIn;
  expect(lane({})).toBe((720 + 9 - 432 - 22) / 2);
  // Set back, the rows narrow the aisle on both sides. Beside one row alone the lane ends at the edge's columns: half of 22 in beside the middle of its web, 10 1/2 in past the last bearings.
  expect(lane({"parking.setbackIn": 4})).toBe((720 + 9 - 440 - 22) / 2);
  expect(lane({"bay.spanFt": 20, "parking.aisleIn": 200})).toBe(480 + 10.5 - 11 - (240 + 11));
  // Three bays of 20 ft: columns at 240 and 480 in, 218 in between them; aisle from 211.5 to 508.5 in.
  expect(lane({"bay.baysAcross": 3, "parking.baysPerModule": 3, "bay.spanFt": 20})).toBe(218);
});

describe("accessible stalls", () => {
  const special = (changes: Readonly<Record<string, unknown>> = {}) => {
    const design = structure(changes);
    return lowestLevel(design, parkingOf(design)).filter(({kind}) => kind === "accessible" || kind === "van");
  };

  test("stand at the line between two bays, where no ledge hangs over their heads, before they stand at a wall", () => {
    const found = special();
    expect(found.length).toBeGreaterThan(2);
    for (const {row} of found) expect(row.head).toBe("line");
    const atWalls = special({"bay.baysAcross": 1});
    expect(atWalls.length).toBeGreaterThan(2);
    for (const {row} of atWalls) expect(row.head).toBe("wall");
  });

  test("take room, so that fewer stalls are left, which may require fewer: 51 stalls would need three, but 50 are left beside the two that these need", () => {
    // One floor with a ramp along its first row, 9'-8" stalls.
    const found = parkingOf(structure({"bay.floors": 1, "bay.baysAlong": 5, "parking.stallWidthIn": 116, "parking.endFt": 0, "parking.ramp": "within", "parking.vans": "inside"}));
    expect([found.perLevel, found.stalls, found.accessible]).toEqual([51, 50, {needed: 2, vans: 1, inside: 2, placed: 2}]);
    // With its van outside, which is counted besides, they need three.
    expect(parkingOf(structure({"bay.floors": 1, "bay.baysAlong": 5, "parking.stallWidthIn": 116, "parking.endFt": 0, "parking.ramp": "within", "parking.vans": "outside"})).accessible.needed).toBe(3);
    const more = parkingOf(structure({"bay.floors": 1, "bay.baysAlong": 6, "parking.endFt": 0, "parking.ramp": "within", "parking.vans": "inside"}));
    expect([more.perLevel, more.stalls, more.accessible.needed]).toEqual([77, 75, 3]);
  });

  test("stand in the building but for vans that park outside", () => {
    const inside = parkingOf(structure({"parking.vans": "inside"})).accessible;
    expect(inside).toEqual({needed: 6, vans: 1, inside: 6, placed: 6});
    expect(special({"parking.vans": "inside"}).filter(({kind}) => kind === "van")).toHaveLength(1);
    expect(special().filter(({kind}) => kind === "van")).toHaveLength(0);
  });

  test("spill over to rows at walls where those at the lines are full, each once", () => {
    // Thirteen levels of eight stalls in bays of 28 ft, 290 in between the air for doors at its columns: a row holds one pair of accessible stalls with its aisle, 288 in with a van. Of five, one finds its place at a wall.
    const of = {"bay.baysAlong": 1, "bay.floors": 12, "parking.place": "both", "bay.beamSpanFt": 28, "parking.endFt": 0, "bay.baysAcross": 2, "parking.vans": "inside"};
    const design = structure(of);
    const result = parkingOf(design);
    const placed = lowestLevel(design, result);
    const unusual = placed.filter(({kind}) => kind !== "car" && kind !== "access aisle");
    expect(unusual).toHaveLength(result.accessible.placed);
    expect(placed.filter(({kind}) => kind !== "access aisle")).toHaveLength(result.lowest);
    expect([result.perLevel, result.accessible]).toEqual([8, {needed: 5, vans: 1, inside: 5, placed: 5}]);
    expect(unusual.map(({row}) => row.head)).toEqual(expect.arrayContaining(["line", "line", "line", "line", "wall"]));
  });

  test("are none, and no floor is counted for each, where no stall fits", () => {
    const found = parkingOf(structure({"bay.spanFt": 20, "parking.aisleIn": 240}));
    expect([found.perLevel, found.stalls, found.ft2PerStall, found.accessible.needed]).toEqual([0, 0, undefined, 0]);
  });

  test("stand in no module that slopes, and in the first where none does", () => {
    expect(Math.min(...special({"parking.ramp": "beside"}).map(({module}) => module))).toBe(0);
    const sloping = special({"parking.ramp": "parked", "parking.rampRuns": 1});
    expect(sloping.length).toBeGreaterThan(0);
    expect(Math.min(...sloping.map(({module}) => module))).toBe(1);
  });
});
