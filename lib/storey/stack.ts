import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {IN_PER_FT} from "../units.js";

/** Heights of one storey, all in inches. */
export interface StoreyStack {
  readonly floorToFloorIn: number;
  readonly finishIn: number;
  /** Deck member with its topping. */
  readonly deckDepthIn: number;
  readonly ledgeDepthIn: number;
  /** Finished floor to the underside of the ledge above. */
  readonly clearUnderLedgeIn: number;
  /** Finished floor to the underside of the deck member above. */
  readonly clearUnderDeckIn: number;
  /** Finished floor to the ceiling, or to the deck member where there is none. */
  readonly ceilingHeightIn: number;
  /** Deck member's underside to the ceiling: room for ducts, pipes and lights; 0 where there is no ceiling. */
  readonly plenumIn: number;
  /** Finished floor to the bottom and top of the glass. */
  readonly sillIn: number;
  readonly headIn: number;
  readonly glassIn: number;
  readonly checks: readonly Check[];
}

/** Least ceiling height of rooms that people use, in: 7 ft 6 in (IBC 2021 1208.2). */
export const LEAST_CEILING_IN = 90;

/**
 * How the storey's height is spent at the edge of the building: floor finish, room, ceiling, ledge, deck.
 *
 * A ceiling flush with the ledge's underside hides the ledge; one at the window's head hides the frame as well; one below
 * makes room for ducts and lowers the window head with it; without one the ledge still sets the head of the glass.
 *
 * @param deckDepthIn - deck member with its topping, in
 */
export function storeyStack(design: Design, deckDepthIn: number): StoreyStack {
  const {storey, edgeBeam} = design;
  const floorToFloorIn = storey.floorToFloorFt * IN_PER_FT;
  const clearUnderDeckIn = floorToFloorIn - storey.finishIn - deckDepthIn;
  const clearUnderLedgeIn = clearUnderDeckIn - edgeBeam.ledgeDepthIn;
  const dropIn = storey.ceiling === "below" ? storey.ceilingDropIn : storey.ceiling === "head" ? storey.frameIn : 0;
  const ceilingHeightIn = storey.ceiling === "none" ? clearUnderDeckIn : clearUnderLedgeIn - dropIn;
  const sillIn = Math.max(0, edgeBeam.upstandIn - storey.finishIn);
  const headIn = Math.min(clearUnderLedgeIn, ceilingHeightIn);
  const stack = {
    floorToFloorIn, finishIn: storey.finishIn, deckDepthIn, ledgeDepthIn: edgeBeam.ledgeDepthIn,
    clearUnderLedgeIn, clearUnderDeckIn, ceilingHeightIn,
    plenumIn: storey.ceiling === "none" ? 0 : edgeBeam.ledgeDepthIn + dropIn,
    sillIn, headIn, glassIn: headIn - sillIn,
  };
  return {...stack, checks: [
    atLeast({
      id: "ceiling height", label: "Ceiling height", unit: "in", clause: "IBC 2021 1208.2",
      holds: "People can use the room.",
      fails: "The room is too low to be used: raise the storey, or thin what lies above the ceiling.",
    }, stack.ceilingHeightIn, LEAST_CEILING_IN),
    atMost({
      id: "glass", label: "Upstand below the window head", unit: "in", clause: "geometry",
      holds: "There is glass between upstand and window head.",
      fails: "The upstand reaches the window head: there is no glass.",
    }, stack.sillIn, stack.headIn),
  ]};
}
