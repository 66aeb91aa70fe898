import {atMost} from "../../checks.js";
import {CRACK_CONTROL_KSI, crackedStateAt} from "../../member/crackedSection.js";
import {ownPsf} from "../../member/member.js";
import {given} from "../../step.js";
import type {LoadLimit, Reached} from "../limit.js";
import {UNIT_MOMENT, allows, common} from "../limitSteps.js";
import {servicePlaces} from "../servicePlaces.js";

interface Here extends Reached {
  /** Moment of all load that stretches the strands as far as they may be, kip-in. */
  readonly momentKipIn: number;
}

/** The strands of a member that may crack are stretched as far as the width of cracks allows. */
export const crackControlLimit: LoadLimit<"crack control", Here> = {
  name: "crack control", kind: "load",
  clause: "ACI 318-19 24.3.2",
  asks: "Do the cracks of a class C member stay fine?",
  look: {letter: "K", line: "wide dashes", dash: "10 5", color: "steel"},
  applies: (_, {tensionClass}) => tensionClass === "C",

  reached(cell) {
    if (cell.rules.tensionClass !== "C") return undefined;
    const {member} = cell;
    let least: Here | undefined;
    for (const {state, perPsf} of servicePlaces(cell)) {
      const {momentKipIn} = crackedStateAt(member, state, CRACK_CONTROL_KSI.most);
      const psf = momentKipIn / perPsf - ownPsf(member);
      // Stryker disable next-line EqualityOperator: of two alike either does
      if (!least || psf < least.psf) least = {psf, share: state.share, momentKipIn};
    }
    return least;
  },

  checks: ({rules}, {service}) => (rules.tensionClass === "C" ? [atMost({
    id: "deck crack control", label: "Service moment against crack control", unit: "kip-in", clause: crackControlLimit.clause,
    holds: "On the cracked section the strands are stressed little enough to keep cracks fine.",
    fails: "On the cracked section the strands gain more than 36 ksi, and cracks open wide: more strands, a deeper member or a shorter span.",
  }, service.serviceMomentKipIn, service.crackControlKipIn)] : []),

  steps(limit, {share, momentKipIn}) {
    const {b, L, s, w_o} = common(limit, share);
    return [allows(limit, `M_c / ${UNIT_MOMENT} - w_o`, {
      M_c: given(momentKipIn, "kip-in", `moment that stretches the strands by ${CRACK_CONTROL_KSI.most} ksi`), b, L, s, w_o,
    }, {note: "The moment is found on the cracked section, by trial of its neutral axis."})];
  },
};
