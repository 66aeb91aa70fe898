import {describe, expect, it} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {averageDaylightWorking, noSkyWorking, skyComponentWorking} from "../../lib/steps/daylight.js";
import {ductWorking, storyWorking} from "../../lib/steps/story.js";
import {catalog, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const WORKS = [averageDaylightWorking, noSkyWorking, skyComponentWorking, ductWorking, storyWorking];
const variants: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  "as it is": {},
  "one side, open country, high sill": {"daylight.sides": "one", "daylight.obstructionDeg": 0, "edgeBeam.upstandIn": 48},
  "two sides, tall skyline": {"daylight.sides": "two", "daylight.obstructionDeg": 55, "story.ceiling": "below"},
  "the ceiling at the window's head": {"story.ceiling": "head", "services.airCfmPerFt2": 1},
  "no glass": {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8},
  "a window below the desk": {"edgeBeam.upstandIn": 0, "story.ceiling": "none", "story.floorToFloorFt": 8, "edgeBeam.ledgeDepthIn": 24},
};

describe("the worked steps of story and daylight say what the code computed", () => {
  for (const {id, design} of seeds) for (const [name, changes] of Object.entries(variants)) {
    it(`${id}, ${name}`, () => {
      const results = evaluate(withValues(design, changes), catalog);
      const steps = WORKS.reduce((count, working) => count + checkWorking(working(results)), 0);
      expect(steps).toBeGreaterThanOrEqual(results.daylight ? 6 : 2);
    });
  }

  it("finds no sky where the skyline stands above the head", () => {
    const library = seeds.find(({id}) => id === "branch-library")?.design;
    if (!library) throw new Error("no library");
    const hidden = skyComponentWorking(evaluate(withValues(library, {"daylight.obstructionDeg": 60}), catalog));
    expect(hidden.steps.at(-1)?.result).toBe(0);
  });

  it("sees the sky below a duct that hangs beside the window, also one at the wall itself", () => {
    const library = seeds.find(({id}) => id === "branch-library")?.design;
    const evaluation = library && evaluate(withValues(library, {"daylight.obstructionDeg": 0}), catalog);
    if (!evaluation?.daylight) throw new Error("no daylight");
    const {daylight} = evaluation;
    const below = (awayIn: number, footIn: number) => skyComponentWorking({...evaluation, daylight: {...daylight, input: {...daylight.input, window: {...daylight.input.window, beams: [{awayIn, footIn}]}}}});
    const slope = (working: ReturnType<typeof below>) => working.steps.find(({symbol}) => symbol === "t_b");
    for (const awayIn of [0, 6]) {
      const working = below(awayIn, 72);
      expect(checkWorking(working)).toBe(5);
      const x = 12 * (slope(working)?.values["x"]?.value as number);
      // From the desk, 30 in up, to the duct's foot 42 in above it.
      expect(slope(working)?.result).toBeCloseTo(42 / (x - awayIn), 9);
      expect(working.steps.at(-1)?.result).toBeGreaterThan(0);
    }
    // One that hangs higher than the head hides nothing, one that hangs to the desk all.
    expect(slope(below(0, 400))?.values["h_h"]?.value).toBe(daylight.input.window.headIn);
    expect(below(0, 30).steps).toEqual([]);
  });
});
