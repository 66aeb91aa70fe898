import {atMost, requires, type Check} from "../checks.js";
import type {Handled} from "./stripping.js";

/** Where the stresses that are allowed in a piece as it is handled come from. */
export const HANDLED_CLAUSE = "ACI 318-19 24.5.3; PCI Design Handbook, 7th ed., ch. 8 (from memory)";

/**
 * Checks of a piece that hangs or rides, face by face: tension beyond the limit requires bonded steel where the top is
 * in tension, and fails where the soffit is, for bars in the top do not help it; compression must hold.
 */
export function handledChecks(state: Handled, label: string, id: string): Check[] {
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
      holds: "The concrete can take the compression.", fails: "The concrete is compressed too hard: more release strength, or fewer strands.",
    }, state.compressionKsi, state.allowedCompressionKsi),
  ];
}
