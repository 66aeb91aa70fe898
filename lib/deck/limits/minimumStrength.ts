import {atLeast} from "../../checks.js";
import {ruptureModulusKsi} from "../../materials/concrete.js";
import {CRACKING_MARGIN, crackingMomentKipIn} from "../../member/minimumStrength.js";
import {uniformMomentKipIn} from "../../member/moments.js";
import {given, type Step} from "../../step.js";
import {crackingLoad, strengthLoad, type ReachedLoad} from "../beyondCracking.js";
import {prestressAt, strengthAt} from "../cell.js";
import type {LoadLimit, Reached} from "../limit.js";
import {UNIT_MOMENT, common, momentLoad} from "../limitSteps.js";
import {unfactoredPsf} from "../loadOf.js";

interface Here extends Reached {
  readonly cracking: ReachedLoad;
}

/**
 * Where strength lies less than a fifth above cracking, half of the load that it holds: there it is twice what is required
 * (ACI 318-19 9.6.2.2).
 */
export const minimumStrengthLimit: LoadLimit<"minimum strength", Here> = {
  name: "minimum strength", kind: "load",
  clause: "ACI 318-19 9.6.2",
  asks: "Would it crack and sag before it breaks?",
  look: {letter: "M", line: "wide dots", dash: "1.5 5", color: "ink"},

  reached(cell) {
    const {psf, share} = strengthLoad(cell);
    const cracking = crackingLoad(cell);
    // Stryker disable next-line EqualityOperator: no strength lies that much above cracking to the last digit
    return psf < CRACKING_MARGIN * cracking.psf ? {psf: unfactoredPsf(cell.member, psf / 2, cell.rules), share, cracking} : undefined;
  },

  checks: (_, {minimum}) => [atLeast({
    id: "minimum strength", label: "Strength beyond first cracking", unit: "psf", clause: "ACI 318-19 9.6.2.1, 9.6.2.2",
    holds: "The member would crack and sag long before it breaks.",
    fails: "The member could break as it first cracks: more strands, or a shallower member.",
  }, minimum.strength.psf, minimum.neededPsf)],

  steps(limit, {share, cracking}) {
    const {member, spanFt} = limit.cell;
    const {section, full} = member;
    const cracked = prestressAt(limit.cell, cracking.share);
    const moment: Step = {
      symbol: "M_cr", label: "moment that cracks the soffit", expression: "M_o + S_bf * (f_r + f_pe - M_o / S_b)",
      values: {
        M_o: given(uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, spanFt, cracking.share), "kip-in", "moment of member and topping"),
        S_b: given(section.sbIn3, "in3", "modulus of the member"), S_bf: given(full.sbIn3, "in3", "modulus of the full section"),
        f_r: given(ruptureModulusKsi(member.concrete), "ksi", "rupture modulus"),
        f_pe: given(cracked.effectiveForceKip * (1 / section.areaIn2 + cracked.eccentricityIn / section.sbIn3), "ksi", "compression in the soffit from the strands"),
      },
      result: crackingMomentKipIn(member, spanFt, cracked), unit: "kip-in", source: "ACI 318-19 24.2.3.9",
    };
    const {b, L, s} = common(limit, cracking.share);
    const cracks: Step = {
      symbol: "w_cr", label: "load that cracks the soffit, own weight included", expression: `M_cr / ${UNIT_MOMENT}`,
      values: {M_cr: given(moment.result, "kip-in", "moment that cracks the soffit"), b, L, s}, result: cracking.psf, unit: "psf", source: "statics",
      note: `Strength holds less than ${CRACKING_MARGIN} times as much, so half of what it holds counts.`,
    };
    return [moment, cracks, ...momentLoad(limit, strengthAt(limit.cell, share).designMomentKipIn, share, 2)];
  },
};
