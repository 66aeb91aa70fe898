import {atMost} from "../../checks.js";
import {shearSteps} from "../../member/shearSteps.js";
import {nearestShearShare, weakestShear, type ShearPlace} from "../../member/shearPlace.js";
import {prestressAt} from "../cell.js";
import {shearWords} from "../deckShear.js";
import type {LoadLimit, Reached} from "../limit.js";
import {endLoad} from "../limitSteps.js";
import {unfactoredPsf} from "../loadOf.js";

interface Here extends Reached {
  readonly place: ShearPlace;
}

/**
 * The factored shear reaches what a section may carry somewhere along the span. Stems are given the stirrups that they
 * need, up to the code's ceiling; a plank has only its concrete.
 */
export const shearLimit: LoadLimit<"shear", Here> = {
  name: "shear", kind: "load", handbook: true,
  clause: "ACI 318-19 22.5.6.3, 22.5.1.2, 7.6.3.1",
  asks: "Would a web tear along a slant near the ends?",
  look: {letter: "V", line: "short dashes", dash: "3 2.5", color: "load"},

  reached(cell) {
    const {member, spanFt, rules} = cell;
    const place = weakestShear(member, spanFt, nearestShearShare(member, spanFt), cell, prestressAt);
    const {share} = place.state;
    return {psf: unfactoredPsf(member, (place.designKip * 1000) / (spanFt * (0.5 - share) * member.widthFt), rules), share, place};
  },

  checks: ({member, spanFt}, deck) => [atMost({
    id: "deck shear", label: "Shear in the webs", unit: "kip", clause: shearLimit.clause,
    holds: shearWords(member, spanFt, deck.shear),
    fails: member.shape.family === "double tee"
      ? "The stems are too thin for the shear: a deeper member or a shorter span."
      : "The webs take no stirrups and are too thin for the shear: a shorter span, or tees, whose stems take stirrups.",
  }, deck.shear.factoredKip, deck.shear.designKip)],

  steps: (limit, {share, place: {state, strength, designKip}}) => [
    ...shearSteps(limit.cell.member, limit.cell.spanFt, state, strength), ...endLoad(limit, designKip, "V_d", "what webs may carry", share),
  ],
};
