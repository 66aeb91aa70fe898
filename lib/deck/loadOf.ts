import {ownPsf, type Member} from "../member/member.js";
import type {Criteria} from "./criteria.js";
import type {LimitName} from "./limits.js";

/** Superimposed load by limit, psf. */
export type LoadsByLimit = Partial<Record<LimitName, number>>;

/** The loads that limits allow while they are being found, with the least of them so far. */
export interface LoadsFound {
  readonly limitsPsf: LoadsByLimit;
  governs: LimitName;
  leastPsf: number;
}

/** Notes the load that a limit allows, once for each limit; one that no load reaches is undefined. */
export function note(found: LoadsFound, name: LimitName, valuePsf: number | undefined): void {
  if (valuePsf === undefined) return;
  found.limitsPsf[name] = valuePsf;
  if (valuePsf < found.leastPsf) {
    found.leastPsf = valuePsf;
    found.governs = name;
  }
}

/** The superimposed service load whose factored sum with the member's own weight is given, psf: the dead part first, then live. The factor of dead load alone is no less than the one beside live load. */
export function unfactoredPsf(member: Member, factoredPsf: number, criteria: Criteria): number {
  const own = ownPsf(member);
  const {superimposedDeadPsf: deadPsf, deadFactor, liveFactor, deadOnlyFactor} = criteria;
  const deadOnlyPsf = factoredPsf / deadOnlyFactor - own;
  if (deadOnlyPsf < deadPsf) return deadOnlyPsf;
  return deadPsf + (factoredPsf - deadFactor * (own + deadPsf)) / liveFactor;
}

/** Load that no floor has, psf: thousands of feet of soil. */
const UNREACHED_PSF = 1e6;

/** The whole load whose lasting part (all dead and a share of live) is the given load, psf; undefined where none is. */
export function lastingPsf(sustainedPsf: number, criteria: Criteria): number | undefined {
  const {superimposedDeadPsf: deadPsf, sustainedLiveShare: share} = criteria;
  if (sustainedPsf <= deadPsf) return sustainedPsf;
  const wholePsf = deadPsf + (sustainedPsf - deadPsf) / share;
  // Next to nothing that lasts is as good as nothing.
  return wholePsf < UNREACHED_PSF ? wholePsf : undefined;
}
