import {ruptureModulusKsi} from "../materials/concrete.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import type {PrestressState} from "./prestressState.js";

/**
 * Total moment that cracks the soffit, kip-in: the full section takes what is left of precompression and rupture
 * stress after the moments that the precast section already carries.
 */
export function crackingMomentKipIn(member: Member, spanFt: number, state: PrestressState): number {
  const {section, full} = member;
  const precompressionKsi = state.effectiveForceKip * (1 / section.areaIn2 + state.eccentricityIn / section.sbIn3);
  const precastKipIn = uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, spanFt, state.share);
  return precastKipIn + full.sbIn3 * (ruptureModulusKsi(member.concrete) + precompressionKsi - precastKipIn / section.sbIn3);
}

/** Least design strength over the cracking moment, so that a member does not break as it first cracks (ACI 318-19 9.6.2.1). */
export const CRACKING_MARGIN = 1.2;
