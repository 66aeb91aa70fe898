import {NEAR, type Verdict} from "../checks.js";
import type {Criteria} from "../deck/criteria.js";
import {gateUse} from "../deck/gates.js";
import {LIMITS, LOAD_LIMITS, limitNamed, type LimitName} from "../deck/limits.js";
import {safeLoad} from "../deck/safeLoad.js";
import type {Member} from "../member/member.js";

/** One limit on a member: what load it allows, and how much of it the given load uses. */
export interface LimitUse {
  readonly name: LimitName;
  readonly clause: string;
  /** Whether it is one of the criteria's, or given for information. */
  readonly counts: boolean;
  /** Superimposed load that it allows, psf; null where no load reaches it, and for gates. */
  readonly allowedPsf: number | null;
  /** Required load over allowed load; for a gate demand over capacity; null where the limit does not apply. */
  readonly utilization: number | null;
  readonly verdict: Verdict | "does not apply";
}

/** Largest utilization that is reported: what has no capacity at all is far beyond every limit. */
const BEYOND = 99;

/** Said of a limit that asks nothing here. */
const NONE = {utilization: null, verdict: "does not apply"} as const;

/**
 * Every limit with the load that it allows and how much of it is used.
 *
 * @param demandPsf - superimposed dead and live load, psf
 */
export function limitUses(member: Member, spanFt: number, criteria: Criteria, demandPsf: number): LimitUse[] {
  const {limitsPsf} = safeLoad(member, spanFt, {...criteria, limits: LOAD_LIMITS});
  return LIMITS.map((name): LimitUse => {
    const {clause, kind} = limitNamed(name);
    const base = {name, clause, counts: criteria.limits.includes(name)};
    if (kind === "gate") {
      const use = gateUse(name, member, spanFt, criteria);
      return {...base, allowedPsf: null, ...(use === undefined ? NONE : {utilization: use, verdict: verdictOf(use)})};
    }
    const allowedPsf = limitsPsf[name];
    if (allowedPsf === undefined) return {...base, allowedPsf: null, ...NONE};
    const utilization = allowedPsf > 0 ? Math.min(BEYOND, demandPsf / allowedPsf) : demandPsf > allowedPsf ? BEYOND : 0;
    return {...base, allowedPsf, utilization, verdict: verdictOf(utilization)};
  });
}

function verdictOf(utilization: number): Verdict {
  return utilization > 1 + 1e-9 ? "fails" : utilization >= NEAR ? "near" : "ok";
}
