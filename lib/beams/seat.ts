import {requireNumber} from "../check.js";
import {atLeast, type Check} from "../checks.js";
import {IN_PER_FT} from "../units.js";
import {LEAST_SET_BACK_IN} from "./bearing.js";

/** One thing that may shorten the seat, in. */
export interface SeatLoss {
  readonly name: string;
  readonly lossIn: number;
}

/** The seat of a deck member on a ledge, along the member. */
export interface SeatInput {
  readonly ledgeProjectionIn: number;
  /** Web's face to the end of the deck member, in. */
  readonly jointGapIn: number;
  /** Clear span of the deck member, ft. */
  readonly spanFt: number;
  /** Length of the beam, ft: its sweep grows with it. */
  readonly beamSpanFt: number;
  /** Whether the deck member has stems. */
  readonly stemmed: boolean;
  /** Pad along the member, in, where there is one. */
  readonly padLengthIn?: number | undefined;
  /** What the deck sits on, for the checks' words; a ledge if it is not given. */
  readonly support?: "ledge" | "pocket" | "beam";
}

/** How much seat there is, and how much of it the tolerances may take. */
export interface Seat {
  /** Deck on the ledge if every piece is as drawn, in: projection less joint. */
  readonly nominalIn: number;
  readonly losses: readonly SeatLoss[];
  /** All losses at once, in, and the root of their squares, which is likelier. */
  readonly worstLossIn: number;
  readonly likelyLossIn: number;
  /** Seat that is left after all losses at once, and after the likely loss, in; may be negative. */
  readonly worstIn: number;
  readonly likelyIn: number;
  readonly neededIn: number;
  readonly checks: readonly Check[];
}

/** Length of the deck member, and place of a bearing, that may be off, in (PCI MNL-135-00; from memory). */
export const SEAT_TOLERANCES_IN = {length: 1, bearing: 0.5} as const;
/** Sweep of a beam, in per 10 ft of its length (PCI MNL-135-00; from memory). */
export const SWEEP_IN_PER_10_FT = 0.125;

/** Least distance from the support's edge to the deck member's end, in: span/180, and 3 in under stems or 2 in under slabs (ACI 318-19 16.2.6.2). */
export function leastSeatIn(spanFt: number, stemmed: boolean): number {
  return Math.max((spanFt * IN_PER_FT) / 180, stemmed ? 3 : 2);
}

/** What tolerances may take of the seat on a beam of a length, in. */
function seatLosses(beamSpanFt: number): SeatLoss[] {
  return [
    {name: "length of the deck member", lossIn: SEAT_TOLERANCES_IN.length},
    {name: "place of the bearing", lossIn: SEAT_TOLERANCES_IN.bearing},
    {name: "sweep of the beam", lossIn: (SWEEP_IN_PER_10_FT * beamSpanFt) / 10},
  ];
}

/** The least that a support may project under the deck, in, so that the seat holds after all losses at once and the pad, where there is one, has its room: what {@link seat} checks. */
export function leastProjectionIn({jointGapIn, spanFt, beamSpanFt, stemmed, padLengthIn}: Pick<SeatInput, "jointGapIn" | "spanFt" | "beamSpanFt" | "stemmed" | "padLengthIn">): number {
  const lossIn = seatLosses(beamSpanFt).reduce((sum, loss) => sum + loss.lossIn, 0);
  return jointGapIn + Math.max(lossIn + leastSeatIn(spanFt, stemmed), padLengthIn === undefined ? 0 : LEAST_SET_BACK_IN + padLengthIn);
}

/**
 * The seat of a deck member on a ledge: as drawn, after the tolerances of length, bearing and sweep, and against the
 * code's least. The checks take all losses at once, the safer reading.
 *
 * @throws InputError if a dimension is out of its range or the joint is as wide as the ledge
 */
export function seat(input: SeatInput): Seat {
  const {ledgeProjectionIn, jointGapIn, spanFt, beamSpanFt, stemmed, padLengthIn, support = "ledge"} = checked(input);
  const more = {ledge: "widen the ledge", pocket: "deepen the pocket", beam: "widen the beam"}[support];
  const nominalIn = ledgeProjectionIn - jointGapIn;
  const losses = seatLosses(beamSpanFt);
  const worstLossIn = losses.reduce((sum, {lossIn}) => sum + lossIn, 0);
  const likelyLossIn = Math.hypot(...losses.map(({lossIn}) => lossIn));
  const neededIn = leastSeatIn(spanFt, stemmed);
  const worstIn = nominalIn - worstLossIn;
  const checks = [atLeast({
    id: "seat tolerance", label: `Deck ${support === "pocket" ? "in" : "on"} the ${support}, after all tolerances`, unit: "in", clause: "ACI 318-19 16.2.6.2",
    holds: "Even with every tolerance against it, the deck member keeps its seat.",
    fails: `Tolerances could take the seat: ${more} or narrow the joint.`,
  }, worstIn, neededIn)];
  if (padLengthIn !== undefined) {
    checks.push(atLeast({
      id: "pad place", label: `Room for the pad ${support === "pocket" ? "in" : "on"} the ${support}`, unit: "in", clause: "ACI 318-19 16.2.6.2(b)", meetingIsEnough: true,
      holds: `The pad fits ${support === "pocket" ? "in" : "on"} the ${support}, back from its edge and within the deck member.`,
      fails: `The pad would reach the edge of the ${support} or project beyond the end of the deck member: use a shorter pad, or ${more}.`,
    }, nominalIn - LEAST_SET_BACK_IN, padLengthIn));
  }
  return {nominalIn, losses, worstLossIn, likelyLossIn, worstIn, likelyIn: nominalIn - likelyLossIn, neededIn, checks};
}

function checked(input: SeatInput): SeatInput {
  const at = (name: keyof SeatInput, label: string, unit: string, min: number, max: number) =>
    requireNumber(input[name], {path: name, label, unit, min, max});
  at("ledgeProjectionIn", "ledge projection", "in", 2, 36);
  at("jointGapIn", "joint", "in", 0, input.ledgeProjectionIn - 0.25);
  at("spanFt", "span of the deck member", "ft", 5, 200);
  at("beamSpanFt", "span of the beam", "ft", 5, 200);
  if (input.padLengthIn !== undefined) at("padLengthIn", "length of the pad", "in", 1, 48);
  return input;
}
