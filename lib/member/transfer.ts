import {holdDownShare} from "../prestress/layout.js";
import {LB_PER_KIP, feet} from "../units.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import {prestressState} from "./prestressState.js";
import {fiberStresses, type FiberStresses} from "./stress.js";
import {topSteelIn2} from "./topSteel.js";

/** Where the stresses right after transfer are looked at. */
export type TransferPlace = "end" | "hold-down" | "midspan";

/** Stresses at one place right after the strands are cut. */
export interface TransferStress {
  readonly place: TransferPlace;
  /** Place along the span, 0 to 1. */
  readonly share: number;
  readonly forceKip: number;
  readonly stresses: FiberStresses;
  /** Bonded bars that would take the whole tension of the top there, in2; 0 where it is in compression. */
  readonly topSteelIn2: number;
}

/** What transfer requires of the young concrete. */
export interface Transfer {
  /** Length over which the strands transfer their force to the concrete, in. */
  readonly transferLengthIn: number;
  /** Where the strands have transferred their force, at a hold-down off midspan, and at midspan. */
  readonly places: readonly TransferStress[];
  readonly end: TransferStress;
  readonly midspan: TransferStress;
  /** Release strength at which all compression limits would just hold, psi. */
  readonly releaseStrengthNeededPsi: number;
}

/** Allowed compression over f'ci at the ends and elsewhere (ACI 318-19 24.5.3.1). */
const COMPRESSION_SHARE = {"end": 0.7, "hold-down": 0.6, "midspan": 0.6} as const;

/** Transfer length of strand, in: (fse/3) db with fse in ksi (ACI 318-19 25.4.8.1). */
export function transferLengthIn(effectiveStressKsi: number, diameterIn: number): number {
  return (effectiveStressKsi / 3) * diameterIn;
}

/**
 * Stresses right after transfer at the end of the transfer length, at the hold-down points and at midspan, with the
 * member's own weight on its full span.
 */
export function transfer(member: Member, spanFt: number): Transfer {
  const middle = prestressState(member, spanFt, 0.5, 0);
  const lengthIn = transferLengthIn(middle.losses.effectiveStressKsi, member.layout.strand.diameterIn);
  const at = (place: TransferPlace, share: number): TransferStress => {
    // Stryker disable next-line ConditionalExpression: it saves working midspan out twice
    const state = share === 0.5 ? middle : prestressState(member, spanFt, share, 0);
    const precastKipIn = uniformMomentKipIn(member.selfWeightPlf, spanFt, share);
    const stresses = fiberStresses(member, state, state.initialForceKip, {precastKipIn, fullKipIn: 0});
    return {place, share, forceKip: state.initialForceKip, stresses, topSteelIn2: topSteelIn2(member, stresses)};
  };
  const end = at("end", Math.min(0.5, feet(lengthIn) / spanFt));
  const midspan = at("midspan", 0.5);
  const holdDown = holdDownShare(member.layout.profile);
  const places = holdDown < 0.5 ? [end, at("hold-down", holdDown), midspan] : [end, midspan];
  const releaseStrengthNeededPsi = Math.max(...places.map(({place, stresses}) =>
    (1000 * Math.max(stresses.bottomKsi, stresses.topKsi)) / COMPRESSION_SHARE[place]));
  return {transferLengthIn: lengthIn, places, end, midspan, releaseStrengthNeededPsi};
}

/** How many times a piece's own weight its strands pull with right after transfer. */
export function pullOverWeight(initialForceKip: number, member: Member, spanFt: number): number {
  return (initialForceKip * LB_PER_KIP) / (member.selfWeightPlf * spanFt);
}
