import {STRAND_MODULUS_KSI} from "../materials/strand.js";
import {elasticModulusKsi} from "../materials/concrete.js";
import type {Member} from "./member.js";
import type {PrestressState} from "./prestressState.js";
import {decompressionStrain} from "./strength.js";

/** A cracked prestressed section in service: concrete without tension, elastic in compression. */
export interface CrackedState {
  /** Moment that brings the section to this state, kip-in. */
  readonly momentKipIn: number;
  readonly neutralAxisIn: number;
  /** Stress at the top of the member or its topping, in the member's concrete, ksi. */
  readonly topKsi: number;
  /** Strand stress beyond the state in which the concrete beside it has none, ksi. */
  readonly stressChangeKsi: number;
}

/** Greatest stress change in the strands of a class C member, ksi, and the one below which spacing need not be checked (ACI 318-19 24.3.2.1, 24.3.2.2). */
export const CRACK_CONTROL_KSI = {most: 36, free: 20} as const;

/**
 * State of the cracked section at which the strands have been stretched by a given stress beyond decompression.
 *
 * Plane sections; the whole load is taken on the section as it stands at last, topping included (the stresses that an
 * unshored member had before its topping are left out, as is usual for first sizes). The neutral axis is found by
 * halving: compression in the concrete grows with its depth, and it must balance the strands' force at decompression
 * and the stress added since.
 *
 * @param stressChangeKsi - above 0
 */
export function crackedStateAt(member: Member, state: PrestressState, stressChangeKsi: number): CrackedState {
  const {compression, layout, section, modulusKsi} = member;
  const depthIn = compression.depthIn - (section.ybIn - state.eccentricityIn);
  const fse = state.losses.effectiveStressKsi;
  const decompressionKip = layout.areaIn2 * (fse + STRAND_MODULUS_KSI * decompressionStrain(member, state.share, fse));
  const neededKip = decompressionKip + layout.areaIn2 * stressChangeKsi;
  const n = STRAND_MODULUS_KSI / modulusKsi;
  const top = (cIn: number) => (stressChangeKsi * cIn) / (n * (depthIn - cIn));
  let [low, high] = [0, depthIn];
  // Stryker disable next-line EqualityOperator: another halving is below the last digit
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (top(middle) * triangle(member, middle, depthIn).forcePerKsi < neededKip) low = middle;
    else high = middle;
  }
  const neutralAxisIn = (low + high) / 2;
  const topKsi = top(neutralAxisIn);
  return {neutralAxisIn, topKsi, stressChangeKsi, momentKipIn: topKsi * triangle(member, neutralAxisIn, depthIn).momentPerKsi};
}

/** Force, and moment about the strands, of a stress that falls from 1 ksi at the top to 0 at the neutral axis. */
function triangle(member: Member, neutralAxisIn: number, depthIn: number): {forcePerKsi: number; momentPerKsi: number} {
  const {startIn, thicknessIn, widthIn, slope} = member.compression;
  const ratio = member.topping
    ? elasticModulusKsi(member.topping.concrete.unitWeightPcf, member.topping.concrete.strengthPsi) / member.modulusKsi : 1;
  let forcePerKsi = 0;
  let momentPerKsi = 0;
  for (let i = 0; i < startIn.length; i++) {
    const from = startIn[i] as number;
    if (from >= neutralAxisIn) break;
    const to = Math.min(neutralAxisIn, from + (thicknessIn[i] as number));
    const weight = member.topping && i === 0 ? ratio : 1;
    const width = widthIn[i] as number;
    const grows = slope[i] as number;
    const middle = (from + to) / 2;
    const upper = weight * width * (1 - from / neutralAxisIn);
    const half = 4 * (weight * (width + grows * (middle - from)) * (1 - middle / neutralAxisIn));
    const lower = weight * (width + grows * (to - from)) * (1 - to / neutralAxisIn);
    const sixth = (to - from) / 6;
    // Width and stress are linear, so the force is a quadratic and its moment a cubic: Simpson's rule is exact for both.
    forcePerKsi += sixth * (upper + half + lower);
    momentPerKsi += sixth * (upper * (depthIn - from) + half * (depthIn - middle) + lower * (depthIn - to));
  }
  return {forcePerKsi, momentPerKsi};
}
