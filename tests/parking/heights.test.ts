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

test("a design without parking has none of it, and all starters but one are such", () => {
  for (const id of ["branch-library", "classroom-wing", "records-store"]) expect(evaluate(seed(id), catalog).parking).toBeUndefined();
  const none = evaluate(structure({"parking.place": "none"}), catalog);
  expect(none.parking).toBeUndefined();
  const other = evaluate(withValues(structure({"parking.place": "none"}), {"parking.stallWidthIn": 120}), catalog);
  expect(other.checks).toEqual(none.checks);
});
