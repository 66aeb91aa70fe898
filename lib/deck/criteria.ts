import {DEAD_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import type {TensionClass} from "../member/allowables.js";

/** By what rules a safe superimposed load is found. */
export interface Criteria {
  /** Part of the superimposed load that is dead, psf; the rest is live. */
  readonly superimposedDeadPsf: number;
  /** Part of the live load that stays for years, 0 to 1. */
  readonly sustainedLiveShare: number;
  readonly tensionClass: TensionClass;
  readonly deadFactor: number;
  readonly liveFactor: number;
  /** Factor of the combination without live load. */
  readonly deadOnlyFactor: number;
}

/**
 * The criteria of the trade handbook's load tables: 10 psf of the safe load dead for untopped members and 15 psf for
 * topped ones, the rest live; 1.2D + 1.6L and no other combination; tension to 12 sqrt(f'c) (the last from memory).
 */
export function handbookCriteria(topped: boolean): Criteria {
  return {
    superimposedDeadPsf: topped ? 15 : 10,
    sustainedLiveShare: 0,
    tensionClass: "T",
    deadFactor: DEAD_FACTOR,
    liveFactor: LIVE_FACTOR,
    deadOnlyFactor: DEAD_FACTOR,
  };
}

/** Relative humidity of the handbook's examples, %; its load tables do not print theirs. */
export const HANDBOOK_HUMIDITY_PERCENT = 70;
/** Strengths of the handbook's tables, psi: member, at release, and topping (the last two from memory). */
export const HANDBOOK_STRENGTHS_PSI = {member: 5000, release: 3500, topping: 3000} as const;
