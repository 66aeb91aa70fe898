import {HANDLED_CLAUSE, handledChecks} from "../../member/handledChecks.js";
import {handled, type Handled} from "../../member/stripping.js";
import {given} from "../../step.js";
import type {Cell} from "../cell.js";
import {GATE_LOOK, type Gate} from "../limit.js";
import {overAllowed} from "../limitSteps.js";

/** The piece can be lifted from its form, and hauled, without extra steel in its top. */
export const strippingLimit: Gate<"stripping"> = {
  name: "stripping", kind: "gate",
  clause: HANDLED_CLAUSE,
  asks: "Can it be lifted and hauled without extra steel in its top?",
  look: {letter: "P", ...GATE_LOOK},

  use: (cell) => Math.max(...moments(cell).map(usedOf)),

  checks: (_, {service}) => [
    ...handledChecks(service.stripping),
    ...handledChecks(service.onTheRoad),
  ],

  measure(cell, use) {
    const [form, road] = moments(cell);
    return overAllowed("max(t_1 / t_a, c_1 / c_a, t_2 / t_b, c_2 / c_b)", {
      t_1: given(form.tensionKsi, "ksi", "tension when lifted from the form"), t_a: given(form.allowedTensionKsi, "ksi", "tension allowed then"),
      c_1: given(form.compressionKsi, "ksi", "compression when lifted from the form"), c_a: given(form.allowedCompressionKsi, "ksi", "compression allowed then"),
      t_2: given(road.tensionKsi, "ksi", "tension on the road"), t_b: given(road.allowedTensionKsi, "ksi", "tension allowed on the road"),
      c_2: given(road.compressionKsi, "ksi", "compression on the road"), c_b: given(road.allowedCompressionKsi, "ksi", "compression allowed on the road"),
    }, use, "ACI 318-19 24.5.3.1; PCI Design Handbook, 7th ed., ch. 8 (from memory)");
  },
};

function moments({member, spanFt}: Cell): readonly [form: Handled, road: Handled] {
  return [handled(member, spanFt, "stripping"), handled(member, spanFt, "hauling")];
}

function usedOf({tensionKsi, allowedTensionKsi, compressionKsi, allowedCompressionKsi}: Handled): number {
  return Math.max(tensionKsi / allowedTensionKsi, compressionKsi / allowedCompressionKsi);
}
