import {atMost, type Check} from "../checks.js";
import {feet} from "../units.js";
import {allowables, type TensionClass} from "./allowables.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import {prestressState} from "./prestressState.js";
import {fibreStresses, type FibreStresses} from "./stress.js";

/** Stresses at one place right after the strands are cut. */
export interface TransferStress {
  readonly place: "end" | "midspan";
  /** Place along the span, 0 to 1. */
  readonly share: number;
  readonly forceKip: number;
  readonly stresses: FibreStresses;
}

/** What transfer asks of the young concrete. */
export interface Transfer {
  /** Length over which the strands hand their force to the concrete, in. */
  readonly transferLengthIn: number;
  /** Where the strands have handed over their force, and at midspan. */
  readonly end: TransferStress;
  readonly midspan: TransferStress;
  /** Release strength at which all compression limits would just hold, psi. */
  readonly releaseStrengthNeededPsi: number;
  readonly checks: readonly Check[];
}

/** Allowed compression over f'ci at the ends and elsewhere (ACI 318-19 24.5.3.1). */
const COMPRESSION_SHARE = {end: 0.7, midspan: 0.6} as const;

/** Transfer length of strand, in: (fse/3) db with fse in ksi (ACI 318-19 25.4.8.1). */
export function transferLengthIn(effectiveStressKsi: number, diameterIn: number): number {
  return (effectiveStressKsi / 3) * diameterIn;
}

/**
 * Stresses right after transfer at the end of the transfer length and at midspan, with the member's own weight on its
 * full span.
 */
export function transfer(member: Member, spanFt: number, tensionClass: TensionClass): Transfer {
  const middle = prestressState(member, spanFt, 0.5, 0);
  const lengthIn = transferLengthIn(middle.losses.effectiveStressKsi, member.layout.strand.diameterIn);
  const allowed = allowables(member, tensionClass);
  const at = (place: TransferStress["place"], share: number): TransferStress => {
    const state = share === 0.5 ? middle : prestressState(member, spanFt, share, 0);
    const precastKipIn = uniformMomentKipIn(member.selfWeightPlf, spanFt, share);
    return {
      place, share, forceKip: state.initialForceKip,
      stresses: fibreStresses(member, state, state.initialForceKip, {precastKipIn, fullKipIn: 0}),
    };
  };
  const end = at("end", Math.min(0.5, feet(lengthIn) / spanFt));
  const midspan = at("midspan", 0.5);
  const places = [end, midspan];
  const checks = places.flatMap(({place, stresses}): Check[] => {
    const nearEnd = place === "end";
    const where = nearEnd ? "at the end" : "at midspan";
    const compressionKsi = Math.max(stresses.bottomKsi, stresses.topKsi);
    const tensionKsi = Math.max(0, -Math.min(stresses.bottomKsi, stresses.topKsi));
    return [
      atMost({
        id: `transfer compression ${place}`, label: `Compression ${where} when the strands are cut`, unit: "ksi", clause: "ACI 318-19 24.5.3.1",
        holds: "The young concrete bears the strands' push.",
        fails: "The young concrete is squeezed too hard: ask for more release strength, fewer strands or depressed ones.",
      }, compressionKsi, nearEnd ? allowed.transferCompressionEndKsi : allowed.transferCompressionKsi),
      atMost({
        id: `transfer tension ${place}`, label: `Tension ${where} when the strands are cut`, unit: "ksi", clause: "ACI 318-19 24.5.3.2",
        holds: "The young concrete does not crack where the prestress pulls it.",
        fails: "The top would crack as the strands are cut: it needs bonded steel in the top, or strands depressed or fewer.",
      }, tensionKsi, nearEnd ? allowed.transferTensionEndKsi : allowed.transferTensionKsi),
    ];
  });
  const releaseStrengthNeededPsi = Math.max(...places.map(({place, stresses}) =>
    (1000 * Math.max(stresses.bottomKsi, stresses.topKsi)) / COMPRESSION_SHARE[place]));
  return {transferLengthIn: lengthIn, end, midspan, releaseStrengthNeededPsi, checks};
}
