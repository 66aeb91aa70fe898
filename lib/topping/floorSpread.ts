import type {Design} from "../design/design.js";
import type {Camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {IN3_PER_YD3, IN_PER_FT} from "../units.js";
import type {FloorTopping} from "./floorTopping.js";
import type {SpreadInput} from "./spread.js";
import {spreadBasis} from "./spreadBasis.js";

/** What a reader chooses of a spread; the design gives the rest. */
export type SpreadChoices = Pick<SpreadInput, "scatter" | "seed" | "count"> & {readonly raisedIn: number};

/** The deck of a design and what fills its camber. */
export interface SpreadFloor {
  readonly design: Pick<Design, "bay">;
  readonly member: Member;
  readonly deck: {readonly camber: Camber};
  readonly topping: FloorTopping | undefined;
}

/** Fewest pieces of which a spread is reported; see {@link SpreadInput}. */
const LEAST_ORDERS = 2;

/**
 * Pieces of a design to try: its member under its own finished surface, with the topping of a bay ordered together.
 * Pieces run on past the column lines, so a bay holds a whole number of them only where its length is a multiple of
 * their width.
 */
export function floorSpread({design, member, deck, topping}: SpreadFloor, choices: SpreadChoices): SpreadInput {
  return {
    ...choices,
    basis: spreadBasis(member, deck.camber, design.bay.spanFt, topping),
    piecesPerOrder: Math.min(design.bay.beamSpanFt / member.widthFt, choices.count / LEAST_ORDERS),
  };
}

/** What raising the finished surface adds to the topping of one bay, yd3, before its weight presses the deck down. */
export function raisingYd3({design: {bay}}: Pick<SpreadFloor, "design">, raisedIn: number): number {
  return (raisedIn * bay.spanFt * bay.beamSpanFt * IN_PER_FT ** 2) / IN3_PER_YD3;
}

/** What the pieces of one order would take if all were the design's own, yd3; 0 without topping. */
export function designOrderYd3({topping}: Pick<SpreadFloor, "topping">, {piecesPerOrder = 1}: Pick<SpreadInput, "piecesPerOrder">): number {
  return (topping?.memberYd3 ?? 0) * piecesPerOrder;
}
