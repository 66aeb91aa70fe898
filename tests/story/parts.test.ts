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
});
