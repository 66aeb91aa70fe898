import {describe, expect, it} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {storyParts} from "../../lib/story/parts.js";
import {catalog, seeds} from "../support/designs.js";

const ceilings = ["flush", "below", "head", "none"] as const;

describe.each(seeds)("the story of $id", ({design}) => {
  it.each(ceilings)("adds up to the floor-to-floor height with a ceiling that is %s", (ceiling) => {
    const varied = withValues(design, {"story.ceiling": ceiling});
    const {story} = evaluate(varied, catalog);
    const sum = storyParts(varied, story).reduce((total, part) => total + part.heightIn, 0);
    expect(sum).toBeCloseTo(story.floorToFloorIn, 9);
  });

  it("shows no layer that has no height, save the room", () => {
    const names = (ceiling: string) => {
      const bare = withValues(design, {"story.ceiling": ceiling, "story.finishIn": 0, "edgeBeam.kind": "ledge"});
      return storyParts(bare, evaluate(bare, catalog).story).map(({part}) => part);
    };
    expect(names("flush").filter((part) => part !== "topping")).toEqual(["deck", "ledge", "room"]);
    expect(names("head")).toContain("plenum");
    expect(names("none").filter((part) => part !== "topping")).toEqual(["deck", "room"]);
  });
});
