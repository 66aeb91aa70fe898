import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import type {TensionClass} from "../design/design.js";

/** By what rules the safe superimposed load of a prestressed beam is found. */
export interface BeamCriteria {
  /** Part of the superimposed load that is dead, 0 to 1; the rest is live. */
  readonly deadShare: number;
  /** Part of the live load that stays for years, 0 to 1. */
  readonly sustainedLiveShare: number;
  readonly tensionClass: TensionClass;
  readonly deadFactor: number;
  readonly liveFactor: number;
  /** Factor of the combination without live load. */
  readonly deadOnlyFactor: number;
  /** Effective prestress assumed, ksi, 100 to 200; undefined where the losses are computed. */
  readonly assumedEffectiveStressKsi: number | undefined;
  /** Step to which a table rounds its loads down, plf, above 0. */
  readonly tableStepPlf: number;
}

/**
 * Effective prestress behind the handbook's load tables of beams, ksi: not printed there, and found from its cells (see
 * the methods page). Losses of the component method would leave 174 to 180 ksi.
 */
export const HANDBOOK_EFFECTIVE_STRESS_KSI = 150;
/** Step of the handbook's load tables of beams, plf; its cells agree with each other only if they were rounded down. */
export const HANDBOOK_STEP_PLF = 10;

/**
 * The criteria of the trade handbook's load tables of beams: half of the load dead and half live, 1.2D + 1.6L and no
 * other combination, tension to 12 sqrt(f'c) (PCI Design Handbook, MNL-120, ch. 3, explanation of tables; the last from
 * memory).
 */
export function handbookBeamCriteria(): BeamCriteria {
  return {
    deadShare: 0.5,
    sustainedLiveShare: 0,
    tensionClass: "T",
    deadFactor: DEAD_FACTOR,
    liveFactor: LIVE_FACTOR,
    deadOnlyFactor: DEAD_FACTOR,
    assumedEffectiveStressKsi: HANDBOOK_EFFECTIVE_STRESS_KSI,
    tableStepPlf: HANDBOOK_STEP_PLF,
  };
}

/** The criteria for a beam of one's own: a given mix of loads, both combinations, and the losses as computed. */
export function ownBeamCriteria(deadShare: number, sustainedLiveShare: number): BeamCriteria {
  return {
    ...handbookBeamCriteria(), deadShare, sustainedLiveShare, deadOnlyFactor: DEAD_ONLY_FACTOR, assumedEffectiveStressKsi: undefined,
  };
}
