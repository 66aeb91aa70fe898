import type {Design} from "../design/design.js";
import type {StoryStack} from "./stack.js";

/** One layer of a story's height. */
export interface StoryPart {
  readonly name: string;
  readonly part: "finish" | "topping" | "deck" | "ledge" | "plenum" | "room";
  readonly heightIn: number;
}

/**
 * A story's height in its parts from the floor above down to the finished floor; they add up to the floor-to-floor
 * height. Parts without height are left out, save the room: where nothing is left for it, that is what is to be seen.
 */
export function storyParts(design: Design, stack: StoryStack): StoryPart[] {
  const {toppingIn} = design.deck;
  const open = design.story.ceiling === "none";
  const parts: StoryPart[] = [
    {name: "floor finish", part: "finish", heightIn: stack.finishIn},
    {name: "topping", part: "topping", heightIn: toppingIn},
    {name: "deck member", part: "deck", heightIn: stack.deckDepthIn - toppingIn},
    {name: "beside the ledge, above the ceiling", part: "ledge", heightIn: open ? 0 : stack.ledgeDepthIn},
    {name: "below the ledge, above the ceiling", part: "plenum", heightIn: stack.plenumIn - stack.ledgeDepthIn},
  ];
  const room: StoryPart = {name: open ? "room, floor to deck" : "room, floor to ceiling", part: "room", heightIn: stack.ceilingHeightIn};
  return [...parts.filter((part) => part.heightIn > 0), room];
}
