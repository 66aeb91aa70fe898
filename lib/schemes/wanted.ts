import type {Evaluation} from "../evaluate.js";
import {feet} from "../units.js";

/**
 * The ceiling height that a design has, ft, as its brief wants it: above the finished floor to the ceiling or, where there
 * is none, to the lowest of what hangs below the deck: beams, mains and pipes.
 */
export function wantedCeilingFt({design, story, edgeBeam, girder, services}: Evaluation): number {
  if (design.story.ceiling !== "none") return feet(story.ceilingHeightIn);
  return feet(story.ceilingHeightIn - Math.max(0, edgeBeam.belowDeckIn, girder?.belowDeckIn ?? 0, services.ducts?.hungIn ?? 0, services.sprinklerIn));
}
