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
});
