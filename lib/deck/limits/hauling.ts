import {atMost, requires} from "../../checks.js";
import {PAYLOAD_KIP, handling} from "../../member/handling.js";
import {given} from "../../step.js";
import {GATE_LOOK, type Gate} from "../limit.js";
import {overAllowed} from "../limitSteps.js";

/** A truck takes one piece as a legal load. */
export const haulingLimit: Gate<"hauling"> = {
  name: "hauling", kind: "gate",
  clause: "road rules (common practice)",
  asks: "Can a truck take one piece without an overweight permit?",
  look: {letter: "Q", ...GATE_LOOK},

  use: ({member, spanFt}) => handling(member, spanFt).weightKip / PAYLOAD_KIP,

  checks(_, {service: {handling: {weightKip, notes, piecesPerTruck}}}) {
    const text = {id: "deck hauling", label: "Weight of one piece", unit: "kip", clause: haulingLimit.clause};
    // A piece that is too heavy has a note that says so.
    return [notes.length > 0
      ? requires({...text, word: weightKip > PAYLOAD_KIP ? "needs a permit" : "see the note", message: notes.join(" ")}, weightKip, PAYLOAD_KIP)
      : atMost({...text, holds: `A truck takes ${piecesPerTruck} of them as a legal load.`, fails: ""}, weightKip, PAYLOAD_KIP)];
  },

  measure: (cell, use) => overAllowed(`w * L / 1000 / ${PAYLOAD_KIP}`, {
    w: given(cell.member.selfWeightPlf, "plf", "weight of the member"), L: given(cell.spanFt, "ft", "span"),
  }, use, "common practice"),
};
