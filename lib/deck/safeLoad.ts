import {requireNumber} from "../check.js";
import type {Member} from "../member/member.js";
import {prestressState} from "../member/prestressState.js";
import type {Criteria} from "./criteria.js";
import {failedGates} from "./gates.js";
import {LIMITS, type LimitName} from "./limits.js";
import {lower, type LoadsByLimit} from "./loadOf.js";
import {serviceLimits, stiffnessLimits} from "./serviceLimits.js";
import {bearingLimit, contactLimit, shearLimit} from "./shearLimits.js";
import {serviceShares, strengthShares} from "./shares.js";
import {developmentLimit, strengthLimits} from "./strengthLimits.js";

/** The safe superimposed service load of a member on a span. */
export interface SafeLoad {
  readonly spanFt: number;
  /** Least of the limits, psf; 0 where the member cannot even carry itself. */
  readonly safeLoadPsf: number;
  readonly governs: LimitName;
  /**
   * Superimposed load that each limit allows, psf; negative where dead load alone exceeds it. A limit that no load can
   * reach is absent: sustained compression where none of the live load stays, or a gate that the member passes. One
   * that it does not pass allows 0.
   */
  readonly limitsPsf: Limits;
}

/** Loads by limit. */
export type Limits = Readonly<LoadsByLimit>;

/** Spans that the methods are meant for, ft. */
export const SPAN_RANGE_FT = {min: 10, max: 150};

/**
 * The safe superimposed load, psf of floor: the load beyond the member's own weight and topping at which the first of
 * the criteria's limits is reached. Each is linear in the load between breaks, so each has a closed form.
 *
 * @throws InputError if the span is out of range
 */
export function safeLoad(member: Member, spanFt: number, criteria: Criteria): SafeLoad {
  requireNumber(spanFt, {path: "spanFt", label: "span", unit: "ft", ...SPAN_RANGE_FT});
  const limitsPsf: LoadsByLimit = {};
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  const counts = (name: LimitName) => criteria.limits.includes(name);
  if (counts("strength") || counts("minimum strength")) {
    for (const share of strengthShares(member)) strengthLimits(member, spanFt, prestressState(member, spanFt, share, deadPlf), criteria, limitsPsf);
  }
  if (counts("development")) lower(limitsPsf, "development", developmentLimit(member, spanFt, deadPlf, criteria));
  if (counts("shear")) lower(limitsPsf, "shear", shearLimit(member, spanFt, deadPlf, criteria));
  if (counts("horizontal shear")) lower(limitsPsf, "horizontal shear", contactLimit(member, spanFt, criteria));
  if (counts("bearing")) lower(limitsPsf, "bearing", bearingLimit(member, spanFt, criteria));
  for (const share of serviceShares(member)) serviceLimits(member, spanFt, prestressState(member, spanFt, share, deadPlf), criteria, limitsPsf);
  if (counts("deflection") || counts("camber")) stiffnessLimits(member, spanFt, deadPlf, criteria, limitsPsf);
  for (const gate of failedGates(member, spanFt, criteria)) limitsPsf[gate] = 0;
  return leastOf(limitsPsf, spanFt);
}

function leastOf(limitsPsf: Limits, spanFt: number): SafeLoad {
  let governs: LimitName | undefined;
  let leastPsf = Infinity;
  for (const name of LIMITS) {
    const valuePsf = limitsPsf[name];
    if (valuePsf !== undefined && valuePsf < leastPsf) {
      governs = name;
      leastPsf = valuePsf;
    }
  }
  return {spanFt, safeLoadPsf: Math.min(MOST_PSF, Math.max(0, leastPsf)), governs: governs ?? "strength", limitsPsf};
}

/** Load that is told where no limit counts, psf: no floor carries as much. */
const MOST_PSF = 9999;
