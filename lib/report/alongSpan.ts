import type {DeckState} from "../deck/deckResult.js";
import {developmentOf, partlyDevelopedStrength} from "../member/development.js";
import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState} from "../member/prestressState.js";
import {builtUp, designShearKip, shearAt} from "../member/shear.js";
import {stirrups} from "../member/stirrups.js";
import {memberStrength} from "../member/strength.js";
import {fiberStresses} from "../member/stress.js";
import {centroidAt} from "../prestress/layout.js";
import {IN_PER_FT, feet} from "../units.js";

/** Stresses at one place of the span, ksi, compression positive. */
export interface StressesAlong {
  readonly xFt: number;
  readonly strandHeightIn: number;
  readonly forceAtTransferKip: number;
  readonly topAtTransferKsi: number;
  readonly bottomAtTransferKsi: number;
  readonly effectiveForceKip: number;
  readonly topDeadKsi: number;
  readonly bottomDeadKsi: number;
  readonly topSustainedKsi: number;
  readonly bottomSustainedKsi: number;
  readonly topServiceKsi: number;
  readonly bottomServiceKsi: number;
  readonly toppingTopServiceKsi?: number;
}

/** Moment and shear at one place of the span, required and carried. */
export interface StrengthAlong {
  readonly xFt: number;
  readonly factoredMomentKipIn: number;
  readonly designMomentKipIn: number;
  readonly nominalMomentKipIn: number;
  readonly phi: number;
  readonly factoredShearKip: number;
  readonly flexureShearKip: number;
  readonly webShearKip: number;
  readonly concreteShearKip: number;
  /** What the section may carry at most: its concrete, and in stems and beams as many stirrups as the code allows. */
  readonly designShearKip: number;
  readonly stirrupsForShearIn2PerFt: number;
  readonly leastStirrupsIn2PerFt: number;
}

/** Parts into which the span is cut. */
const PARTS = 20;

/** Places from end to end, ft, with the end of the transfer length among them. */
export function placesFt(spanFt: number, transferLengthIn: number): number[] {
  const regular = Array.from({length: PARTS + 1}, (_, i) => (i * spanFt) / PARTS);
  const transferFt = feet(transferLengthIn);
  const extra = transferFt < spanFt / 2 ? [transferFt, spanFt - transferFt] : [];
  return [...new Set([...regular, ...extra])].sort((a, b) => a - b);
}

/** Stresses along the span at transfer and in service, with the prestress built up over the transfer length. */
export function stressesAlong(member: Member, spanFt: number, state: DeckState): StressesAlong[] {
  const deadPlf = state.superimposedDeadPsf * member.widthFt;
  const livePlf = state.livePsf * member.widthFt;
  const ownPlf = member.selfWeightPlf + member.toppingWeightPlf;
  return placesFt(spanFt, state.transfer.transferLengthIn).map((xFt) => {
    const share = xFt / spanFt;
    const here = prestressState(member, spanFt, share, deadPlf);
    const {transferIn} = developmentOf(here.losses.effectiveStressKsi, here.losses.effectiveStressKsi, member.layout.strand.diameterIn);
    const fromEndIn = Math.min(xFt, spanFt - xFt) * IN_PER_FT;
    const grown = fromEndIn < transferIn ? fromEndIn / transferIn : 1;
    const unitKipIn = uniformMomentKipIn(1, spanFt, share);
    const at = (forceKip: number, precastPlf: number, fullPlf: number) =>
      fiberStresses(member, here, forceKip, {precastKipIn: precastPlf * unitKipIn, fullKipIn: fullPlf * unitKipIn});
    const forceAtTransferKip = grown * here.initialForceKip;
    const effectiveForceKip = grown * here.effectiveForceKip;
    const transfer = at(forceAtTransferKip, member.selfWeightPlf, 0);
    const [dead, sustained, service] = [0, state.criteria.sustainedLiveShare, 1].map((part) => at(effectiveForceKip, ownPlf, deadPlf + part * livePlf)) as
      [ReturnType<typeof at>, ReturnType<typeof at>, ReturnType<typeof at>];
    return {
      xFt, strandHeightIn: centroidAt(member.layout, share), forceAtTransferKip, topAtTransferKsi: transfer.topKsi, bottomAtTransferKsi: transfer.bottomKsi,
      effectiveForceKip, topDeadKsi: dead.topKsi, bottomDeadKsi: dead.bottomKsi, topSustainedKsi: sustained.topKsi, bottomSustainedKsi: sustained.bottomKsi,
      topServiceKsi: service.topKsi, bottomServiceKsi: service.bottomKsi,
      ...(service.toppingTopKsi === undefined ? {} : {toppingTopServiceKsi: service.toppingTopKsi}),
    };
  });
}

/**
 * Moment and shear along the span, factored and carried. At the very ends no strand is held yet, so those places are
 * left out.
 */
export function strengthAlong(member: Member, spanFt: number, state: DeckState): StrengthAlong[] {
  const deadPlf = state.superimposedDeadPsf * member.widthFt;
  const factoredPlf = state.factoredPsf * member.widthFt;
  const developed = memberStrength(member, 0.5, state.midspan.losses.effectiveStressKsi);
  return placesFt(spanFt, state.transfer.transferLengthIn).filter((xFt) => builtUp(member, Math.min(xFt, spanFt - xFt) * IN_PER_FT) > 0).map((xFt) => {
    const share = xFt / spanFt;
    const here = prestressState(member, spanFt, share, deadPlf);
    const strength = partlyDevelopedStrength(member, spanFt, here, developed);
    const shear = shearAt(member, spanFt, here);
    const factoredShearKip = (factoredPlf * Math.abs(spanFt / 2 - xFt)) / 1000;
    const steel = stirrups(member, shear, factoredShearKip);
    return {
      xFt, factoredMomentKipIn: uniformMomentKipIn(factoredPlf, spanFt, share), designMomentKipIn: strength.designMomentKipIn,
      nominalMomentKipIn: strength.nominalMomentKipIn, phi: strength.phi,
      factoredShearKip, flexureShearKip: shear.flexureShearKip, webShearKip: shear.webShearKip, concreteShearKip: shear.concreteKip,
      designShearKip: designShearKip(member, shear), stirrupsForShearIn2PerFt: steel.forShearIn2PerFt, leastStirrupsIn2PerFt: steel.leastIn2PerFt,
    };
  });
}
