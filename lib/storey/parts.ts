import type {Design} from "../design/design.js";
import type {StoreyStack} from "./stack.js";

/** One layer of a storey's height. */
export interface StoreyPart {
  readonly name: string;
  readonly part: "finish" | "topping" | "deck" | "ledge" | "plenum" | "room";
  readonly heightIn: number;
}

/**
 * A storey's height in its parts from the floor above down to the finished floor; they add up to the floor-to-floor
 * height. Parts without height are left out, save the room: where nothing is left for it, that is what is to be seen.
 */
export function storeyParts(design: Design, stack: StoreyStack): StoreyPart[] {
  const {toppingIn} = design.deck;
  const open = design.storey.ceiling === "none";
  const dropIn = stack.plenumIn > 0 ? stack.plenumIn - stack.ledgeDepthIn : 0;
  const parts: StoreyPart[] = [
    {name: "floor finish", part: "finish", heightIn: stack.finishIn},
    {name: "topping", part: "topping", heightIn: toppingIn},
    {name: "deck member", part: "deck", heightIn: stack.deckDepthIn - toppingIn},
    {name: "beside the ledge, above the ceiling", part: "ledge", heightIn: open ? 0 : stack.ledgeDepthIn},
    {name: "below the ledge, above the ceiling", part: "plenum", heightIn: dropIn},
  ];
  const room: StoreyPart = {name: open ? "room, floor to deck" : "room, floor to ceiling", part: "room", heightIn: stack.ceilingHeightIn};
  return [...parts.filter((part) => part.heightIn > 0), room];
}
