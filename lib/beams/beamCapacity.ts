import {requireNumber} from "../check.js";
import {SPAN_RANGE_FT} from "../deck/safeLoad.js";
import {allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {nearestShearShare, weakestShear} from "../member/shearPlace.js";
import {memberStrength} from "../member/strength.js";
import {fiberStresses} from "../member/stress.js";
import {transfer, type Transfer} from "../member/transfer.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import type {FlexuralStrength} from "../member/flexure.js";
import type {BeamCriteria} from "./beamCriteria.js";

/** Limits on the superimposed load of a beam, in the words that tables print. */
export const BEAM_LIMITS = ["strength", "shear", "service tension", "sustained compression", "total compression"] as const;
export type BeamLimit = (typeof BEAM_LIMITS)[number];

/** The safe superimposed service load of a prestressed beam on a span. */
export interface BeamCapacity {
  readonly spanFt: number;
  /** Least of the limits, plf; 0 where the beam cannot even carry itself. */
  readonly safeLoadPlf: number;
  /** The same as a table prints it: rounded down to the criteria's step. */
  readonly tabulatedPlf: number;
  readonly governs: BeamLimit;
  /**
   * Superimposed load that each limit allows, plf; negative where the beam's own weight alone exceeds it. Sustained
   * compression is absent where none of the load stays.
   */
  readonly limitsPlf: Readonly<Partial<Record<BeamLimit, number>>>;
  /** Prestress and strength at midspan under the safe load. */
  readonly state: PrestressState;
  readonly strength: FlexuralStrength;
  /** Stresses when the strands are cut; the handbook's tables let the top's tension pass and require steel in the top. */
  readonly transfer: Transfer;
}

/**
 * The safe superimposed load, plf of beam: the load beyond the beam's own weight at which the first limit is reached.
 *
 * For a given prestress every limit has a closed form. Where the losses are computed, the load's dead part relieves
 * creep and so changes the prestress: each limit is then met together with the prestress that goes with it.
 *
 * Shear is held against what the concrete and as many stirrups as the code allows can carry (ACI 318-19 22.5.1.2), at
 * the support of a beam with ledges, because its load hangs low (9.4.3.2), and from half the depth on otherwise.
 *
 * @throws InputError if the span or a criterion is out of range
 */
export function beamCapacity(member: Member, spanFt: number, criteria: BeamCriteria): BeamCapacity {
  requireNumber(spanFt, {path: "spanFt", label: "span", unit: "ft", ...SPAN_RANGE_FT});
  checkCriteria(criteria);
  const under: Under = (share, loadPlf) => stateUnder(member, spanFt, share, loadPlf, criteria);
  const limitsPlf: Partial<Record<BeamLimit, number>> = {};
  for (const name of BEAM_LIMITS) {
    const limit = LIMITS[name](member, spanFt, criteria, under);
    if (limit) limitsPlf[name] = meeting(limit);
  }
  let governs: BeamLimit = "strength";
  // Stryker disable next-line EqualityOperator: of two limits alike either governs
  for (const name of BEAM_LIMITS) if ((limitsPlf[name] ?? Infinity) < (limitsPlf[governs] as number)) governs = name;
  const safeLoadPlf = Math.max(0, limitsPlf[governs] as number);
  const state = under(0.5, safeLoadPlf);
  return {
    spanFt, safeLoadPlf, governs, limitsPlf, state,
    tabulatedPlf: criteria.tableStepPlf * Math.floor(safeLoadPlf / criteria.tableStepPlf),
    strength: memberStrength(member, 0.5, state.losses.effectiveStressKsi),
    transfer: transfer(member, spanFt),
  };
}

function checkCriteria(criteria: BeamCriteria): void {
  const share = {unit: "", min: 0, max: 1};
  requireNumber(criteria.deadShare, {path: "deadShare", label: "dead part of the load", ...share});
  requireNumber(criteria.sustainedLiveShare, {path: "sustainedLiveShare", label: "sustained part of live load", ...share});
  requireNumber(criteria.tableStepPlf, {path: "tableStepPlf", label: "step of the table", unit: "plf", min: 1, max: 1000});
  if (criteria.assumedEffectiveStressKsi !== undefined) {
    requireNumber(criteria.assumedEffectiveStressKsi, {path: "assumedEffectiveStressKsi", label: "effective prestress", unit: "ksi", min: 100, max: 200});
  }
}

/** The prestress at a place under a superimposed load, plf. */
type Under = (share: number, loadPlf: number) => PrestressState;

/** The prestress by computed losses, or the assumed one, of which the parts by cause are then not known. */
function stateUnder(member: Member, spanFt: number, share: number, loadPlf: number, criteria: BeamCriteria): PrestressState {
  const state = prestressState(member, spanFt, share, Math.max(0, criteria.deadShare * loadPlf));
  const assumedKsi = criteria.assumedEffectiveStressKsi;
  if (assumedKsi === undefined) return state;
  return {
    ...state,
    effectiveForceKip: member.layout.areaIn2 * assumedKsi,
    losses: {...state.losses, totalKsi: JACKING_STRESS_KSI - assumedKsi, effectiveStressKsi: assumedKsi},
  };
}

/** The load that a limit allows with the prestress that goes with another load, plf. */
type Limit = (loadPlf: number) => number;

const LIMITS: Readonly<Record<BeamLimit, (member: Member, spanFt: number, criteria: BeamCriteria, under: Under) => Limit | undefined>> = {
  "strength": (member, spanFt, criteria, under) => (loadPlf) => {
    const {designMomentKipIn} = memberStrength(member, 0.5, under(0.5, loadPlf).losses.effectiveStressKsi);
    return unfactoredPlf(member, designMomentKipIn / uniformMomentKipIn(1, spanFt, 0.5), criteria);
  },
  "shear": (member, spanFt, criteria, under) => {
    const hungLow = member.shape.family === "inverted tee" || member.shape.family === "L-beam";
    const fromShare = hungLow ? 0 : nearestShearShare(member, spanFt);
    return (loadPlf) => {
      const {state, designKip} = weakestShear(member, spanFt, fromShare, loadPlf, (plf, share) => under(share, plf));
      return unfactoredPlf(member, (1000 * designKip) / (spanFt * (0.5 - state.share)), criteria);
    };
  },
  "service tension": (member, spanFt, {tensionClass}, under) => (loadPlf) => {
    const allowedKsi = allowables(member, tensionClass).serviceTensionKsi;
    return (ownStresses(member, spanFt, under(0.5, loadPlf)).bottomKsi + allowedKsi) * (member.section.sbIn3 / uniformMomentKipIn(1, spanFt, 0.5));
  },
  "sustained compression": (member, spanFt, criteria, under) => {
    const share = criteria.deadShare + criteria.sustainedLiveShare * (1 - criteria.deadShare);
    if (share === 0) return undefined;
    return (loadPlf) => {
      const stayingPlf = topLimitPlf(member, spanFt, under(0.5, loadPlf), allowables(member, criteria.tensionClass).sustainedCompressionKsi);
      // Below nothing there is no load of which a part could stay; own weight is then too much by that much.
      // Stryker disable next-line EqualityOperator: no part of nothing is nothing
      return stayingPlf > 0 ? stayingPlf / share : stayingPlf;
    };
  },
  "total compression": (member, spanFt, {tensionClass}, under) => (loadPlf) =>
    topLimitPlf(member, spanFt, under(0.5, loadPlf), allowables(member, tensionClass).totalCompressionKsi),
};

/** Stresses at midspan under the beam's own weight, after all losses. */
function ownStresses(member: Member, spanFt: number, state: PrestressState) {
  const precastKipIn = uniformMomentKipIn(member.selfWeightPlf, spanFt, 0.5);
  return fiberStresses(member, state, state.effectiveForceKip, {precastKipIn, fullKipIn: 0});
}

/** Load beyond the beam's own weight that brings the top to an allowed compression. */
function topLimitPlf(member: Member, spanFt: number, state: PrestressState, allowedKsi: number): number {
  return (allowedKsi - ownStresses(member, spanFt, state).topKsi) * (member.section.stIn3 / uniformMomentKipIn(1, spanFt, 0.5));
}

/** The superimposed service load whose factored sum with the beam's own weight is given, by the combination that governs. */
function unfactoredPlf(member: Member, factoredPlf: number, criteria: BeamCriteria): number {
  const {deadShare, deadFactor, liveFactor, deadOnlyFactor} = criteria;
  const ownPlf = member.selfWeightPlf;
  const aloneFactor = Math.max(deadFactor, deadOnlyFactor);
  // Stryker disable next-line EqualityOperator: the two meet there
  if (factoredPlf < aloneFactor * ownPlf) return factoredPlf / aloneFactor - ownPlf;
  const withLivePlf = (factoredPlf - deadFactor * ownPlf) / (deadFactor * deadShare + liveFactor * (1 - deadShare));
  // Stryker disable next-line ConditionalExpression,EqualityOperator: over a share of 0 the second is infinite
  return deadShare > 0 ? Math.min(withLivePlf, (factoredPlf / deadOnlyFactor - ownPlf) / deadShare) : withLivePlf;
}

/** Accuracy of the load at which a limit is met, plf. */
const ACCURACY_PLF = 1e-9;

/**
 * The load that a limit allows with its own prestress: where limit(load) = load. More load changes the prestress, and
 * that the limit, by a small part of itself, so putting the limit in for the load comes nearer each time; secants hasten it.
 */
function meeting(limit: Limit): number {
  // Stryker disable all: where it begins and what it steps by change how soon it ends and not where
  let beforePlf = 0;
  let beforeGap = limit(0);
  let loadPlf = beforeGap;
  for (let i = 0; i < 50; i++) {
    const gap = limit(loadPlf) - loadPlf;
    if (Math.abs(gap) <= ACCURACY_PLF * Math.max(1, Math.abs(loadPlf))) break;
    const nextPlf = loadPlf - (gap * (loadPlf - beforePlf)) / (gap - beforeGap);
    beforePlf = loadPlf;
    beforeGap = gap;
    loadPlf = nextPlf;
  }
  // Stryker restore all
  return loadPlf;
}
