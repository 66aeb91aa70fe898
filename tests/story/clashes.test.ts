import {describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import type {FloorLoads} from "../../lib/loads/floorLoads.js";
import {girderMayHangIn, headroomChecks} from "../../lib/story/headroom.js";
import {storyStack, type StoryStack} from "../../lib/story/stack.js";
import {seed} from "../support/designs.js";

const LOADS = {rooms: [{occupancy: {group: "Office"}}]} as unknown as Pick<FloorLoads, "rooms">;
/** Ten feet to the deck, eight to the ceiling, and 6'-6" under the ledge. */
const STACK = {clearUnderDeckIn: 120, ceilingHeightIn: 96, clearUnderLedgeIn: 78} as StoryStack;

const design = (ceiling: Design["story"]["ceiling"], girder: Design["girder"]["kind"] = "rectangle", edgeBeam: Design["edgeBeam"]["kind"] = "ledge") => {
  const of = seed("branch-library");
  return {story: {...of.story, ceiling}, girder: {...of.girder, kind: girder}, edgeBeam: {...of.edgeBeam, kind: edgeBeam}};
};
const messages = (...[of, belowDeckIn]: [ReturnType<typeof design>, number]) =>
  Object.fromEntries(headroomChecks(of, LOADS, STACK, {belowDeckIn}).map(({id, verdict, message}) => [id, `${verdict}: ${message}`]));

describe("a girder in the room", () => {
  test("may hang down to the ceiling, or to the 7'-6\" that the room needs where that is more or nothing else is there", () => {
    expect(girderMayHangIn(design("none"), LOADS, STACK)).toBe(30);
    expect(girderMayHangIn(design("flush"), LOADS, STACK)).toBe(24);
    expect(girderMayHangIn(design("flush"), LOADS, {...STACK, ceilingHeightIn: 84})).toBe(30);
  });

  test("that hangs too low says by how much, and that it might stand beside the deck where it does not", () => {
    expect(messages(design("none"), 30)["girder headroom"]).toMatch(/^ok/);
    expect(messages(design("none"), 31)["girder headroom"]).toMatch(/^fails: .* collide by 1 in: a girder beside the deck instead of below it, a shallower one/);
    expect(messages(design("none", "inverted tee"), 31)["girder headroom"]).toMatch(/collide by 1 in: a shallower one/);
    expect(messages(design("flush"), 26)["girder ceiling"]).toMatch(/^fails: .* hangs 2 in below the ceiling/);
    expect(messages(design("none"), 26)["girder ceiling"]).toBeUndefined();
  });
});

describe("the edge beam's foot", () => {
  test("leaves 6'-8\" for a head below it, and mends by a shallower ledge, or beside the deck", () => {
    expect(messages(design("none"), 0)["edge beam headroom"]).toMatch(/^fails: .* collide by 2 in: a shallower ledge/);
    expect(messages(design("none", "rectangle", "below"), 0)["edge beam headroom"]).toContain("a beam beside the deck, columns closer together");
    expect(messages(design("flush"), 0)["edge beam headroom"]).toBeUndefined();
  });
});

describe("too low a room", () => {
  const message = (ceiling: Design["story"]["ceiling"], changes: Record<string, unknown> = {}) => {
    const stack = storyStack(withValues(seed("branch-library"), {"story.ceiling": ceiling, ...changes}), 34);
    const check = stack.checks.find(({id}) => id === "ceiling height");
    return {text: `${check?.verdict}: ${check?.message}`, stack};
  };

  test("is reported by what lies above it and by how much is missing", () => {
    const {text, stack} = message("none", {"story.floorToFloorFt": 10});
    expect(text).toMatch(/^fails: The deck and the room that people need collide by /);
    expect(text).toContain(` by ${Number((stack.least.leastIn - stack.ceilingHeightIn).toFixed(2))}`);
    expect(message("flush", {"story.floorToFloorFt": 9}).text).toContain("The ceiling and the room");
  });

  test("may be mended by its ceiling alone only where that hangs below the edge beam, whose foot is high enough", () => {
    const offered = new Set<boolean>();
    for (const floorToFloorFt of [10, 11, 12, 12.5, 13, 14]) {
      const {text, stack} = message("below", {"story.floorToFloorFt": floorToFloorFt, "story.ceilingDropIn": 36});
      if (!text.startsWith("fails")) continue;
      expect(text.includes("or hang the ceiling higher")).toBe(stack.clearUnderLedgeIn >= stack.least.leastIn);
      offered.add(stack.clearUnderLedgeIn >= stack.least.leastIn);
    }
    expect(offered.size).toBe(2);
    expect(message("flush", {"story.floorToFloorFt": 9}).text).not.toContain("hang the ceiling higher");
  });
});
