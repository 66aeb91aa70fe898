import {atLeast, atMost, outOfRange, type Check} from "../checks.js";
import type {DeckResult} from "../deck/deckResult.js";
import type {Design} from "../design/design.js";
import {FILL_LIMIT} from "../member/fillRatio.js";
import type {Ponding} from "./ponding.js";

/** Minimum fall of a roof toward its drains, in per ft (IBC 2021 1507.10 to 1507.13, for most membranes). */
export const LEAST_FALL_IN_PER_FT = 0.25;
/** Water that dries away within two days of rain, in: about 1/8 in a day (IBC 2021 202, positive roof drainage; the rate is common practice, from memory). */
export const DRIES_IN = 0.25;

/** Fall of a roof toward its drains, in per ft: the design's own, or by camber alone its mean from midspan to the ends in the long term. */
export function fallInPerFt({roof, bay}: Pick<Design, "roof" | "bay">, {camber}: Pick<DeckResult, "camber">): number {
  return roof.drainage === "camber" ? Math.max(0, camber.longTermIn) / (bay.spanFt / 2) : roof.slopeInPerFt;
}

/** Fall, water that stays, flexibility, and the load of water while the drains are blocked. */
export function drainageChecks(design: Pick<Design, "roof" | "bay">, deck: Pick<DeckResult, "camber" | "safe" | "superimposedDeadPsf">, water: Ponding): Check[] {
  const byCamber = design.roof.drainage === "camber";
  const steeper = byCamber ? "let tapered insulation or stepped bearings make the fall" : "make the roof fall more steeply";
  const blocked = {id: "water load", label: "Load with its drains blocked", unit: "psf", clause: "ASCE 7-16 8.4; first principles"};
  return [
    atLeast({
      id: "fall", label: byCamber ? "Mean fall by camber in the long term" : "Fall toward the drains", unit: "in/ft", clause: "IBC 2021 1507", meetingIsEnough: true,
      holds: "The roof falls enough for most membranes.",
      fails: `The roof falls less than most membranes require: ${steeper}.`,
    }, fallInPerFt(design, deck), LEAST_FALL_IN_PER_FT),
    atMost({
      id: "trapped water", label: "Depth of water that stays after rain", unit: "in", clause: "IBC 2021 202, positive roof drainage",
      holds: "What stays on the roof dries within two days.",
      fails: `Water stays where members arch against the fall or sag: ${steeper}.`,
    }, water.trappedIn, DRIES_IN),
    atMost({
      id: "ponding stiffness", label: "Flexibility of deck and beam against ponding", unit: "", clause: "ASCE 7-16 8.4; AISC 360-16 Appendix 2.1",
      holds: "Water that gathers bends the roof too little to gather more.",
      fails: "Water that gathers bends the roof so that more gathers: a deeper member in the roof, a shorter span, or columns closer together.",
    }, water.combined, FILL_LIMIT),
    water.blockedPsf === undefined
      ? outOfRange({...blocked, message: "Water would gather without end, and no load can be stated."}, deck.superimposedDeadPsf, deck.safe.safeLoadPsf)
      : atMost({
        ...blocked,
        holds: "The deck carries the water up to the overflow, with what its own sag gathers.",
        fails: "With its drains blocked the roof holds more water than the deck carries: a deeper member in the roof, more strands, or a lower overflow.",
      }, deck.superimposedDeadPsf + water.blockedPsf, deck.safe.safeLoadPsf),
  ];
}
