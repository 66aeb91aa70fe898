import {atMost} from "../../checks.js";
import {strengthSteps} from "../../member/strengthSteps.js";
import {strengthLoad} from "../beyondCracking.js";
import {prestressAt, strengthAt} from "../cell.js";
import type {LoadLimit} from "../limit.js";
import {momentLoad} from "../limitSteps.js";
import {unfactoredPsf} from "../loadOf.js";

/** The factored moment reaches the design strength somewhere along the span. */
export const strengthLimit: LoadLimit<"strength"> = {
  name: "strength", kind: "load", handbook: true,
  clause: "ACI 318-19 22.3, 21.2.2",
  asks: "Would it break in bending under the factored load?",
  look: {letter: "S", line: "solid", dash: undefined, color: "ink"},

  reached(cell) {
    const {psf, share} = strengthLoad(cell);
    return {psf: unfactoredPsf(cell.member, psf, cell.rules), share};
  },

  checks: (_, {factoredMomentKipIn, strength: {designMomentKipIn}}) => [atMost({
    id: "deck strength", label: "Strength in bending", unit: "kip-in", clause: strengthLimit.clause,
    holds: "The factored moment stays below the design strength.",
    fails: "The factored moment exceeds the design strength: more strands, a deeper member or a shorter span.",
  }, factoredMomentKipIn, designMomentKipIn)],

  steps(limit, {share}) {
    const found = strengthAt(limit.cell, share);
    return [...strengthSteps(limit.cell.member, prestressAt(limit.cell, share), found), ...momentLoad(limit, found.designMomentKipIn, share)];
  },
};
