import {atMost} from "../../checks.js";
import {bearingStrengthKip, bearingWidthIn} from "../../member/endBearing.js";
import {given, type Step} from "../../step.js";
import type {LoadLimit, Reached} from "../limit.js";
import {endLoad} from "../limitSteps.js";
import {unfactoredPsf} from "../loadOf.js";

interface Here extends Reached {
  readonly capacityKip: number;
}

/** The concrete of an end would crush on its seat. */
export const bearingLimit: LoadLimit<"bearing", Here> = {
  name: "bearing", kind: "load", handbook: true,
  clause: "ACI 318-19 22.8.3",
  asks: "Would its ends crush on their seats?",
  look: {letter: "B", line: "short dashes far apart", dash: "3 5", color: "load"},

  reached({member, spanFt, rules}) {
    const capacityKip = bearingStrengthKip(member, rules.seatIn);
    return {psf: unfactoredPsf(member, (capacityKip * 2000) / (spanFt * member.widthFt), rules), share: 0, capacityKip};
  },

  checks: (_, {service}) => [atMost({
    id: "deck bearing", label: "Bearing of the ends on their seats", unit: "kip", clause: bearingLimit.clause,
    holds: "The ends can take their reaction.",
    fails: "The ends would crush on their seats: a longer seat, or stronger concrete in the deck.",
  }, service.bearing.factoredKip, service.bearing.designKip)],

  steps(limit, {capacityKip}) {
    const {member, rules} = limit.cell;
    const strength: Step = {
      symbol: "B", label: "reaction that one end can take", expression: "0.65 * 0.85 * f_cprime * b_w * l_s / 1000",
      values: {
        f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength"), b_w: given(bearingWidthIn(member), "in", "width that bears on the seat"),
        l_s: given(rules.seatIn, "in", "length of the seat"),
      },
      result: capacityKip, unit: "kip", source: "ACI 318-19 22.8.3.2",
    };
    return [strength, ...endLoad(limit, capacityKip, "B", "reaction that one end can take", 0)];
  },
};
