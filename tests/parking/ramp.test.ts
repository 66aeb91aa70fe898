import {describe, expect, test} from "vitest";
import {rampOf} from "../../lib/parking/ramp.js";
import {parked, structure} from "./support.js";

const ramp = (changes: Readonly<Record<string, unknown>> = {}) => rampOf(structure(changes));

describe("one run of a ramp, by hand", () => {
  // 11 ft at 12 %: 91.67 ft, and half of the 20 ft of blends more: 101.67 ft. Check by parts: 10 ft at 6 % are 0.6 ft, twice; 9.8 ft at 12 % are 81.67 ft; 20 ft + 81.67 ft.
  test("is 101'-8\" long at 12 % with blends of 10 ft", () => expect(ramp()).toMatchObject({riseIn: 132, lengthIn: 1220, steepIn: 980, breakPercent: 6}));
  test("climbs half a story in each of two runs", () => expect(ramp({"parking.rampRuns": 2})).toMatchObject({riseIn: 66, lengthIn: 670}));
  test("has its whole slope at once without blends", () => expect(ramp({"parking.rampBlendFt": 0})).toMatchObject({lengthIn: 1100, breakPercent: 12, blendIn: 0}));

  test("climbs its rise by its parts, whatever slope and blend, also where the blends meet", () => {
    for (let slope = 2; slope <= 25; slope += 0.5) {
      for (let blend = 0; blend <= 20; blend++) {
        for (const runs of [1, 2]) {
          const one = ramp({"parking.rampSlopePercent": slope, "parking.rampBlendFt": blend, "parking.rampRuns": runs, "story.floorToFloorFt": 8});
          expect((2 * one.blendIn * slope) / 200 + (one.steepIn * slope) / 100).toBeCloseTo(96 / runs, 9);
          expect(2 * one.blendIn + one.steepIn).toBeCloseTo(one.lengthIn, 9);
          expect(one.steepIn).toBeGreaterThanOrEqual(0);
        }
      }
    }
    // 25 % and blends of 20 ft would climb 5 ft by themselves: the 4 ft of a half story take 2 x 16 ft.
    expect(ramp({"parking.rampSlopePercent": 25, "parking.rampBlendFt": 20, "parking.rampRuns": 2, "story.floorToFloorFt": 8}).lengthIn).toBeCloseTo(384, 9);
  });
});

test("the room of a ramp is the building's length beside it, and between the turns within it", () => {
  expect(parked().ramp?.roomIn).toBe(180 * 12);
  expect(parked({"parking.ramp": "within"}).ramp?.roomIn).toBe(180 * 12 - 22 - 2 * 288);
  expect(parked({"parking.ramp": "parked", "parking.endFt": 0}).ramp?.roomIn).toBe(180 * 12 - 22);
  expect(parked({"parking.ramp": "parked", "parking.endFt": 80, "bay.baysAlong": 4}).ramp?.roomIn).toBe(0);
  expect(parked({"parking.ramp": "none"}).ramp).toBeUndefined();
});
