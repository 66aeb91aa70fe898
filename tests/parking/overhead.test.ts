import {describe, expect, test} from "vitest";
import type {HungBox} from "../../lib/air/casing.js";
import {evaluate} from "../../lib/evaluate.js";
import {coveredCars, heightsOf, type ClearPlace, type Hanging, type Heights} from "../../lib/parking/heights.js";
import {levelPlan} from "../../lib/parking/level.js";
import {parkingChecks} from "../../lib/parking/parkingChecks.js";
import type {StoryStack} from "../../lib/story/stack.js";
import {once} from "../support/once.js";
import {catalog} from "../support/designs.js";
import {parked, structure} from "./support.js";

type Changes = Readonly<Record<string, unknown>>;
const story = once(() => evaluate(structure(), catalog).story);
const box = (y0In: number, y1In: number, footIn = 80) => ({y0In, y1In, footIn}) as HungBox;

/** Heights under what is hung below the starter's deck of 98 in, whose ledges leave 86 in; no girder unless it is given. */
function under(boxes: readonly HungBox[], changes: Changes = {}, hanging: Partial<Hanging> = {}, stack: Partial<StoryStack> = {}): Heights {
  const design = structure(changes);
  return heightsOf(design, {...story(), ...stack}, levelPlan(design), {girder: undefined, ductsIn: undefined, boxes, boxWords: "box", pipesPastIn: undefined, ...hanging});
}
const overs = ({places}: Heights) => places.filter(({over}) => over === "box").map(({words}) => words.replace("the box around the ducts ", ""));

/*
 * Across the starter, in: heads at the first wall's face -4.5, stalls to 211.5, aisle to 504, stalls to the line at 720 and from
 * there to 936, aisle to 1,228.5, stalls to the other wall's face at 1,444.5.
 */
describe("a box hangs", () => {
  test.each([
    [0, 211.5, "over the heads of stalls"], [0, 211.6, "over the aisle"], [300, 400, "over the aisle"], [503.9, 600, "over the aisle"],
    [504, 936, "between two aisles"], [700, 740, "between two aisles"], [936.1, 1000, "over the aisle"], [1228.5, 1440, "over the heads of stalls"], [1228.4, 1440, "over the aisle"],
  ])("from %d to %d in: %s", (y0, y1, words) => expect(overs(under([box(y0, y1)]))).toEqual([words]));

  test("over stalls alone behind the one aisle of a single module, and over no car where a row ends", () => {
    const one = {"bay.baysAcross": 1};
    expect(overs(under([box(508.5, 700)], one))).toEqual(["over the heads of stalls"]);
    // One row of 216 in set back by 20 in and an aisle of 200 in leave no second row in 36 ft.
    const lone = {...one, "bay.spanFt": 36, "parking.aisleIn": 200, "parking.setbackIn": 20};
    expect(overs(under([box(-4.5, 15.5)], lone))).toEqual(["over no stall"]);
    expect(overs(under([box(-4.5, 15.6)], lone))).toEqual(["over the heads of stalls"]);
    expect(overs(under([box(231.4, 231.5)], lone))).toEqual(["over the heads of stalls"]);
    // The other wall's row is set back from its wall as well.
    expect(overs(under([box(724.4, 724.5)], {...one, "parking.setbackIn": 2}))).toEqual(["over no stall"]);
    expect(overs(under([box(722, 722.6)], {...one, "parking.setbackIn": 2}))).toEqual(["over the heads of stalls"]);
  });

  test("over an aisle wherever it is if these run across the building", () => {
    for (const [y0, y1] of [[0, 20], [700, 740], [300, 400]] as const) {
      for (const beamSpanFt of [36, 60]) expect(overs(under([box(y0, y1)], {"parking.rows": "across", "bay.beamSpanFt": beamSpanFt, "parking.baysPerModule": 1}))).toEqual(["over the aisle"]);
    }
  });

  test("once in the table for each such place, at the lowest", () => {
    for (const feet of [[85, 80, 83], [80, 85, 83], [83, 85, 80]] as const) {
      const {places} = under([box(0, 40, feet[0]), box(10, 60, feet[1]), box(1300, 1400, feet[2])]);
      expect(places.filter(({over}) => over === "box").map(({clearIn}) => clearIn)).toEqual([80]);
    }
    expect(overs(under([box(0, 40), box(300, 400), box(700, 740)]))).toEqual(["over the heads of stalls", "over the aisle", "between two aisles"]);
  });

  test("over no car without being the lowest of what hangs over cars", () => {
    // Two bays to a module leave the third without any: from 768 in on.
    const left = {"bay.baysAcross": 3, "parking.baysPerModule": 2, "bay.spanFt": 32};
    const {places, least, leastOnWay} = under([box(800, 840, 60)], left);
    expect(places.find(({over}) => over === "box")).toMatchObject({clearIn: 60, overNone: true, onTheWay: false});
    expect([least.over, leastOnWay.over]).toEqual(["edge beam", "signs"]);
  });

  test("and the ducts in it are told by themselves only where they hang lower than it", () => {
    const ducts = (ductsIn: number) => under([box(300, 400, 80)], {}, {ductsIn}).places.filter(({over}) => over === "ducts").map(({clearIn}) => clearIn);
    expect([ducts(17), ducts(18), ducts(19)]).toEqual([[], [], [79]]);
    expect(under([], {}, {ductsIn: 10}).places.find(({over}) => over === "ducts")?.clearIn).toBe(88);
  });

  test("with pipes below it where there is a box for them to pass, and none over cars on the ground", () => {
    const pipes = (boxes: readonly HungBox[], changes: Changes, pipesPastIn: number | undefined) => under(boxes, changes, {pipesPastIn}).places.filter(({over}) => over === "pipes past the box").map(({clearIn}) => clearIn);
    expect(pipes([box(300, 400)], {}, 76)).toEqual([76]);
    expect(pipes([box(300, 400)], {}, undefined)).toEqual([]);
    expect(pipes([], {}, 76)).toEqual([]);
    expect(pipes([box(300, 400)], {"parking.place": "below"}, 76)).toEqual([]);
  });
});

describe("a van parks in the row that leaves it most", () => {
  // On its way 92 in under the signs.
  test("free of boxes if one row is, else under the highest", () => {
    const rows = [box(-4, 40, 81), box(600, 720, 82), box(720, 800, 83), box(1400, 1440, 84)];
    const pockets = {"edgeBeam.kind": "pockets", "parking.aisleIn": 280};
    const van = (boxes: readonly HungBox[]) => under(boxes, pockets).vanIn;
    // A box between two aisles is on the way, past the rows' ends.
    expect(van(rows)).toBe(82);
    expect(van([box(-4, 40, 81), box(1400, 1440, 84)])).toBe(92);
    const one = {...pockets, "bay.baysAcross": 1};
    expect(under([box(0, 40, 81), box(600, 700, 83)], one).vanIn).toBe(83);
    expect(under([box(0, 40, 83), box(600, 700, 81)], one).vanIn).toBe(83);
    expect(under([box(0, 40, 83), box(10, 50, 79), box(600, 700, 78)], one).vanIn).toBe(79);
    expect(under([box(600, 700, 78)], one).vanIn).toBe(92);
    // The far row reaches from its wall's face at 716.5 in to the aisle at 500.5.
    expect(under([box(0, 40, 81), box(500.5, 503, 77)], one).vanIn).toBe(81);
  });

  test("away from ledges where heads stand at the line between two bays", () => {
    const low = {clearUnderLedgeIn: 70};
    expect(under([], {}, {}, low).vanIn).toBe(92);
    expect(under([], {"bay.baysAcross": 1}, {}, low).vanIn).toBe(70);
    // Only the line between the bays is free of the ledge, and a box hangs there.
    expect(under([box(600, 840, 75)], {}, {}, low).vanIn).toBe(75);
    expect(under([], {"bay.baysAcross": 1, "edgeBeam.kind": "pockets"}, {}, low).vanIn).toBe(92);
    // Where rows run across, only the stalls at their ends have a ledge over them.
    expect(under([], {"parking.rows": "across", "bay.baysAlong": 1, "bay.beamSpanFt": 60, "parking.endFt": 0}, {}, low).vanIn).toBe(92);
  });

  test("beneath the ledge where no row fits, unless another line of bays could take one", () => {
    const none = {"bay.spanFt": 20, "parking.aisleIn": 240};
    const low = {clearUnderLedgeIn: 70};
    expect(levelPlan(structure({...none, "bay.baysAcross": 1})).modules[0]?.rows).toEqual([]);
    expect(under([], {...none, "bay.baysAcross": 1}, {}, low).vanIn).toBe(70);
    expect(under([], {...none, "bay.baysAcross": 2}, {}, low).vanIn).toBe(92);
    expect(under([], {...none, "bay.baysAcross": 2, "parking.baysPerModule": 2, "bay.spanFt": 10}, {}, low).vanIn).toBe(70);
    expect(under([], {...none, "bay.baysAcross": 1, "edgeBeam.kind": "pockets"}, {}, low).vanIn).toBe(92);
  });
});

test("the ledge hangs over no car whose rows run across and begin past it", () => {
  const ledge = (changes: Changes) => under([], {"parking.rows": "across", ...changes}).places.some(({over}) => over === "edge beam");
  // 8 in of ledge: a foot kept free at the rows' ends is past it, whatever the heads' own setback.
  expect(ledge({"parking.endFt": 0})).toBe(true);
  expect(ledge({"parking.endFt": 0, "parking.setbackIn": 20})).toBe(true);
  expect(ledge({"parking.endFt": 1})).toBe(false);
  expect(ledge({"parking.endFt": 0, "edgeBeam.kind": "pockets"})).toBe(false);
});

test("cars are covered wherever a floor of the design is above some of them", () => {
  const covered = (place: string, floors: number) => coveredCars(structure({"parking.place": place, "bay.floors": floors}));
  expect([covered("below", 1), covered("both", 1), covered("on", 1), covered("on", 2), covered("none", 3)]).toEqual([true, true, false, true, false]);
});

describe("the checks of heights", () => {
  const place = (over: ClearPlace["over"], clearIn: number, onTheWay: boolean, overNone?: boolean): ClearPlace => ({over, words: `the ${over}`, clearIn, onTheWay, ...(overNone ? {overNone} : {})});
  const label = (places: readonly ClearPlace[], vanIn: number, leastOnWay: ClearPlace) => {
    const changes = {"parking.vans": "inside"};
    const of = parked(changes);
    const heights = {places, vanIn, leastOnWay, least: leastOnWay};
    return parkingChecks(structure(changes), {...of, heights}).find(({id}) => id === "van height")?.label;
  };

  test("name what is lowest over a van: on its way, or over the stall that it parks in, never what hangs over no car", () => {
    const girder = place("girder", 86, true);
    const ledge = place("edge beam", 80, false);
    expect(label([ledge, girder], 86, girder)).toMatch(/under the girder$/);
    expect(label([girder, ledge], 80, girder)).toMatch(/under the edge beam$/);
    expect(label([girder, place("box", 80, false, true), ledge], 80, girder)).toMatch(/under the edge beam$/);
    expect(label([place("box", 78, false), place("pipes", 80, true), girder, ledge], 80, girder)).toMatch(/under the edge beam$/);
    expect(label([girder, ledge, place("box", 86, false)], 86, girder)).toMatch(/under the girder$/);
  });

  test("never tell more than is left: 83.9 in are 6'-11 3/4\"", () => {
    const least = place("deck", 83.9, true);
    const of = parked();
    const found = parkingChecks(structure(), {...of, heights: {places: [least], least, leastOnWay: least, vanIn: 83.9}}).find(({id}) => id === "parking height");
    expect(found).toMatchObject({verdict: "fails", message: "Under the deck 6'-11 3/4\" is left where 7'-0\" is wanted: raise the story."});
  });

  test("mend a box that is stated by its own drop, and any other by its duct", () => {
    const least = place("box", 80, true);
    const message = (changes: Changes) => {
      const of = parked();
      return parkingChecks(structure(changes), {...of, heights: {places: [least], least, leastOnWay: least, vanIn: 80}}).find(({id}) => id === "parking height")?.message;
    };
    expect(message({"air.casing": "stated", "air.run": "box"})).toMatch(/: a shallower box, or a higher story\.$/);
    expect(message({"air.casing": "stated", "air.run": "strip"})).toMatch(/: a shallower strip, or a higher story\.$/);
    expect(message({"air.run": "box"})).toMatch(/: a flatter duct, or a higher story\.$/);
  });
});
