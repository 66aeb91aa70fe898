import {given} from "../../step.js";
import {prestressAt, stressesAllowed} from "../cell.js";
import {soffitMostPressed} from "../compression.js";
import {GATE_LOOK, type Gate} from "../limit.js";
import {UNIT_MOMENT, common, overAllowed} from "../limitSteps.js";

/** The strands compress the soffit of an empty floor no harder than is allowed for sustained compression: load relieves it, and none can be counted on. */
export const soffitCompressionLimit: Gate<"soffit compression"> = {
  name: "soffit compression", kind: "gate",
  clause: "ACI 318-19 24.5.4.1",
  asks: "Do the strands compress the soffit of an empty floor until creep runs away?",
  look: {letter: "E", ...GATE_LOOK},

  use: (cell) => soffitMostPressed(cell).stressKsi / stressesAllowed(cell).sustainedCompressionKsi,

  // The check of sustained compression looks at both faces.
  checks: () => [],

  measure(cell, use) {
    const {member} = cell;
    const {share} = soffitMostPressed(cell);
    const state = prestressAt(cell, share);
    const {b, L, s, w_o, w_sd} = common({cell}, share);
    return overAllowed(`(P / A + P * e / S_b - w_o * ${UNIT_MOMENT} / S_b - w_sd * ${UNIT_MOMENT} / S_bf) / f_c`, {
      P: given(state.effectiveForceKip, "kip", "effective prestress where it compresses the soffit hardest"), A: given(member.section.areaIn2, "in2", "area"),
      e: given(state.eccentricityIn, "in", "strands below the centroid"), S_b: given(member.section.sbIn3, "in3", "modulus of the member"),
      S_bf: given(member.full.sbIn3, "in3", "modulus of the full section"), b, L, s, w_o, w_sd,
      f_c: given(stressesAllowed(cell).sustainedCompressionKsi, "ksi", "compression that is allowed for years, 0.45 f'c"),
    }, use, soffitCompressionLimit.clause);
  },

  loses: () => "Carries the load, but its strands compress the soffit of an empty floor more than the code allows under sustained load.",
};
