import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {floorLoads, loadOn, partitionPsf} from "../../lib/loads/floorLoads.js";
import {catalogue, seed} from "../support/designs.js";
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
    expect(floorLoads(LIBRARY, catalogue, 10).superimposedDeadPsf).toBe(10);
    expect(floorLoads(withValues(LIBRARY, {"loads.layers": []}), catalogue, 10).superimposedDeadPsf).toBe(0);
  });

  test("reduces the live load but not the partitions", () => {
    // A 10 ft tee on 40 ft: 400 ft2, factor 1; an edge beam 2 * 30 * 20 = 1,200 ft2: 0.25 + 15/34.641 = 0.68301.
    const loads = floorLoads(OFFICE, catalogue, 10);
    expect(loadOn(loads, "deck member").governing.totalPsf).toBe(65);
    expect(loadOn(loads, "edge beam").governing.totalPsf).toBeCloseTo(50 * 0.683013 + 15, 3);
  });

  test("counts floors for columns alone", () => {
    // An interior column on three floors: 4 * 30 * 40 * 3 = 14,400 ft2; 0.25 + 15/120 = 0.375, lower limit 0.4.
    const loads = floorLoads(withValues(OFFICE, {"bay.floors": 3}), catalogue, 10);
    expect(loadOn(loads, "interior column")).toMatchObject({floors: 3, governing: {reduction: {factor: 0.4, decides: "lower limit"}}});
    expect(loadOn(loads, "edge beam").floors).toBe(1);
  });

  test("lets the room govern that asks most after reduction", () => {
    // Reading rooms 60 + 15 psf, stacks 150 psf and not reduced.
    const loads = floorLoads(LIBRARY, catalogue, 10);
    expect(loadOn(loads, "deck member").governing).toMatchObject({room: {name: "Stacks"}, totalPsf: 150});
    // Upper shop 75 psf with partitions, lobby 100 psf: on a large area both fall, the lobby to 50, the shop to 37.5 + 15.
    const halls = withValues(LIBRARY, {"loads.rooms": [{name: "Shop", occupancy: "retail-upper"}, {name: "Lobby", occupancy: "lobby"}], "bay.beamSpanFt": 60, "bay.spanFt": 80});
    expect(loadOn(floorLoads(halls, catalogue, 10), "interior beam").governing.room.name).toBe("Shop");
    expect(loadOn(floorLoads(halls, catalogue, 10), "deck member").governing.room.name).toBe("Lobby");
  });

  test("names the first of two rooms that ask the same", () => {
    const twins = withValues(LIBRARY, {"loads.rooms": [{name: "East stacks", occupancy: "library-stacks"}, {name: "West stacks", occupancy: "library-stacks"}]});
    expect(loadOn(floorLoads(twins, catalogue, 10), "deck member").governing.room.name).toBe("East stacks");
  });

  test("names the room whose occupancy is not in the table", () => {
    const design = {...LIBRARY, loads: {...LIBRARY.loads, rooms: [...LIBRARY.loads.rooms, {name: "Moon base", occupancy: "moon"}]}};
    refused(() => floorLoads(design, catalogue, 10), {path: "loads.rooms.3.occupancy", value: "moon", allowed: /office/});
  });
});

test("loadOn fails for an element that the grid does not have", () => {
  const loads = floorLoads(withValues(LIBRARY, {"bay.baysAcross": 1}), catalogue, 10);
  expect(() => loadOn(loads, "interior beam")).toThrow("the floor has no interior beam");
});
