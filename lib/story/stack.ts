import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {IN_PER_FT, decimals} from "../units.js";
import type {RoofBuild} from "../walls/topLevel.js";

/** A least height and where it is written. */
export interface LeastHeight {
  readonly leastIn: number;
  readonly clause: string;
}

/** Heights of one story, all in inches. */
export interface StoryStack {
  readonly floorToFloorIn: number;
  readonly finishIn: number;
  /** Deck member with its topping. */
  readonly deckDepthIn: number;
  /** What of the edge beam hangs below the deck: its ledge, or all of a beam that lies below. */
  readonly ledgeDepthIn: number;
  /** Finished floor to the underside of the edge beam above. */
  readonly clearUnderLedgeIn: number;
  /** Finished floor to the underside of the deck member above. */
  readonly clearUnderDeckIn: number;
  /** Finished floor to the ceiling, or to the deck member where there is none. */
  readonly ceilingHeightIn: number;
  /** Deck member's underside to the ceiling: room for ducts, pipes and lights; 0 where there is no ceiling. */
  readonly plenumIn: number;
  /** Finished floor to the bottom and top of the window's opening: upstand, and edge beam or ceiling. */
  readonly sillIn: number;
  readonly headIn: number;
  /** Height of the window's frame, at the sill and at the head. */
  readonly frameIn: number;
  /** Finished floor to the bottom and top of the glass itself, and its height; below 0 where there is none. */
  readonly glassSillIn: number;
  readonly glassHeadIn: number;
  readonly glassIn: number;
  /** Height that the floor's use requires under its ceiling. */
  readonly least: LeastHeight;
  /** How a roof of its own is built up over the topmost story; left out where the roof is two loads, or there is none. */
  readonly roof?: RoofBuild | undefined;
  readonly checks: readonly Check[];
}

/** Minimum ceiling height of rooms that people use, in: 7 ft 6 in (IBC 2021 1208.2). */
export const LEAST_CEILING_IN = 90;
/** Minimum headroom under what hangs from a ceiling, in: 6 ft 8 in (IBC 2021 1003.3.1). */
export const LEAST_HEADROOM_IN = 80;
const OF_ROOMS: LeastHeight = {leastIn: LEAST_CEILING_IN, clause: "IBC 2021 1208.2"};

/**
 * How the story's height is spent at the edge of the building: floor finish, room, ceiling, ledge, deck.
 *
 * A ceiling flush with the ledge's underside hides the ledge; one at the window's head hides the frame as well; one below
 * makes room for ducts and lowers the window head with it; without one the ledge still sets the head of the glass.
 *
 * @param deckDepthIn - deck member with its topping, in
 * @param belowDeckIn - what of the edge beam hangs below the deck, in; see {@link beamBelowDeckIn} if left out
 * @param least - height that the floor's use requires; of rooms for people if left out
 */
export function storyStack(design: Pick<Design, "story" | "edgeBeam" | "bay">, deckDepthIn: number, belowDeckIn = beamBelowDeckIn(design), least = OF_ROOMS): StoryStack {
  const {story, edgeBeam} = design;
  const {finishIn, frameIn} = story;
  const floorToFloorIn = story.floorToFloorFt * IN_PER_FT;
  const clearUnderDeckIn = floorToFloorIn - finishIn - deckDepthIn;
  const clearUnderLedgeIn = clearUnderDeckIn - belowDeckIn;
  const dropIn = story.ceiling === "below" ? story.ceilingDropIn : story.ceiling === "head" ? frameIn : 0;
  const ceilingHeightIn = story.ceiling === "none" ? clearUnderDeckIn : clearUnderLedgeIn - dropIn;
  const sillIn = Math.max(0, edgeBeam.upstandIn - finishIn);
  const headIn = Math.min(clearUnderLedgeIn, ceilingHeightIn);
  const glassSillIn = sillIn + frameIn;
  // A ceiling that hangs lower than the frame hides it.
  const glassHeadIn = Math.min(clearUnderLedgeIn - frameIn, ceilingHeightIn);
  const stack = {
    floorToFloorIn, finishIn, deckDepthIn, ledgeDepthIn: belowDeckIn, clearUnderLedgeIn, clearUnderDeckIn, ceilingHeightIn,
    plenumIn: story.ceiling === "none" ? 0 : belowDeckIn + dropIn,
    sillIn, headIn, frameIn, glassSillIn, glassHeadIn, glassIn: glassHeadIn - glassSillIn, least,
  };
  return {...stack, checks: [
    atLeast({
      id: "ceiling height", label: "Ceiling height", unit: "in", clause: least.clause,
      holds: "People can use the room.",
      fails: () => `The ${story.ceiling === "none" ? "deck" : "ceiling"} and the room that people need collide by ${written(least.leastIn - ceilingHeightIn)} in: raise the story${story.ceiling === "below" && clearUnderLedgeIn >= least.leastIn ? ", or hang the ceiling higher" : ""}.`,
    }, ceilingHeightIn, least.leastIn),
    atMost({
      id: "glass", label: "Upstand and frame below the window head", unit: "in", clause: "geometry",
      holds: "There is glass between upstand and window head.",
      fails: () => `The upstand with the window's frame and the window's head collide by ${written(glassSillIn - glassHeadIn)} in, and no glass is left: lower the upstand or raise the story.`,
    }, glassSillIn, glassHeadIn),
  ]};
}

/** Span over depth of a first size of beam under a floor (common practice: 10 to 15 where the load is heavy; from memory). */
export const SPAN_OVER_DEPTH = 12;

/** Depth of a beam under the deck before it is designed: span/12, rounded up to 2 in. */
export function firstDepthBelowIn(beamSpanFt: number): number {
  return Math.ceil((beamSpanFt * IN_PER_FT) / SPAN_OVER_DEPTH / 2 - 1e-9) * 2;
}

/**
 * What of the edge beam hangs below the deck before it is designed, in: the ledge (or the foot below its pockets) of a
 * beam that stands beside the deck, or the first size of one that carries the deck on its top.
 */
export function beamBelowDeckIn({edgeBeam, bay}: Pick<Design, "edgeBeam" | "bay">): number {
  return edgeBeam.kind === "below" ? firstDepthBelowIn(bay.beamSpanFt) : edgeBeam.ledgeDepthIn;
}

/** Height from the finished floor to the underside of an interior girder, in; 0 or less where it leaves none. */
export function clearUnderGirderIn(story: Pick<StoryStack, "clearUnderDeckIn">, girder: {readonly belowDeckIn: number}): number {
  return story.clearUnderDeckIn - girder.belowDeckIn;
}

/** Inches in a message: no more decimals than they need. */
// Stryker disable next-line EqualityOperator: a length just so far from a whole inch may be written either way
export const written = (lengthIn: number): string => decimals(lengthIn, Math.abs(lengthIn - Math.round(lengthIn)) < 0.005 ? 0 : 2);
