import {describe, expect, test} from "vitest";
import {failed, parked} from "./support.js";

/** A check's id, and changes to the starter on each side of its limit. */
const SIDES: readonly (readonly [id: string, holds: Readonly<Record<string, unknown>>, fails: Readonly<Record<string, unknown>>])[] = [
  // 86 in under ledge and girder.
  ["parking height", {"parking.clearIn": 86}, {"parking.clearIn": 86.25}],
  ["van height", {"parking.vans": "inside", "story.floorToFloorFt": 12}, {"parking.vans": "inside", "story.floorToFloorFt": 11.9}],
  // 60'-4 1/2" for two rows of 18 ft, the aisle and the set-back heads.
  ["parking module", {"parking.setbackIn": 2.25}, {"parking.setbackIn": 2.3}],
  ["parking aisle", {"parking.rows": "along"}, {"parking.rows": "across", "bay.beamSpanFt": 30, "parking.baysPerModule": 2}],
  ["usual aisle", {"parking.aisleIn": 288}, {"parking.aisleIn": 287}],
  ["usual aisle", {"parking.angle": "60 one-way", "parking.aisleIn": 216}, {"parking.angle": "75 one-way", "parking.aisleIn": 263}],
  ["stall width", {"parking.stallWidthIn": 102}, {"parking.stallWidthIn": 101}],
  ["parking bays", {"parking.baysPerModule": 2}, {"parking.baysPerModule": 3}],
  // One bay of 36 ft has 34'-2" between its columns, less a door's clearance at each wall: 32'-2".
  ["parking stalls", {"bay.baysAlong": 1, "parking.endFt": 11}, {"bay.baysAlong": 1, "parking.endFt": 13}],
  ["accessible stalls", {"parking.ramp": "beside"}, {"parking.ramp": "parked", "parking.rampRuns": 2, "parking.rampSlopePercent": 5}],
  ["ramp slope", {"parking.rampSlopePercent": 16}, {"parking.rampSlopePercent": 16.1}],
  ["ramp slope", {"parking.ramp": "parked", "parking.rampSlopePercent": 6.66}, {"parking.ramp": "parked", "parking.rampSlopePercent": 6.67}],
  ["ramp break", {"parking.rampSlopePercent": 10, "parking.rampBlendFt": 0}, {"parking.rampSlopePercent": 10.1, "parking.rampBlendFt": 0}],
  ["ramp break", {"parking.rampSlopePercent": 20}, {"parking.rampSlopePercent": 20.1}],
  // 180 ft: 132 in/s + 120 in = 2,160 in at 6.47 %.
  ["ramp length", {"parking.rampSlopePercent": 6.48}, {"parking.rampSlopePercent": 6.46}],
  ["parking drainage", {"parking.drainInPerFt": 0.125}, {"parking.drainInPerFt": 0.12}],
  ["accessible slope", {"parking.drainInPerFt": 0.25}, {"parking.drainInPerFt": 0.26}],
  ["vehicle barrier", {"edgeBeam.upstandIn": 33}, {"edgeBeam.upstandIn": 32}],
  ["vehicle barrier", {"edgeBeam.kind": "below", "parking.place": "below"}, {"edgeBeam.kind": "below"}],
];

describe("checks of parking", () => {
  test.each(SIDES)("%s holds on one side of its limit and fails on the other", (id, holds, fails) => {
    expect(failed(parked(holds))).not.toContain(id);
    expect(failed(parked(fails))).toContain(id);
  });

  test("all hold in the starter, each with a clause and a sentence", () => {
    const {checks} = parked();
    expect(failed(parked())).toEqual([]);
    expect(checks.length).toBeGreaterThan(10);
    expect(new Set(checks.map(({id}) => id)).size).toBe(checks.length);
    for (const {clause, message, label} of checks) {
      expect(clause, label).not.toBe("");
      expect(message, label).toMatch(/^[A-Z].*\.$/);
    }
  });

  test("a height says what is in the way, and what mends it", () => {
    const message = (changes: Readonly<Record<string, unknown>>) => parked(changes).checks.find(({id}) => id === "parking height")?.message;
    expect(message({"parking.clearIn": 90, "girder.ledgeDepthIn": 6})).toBe("Under the edge beam's ledge 7'-2\" is left where 7'-6\" is wanted: a shallower ledge, stalls set back past it, or a higher story.");
    expect(message({"parking.signDropIn": 20})).toMatch(/^Under signs and lights 6'-6" is left where 7'-0" is wanted: signs/);
  });

  test("a module names a smaller set-back only where both rows give back what is lacking", () => {
    const message = (changes: Readonly<Record<string, unknown>>) => parked(changes).checks.find(({id}) => id === "parking module")?.message;
    // 4 1/2 in to spare between the walls with heads on their lines: twice 10 in is 15 1/2 in too much, and all of it can be given back.
    expect(message({"parking.setbackIn": 10})).toBe("Two rows and their aisle lack 1'-3 1/2\": a longer span, stalls set back less, or a narrower aisle.");
    // A foot less of span lacks 12 in for each of the two modules' widths: 7 1/2 in with no set-back at all.
    expect(message({"parking.setbackIn": 10, "bay.spanFt": 59})).toMatch(/: a longer span, or a narrower aisle\.$/);
    expect(message({"parking.setbackIn": 0, "bay.spanFt": 59})).toMatch(/: a longer span, or a narrower aisle\.$/);
  });
});
