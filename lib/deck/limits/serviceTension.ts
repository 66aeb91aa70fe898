import {atMost} from "../../checks.js";
import {TENSION_COEFFICIENT} from "../../member/allowables.js";
import {given} from "../../step.js";
import {stressesAllowed, type ServicePlace} from "../cell.js";
import type {LoadLimit, Reached} from "../limit.js";
import {UNIT_MOMENT, allows, common} from "../limitSteps.js";
import {ownStressSteps} from "../ownStressSteps.js";
import {servicePlaces} from "../servicePlaces.js";

interface Here extends Reached {
  readonly place: ServicePlace;
}

/** The soffit is in as much tension as its class allows under all load; class C may crack, and crack control and sag bound it instead. */
export const serviceTensionLimit: LoadLimit<"service tension", Here> = {
  name: "service tension", kind: "load", handbook: true,
  clause: "ACI 318-19 24.5.2.1",
  asks: "Does the soffit stay within its class under full load?",
  look: {letter: "T", line: "dashed", dash: "7 3", color: "steel"},
  applies: (_, {tensionClass}) => tensionClass !== "C",

  reached(cell) {
    if (cell.rules.tensionClass === "C") return undefined;
    const {serviceTensionKsi} = stressesAllowed(cell);
    const {sbIn3} = cell.member.full;
    const places = servicePlaces(cell);
    let at = places[0] as ServicePlace;
    let leastPsf = Infinity;
    for (const place of places) {
      const psf = (place.own.bottomKsi + serviceTensionKsi) / (place.perPsf / sbIn3);
      // Stryker disable next-line EqualityOperator: of two alike either does
      if (psf < leastPsf) {
        leastPsf = psf;
        at = place;
      }
    }
    return {psf: leastPsf, share: at.state.share, place: at};
  },

  checks: (cell, {soffit}) => (cell.rules.tensionClass === "C" ? [] : [atMost({
    id: "deck tension", label: "Tension in the soffit", unit: "ksi", clause: serviceTensionLimit.clause,
    holds: "Under full load the soffit stays within its class.",
    fails: "Under full load the soffit would crack more than its class allows: more strands, a deeper member or a shorter span.",
  }, Math.max(0, -soffit.bottomKsi), stressesAllowed(cell).serviceTensionKsi)]),

  steps(limit, {share, place}) {
    const {member, rules: {tensionClass}} = limit.cell;
    const {serviceTensionKsi} = stressesAllowed(limit.cell);
    const {b, L, s} = common(limit, share);
    return [
      ...ownStressSteps(limit, place, "bottom"),
      {
        symbol: "f_t", label: "tension that the class allows", expression: "k * sqrt(f_cprime) / 1000",
        values: {k: given(TENSION_COEFFICIENT[tensionClass], "", `coefficient of class ${tensionClass}`), f_cprime: given(member.concrete.strengthPsi, "psi", "concrete strength")},
        result: serviceTensionKsi, unit: "ksi", source: "ACI 318-19 24.5.2.1",
      },
      allows(limit, `(f_o + f_t) * S_bf / ${UNIT_MOMENT}`, {
        f_o: given(place.own.bottomKsi, "ksi", "stress before the superimposed load"), f_t: given(serviceTensionKsi, "ksi", "tension that the class allows"),
        S_bf: given(member.full.sbIn3, "in3", "modulus of the full section"), b, L, s,
      }),
    ];
  },
};
