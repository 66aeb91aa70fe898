import {ownPsf, type Member} from "../member/member.js";
import type {Rules} from "./rules.js";

/** The superimposed service load whose factored sum with the member's own weight is given, psf: the dead part first, then live. */
export function unfactoredPsf(member: Member, factoredPsf: number, rules: Rules): number {
  const own = ownPsf(member);
  const {superimposedDeadPsf: deadPsf, deadFactor, liveFactor, deadOnlyFactor} = rules;
  const deadOnlyPsf = factoredPsf / deadOnlyFactor - own;
  if (deadOnlyPsf < deadPsf) return deadOnlyPsf;
  return deadPsf + (factoredPsf - deadFactor * (own + deadPsf)) / liveFactor;
}

/** Load that no floor has, psf: thousands of feet of soil. */
const UNREACHED_PSF = 1e6;

/** The whole load whose lasting part (all dead and a share of live) is the given load, psf; undefined where none is. */
export function lastingPsf(sustainedPsf: number, rules: Rules): number | undefined {
  const {superimposedDeadPsf: deadPsf, sustainedLiveShare: share} = rules;
  if (sustainedPsf <= deadPsf) return sustainedPsf;
  const wholePsf = deadPsf + (sustainedPsf - deadPsf) / share;
  // Next to nothing that lasts is as good as nothing.
  // Stryker disable next-line EqualityOperator: no load meets it
  return wholePsf < UNREACHED_PSF ? wholePsf : undefined;
}
