import {transfer as whenCut} from "../../member/transfer.js";
import {transferChecks} from "../../member/transferChecks.js";
import {pairText} from "../../pair.js";
import {given} from "../../step.js";
import type {Cell} from "../cell.js";
import {GATE_LOOK, type Gate} from "../limit.js";
import {overAllowed} from "../limitSteps.js";

/** The young concrete can take the strands as they are cut. */
export const transferLimit: Gate<"transfer"> = {
  name: "transfer", kind: "gate",
  clause: "ACI 318-19 24.5.3.1",
  asks: "Can the young concrete take the prestress at release?",
  look: {letter: "R", ...GATE_LOOK},

  use: (cell) => neededPsi(cell) / cell.member.releaseStrengthPsi,

  checks: ({member}, deck) => transferChecks(member, deck.transfer),

  measure: (cell, use) => overAllowed("f_n / f_ciprime", {
    f_n: given(neededPsi(cell), "psi", "strength that the strands require at release"), f_ciprime: given(cell.member.releaseStrengthPsi, "psi", "strength that is specified"),
  }, use, transferLimit.clause),

  loses(cell) {
    const {asked, given: there} = pairText(neededPsi(cell), cell.member.releaseStrengthPsi);
    return `Needs ${asked} psi at release; ${there} psi is specified.`;
  },
};

function neededPsi({member, spanFt}: Cell): number {
  return whenCut(member, spanFt).releaseStrengthNeededPsi;
}
