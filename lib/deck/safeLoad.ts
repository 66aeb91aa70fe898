import {requireNumber} from "../check.js";
import {allowables, type Allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {designShearKip, shearAt, shearShares, takesStirrups} from "../member/shear.js";
import {memberStrength} from "../member/strength.js";
import {fibreStresses} from "../member/stress.js";
import {holdDownShare} from "../prestress/layout.js";
import type {Criteria} from "./criteria.js";

/** Limits on the superimposed load, in the words that tables print. */
export const LIMITS = ["strength", "shear", "service tension", "sustained compression", "total compression"] as const;
export type LimitName = (typeof LIMITS)[number];

/** The safe superimposed service load of a member on a span. */
export interface SafeLoad {
  readonly spanFt: number;
  /** Least of the limits, psf; 0 where the member cannot even carry itself. */
  readonly safeLoadPsf: number;
  readonly governs: LimitName;
  /**
   * Superimposed load that each limit allows, psf; negative where dead load alone exceeds it. A limit that no load can
   * reach is absent: sustained compression, where none of the live load stays.
   */
  readonly limitsPsf: Limits;
}

/** Loads by limit; strength always has one. */
export type Limits = Readonly<Partial<Record<LimitName, number>>> & {readonly strength: number};

/** Spans that the methods are meant for, ft. */
export const SPAN_RANGE_FT = {min: 10, max: 150};

/**
 * The safe superimposed load, psf of floor: the load beyond the member's own weight and topping at which the first
 * limit is reached. Each limit is linear in the load between breaks, so each has a closed form.
 *
 * @throws InputError if the span is out of range
 */
export function safeLoad(member: Member, spanFt: number, criteria: Criteria): SafeLoad {
  requireNumber(spanFt, {path: "spanFt", label: "span", unit: "ft", ...SPAN_RANGE_FT});
  const limitsPsf: LoadsByLimit = {strength: Infinity};
  const allowed = allowables(member, criteria.tensionClass);
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  for (const share of strengthShares(member)) {
    lower(limitsPsf, "strength", strengthLimitPsf(member, spanFt, prestressState(member, spanFt, share, deadPlf), criteria));
  }
  // Stems are given the stirrups that they need; a plank has only its concrete.
  if (!takesStirrups(member)) lower(limitsPsf, "shear", shearLimitPsf(member, spanFt, deadPlf, criteria));
  for (const share of serviceShares(member)) {
    serviceLimits(member, spanFt, prestressState(member, spanFt, share, deadPlf), allowed, criteria, limitsPsf);
  }
  let governs: LimitName = "strength";
  let leastPsf = limitsPsf.strength;
  for (const name of LIMITS) {
    const valuePsf = limitsPsf[name];
    if (valuePsf !== undefined && valuePsf < leastPsf) {
      governs = name;
      leastPsf = valuePsf;
    }
  }
  return {spanFt, safeLoadPsf: Math.max(0, leastPsf), governs, limitsPsf};
}

const MIDSPAN = [0.5] as const;
/** Close enough together that the load found lies within 0.2 % of the least along the span. */
const AROUND_TWO_FIFTHS = [0.28, 0.32, 0.36, 0.4, 0.44, 0.48, 0.5] as const;

/**
 * Places at which the stresses of a simple span are looked at in service: midspan, and for depressed strands also the
 * stretch where the soffit loses its precompression faster than the load's moment falls.
 */
export function serviceShares(member: Member): readonly number[] {
  return member.layout.profile === "straight" ? MIDSPAN : AROUND_TWO_FIFTHS;
}

/**
 * Places at which strength may govern a simple span: midspan, and for depressed strands the place where strength falls
 * faster towards the ends than the moment does.
 *
 * With a lever arm d + k x and a moment that goes as x (1 - x), their ratio is least where x = r (sqrt(1 + 1/r) - 1),
 * r = d/k, or at the hold-down if that comes first. Being flat near its least, the ratio forgives the estimate of d.
 */
export function strengthShares(member: Member): readonly number[] {
  const {layout, compression} = member;
  if (layout.profile === "straight") return MIDSPAN;
  const holdDown = holdDownShare(layout.profile);
  const slopeIn = (layout.centroidEndIn - layout.centroidCentreIn) / holdDown;
  if (slopeIn <= 0) return [holdDown, 0.5];
  const r = Math.max(0.05, (0.95 * compression.depthIn - layout.centroidEndIn) / slopeIn);
  return [Math.min(holdDown, r * (Math.sqrt(1 + 1 / r) - 1)), 0.5];
}

/** Load at which the factored moment reaches the design strength. */
function strengthLimitPsf(member: Member, spanFt: number, state: PrestressState, criteria: Criteria): number {
  const {designMomentKipIn} = memberStrength(member, state.share, state.losses.effectiveStressKsi);
  return unfactoredPsf(member, designMomentKipIn / (uniformMomentKipIn(1, spanFt, state.share) * member.widthFt), criteria);
}

/** Load at which the factored shear reaches the design strength somewhere along the span. */
function shearLimitPsf(member: Member, spanFt: number, deadPlf: number, criteria: Criteria): number {
  let leastPsf = Infinity;
  for (const share of shearShares(member, spanFt)) {
    const capacityKip = designShearKip(member, shearAt(member, spanFt, prestressState(member, spanFt, share, deadPlf)));
    leastPsf = Math.min(leastPsf, (capacityKip * 1000) / (spanFt * (0.5 - share) * member.widthFt));
  }
  return unfactoredPsf(member, leastPsf, criteria);
}

/** The superimposed service load whose factored sum with the member's own weight is given, the dead part first, then live. */
function unfactoredPsf(member: Member, strengthPsf: number, criteria: Criteria): number {
  const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
  const {superimposedDeadPsf: deadPsf, deadFactor, liveFactor, deadOnlyFactor} = criteria;
  const deadOnlyPsf = strengthPsf / deadOnlyFactor - ownPsf;
  if (deadOnlyPsf < deadPsf) return deadOnlyPsf;
  const freePsf = strengthPsf - deadFactor * (ownPsf + deadPsf);
  return freePsf >= 0 ? deadPsf + freePsf / liveFactor : deadPsf + freePsf / deadFactor;
}

/** Loads at which a face reaches its allowed stress in service; updates the least of each. */
function serviceLimits(
  member: Member, spanFt: number, state: PrestressState, allowed: Allowables, criteria: Criteria, limitsPsf: LoadsByLimit,
): void {
  const {full, composite} = member;
  const unitKipIn = uniformMomentKipIn(1, spanFt, state.share);
  const own = fibreStresses(member, state, state.effectiveForceKip, {
    precastKipIn: (member.selfWeightPlf + member.toppingWeightPlf) * unitKipIn, fullKipIn: 0,
  });
  // Stress per psf of superimposed load at each face.
  const perPsf = unitKipIn * member.widthFt;
  const bottom = perPsf / full.sbIn3;
  const top = (perPsf * (composite ? composite.interfaceAboveCentroidIn : full.ytIn)) / full.inertiaIn4;
  lower(limitsPsf, "service tension", (own.bottomKsi + allowed.serviceTensionKsi) / bottom);
  if (top > 0) {
    lower(limitsPsf, "total compression", (allowed.totalCompressionKsi - own.topKsi) / top);
    lower(limitsPsf, "sustained compression", sustained((allowed.sustainedCompressionKsi - own.topKsi) / top, criteria));
  }
  if (composite && allowed.toppingTotalKsi && allowed.toppingSustainedKsi) {
    const toppingTop = (composite.modularRatio * perPsf) / composite.stIn3;
    lower(limitsPsf, "total compression", allowed.toppingTotalKsi / toppingTop);
    lower(limitsPsf, "sustained compression", sustained(allowed.toppingSustainedKsi / toppingTop, criteria));
  }
}

/** The whole load whose sustained part (all dead and a share of live) is the given load; undefined where none is. */
function sustained(sustainedPsf: number, criteria: Criteria): number | undefined {
  const {superimposedDeadPsf: deadPsf, sustainedLiveShare: share} = criteria;
  if (sustainedPsf <= deadPsf) return sustainedPsf;
  return share > 0 ? deadPsf + (sustainedPsf - deadPsf) / share : undefined;
}

type LoadsByLimit = Partial<Record<LimitName, number>> & {strength: number};

function lower(limitsPsf: LoadsByLimit, name: LimitName, valuePsf: number | undefined): void {
  if (valuePsf !== undefined && valuePsf < (limitsPsf[name] ?? Infinity)) limitsPsf[name] = valuePsf;
}
