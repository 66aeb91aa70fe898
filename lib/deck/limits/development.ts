import {atMost} from "../../checks.js";
import {developedStressKsi} from "../../member/development.js";
import {transferLengthIn} from "../../member/transfer.js";
import {given, type Step} from "../../step.js";
import {IN_PER_FT} from "../../units.js";
import {prestressAt} from "../cell.js";
import {developmentLoad} from "../developmentLoad.js";
import type {LoadLimit, Reached} from "../limit.js";
import {common, momentLoad} from "../limitSteps.js";
import {unfactoredPsf} from "../loadOf.js";

interface Here extends Reached {
  readonly designMomentKipIn: number;
}

/** The factored moment reaches the strength somewhere in the stretch where the strands take hold. */
export const developmentLimit: LoadLimit<"development", Here> = {
  name: "development", kind: "load", handbook: true,
  clause: "ACI 318-19 25.4.8, 21.2.3",
  asks: "Can the strands develop that stress so close to their ends?",
  look: {letter: "D", line: "long and short dashes", dash: "9 2.5 3 2.5", color: "ink"},

  reached(cell) {
    const {psf, share, strength} = developmentLoad(cell);
    return {psf: unfactoredPsf(cell.member, psf, cell.rules), share, designMomentKipIn: strength.designMomentKipIn};
  },

  checks: (_, {service}) => [atMost({
    id: "deck development", label: "Strength where the strands develop", unit: "kip-in", clause: developmentLimit.clause,
    holds: "Near the ends the strands can develop the stress that the load requires.",
    fails: "Near the ends the strands would slip before they develop the stress that the load requires: more strands, thinner ones, or a shorter span.",
  }, service.development.factoredMomentKipIn, service.development.strength.designMomentKipIn)],

  steps(limit, {share, designMomentKipIn}) {
    const {member, spanFt} = limit.cell;
    const {diameterIn} = member.layout.strand;
    const {effectiveStressKsi} = prestressAt(limit.cell, share).losses;
    const distanceIn = share * spanFt * IN_PER_FT;
    // Stryker disable next-line EqualityOperator: at the transfer length both give the effective stress
    const within = distanceIn < transferLengthIn(effectiveStressKsi, diameterIn);
    const {L, s} = common(limit, share);
    const f_se = given(effectiveStressKsi, "ksi", "effective prestress");
    const d_b = given(diameterIn, "in", "strand diameter");
    const reach: Step = {
      symbol: "f_d", label: "stress that bond can develop there",
      expression: within ? "f_se * 12 * L * s / (f_se / 3 * d_b)" : "f_se + (12 * L * s - f_se / 3 * d_b) / d_b",
      values: {f_se, L, s, d_b}, result: developedStressKsi(distanceIn, effectiveStressKsi, diameterIn), unit: "ksi", source: "ACI 318-19 25.4.8",
    };
    return [reach, ...momentLoad(limit, designMomentKipIn, share)];
  },
};
