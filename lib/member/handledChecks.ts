import {atMost, requires, type Check} from "../checks.js";
import type {Handled} from "./stripping.js";

/** Where the stresses that are allowed in a piece as it is handled come from. */
export const HANDLED_CLAUSE = "ACI 318-19 24.5.3; PCI Design Handbook, 7th ed., ch. 8 (from memory)";

/** What mends too much compression of a piece whose concrete at release is chosen by itself, in the form and later. */
const OF_PIECE: Readonly<Record<Handled["moment"], string>> = {stripping: "more release strength, or fewer strands", hauling: "stronger concrete, or fewer strands"};

/**
 * Checks of a pretensioned piece that hangs or rides, face by face: deck, girder and edge beam alike. Tension beyond the
 * limit requires bonded steel where the top is in tension, as at transfer (ACI 318-19 24.5.3.2.1), and fails where the
 * soffit is, for bars in the top do not help it; compression must hold.
 *
 * @param squeezed - what mends too much compression
 */
export function handledChecks(state: Handled, squeezed: string = OF_PIECE[state.moment]): Check[] {
  const id = state.moment;
  const label = id === "stripping" ? "Stripped from its form" : "On the road";
  const clause = HANDLED_CLAUSE;
  const top = {id: `${id} tension top`, label: `${label}: tension in the top`, unit: "ksi", clause};
  return [
    state.topTensionKsi > state.allowedTensionKsi
      ? requires({...top, word: "needs top steel", message: `The top would crack near the supports, so ${state.topSteelIn2.toFixed(2)} in² of bonded bars must take the tension.`}, state.topTensionKsi, state.allowedTensionKsi)
      : atMost({...top, holds: "The top does not crack.", fails: ""}, state.topTensionKsi, state.allowedTensionKsi),
    atMost({
      id: `${id} tension soffit`, label: `${label}: tension in the soffit`, unit: "ksi", clause,
      holds: "The soffit does not crack.", fails: "The soffit would crack as the piece hangs: supports farther in, a shorter piece, or more strands.",
    }, state.soffitTensionKsi, state.allowedTensionKsi),
    atMost({
      id: `${id} compression`, label: `${label}: compression`, unit: "ksi", clause,
      holds: "The concrete can take the compression.", fails: `The concrete is compressed too hard: ${squeezed}.`,
    }, state.compressionKsi, state.allowedCompressionKsi),
  ];
}
