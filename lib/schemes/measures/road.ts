import {PAYLOAD_KIP, ROAD_HEIGHT_FT, ROAD_WIDTH_FT} from "../../member/handling.js";
import {LB_PER_KIP} from "../../units.js";

/**
 * Longest piece that travels without a permit, ft. Every state must let a semitrailer of 48 ft pass (23 CFR 658.13); 53 ft
 * is what most let pass, by the older lengths of appendix B to that part or by rules of their own (common practice).
 */
export const ROAD_LENGTH_FT = 53;

/** Pieces that are alike, as they lie or stand on a truck. */
export interface HauledKind {
  readonly count: number;
  readonly weightLb: number;
  readonly lengthFt: number;
  /** Across the truck, and up from its deck, ft. */
  readonly acrossFt: number;
  readonly highFt: number;
}

/** What comes by road. */
export interface Haul {
  readonly pieces: number;
  readonly truckloads: number;
  readonly heaviestTons: number;
  /** Pieces over each limit of {@link ROAD_LIMITS}, and over any of them. */
  readonly overWidth: number;
  readonly overHeight: number;
  readonly overLength: number;
  readonly overWeight: number;
  readonly permits: number;
}

/**
 * What a piece may be to travel without a permit: 102 in wide (23 CFR 658.15), as high as leaves 13'-6" over a trailer
 * 3 ft above the road (no federal law; common practice), {@link ROAD_LENGTH_FT} long, and no heavier than what
 * 80,000 lb in all (23 U.S.C. 127) leave beside tractor and trailer: 40 to 48 kip, here 48 (common practice). States differ.
 */
export const ROAD_LIMITS = {widthFt: ROAD_WIDTH_FT.legal, heightFt: ROAD_HEIGHT_FT, lengthFt: ROAD_LENGTH_FT, weightLb: PAYLOAD_KIP * LB_PER_KIP} as const;

const LB_PER_TON = 2000;
/** A piece that meets a limit does not pass it by rounding in the last digit. */
const ROUNDING = 1e-9;

/**
 * Pieces of one kind that one truck brings: as many as its payload carries, and no more than lie side by side, above
 * each other and end to end within the legal width, height and length; one that is too large for these rides alone.
 */
export function perTruck({weightLb, acrossFt, highFt, lengthFt}: HauledKind): number {
  const room = fits(ROAD_LIMITS.widthFt, acrossFt) * fits(ROAD_LIMITS.heightFt, highFt) * fits(ROAD_LIMITS.lengthFt, lengthFt);
  return Math.min(room, fits(ROAD_LIMITS.weightLb, weightLb));
}

function fits(room: number, each: number): number {
  return Math.max(1, Math.floor(room / each + ROUNDING));
}

/** All pieces on their trucks: each takes its share of one, and a truck may bring pieces of several kinds. */
export function haulOf(kinds: readonly HauledKind[]): Haul {
  let [pieces, trucks, heaviestLb] = [0, 0, 0];
  let [overWidth, overHeight, overLength, overWeight, permits] = [0, 0, 0, 0, 0];
  for (const kind of kinds) {
    const {count} = kind;
    if (count === 0) continue;
    const [wide, high, long, heavy] = [
      kind.acrossFt > ROAD_LIMITS.widthFt + ROUNDING, kind.highFt > ROAD_LIMITS.heightFt + ROUNDING,
      kind.lengthFt > ROAD_LIMITS.lengthFt + ROUNDING, kind.weightLb > ROAD_LIMITS.weightLb * (1 + ROUNDING),
    ];
    pieces += count;
    trucks += count / perTruck(kind);
    heaviestLb = Math.max(heaviestLb, kind.weightLb);
    if (wide) overWidth += count;
    if (high) overHeight += count;
    if (long) overLength += count;
    if (heavy) overWeight += count;
    if (wide || high || long || heavy) permits += count;
  }
  return {pieces, truckloads: Math.ceil(Math.max(0, trucks - ROUNDING)), heaviestTons: heaviestLb / LB_PER_TON, overWidth, overHeight, overLength, overWeight, permits};
}

/** Two loads together. */
export function bothHauls(one: Haul, other: Haul): Haul {
  return {
    pieces: one.pieces + other.pieces, truckloads: one.truckloads + other.truckloads, heaviestTons: Math.max(one.heaviestTons, other.heaviestTons),
    overWidth: one.overWidth + other.overWidth, overHeight: one.overHeight + other.overHeight, overLength: one.overLength + other.overLength,
    overWeight: one.overWeight + other.overWeight, permits: one.permits + other.permits,
  };
}
