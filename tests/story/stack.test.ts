import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {storyStack} from "../../lib/story/stack.js";
import {seed} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const stackOf = (changes: Record<string, unknown>, deckDepthIn = 34) => storyStack(withValues(LIBRARY, changes), deckDepthIn);
const PLAIN = {"story.floorToFloorFt": 14 + 8 / 12, "story.finishIn": 0, "edgeBeam.ledgeDepthIn": 8, "edgeBeam.upstandIn": 30, "story.ceiling": "flush", "story.frameIn": 2, "edgeBeam.kind": "ledge"};

describe("storyStack", () => {
  test("leaves 11 ft 2 in of 14 ft 8 in under a ceiling flush with an 8 in ledge below a 34 in deck", () => {
    // 176 - 34 - 8 = 134 in.
    const stack = stackOf(PLAIN);
    expect(stack.ceilingHeightIn).toBeCloseTo(134, 9);
    expect(stack.clearUnderLedgeIn).toBeCloseTo(134, 9);
    expect(stack.clearUnderDeckIn).toBeCloseTo(142, 9);
    expect(stack.plenumIn).toBe(8);
    // An opening from 30 to 134 in, and a frame of 2 in at either end of it.
    expect([stack.sillIn, stack.headIn, stack.glassSillIn, stack.glassHeadIn]).toEqual([30, expect.closeTo(134, 9), 32, expect.closeTo(132, 9)]);
    expect(stack.glassIn).toBeCloseTo(100, 9);
  });

  test("hides the frame behind a ceiling at the window's head, or below it", () => {
    const at = stackOf({...PLAIN, "story.ceiling": "head"});
    expect([at.ceilingHeightIn, at.glassHeadIn, at.plenumIn]).toEqual([expect.closeTo(132, 9), expect.closeTo(132, 9), 10]);
    expect(stackOf({...PLAIN, "story.ceiling": "below", "story.ceilingDropIn": 1}).glassHeadIn).toBeCloseTo(132, 9);
    expect(stackOf({...PLAIN, "story.ceiling": "none"}).glassHeadIn).toBeCloseTo(132, 9);
  });

  test("hangs all of a beam that lies below the deck", () => {
    const below = stackOf({...PLAIN, "edgeBeam.kind": "below"});
    // 30 ft / 12.
    expect(below.ledgeDepthIn).toBe(30);
    expect(storyStack(withValues(LIBRARY, PLAIN), 34, 30).headIn).toBeCloseTo(112, 9);
  });

  test("takes the finish from the room and from the sill", () => {
    const stack = stackOf({...PLAIN, "story.finishIn": 3});
    expect(stack.ceilingHeightIn).toBeCloseTo(131, 9);
    expect(stack.sillIn).toBe(27);
    expect(stack.glassIn).toBeCloseTo(100, 9);
  });

  test("lowers ceiling and window head together where the ceiling hangs below the ledge", () => {
    const stack = stackOf({...PLAIN, "story.ceiling": "below", "story.ceilingDropIn": 14});
    expect(stack.ceilingHeightIn).toBeCloseTo(120, 9);
    expect(stack.headIn).toBeCloseTo(120, 9);
    expect(stack.plenumIn).toBe(22);
  });

  test("reaches up to the deck where there is no ceiling, but keeps the ledge above the glass", () => {
    const stack = stackOf({...PLAIN, "story.ceiling": "none", "story.ceilingDropIn": 14});
    expect(stack.ceilingHeightIn).toBeCloseTo(142, 9);
    expect(stack.headIn).toBeCloseTo(134, 9);
    expect(stack.plenumIn).toBe(0);
  });

  test("has no sill below the finished floor", () => {
    expect(stackOf({...PLAIN, "edgeBeam.upstandIn": 2, "story.finishIn": 4}).sillIn).toBe(0);
  });

  test("fails a ceiling below 7 ft 6 in and one that has sunk through the floor", () => {
    const height = (changes: Record<string, unknown>, deckDepthIn?: number) => stackOf({...PLAIN, ...changes}, deckDepthIn).checks.find((check) => check.id === "ceiling height")?.verdict;
    expect(height({})).toBe("ok");
    // 132 - 42 = 90 in just does.
    expect(height({"story.floorToFloorFt": 11})).toBe("near");
    expect(height({"story.floorToFloorFt": 10.75})).toBe("fails");
    expect(height({"story.floorToFloorFt": 8}, 66)).toBe("fails");
  });

  test("hangs a ceiling higher where that alone mends its height", () => {
    const message = (changes: Record<string, unknown>) => stackOf({...PLAIN, ...changes}).checks.find((check) => check.id === "ceiling height")?.message;
    const low = {"story.ceiling": "below", "story.ceilingDropIn": 2};
    // Under the ledge there are just 90 in, then 87; and there is no ceiling to hang higher where it is flush.
    expect(message({...low, "story.floorToFloorFt": 11})).toContain("hang the ceiling higher");
    expect(message({...low, "story.floorToFloorFt": 10.75})).not.toContain("hang");
    expect(message({"story.floorToFloorFt": 10.75})).not.toContain("hang");
    expect(message({"story.floorToFloorFt": 10.75, "story.ceiling": "none"})).not.toContain("hang");
    // One at the window's head hides the frame, 88 in up: it hangs as high as it may.
    expect(message({"story.floorToFloorFt": 11, "story.ceiling": "head"})).not.toContain("hang");
  });

  test("fails the glass where the upstand reaches its head, however low both lie", () => {
    const glass = (changes: Record<string, unknown>, deckDepthIn?: number) => stackOf({...PLAIN, ...changes}, deckDepthIn).checks.find((check) => check.id === "glass")?.verdict;
    expect(glass({})).toBe("ok");
    expect(stackOf({...PLAIN, "edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8}).checks.find((check) => check.id === "glass")?.message)
      .toMatch(/^The upstand with the window's frame and the window's head collide by 10 in/);
    expect(glass({"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8})).toBe("fails");
    expect(glass({"edgeBeam.upstandIn": 0, "story.floorToFloorFt": 8, "edgeBeam.ledgeDepthIn": 24}, 80)).toBe("fails");
  });

  test("adds up to the story: finish, room, ceiling space and deck", () => {
    for (const ceiling of ["flush", "below", "head", "none"]) {
      const stack = stackOf({...PLAIN, "story.ceiling": ceiling, "story.finishIn": 1.5});
      expect(stack.finishIn + stack.ceilingHeightIn + stack.plenumIn + stack.deckDepthIn).toBeCloseTo(stack.floorToFloorIn, 9);
    }
  });
});
