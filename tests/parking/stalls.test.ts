import {describe, expect, test} from "vitest";
import {baysThatSuit, spansThatSuit, stallsInBay} from "../../lib/parking/suit.js";
import {stallGeometry} from "../../lib/parking/stall.js";
import {siteOf} from "../../lib/parking/site.js";
import {parked, structure} from "./support.js";

const bay = (beamSpanFt: number, changes: Readonly<Record<string, unknown>> = {}) => stallsInBay(structure(changes), beamSpanFt, 60);
const NINE = {"parking.stallWidthIn": 108};

describe("stalls between two columns, by hand", () => {
  // Columns of 22 in stand at the heads, where cars have no doors: a bay of 30 ft leaves 28 ft 2 in, three stalls of 9 ft and 1 ft 2 in.
  test("three of 9 ft in a bay of 30 ft", () => expect(bay(30, NINE)).toMatchObject({stalls: 3, clearIn: 338, takenIn: 324, leftIn: 14, rows: 2}));
  // 36 ft - 1 ft 10 in = 34 ft 2 in = 410 in: four of 8 ft 6 in are 408 in, of 9 ft only three.
  test("four of 8'-6\" in a bay of 36 ft, three of 9'-0\"", () => {
    expect(bay(36)).toMatchObject({stalls: 4, leftIn: 2});
    expect(bay(36, NINE)).toMatchObject({stalls: 3, leftIn: 86});
  });
  // 27 ft and 22 in are 28 ft 10 in.
  test("a bay just wide enough for three, and one just too narrow", () => {
    expect(bay(28 + 10 / 12, NINE)?.stalls).toBe(3);
    expect(bay(28 + 9.9 / 12, NINE)?.stalls).toBe(2);
  });
  // Heads 11 in off the line stand just past a column of 22 in; the row then runs on.
  test("no column once the heads are set back past it", () => {
    expect(bay(30, {"parking.setbackIn": 10.9, "parking.aisleIn": 240})).toBeDefined();
    expect(bay(30, {"parking.setbackIn": 11, "parking.aisleIn": 240})).toBeUndefined();
  });
  // Where cars are free of doors for only 6 in at their heads, a column that reaches 11 in from the line stands beside doors: 12 in on both sides.
  test("a column beside doors takes their clearance as well", () => {
    expect(bay(36, {"parking.doorFreeIn": 6})).toMatchObject({clearIn: 410 - 24, stalls: 3});
    expect(bay(36, {"parking.doorFreeIn": 11})).toMatchObject({clearIn: 410, stalls: 4});
  });
  // Rows across: columns of 22 in stand 60 ft apart along the rows, at the heads: 58 ft 2 in hold six stalls of 9 ft. The module is the 60 ft of two bays of 30 ft, and its middle line stands in the aisle.
  test("six of 9 ft between columns 60 ft apart, in rows across", () => {
    const across = {...NINE, "parking.rows": "across", "parking.baysPerModule": 2};
    expect(stallsInBay(structure(across), 30, 60)).toMatchObject({stalls: 6, clearIn: 698, leftIn: 50});
    const {checks, level} = parked({...across, "bay.beamSpanFt": 30, "bay.baysAlong": 6});
    expect(level.modules).toHaveLength(3);
    // 24 ft less 22 in, halved.
    expect(checks.find(({id}) => id === "parking aisle")).toMatchObject({verdict: "fails", capacity: (288 - 22) / 2});
  });
});

describe("angled stalls", () => {
  // 9 ft by 18 ft at 60 degrees: 18 sin 60 + 9 cos 60 = 15.59 + 4.5 = 20.09 ft deep, 9/sin 60 = 10.39 ft along the aisle.
  test("of 60 degrees take 20.1 ft of depth and 10.4 ft of row", () => {
    const geometry = stallGeometry({angle: "60 one-way", stallWidthIn: 108, stallLengthIn: 216});
    expect(geometry.depthIn / 12).toBeCloseTo(18 * 0.866025 + 4.5, 4);
    expect(9 * geometry.alongPerWidth).toBeCloseTo(10.3923, 4);
  });
  // With an aisle of 18 ft: 2 x 20.09 + 18 = 58.18 ft.
  test("make a module of 58 ft with their aisle of 18 ft", () => {
    const spans = spansThatSuit(structure({...NINE, "parking.angle": "60 one-way", "parking.aisleIn": 216}));
    expect(spans.neededIn / 12).toBeCloseTo(58.18, 2);
    expect(spans.insideFt).toBe(59);
  });
});

describe("a level of the starter", () => {
  // Face of the wall to the line between the bays: 60 ft and the 4 1/2 in from the middle of the bearing (1 in joint, 8 in ledge) to the face.
  test("has two modules of 60'-4 1/2\", and needs 60'-0\"", () => {
    const {level: {modules, site}} = parked();
    expect(modules.map(({clearIn, neededIn, clearAisleIn}) => [clearIn, neededIn, clearAisleIn])).toEqual([[724.5, 720, 292.5], [724.5, 720, 292.5]]);
    expect(site.columns).toHaveLength(18);
  });
  // Rows run from 24 ft off the face of the end columns: 11 in + 288 in = 299 in. The first bay's last column begins at 432 - 11 = 421 in: one stall in 122 in, then 3 bays of 4, then one: 14 to a row, four rows.
  test("holds 56 stalls, and its three levels 168 less what accessible ones take", () => {
    const {perLevel, lowest, stalls, levels, accessible} = parked();
    expect([perLevel, levels]).toEqual([56, 3]);
    expect(stalls).toBe(2 * perLevel + lowest);
    // 151 to 200 stalls need 6 accessible ones, one of them for a van, which stands outside.
    expect(accessible).toEqual({needed: 6, vans: 1, inside: 5, placed: 5});
  });
  test("is a level more with cars on the ground, and one alone there", () => {
    expect(parked({"parking.place": "both"}).levels).toBe(4);
    expect(parked({"parking.place": "below"}).levels).toBe(1);
  });
  test("counts the floor of all levels for each stall", () => {
    const {stalls, ft2PerStall} = parked();
    expect(ft2PerStall).toBeCloseTo((3 * 180 * 120) / stalls, 9);
  });
  test("loses a row's stalls to a ramp within it", () => {
    // 101 ft 8 in of ramp from 299 in on end at 1,519 in: past the columns at 864 and 1,296 and into the bay that ends at 1,728 - 11 in, where one of 198 in is left, and then one more.
    const row = parked().perLevel / 4;
    expect(row).toBe(14);
    expect(parked({"parking.ramp": "within"}).perLevel).toBe(3 * row + 1 + 1);
  });
});

describe("where the wall's face stands", () => {
  test.each([
    ["ledge", -4.5], ["pockets", 3.5], ["below", 5.5],
  ])("of an edge beam of the kind %s", (kind, faceIn) => expect(siteOf(structure({"edgeBeam.kind": kind})).faces.y0).toBe(faceIn));
});

describe("bays that suit", () => {
  test("are the least whole feet for each number of stalls", () => {
    // n stalls of 9 ft and 22 in: 19 ft 10 in, 28 ft 10 in, 37 ft 10 in ...
    expect(baysThatSuit(structure(NINE)).map(({stalls, bayFt}) => [stalls, bayFt])).toEqual([[1, 16], [2, 20], [3, 29], [4, 38], [5, 47], [6, 56]]);
    // Half of 29 ft by 60 ft for each of three stalls.
    expect(baysThatSuit(structure(NINE))[2]?.ft2PerStall).toBeCloseTo((29 * 60) / 6, 9);
  });
  test("end with 60 ft, and are spacings across the building where rows run across", () => {
    // Six of 9'-8" and 22 in are 59'-10".
    expect(baysThatSuit(structure({"parking.stallWidthIn": 116})).at(-1)).toMatchObject({stalls: 6, bayFt: 60});
    const across = baysThatSuit(structure({...NINE, "parking.rows": "across", "bay.beamSpanFt": 60}));
    expect(across.map(({stalls, bayFt}) => [stalls, bayFt])).toEqual([[1, 16], [2, 20], [3, 29], [4, 38], [5, 47], [6, 56]]);
    expect(across[2]?.ft2PerStall).toBeCloseTo((29 * 60) / 6, 9);
  });
  test("stand in modules of two bays as in those of one", () => {
    expect(stallsInBay(structure({...NINE, "parking.baysPerModule": 2}), 30, 30)).toMatchObject({stalls: 3, leftIn: 14, rows: 2});
  });
  test("of a span that suits, inside and along a wall, whose face stands in or out of the line of bearings", () => {
    const spans = (changes: Readonly<Record<string, unknown>>) => {
      const {neededIn, insideFt, edgeFt} = spansThatSuit(structure(changes));
      return [neededIn, insideFt, edgeFt];
    };
    expect(spans({})).toEqual([720, 60, 60]);
    // 2 in more than 60 ft, of which the ledge's face gives back 4 1/2; halved for two bays to a module.
    expect(spans({"parking.setbackIn": 1})).toEqual([722, 61, 60]);
    expect(spans({"parking.setbackIn": 1, "parking.baysPerModule": 2})).toEqual([722, 31, 30]);
    // Over pockets the face takes 3 1/2 in; across, the end columns take 11 in.
    expect(spans({"edgeBeam.kind": "pockets", "parking.aisleIn": 286})).toEqual([718, 60, 61]);
    expect(spans({"parking.rows": "across", "parking.aisleIn": 280})).toEqual([712, 60, 61]);
  });
  test("are none where no column stands in the row", () => expect(baysThatSuit(structure({"parking.setbackIn": 12, "parking.aisleIn": 240}))).toEqual([]));
});
