import {atLeast} from "../../checks.js";
import {LASTING_MULTIPLIER} from "../../member/sagLimit.js";
import {given} from "../../step.js";
import {camberOf} from "../cell.js";
import type {LoadLimit, Reached} from "../limit.js";
import {common, lasting} from "../limitSteps.js";
import {lastingPsf} from "../loadOf.js";
import {sagPerPsfIn} from "./deflection.js";

interface Here extends Reached {
  /** The part of the load that lasts, psf. */
  readonly lastsPsf: number;
}

/** What stays for years leaves the member level. */
export const camberLimit: LoadLimit<"camber", Here> = {
  name: "camber", kind: "load", onRequest: true,
  clause: "common practice",
  asks: "Does it still arch, not sag, under sustained load in the long term?",
  look: {letter: "A", line: "dots far apart", dash: "2 6", color: "accent"},

  reached(cell) {
    const lastsPsf = cell.rules.superimposedDeadPsf + camberOf(cell).longTermIn / (LASTING_MULTIPLIER * sagPerPsfIn(cell));
    const psf = lastingPsf(lastsPsf, cell.rules);
    return psf === undefined ? undefined : {psf, share: 0.5, lastsPsf};
  },

  checks: (_, {service}) => [atLeast({
    id: "deck camber", label: "Camber under sustained load, long term", unit: "in", clause: camberLimit.clause,
    holds: "In the long term it still arches.",
    fails: "In the long term it sags: more strands, a deeper member or a shorter span.",
  }, service.lastingCamberIn, 0)],

  steps: (limit, {lastsPsf}) => [
    {
      symbol: "w_s", label: "lasting load at the limit", expression: `w_sd + d_4 / (${LASTING_MULTIPLIER} * k)`,
      values: {
        w_sd: common(limit).w_sd, d_4: given(camberOf(limit.cell).longTermIn, "in", "long-term camber"),
        k: given(sagPerPsfIn(limit.cell), "in", "immediate sag by one psf"),
      },
      result: lastsPsf, unit: "psf", source: "Martin 1977, multipliers",
    },
    lasting(limit, lastsPsf),
  ],
};
