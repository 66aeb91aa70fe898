import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, seed, seeds} from "../support/designs.js";

const checkOf = (design: Design, id: string) => evaluate(design, catalog).story.checks.find((check) => check.id === id);
/** The library without a ceiling, in a story of 12 ft: 144 - 0.25 - 34 = 109.75 in under its tees. */
const OPEN = withValues(seed("branch-library"), {"story.ceiling": "none", "story.floorToFloorFt": 12});
const rectangle = (depthIn: number, design = OPEN) => withValues(design, {"girder.kind": "rectangle", "girder.depthIn": depthIn});

describe("height under beams", () => {
  test("a girder 72 in deep below the deck of a 12 ft story leaves 3 ft 2 in, and fails", () => {
    expect(checkOf(rectangle(72), "girder headroom")).toMatchObject({capacity: 37.75, demand: 90, verdict: "fails", clause: "IBC 2021 1208.2", unit: "in"});
    expect(checkOf(rectangle(72), "girder headroom")?.message).toMatch(/collide by 52.25 in/);
  });

  test("a room for people needs 7 ft 6 in under its girder, a store 7 ft, a garage 7 ft by its own clause", () => {
    expect([19, 20].map((depthIn) => checkOf(rectangle(depthIn), "girder headroom")?.verdict)).toEqual(["ok", "fails"]);
    const store = (depthIn: number) => checkOf(withValues(rectangle(depthIn), {"loads.rooms": [{name: "Store", occupancy: "storage-light"}]}), "girder headroom");
    expect([25, 26].map((depthIn) => store(depthIn)?.verdict)).toEqual(["ok", "fails"]);
    const cars = (depthIn: number) => checkOf(withValues(rectangle(depthIn), {"loads.rooms": [{name: "Cars", occupancy: "garage"}]}), "girder headroom");
    expect(cars(25)).toMatchObject({verdict: "ok", demand: 84, clause: "IBC 2021 406.2.2"});
    expect(cars(26)?.verdict).toBe("fails");
    // One room for people among cars asks for its own height.
    expect(checkOf(withValues(rectangle(20), {"loads.rooms": [{name: "Cars", occupancy: "garage"}, {name: "Booth", occupancy: "office"}]}), "girder headroom")?.demand).toBe(90);
  });

  test("a garage's deck and ceiling stand 7 ft above its cars, as its beams do, a booth among them asks its own", () => {
    // 118.25 - 34.25 = 84 in under the tees just does.
    const cars = (floorToFloorFt: number, rooms = [{name: "Cars", occupancy: "garage"}]) =>
      checkOf(withValues(OPEN, {"loads.rooms": rooms, "story.floorToFloorFt": floorToFloorFt}), "ceiling height");
    expect(cars(118.25 / 12 + 0.001)).toMatchObject({verdict: "near", demand: 84, clause: "IBC 2021 406.2.2"});
    expect(cars(9.8)?.verdict).toBe("fails");
    expect(cars(9.9, [{name: "Cars", occupancy: "garage"}, {name: "Booth", occupancy: "office"}])).toMatchObject({verdict: "fails", demand: 90, clause: "IBC 2021 1208.2"});
  });

  test("a girder's foot is held against the ceiling, where there is one", () => {
    // The ledge's 13 in set the ceiling; the inverted tee's foot hangs 12.
    const library = seed("branch-library");
    expect(checkOf(library, "girder ceiling")?.verdict).toBe("ok");
    expect(checkOf(withValues(library, {"girder.ledgeDepthIn": 13}), "girder ceiling")?.verdict).toBe("ok");
    expect(checkOf(withValues(library, {"girder.ledgeDepthIn": 14}), "girder ceiling")).toMatchObject({verdict: "fails", message: expect.stringMatching(/hangs 1 in below the ceiling/) as string});
    expect(checkOf(OPEN, "girder ceiling")).toBeUndefined();
  });

  test("without a ceiling an edge beam leaves 6 ft 8 in at the wall, and 7 ft where cars stand", () => {
    // 109.75 in less a ledge of 13, or less a beam below the deck.
    expect(checkOf(OPEN, "edge beam headroom")).toMatchObject({capacity: 96.75, demand: 80, verdict: "ok", clause: "IBC 2021 1003.3.1"});
    const below = withValues(OPEN, {"edgeBeam.kind": "below", "bay.beamSpanFt": 40});
    const found = evaluate(below, catalog);
    expect(found.story.checks.find(({id}) => id === "edge beam headroom")).toMatchObject({capacity: 109.75 - found.edgeBeam.depthIn, verdict: "fails"});
    // Parking structure: 132 - 34 = 98 in under its tees.
    const garage = (ledgeDepthIn: number) => checkOf(withValues(seed("parking-structure"), {"edgeBeam.ledgeDepthIn": ledgeDepthIn}), "edge beam headroom");
    expect(garage(14)).toMatchObject({verdict: "ok", demand: 84, clause: "IBC 2021 406.2.2"});
    expect(garage(14.5)?.verdict).toBe("fails");
    expect(checkOf(seed("branch-library"), "edge beam headroom")).toBeUndefined();
  });

  test("pipes of a garage leave its 7 ft as well", () => {
    const {services: {checks}} = evaluate(seed("parking-structure"), catalog);
    expect(checks.find(({id}) => id === "service zones")).toMatchObject({demand: 84, clause: "IBC 2021 406.2.2"});
    expect(evaluate(OPEN, catalog).services.checks.find(({id}) => id === "service zones")).toMatchObject({demand: 80, clause: "IBC 2021 1003.3.1"});
  });

  test("one bay across has no girder to pass under", () => {
    expect(checkOf(withValues(OPEN, {"bay.baysAcross": 1}), "girder headroom")).toBeUndefined();
  });

  test("every starter's beams can be walked under", () => {
    for (const {id, design} of seeds) expect(evaluate(design, catalog).story.checks.filter(({verdict}) => verdict !== "ok"), id).toEqual([]);
  });
});
