import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {floorLoads, loadOn, partitionPsf, underMembers} from "../../lib/loads/floorLoads.js";
import {liveName, reducedFrom} from "../../lib/loads/liveWords.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");
const OFFICE = withValues(LIBRARY, {"loads.rooms": [{name: "Desks", occupancy: "office"}], "loads.partitions": true});

describe("partitionPsf", () => {
  test("is 15 psf where walls move and the live load stays below 80 psf", () => {
    expect(partitionPsf({livePsf: 50, partitions: true}, true)).toBe(15);
    expect(partitionPsf({livePsf: 79.9, partitions: true}, true)).toBe(15);
    expect(partitionPsf({livePsf: 80, partitions: true}, true)).toBe(0);
  });

  test("is nothing where walls stay or such rooms have none", () => {
    expect(partitionPsf({livePsf: 50, partitions: true}, false)).toBe(0);
    expect(partitionPsf({livePsf: 40, partitions: false}, true)).toBe(0);
  });
});

describe("floorLoads", () => {
  test("adds up the layers", () => {
    expect(floorLoads(LIBRARY, catalog, 10).superimposedDeadPsf).toBe(10);
    expect(floorLoads(withValues(LIBRARY, {"loads.layers": []}), catalog, 10).superimposedDeadPsf).toBe(0);
  });

  test("reduces the live load but not the partitions", () => {
    // A 10 ft tee on 40 ft: 400 ft2, factor 1; an edge beam 2 * 30 * 20 = 1,200 ft2: 0.25 + 15/34.641 = 0.68301.
    const loads = floorLoads(OFFICE, catalog, 10);
    expect(loadOn(loads, "deck member").governing.totalPsf).toBe(65);
    expect(loadOn(loads, "edge beam").governing.totalPsf).toBeCloseTo(50 * 0.683013 + 15, 3);
  });

  test("are the same under members of another width but for these themselves", () => {
    for (const {design} of seeds) for (const [from, to] of [[4, 12], [10, 8], [15, 10]] as const) {
      expect(underMembers(floorLoads(design, catalog, from), design, to)).toEqual(floorLoads(design, catalog, to));
    }
  });

  test("counts floors for columns alone", () => {
    // An interior column on three floors: 4 * 30 * 40 * 3 = 14,400 ft2; 0.25 + 15/120 = 0.375, lower limit 0.4.
    const loads = floorLoads(withValues(OFFICE, {"bay.floors": 3}), catalog, 10);
    expect(loadOn(loads, "interior column")).toMatchObject({floors: 3, governing: {reduction: {factor: 0.4, decides: "lower limit"}}});
    expect(loadOn(loads, "edge beam").floors).toBe(1);
  });

  test("lets the room govern that asks most after reduction", () => {
    // Reading rooms 60 + 15 psf, stacks 150 psf and not reduced.
    const loads = floorLoads(LIBRARY, catalog, 10);
    expect(loadOn(loads, "deck member").governing).toMatchObject({room: {name: "Stacks"}, totalPsf: 150});
    // Upper shop 75 psf with partitions, lobby 100 psf: on a large area both fall, the lobby to 50, the shop to 37.5 + 15.
    const halls = withValues(LIBRARY, {"loads.rooms": [{name: "Shop", occupancy: "retail-upper"}, {name: "Lobby", occupancy: "lobby"}], "bay.beamSpanFt": 60, "bay.spanFt": 80});
    expect(loadOn(floorLoads(halls, catalog, 10), "interior beam").governing.room.name).toBe("Shop");
    expect(loadOn(floorLoads(halls, catalog, 10), "deck member").governing.room.name).toBe("Lobby");
  });

  test("takes nothing off the lobby of an assembly room, as off the room itself", () => {
    // ASCE 7-16 4.7.5. The same area lets an office lobby fall to half.
    const lobby = (occupancy: string) => loadOn(floorLoads(
      withValues(LIBRARY, {"loads.rooms": [{name: "Lobby", occupancy}], "bay.beamSpanFt": 60, "bay.spanFt": 80}), catalog, 10), "interior beam").governing;
    expect(lobby("assembly-lobby")).toMatchObject({totalPsf: 100, reduction: {factor: 1, clause: "ASCE 7-16 4.7.5"}});
    expect(lobby("lobby").totalPsf).toBe(50);
  });

  test("names the first of two rooms that ask the same", () => {
    const twins = withValues(LIBRARY, {"loads.rooms": [{name: "East stacks", occupancy: "library-stacks"}, {name: "West stacks", occupancy: "library-stacks"}]});
    expect(loadOn(floorLoads(twins, catalog, 10), "deck member").governing.room.name).toBe("East stacks");
  });

  test("names the room whose occupancy is not in the table", () => {
    const design = {...LIBRARY, loads: {...LIBRARY.loads, rooms: [...LIBRARY.loads.rooms, {name: "Moon base", occupancy: "moon"}]}};
    refused(() => floorLoads(design, catalog, 10), {path: "loads.rooms.3.occupancy", value: "moon", allowed: /office/});
  });
});

describe("a live load of the reader's own", () => {
  /** One room of a use with a load of one's own, over 60 ft tees of 12 ft: 720 ft2, so 0.25 + 15/26.833 = 0.80902. */
  const own = (occupancy: string, livePsf: number, reducible = true) => floorLoads(withValues(LIBRARY, {
    "bay.spanFt": 60, "loads.partitions": true, "loads.rooms": [{name: "Laboratory", occupancy, own: {livePsf, reducible, reason: "Benches and instruments"}}],
  }), catalog, 12);
  const onDeck = (...input: Parameters<typeof own>) => loadOn(own(...input), "deck member").governing;

  test("stands in place of the table's, by the rule of the room's use", () => {
    expect(onDeck("laboratory", 100).totalPsf).toBeCloseTo(80.902, 3);
    expect(onDeck("laboratory", 100)).toMatchObject({room: {livePsf: 100, rule: "yes"}, reduction: {decides: "formula"}});
    // Above 100 psf only members under two floors lose anything (4.7.3); a garage and an assembly keep their own rules.
    expect(onDeck("laboratory", 105).reduction).toMatchObject({factor: 1, decides: "heavy load"});
    expect(onDeck("garage", 60).reduction.decides).toBe("garage");
    expect(onDeck("assembly-fixed", 80).reduction.decides).toBe("no reduction");
  });

  test("counts in full on every element where the reader takes it so", () => {
    const {elements} = own("laboratory", 100, false);
    for (const {governing} of elements) {
      expect(governing.totalPsf).toBe(100);
      expect(governing.reduction).toMatchObject({factor: 1, decides: "taken in full", clause: "ASCE 7-16 4.7.1"});
    }
    // What the code never reduces is said to be so, whatever the reader asks.
    expect(onDeck("assembly-fixed", 80, false).reduction.decides).toBe("no reduction");
  });

  test("takes walls that move along until it is 80 psf itself", () => {
    expect(onDeck("office", 75, false).totalPsf).toBe(90);
    expect(onDeck("office", 80, false).totalPsf).toBe(80);
  });

  test("fails where the code's table asks more for the use", () => {
    expect(own("office", 50).checks).toMatchObject([{verdict: "ok", demand: 50, capacity: 50, clause: "ASCE 7-16 4.3.1"}]);
    expect(own("office", 45).checks).toMatchObject([{verdict: "fails", label: "Live load entered for Laboratory"}]);
    expect(floorLoads(LIBRARY, catalog, 10).checks).toEqual([]);
    const design = withValues(LIBRARY, {"loads.rooms.0.own": {livePsf: 100, reducible: true, reason: ""}});
    expect(evaluate(design, catalog).checks.some(({id, verdict}) => id === "own live load 1" && verdict === "fails")).toBe(true);
  });

  test("in full stays whole down the columns, under however many floors", () => {
    const design = withValues(LIBRARY, {"bay.floors": 3, "loads.rooms": [{name: "Laboratory", occupancy: "laboratory", own: {livePsf: 100, reducible: false, reason: ""}}]});
    for (const {foot} of columnsOf(evaluate(design, catalog), catalog).columns) expect(foot.liveKip).toBeCloseTo(foot.unreducedLiveKip, 9);
  });
});

test("a reduced live load is called so, with what it was reduced from, and one in full is not", () => {
  const loads = floorLoads(withValues(OFFICE, {"bay.spanFt": 60}), catalog, 12);
  const deck = loadOn(loads, "deck member").governing;
  expect([liveName(deck), reducedFrom(deck)]).toEqual(["reduced live load", ", reduced from 65 psf"]);
  const stacks = loadOn(floorLoads(LIBRARY, catalog, 10), "deck member").governing;
  expect([liveName(stacks), reducedFrom(stacks)]).toEqual(["live load", ""]);
});

test("loadOn fails for an element that the grid does not have", () => {
  const loads = floorLoads(withValues(LIBRARY, {"bay.baysAcross": 1}), catalog, 10);
  expect(() => loadOn(loads, "interior beam")).toThrow("the floor has no interior beam");
});
