import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {LB_PER_KIP} from "../units.js";

/** Deck members as pieces to haul and lift. */
export interface DeckPieces {
  /** Pieces side by side in one bay; the last may have to be cut narrower. */
  readonly perBay: number;
  readonly perFloor: number;
  /** Weight of one whole piece as it leaves the plant, without topping, kip. */
  readonly weightKip: number;
  /** The same in short tons of 2,000 lb, as cranes and trucks are rated. */
  readonly weightTon: number;
}

const KIP_PER_TON = 2;

/** How many deck members cover a floor, and what one weighs. */
export function deckPieces({bay}: Pick<Design, "bay">, member: Pick<Member, "widthFt" | "selfWeightPlf">): DeckPieces {
  // A bay that is a whole number of widths must not gain a piece by rounding in the last digit.
  const perBay = Math.ceil(bay.beamSpanFt / member.widthFt - 1e-9);
  const weightKip = (member.selfWeightPlf * bay.spanFt) / LB_PER_KIP;
  return {perBay, perFloor: perBay * bay.baysAlong * bay.baysAcross, weightKip, weightTon: weightKip / KIP_PER_TON};
}
