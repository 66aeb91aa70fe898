import {describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {buildingEnvelope} from "../../lib/story/envelope.js";
import {designedSchemes, edgeSchemes} from "../../lib/story/schemes.js";
import {leastFloorToFloor} from "../../lib/story/solve.js";
import {firstDepthBelowIn, storyStack} from "../../lib/story/stack.js";
import {evaluate} from "../../lib/evaluate.js";
import {WITHOUT_WALLS, catalog, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";

const PLAIN = withValues(seed("branch-library"), {
  "story.floorToFloorFt": 14 + 8 / 12, "story.finishIn": 0, "story.frameIn": 2, "edgeBeam.ledgeDepthIn": 8, "edgeBeam.upstandIn": 30, "story.ceiling": "flush",
  "bay.spanFt": 40, "bay.beamSpanFt": 30, "bay.baysAlong": 4, "bay.baysAcross": 2, "bay.floors": 1, "daylight.sides": "two", ...WITHOUT_WALLS,
});

describe("leastFloorToFloor", () => {
  test("adds what lies above the ceiling to the wish, rounded up to the step", () => {
    // 134 + 8 + 34 = 176 in, which is 14 ft 8 in; the next multiple of 3 in is 177.
    expect(leastFloorToFloor(PLAIN, 34, 134)).toEqual({exactIn: 176, floorToFloorIn: 176, ceilingHeightIn: 134});
    expect(leastFloorToFloor(PLAIN, 34, 134, 3)).toEqual({exactIn: 176, floorToFloorIn: 177, ceilingHeightIn: 135});
    expect(leastFloorToFloor(PLAIN, 34.1, 134).floorToFloorIn).toBe(176.25);
  });

  test.each(["flush", "below", "head", "none"])("gives at least the ceiling asked for, with a ceiling that is %s", (ceiling) => {
    const design = withValues(PLAIN, {"story.ceiling": ceiling, "story.ceilingDropIn": 14, "story.finishIn": 1.37});
    for (const wantedIn of [96, 101.3, 134]) {
      const {floorToFloorIn, ceilingHeightIn} = leastFloorToFloor(design, 27.3, wantedIn, 3);
      const {ceilingHeightIn: given} = storyStack(withValues(design, {"story.floorToFloorFt": floorToFloorIn / 12}), 27.3);
      expect(given).toBeCloseTo(ceilingHeightIn, 9);
      expect(given).toBeGreaterThanOrEqual(wantedIn - 1e-9);
      expect(given).toBeLessThan(wantedIn + 3);
    }
  });

  test("refuses a wish that is none", () => refused(() => leastFloorToFloor(PLAIN, 34, 20), {path: "wantedIn"}));
});

describe("edgeSchemes", () => {
  test("makes a beam of 72 in of a 34 in deck, an 8 in ledge and a 30 in upstand, and hangs 8 in of it down", () => {
    const [beside] = edgeSchemes(PLAIN, 34);
    expect(beside).toMatchObject({beamDepthIn: 72, belowDeckIn: 8, sameHeadFloorToFloorIn: 176});
    expect(beside.stack.headIn).toBe(134);
  });

  test("lowers the head by all that hangs lower, and asks as much more story for the same head", () => {
    const [beside, below] = edgeSchemes(PLAIN, 34, 30);
    expect(below.stack.headIn).toBe(112);
    expect(below.sameHeadFloorToFloorIn).toBe(198);
    expect(storyStack(withValues(PLAIN, {"story.floorToFloorFt": 198 / 12}), 34, 30).headIn).toBeCloseTo(beside.stack.headIn, 9);
  });

  test("sizes the beam below by its span: 30 ft / 12 is 30 in, 31 ft wants 32", () => {
    expect(firstDepthBelowIn(30)).toBe(30);
    expect(firstDepthBelowIn(31)).toBe(32);
  });

  test("refuses a beam that is none", () => refused(() => edgeSchemes(PLAIN, 34, 0), {path: "belowIn"}));
});

describe("envelope", () => {
  test("counts two stories of 120 by 80 ft", () => {
    const stack = storyStack(withValues(PLAIN, {"story.floorToFloorFt": 15}), 34);
    const {stories, heightFt, floorFt2, wallFt2, volumeFt3, wallPerFloor, volumePerFloorFt, wallPerInchFt2, glassShare} = buildingEnvelope(PLAIN, stack);
    expect([stories, heightFt, floorFt2, wallFt2, volumeFt3]).toEqual([2, 30, 19200, 12000, 288000]);
    expect(wallPerFloor).toBeCloseTo(0.625, 12);
    expect(volumePerFloorFt).toBe(15);
    expect(wallPerInchFt2).toBeCloseTo(400 * 2 / 12, 9);
    // 180 - 34 - 8 - 30 - 4 = 104 in of glass on both long sides.
    expect(glassShare).toBeCloseTo((2 * 120 * 104) / 12 / (400 * 15), 12);
    const oneSided = withValues(PLAIN, {"daylight.sides": "one"});
    expect(buildingEnvelope(oneSided, stack).glassShare).toBeCloseTo(glassShare / 2, 12);
  });

  test("grows by its wall per inch", () => {
    const wall = (floorToFloorFt: number) => buildingEnvelope(PLAIN, storyStack(withValues(PLAIN, {"story.floorToFloorFt": floorToFloorFt}), 34), 5).wallFt2;
    expect(wall(15 + 1 / 12) - wall(15)).toBeCloseTo(buildingEnvelope(PLAIN, storyStack(PLAIN, 34), 5).wallPerInchFt2, 6);
  });

  test("refuses no stories, and half a one", () => {
    for (const stories of [0, 1.5]) refused(() => buildingEnvelope(PLAIN, storyStack(PLAIN, 34), stories), {path: "stories"});
  });
});

describe("the window under a beam below the deck", () => {
  test.each(seeds)("has one head for $id, whether the beam is compared with or chosen", ({design}) => {
    for (const ceiling of ["flush", "below", "head", "none"]) {
      const varied = withValues(design, {"story.ceiling": ceiling});
      const [beside, below] = designedSchemes(evaluate(varied, catalog), catalog);
      const chosen = evaluate(withValues(varied, {"edgeBeam.kind": "below"}), catalog);
      expect(below.beamDepthIn).toBe(chosen.edgeBeam.depthIn);
      expect(below.stack.headIn).toBeCloseTo(chosen.story.headIn, 9);
      expect(designedSchemes(chosen, catalog)[1].stack.headIn).toBeCloseTo(chosen.story.headIn, 9);
      if (varied.edgeBeam.kind === "ledge") expect(beside.stack.headIn).toBeCloseTo(evaluate(varied, catalog).story.headIn, 9);
    }
  });
});

describe("an envelope with its walls counted", () => {
  test("takes their areas and windows kind by kind, and the parapet on top", () => {
    const design = withValues(seed("branch-library"), {"walls.shortSide": "solid panel", "walls.glassShare": 0.1, "walls.parapetIn": 36});
    const {walls, story} = evaluate(design, catalog);
    const around = buildingEnvelope(design, story);
    expect(around.stories).toBe(2);
    expect(around.wallFt2).toBeCloseTo(walls.areas.wallFt2, 9);
    expect(around.glassShare).toBeCloseTo(walls.areas.windowFt2 / walls.areas.wallFt2, 12);
    // 2 x (120 ft + 2 x 19 in + 80 ft + 2 x 10 in) x 3 ft.
    expect(around.parapetFt2).toBeCloseTo(2 * (200 + 58 / 12) * 3, 9);
    const higher = withValues(design, {"story.floorToFloorFt": 15 + 1 / 12});
    expect(buildingEnvelope(higher, evaluate(higher, catalog).story).wallFt2 - around.wallFt2).toBeCloseTo(around.wallPerInchFt2, 6);
    expect(buildingEnvelope(design, story, 5).wallFt2).toBeGreaterThan(2 * around.wallFt2);
  });

  test("adds a parapet on the column lines where they are not, and has no story under a roof that is none", () => {
    const [bareDesign, design] = [WITHOUT_WALLS, {...WITHOUT_WALLS, "walls.parapetIn": 36}].map((changes) => withValues(seed("branch-library"), changes)) as [Design, Design];
    const {story} = evaluate(design, catalog);
    const bare = buildingEnvelope(bareDesign, story);
    expect(buildingEnvelope(design, story)).toMatchObject({parapetFt2: 1200, wallFt2: bare.wallFt2 + 1200, walls: undefined});
    expect(bare.parapetFt2).toBe(0);
    const parking = withValues(seed("parking-structure"), WITHOUT_WALLS);
    expect([parking, withValues(parking, {"walls.shortSide": "spandrel"})].map((one) => buildingEnvelope(one, evaluate(one, catalog).story).stories)).toEqual([4, 3]);
  });
});
