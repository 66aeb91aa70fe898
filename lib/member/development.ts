import {strandStressKsi} from "../materials/strand.js";
import {IN_PER_FT} from "../units.js";
import {flexuralStrength, type FlexuralStrength} from "./flexure.js";
import type {Member} from "./member.js";
import type {PrestressState} from "./prestressState.js";
import {strandLayers} from "./strength.js";
import {transferLengthIn} from "./transfer.js";

/** How strands take hold near the ends of a member. */
export interface Development {
  /** Length over which the effective prestress builds up, in: (fse/3) db. */
  readonly transferIn: number;
  /** Length after which the strand can reach its stress at the strength of the section, in: transfer + (fps - fse) db. */
  readonly developmentIn: number;
}

/** Strength reduction factor in bending where strands are still transferring their prestress (ACI 318-19 Table 21.2.3). */
export const TRANSFER_PHI = 0.75;

/** Transfer and development length of bonded strand, in (ACI 318-19 25.4.8.1, stresses in ksi). */
export function developmentOf(effectiveStressKsi: number, ultimateStressKsi: number, diameterIn: number): Development {
  const transferIn = transferLengthIn(effectiveStressKsi, diameterIn);
  return {transferIn, developmentIn: transferIn + Math.max(0, ultimateStressKsi - effectiveStressKsi) * diameterIn};
}

/**
 * Stress that a strand can be pulled to at a distance from its end, ksi: straight up to the effective prestress over
 * the transfer length, then 1 ksi for each strand diameter (ACI 318-19 R25.4.8.3), without end.
 */
export function developedStressKsi(distanceIn: number, effectiveStressKsi: number, diameterIn: number): number {
  const transferIn = transferLengthIn(effectiveStressKsi, diameterIn);
  // Stryker disable next-line EqualityOperator: the two lines meet at the end of the transfer length
  if (distanceIn < transferIn) return (effectiveStressKsi * Math.max(0, distanceIn)) / transferIn;
  return effectiveStressKsi + (distanceIn - transferIn) / diameterIn;
}

/**
 * Strength in bending where the strands are only partly developed.
 *
 * No strand takes more than its bond can hold; phi is 0.75 up to the end of the transfer length and rises in a straight
 * line to that of the developed section at the development length (ACI 318-19 Table 21.2.3).
 *
 * @param developed - strength of a section with fully developed strands, for the strand's stress and for phi
 */
export function partlyDevelopedStrength(
  member: Member, spanFt: number, state: PrestressState, developed: FlexuralStrength,
): FlexuralStrength {
  const {layout} = member;
  const {diameterIn} = layout.strand;
  const fse = state.losses.effectiveStressKsi;
  const distanceIn = Math.min(state.share, 1 - state.share) * spanFt * IN_PER_FT;
  const mostKsi = developedStressKsi(distanceIn, fse, diameterIn);
  const layers = strandLayers(member, state.share, fse, (strain) => Math.min(mostKsi, strandStressKsi(strain)));
  const found = flexuralStrength(member.compression, layers);
  const {transferIn, developmentIn} = developmentOf(fse, developed.compressionKip / layout.areaIn2, diameterIn);
  const grown = distanceIn >= developmentIn ? 1 : Math.max(0, (distanceIn - transferIn) / (developmentIn - transferIn));
  const phi = Math.min(found.phi, TRANSFER_PHI + grown * (Math.max(TRANSFER_PHI, developed.phi) - TRANSFER_PHI));
  return {...found, phi, designMomentKipIn: phi * found.nominalMomentKipIn};
}

/** Places between transfer and development length at which strength is looked at, as parts of the way. */
const BETWEEN = [0, 1 / 3, 2 / 3, 1] as const;

/** Places along the span, 0 to 0.5, where partly developed strands may govern. */
export function developmentShares(member: Member, spanFt: number, effectiveStressKsi: number, developed: FlexuralStrength): number[] {
  const spanIn = spanFt * IN_PER_FT;
  const {transferIn, developmentIn} = developmentOf(effectiveStressKsi, developed.compressionKip / member.layout.areaIn2, member.layout.strand.diameterIn);
  const shares = BETWEEN.map((part) => (transferIn + part * (developmentIn - transferIn)) / spanIn)
    // Strands that keep nothing have no transfer length, and no strength at the very end.
    .filter((share) => share > 0 && share < 0.5);
  // On a span so short that the strands are not developed even at midspan, midspan itself is the last place.
  return shares.length < BETWEEN.length ? [...shares, 0.5] : shares;
}
