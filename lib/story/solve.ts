import {requireNumber} from "../check.js";
import type {Design} from "../design/design.js";
import {storyStack, type StoryStack} from "./stack.js";

/** The least story for a ceiling. */
export interface SolvedStory {
  /** Floor to floor, in: just enough, and rounded up to the step. */
  readonly exactIn: number;
  readonly floorToFloorIn: number;
  /** Ceiling that the rounded story gives, in. */
  readonly ceilingHeightIn: number;
}

/** Steps to which a story is rounded up: what a drawing can hold, and what a stair of equal risers likes. */
export type StoryStepIn = 0.25 | 3;

/**
 * Least floor-to-floor height that leaves a ceiling (or the deck's underside, where there is none) as high as wanted.
 * What lies above the ceiling does not depend on the story, so the answer is their sum.
 *
 * @param wantedIn - finished floor to ceiling, in, 60 to 360
 * @throws InputError if the wish is out of range
 */
export function leastFloorToFloor(design: Design, deckDepthIn: number, wantedIn: number, stepIn: StoryStepIn = 0.25, belowDeckIn?: number): SolvedStory {
  requireNumber(wantedIn, {path: "wantedIn", label: "wanted ceiling height", unit: "in", min: 60, max: 360});
  const stack = storyStack(design, deckDepthIn, belowDeckIn);
  return storyAround(stack, stack.clearUnderDeckIn - stack.ceilingHeightIn, wantedIn, stepIn);
}

/** Least floor-to-floor height that leaves a height free under what takes `takenIn` below the deck: a plenum, a duct. */
export function storyAround(stack: Pick<StoryStack, "floorToFloorIn" | "clearUnderDeckIn">, takenIn: number, wantedIn: number, stepIn: StoryStepIn = 0.25): SolvedStory {
  const exactIn = wantedIn + takenIn + stack.floorToFloorIn - stack.clearUnderDeckIn;
  const floorToFloorIn = Math.ceil(exactIn / stepIn - 1e-9) * stepIn;
  return {exactIn, floorToFloorIn, ceilingHeightIn: wantedIn + floorToFloorIn - exactIn};
}
