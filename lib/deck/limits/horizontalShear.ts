import {atMost} from "../../checks.js";
import {CONTACT_STRENGTH_PSI, contactDepthIn, horizontalShearKip} from "../../member/horizontalShear.js";
import {SHEAR_PHI} from "../../member/shear.js";
import {nearestShearShare} from "../../member/shearPlace.js";
import {given, type Step} from "../../step.js";
import type {LoadLimit, Reached} from "../limit.js";
import {endLoad} from "../limitSteps.js";
import {unfactoredPsf} from "../loadOf.js";

interface Here extends Reached {
  readonly capacityKip: number;
}

/** The contact with the topping would slip near the ends; without topping there is none. */
export const horizontalShearLimit: LoadLimit<"horizontal shear", Here> = {
  name: "horizontal shear", kind: "load",
  clause: "ACI 318-19 16.4",
  asks: "Would the topping slip on the member?",
  look: {letter: "H", line: "dash and two dots", dash: "7 2.5 1.5 2.5 1.5 2.5", color: "load"},
  applies: ({topping}) => topping !== undefined,

  reached({member, spanFt, rules}) {
    const capacityKip = horizontalShearKip(member);
    if (capacityKip === undefined) return undefined;
    const share = nearestShearShare(member, spanFt);
    return {psf: unfactoredPsf(member, (capacityKip * 1000) / (spanFt * (0.5 - share) * member.widthFt), rules), share, capacityKip};
  },

  checks: (_, {service: {contact}}) => (contact ? [atMost({
    id: "deck contact", label: "Shear between member and topping", unit: "kip", clause: horizontalShearLimit.clause,
    holds: "A clean, roughened surface transfers the shear without ties.",
    fails: "The topping would slip: ties across the interface are needed.",
  }, contact.factoredKip, contact.designKip)] : []),

  steps(limit, {share, capacityKip}) {
    const {member} = limit.cell;
    const strength: Step = {
      symbol: "V_h", label: "shear that the interface can transfer", expression: `${SHEAR_PHI} * ${CONTACT_STRENGTH_PSI} * b_v * d / 1000`,
      // Stryker disable next-line OptionalChaining,LogicalOperator: without topping nothing is reached, and no step asked for
      values: {b_v: given(member.topping?.widthIn ?? 0, "in", "width of the interface"), d: given(contactDepthIn(member), "in", "depth to the strands, at least 0.8 h")},
      result: capacityKip, unit: "kip", source: "ACI 318-19 16.4.4.2",
    };
    return [strength, ...endLoad(limit, capacityKip, "V_h", "what the interface can transfer", share)];
  },
};
