import {describe, expect, test} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {OVER_VEHICLE_IN, VEHICLES, vehiclesUnder} from "../../lib/parking/vehicles.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog, seed} from "../support/designs.js";
import {failed, parked, structure} from "./support.js";

const heights = (changes: Readonly<Record<string, unknown>> = {}) =>
  Object.fromEntries((parked(changes).heights?.places ?? []).map(({over, clearIn}) => [over, clearIn]));

describe("clear heights over the starter's cars, by hand", () => {
  // 11 ft less 34 in of tee: 98 in; ledge and girder's foot 12 in lower, pipes 4 in, signs 6 in.
  test("are those of the section", () => expect(heights()).toEqual({"deck": 98, "edge beam": 86, "girder": 86, "pipes": 94, "signs": 92}));

  test("have no ledge where it reaches no farther than the stalls' heads", () => {
    expect(heights({"parking.setbackIn": 7.9})).toHaveProperty("edge beam");
    expect(heights({"parking.setbackIn": 8})).not.toHaveProperty("edge beam");
    expect(heights({"edgeBeam.kind": "pockets"})).not.toHaveProperty("edge beam");
  });

  test("have no girder over one bay, no pipes or signs where none hang", () => {
    expect(heights({"bay.baysAcross": 1, "services.sprinklerIn": 0, "parking.signDropIn": 0})).toEqual({"deck": 98, "edge beam": 86});
  });

  test("end at the ceiling of the cars' own floors, but cars on the ground have none", () => {
    const ceiling = {"story.ceiling": "flush"};
    expect(heights(ceiling)).toEqual({ceiling: 86, girder: 86, signs: 80});
    expect(heights({...ceiling, "parking.place": "below"})).toEqual(heights());
  });

  test("count the ducts that hang over cars on the floors", () => {
    const air = {"services.airCfmPerFt2": 0.5, "services.servedFt2": 2000};
    const hungIn = evaluate(structure(air), catalog).services.ducts?.hungIn as number;
    expect(hungIn).toBeGreaterThan(10);
    expect(heights(air)["ducts"]).toBe(98 - hungIn);
    expect(heights({...air, "parking.place": "below"})).not.toHaveProperty("ducts");
  });

  describe("with a box around the ducts", () => {
    // A main of 40 by 10 in on 2 in of hangers, board of 1 in below: 13 in under the deck's 98. Pipes of 4 in pass under it.
    const box = {"services.airCfmPerFt2": 0.5, "services.servedFt2": 43200, "services.mainWidthIn": 40, "services.mainDepthIn": 10, "air.run": "box"};
    const over = (changes: Readonly<Record<string, unknown>>) => {
      const found = parked({...box, ...changes}).heights;
      return {place: found?.places.find((one) => one.over === "box"), pipes: found?.places.find((one) => one.over === "pipes past the box"), least: found?.least, leastOnWay: found?.leastOnWay, vanIn: found?.vanIn};
    };

    test("over an aisle every car passes it, and the pipes below it", () => {
      // The first module's aisle begins 18 ft from its wall: 30 ft across the main hangs over its middle.
      const {place, pipes, least, vanIn} = over({"air.place": "across", "air.acrossFt": 30});
      expect(place).toMatchObject({clearIn: 85, onTheWay: true, words: "the box around the ducts over the aisle"});
      expect(pipes).toMatchObject({clearIn: 81, onTheWay: true});
      expect([least?.over, vanIn]).toEqual(["pipes past the box", 81]);
      expect(over({"air.place": "across", "air.acrossFt": 30, "services.sprinklerIn": 0}).pipes).toBeUndefined();
      // Where the ducts are in a box, they do not hang open as well; one that is stated too shallow leaves them lower.
      expect(heights({...box, "air.place": "across", "air.acrossFt": 30})).not.toHaveProperty("ducts");
      expect(heights({...box, "air.place": "across", "air.acrossFt": 30, "air.casing": "stated", "air.casingDropIn": 4})).toMatchObject({ducts: 86, box: 94});
    });

    test("in the middle cars pass it at the ends of the rows that meet there", () => {
      expect(over({"air.place": "middle"}).place).toMatchObject({clearIn: 85, onTheWay: true, words: "the box around the ducts between two aisles"});
    });

    test("along the ledge it hangs over the cars that park there and no others, and the pipes keep away", () => {
      const {place, pipes, least, leastOnWay, vanIn} = over({"air.place": "ledge"});
      expect(place).toMatchObject({clearIn: 85, onTheWay: false, words: "the box around the ducts over the heads of stalls"});
      expect(pipes).toBeUndefined();
      // A van parks at the line between the bays, and drives under the girder's foot.
      expect([least?.over, leastOnWay?.over, vanIn]).toEqual(["box", "girder", 86]);
      // Of one bay the row at the other wall has only its ledge over it; with a main for each side both have a box.
      const oneBay = {"bay.baysAcross": 1, "air.place": "ledge"};
      expect(over({...oneBay, "services.servedFt2": 10800, "edgeBeam.ledgeDepthIn": 8}).vanIn).toBe(90);
      expect(failed(parked({...box, ...oneBay, "services.mainDepthIn": 12}))).toContain("parking height");
      expect(failed(parked({...box, ...oneBay, "services.mainDepthIn": 11}))).not.toContain("parking height");
    });

    test("over a bay without stalls it hangs over no car, and where rows run across over every aisle", () => {
      const left = {"bay.baysAcross": 3, "parking.baysPerModule": 2, "bay.spanFt": 32, "air.place": "across", "services.mainDepthIn": 20, "services.servedFt2": 17280};
      expect(over({...left, "air.acrossFt": 80}).place).toMatchObject({onTheWay: false, overNone: true});
      expect(over({...left, "air.acrossFt": 80}).least?.over).not.toBe("box");
      expect(over({...left, "air.acrossFt": 30}).place).toMatchObject({onTheWay: true});
      expect(over({"air.place": "ledge", "parking.rows": "across"}).place).toMatchObject({onTheWay: true, words: "the box around the ducts over the aisle"});
    });

    test("of a lowered strip holds the pipes, and hangs under the ceiling where there is one", () => {
      expect(over({"air.place": "middle", "air.run": "strip"})).toMatchObject({place: {clearIn: 98 - 12 - 4 - 1, words: "the lowered strip of ceiling between two aisles"}, pipes: undefined});
      // The flush ceiling hangs 12 in below the deck; a main of 20 in takes 2 + 20 + 1 - 12 more.
      expect(over({"air.place": "middle", "story.ceiling": "flush", "services.mainDepthIn": 20})).toMatchObject({place: {clearIn: 86 - 11}, pipes: undefined});
    });

    test("is not over cars on the ground, whose ceiling has no ducts", () => {
      expect(over({"air.place": "middle", "parking.place": "below"}).place).toBeUndefined();
    });
  });

  test("are none where cars park on the one floor under the sky", () => {
    expect(parked({"bay.floors": 1}).heights).toBeUndefined();
    expect(parked({"bay.floors": 1, "parking.place": "both"}).heights).toBeDefined();
  });
});

describe("vans", () => {
  const vanIn = (changes: Readonly<Record<string, unknown>> = {}) => parked(changes).heights?.vanIn;
  test("drive under the lowest of girder, pipes and signs, and park at the line between the bays where a ledge is lower", () => {
    expect(vanIn()).toBe(86);
    expect(vanIn({"girder.ledgeDepthIn": 6, "edgeBeam.ledgeDepthIn": 14})).toBe(92);
    // One bay has a wall at both sides: every stall has the ledge over its head.
    expect(vanIn({"bay.baysAcross": 1, "edgeBeam.ledgeDepthIn": 14})).toBe(84);
    expect(vanIn({"bay.baysAcross": 1, "edgeBeam.ledgeDepthIn": 14, "parking.setbackIn": 8})).toBe(92);
    expect(vanIn({"bay.baysAcross": 1, "edgeBeam.ledgeDepthIn": 14, "parking.rows": "across"})).toBe(92);
  });

  test("pass at 98 in and not below it (ADA 2010 Standards 502.5)", () => {
    // Girder's foot 12 in below 34 in of tee: 98 in are left of 144.
    const story = (floorToFloorFt: number) => failed(parked({"parking.vans": "inside", "story.floorToFloorFt": floorToFloorFt}));
    expect(story(12)).not.toContain("van height");
    expect(story(11.99)).toContain("van height");
    expect(failed(parked({"story.floorToFloorFt": 11.99}))).not.toContain("van height");
  });
});

test("vehicles pass under what is two inches higher", () => {
  expect(vehiclesUnder(0)).toEqual([]);
  for (const {name, heightIn} of VEHICLES) {
    const names = (clearIn: number) => vehiclesUnder(clearIn).map((one) => one.name);
    expect(names(heightIn + OVER_VEHICLE_IN)).toContain(name);
    expect(names(heightIn + OVER_VEHICLE_IN - 0.01)).not.toContain(name);
  }
});

test("vehicles come from low to high, so that the last that passes is the highest: at the code's 7 ft one with a roof box, at a van's 98 in an accessible van", () => {
  const highest = (clearIn: number) => vehiclesUnder(clearIn).at(-1)?.name;
  expect([61, 84, 98, 112].map(highest)).toEqual(["small car", "car with a roof box", "accessible van, raised roof", "delivery van"]);
  expect(VEHICLES.slice(1).every(({heightIn}, i) => heightIn >= (VEHICLES[i]?.heightIn as number))).toBe(true);
});

test("a design without parking has none of it, and all starters but one are such", () => {
  for (const id of ["branch-library", "classroom-wing", "records-store"]) expect(evaluate(seed(id), catalog).parking).toBeUndefined();
  const none = evaluate(structure({"parking.place": "none"}), catalog);
  expect(none.parking).toBeUndefined();
  const other = evaluate(withValues(structure({"parking.place": "none"}), {"parking.stallWidthIn": 120}), catalog);
  expect(other.checks).toEqual(none.checks);
});
