import type {Design} from "../design/design.js";

/** Part of a support's reach, from its inner end, at which the deck's load is taken to stand at least. */
export const OUTER_QUARTER_SHARE = 0.75;

/**
 * Inner end of the deck's support to the deck's load, in: web's face of a ledge, back of a pocket, or the middle of a top
 * that two decks share.
 *
 * The deck's end turns as the deck sags and presses harder toward the support's outer edge; a beam that twists under
 * its load turns the ledge the other way. Which of the two wins is not known at a first size. The load is taken three
 * quarters of the reach out, as trade examples of edge beams do (PCI Design Handbook, 7th ed., ch. 5; from memory), and
 * not nearer than the middle of the seat beyond its joint: the safe side for torsion, for the ledge's bars and its
 * hangers.
 */
export function deckLoadOutIn(reachIn: number, jointGapIn: number): number {
  return Math.max(OUTER_QUARTER_SHARE * reachIn, (jointGapIn + reachIn) / 2);
}

/**
 * Edge beam's center line to the deck's load, in, positive toward the floor: on a ledge beyond the web's face, in a
 * pocket inside it; on a beam below the deck 0, because its pads are placed over its middle.
 */
export function edgeBeamLeverIn({kind, webWidthIn, ledgeProjectionIn, jointGapIn}: Pick<Design["edgeBeam"], "kind" | "webWidthIn" | "ledgeProjectionIn" | "jointGapIn">): number {
  const outIn = deckLoadOutIn(ledgeProjectionIn, jointGapIn);
  switch (kind) {
    case "ledge": return webWidthIn / 2 + outIn;
    case "pockets": return webWidthIn / 2 - ledgeProjectionIn + outIn;
    case "below": return 0;
  }
}
