import {atMost, type Check} from "../checks.js";
import {USUAL_HOLD_DOWN_KIP} from "../member/holdDown.js";
import type {Cell} from "./cell.js";
import {GATES, LIMITS, USUAL_LIMITS, limitNamed, type LimitName} from "./limits.js";
import type {LoadedDeck} from "./loadedDeck.js";
import type {SafeLoad} from "./safeLoad.js";

/**
 * Checks of the deck member: the load against what it may carry, then what each limit says, in reading order. All limits
 * are looked at, whichever of them bound the safe load, save those that a floor has to ask for.
 */
export function deckChecks(cell: Cell, counted: readonly LimitName[], deck: LoadedDeck, safe: SafeLoad): Check[] {
  const asked = LIMITS.filter((name) => USUAL_LIMITS.includes(name) || GATES.includes(name) || counted.includes(name)).map(limitNamed);
  const {holdDown} = deck.service;
  return [
    atMost({
      id: "deck load", label: "Superimposed load", unit: "psf", clause: `Governing limit: ${safe.governs}.`,
      holds: "The member carries the load on this floor.",
      fails: "The load on this floor is more than the member can safely carry: a deeper member, more strands or a shorter span.",
    }, deck.demandPsf, safe.safeLoadPsf),
    ...asked.flatMap((limit) => limit.checks(cell, deck)),
    ...(holdDown ? [atMost({
      id: "deck hold-down", label: "Uplift on a hold-down, each stem", unit: "kip", clause: "common practice; producers differ",
      holds: "The bed's devices can hold the strands down.",
      fails: "The bed's devices could not hold the strands down at one point: two points, fewer strands, or a flatter profile.",
    }, holdDown.forcePerStemKip, USUAL_HOLD_DOWN_KIP)] : []),
  ];
}
