import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState} from "../member/prestressState.js";
import {fiberStresses, type FiberStresses} from "../member/stress.js";
import {feet} from "../units.js";

/** The face of a beam that is compressed most in service, where, and how hard. */
export interface PressedFace {
  readonly face: "top" | "soffit";
  readonly where: "at midspan" | "near the ends";
  /** Compression, ksi; 0 where neither face is compressed. */
  readonly stressKsi: number;
}

/**
 * The face that is compressed more: the top where load governs, the soffit where the strands compress it more than the
 * load relieves.
 *
 * @param soffitNearEndKsi - compression of the soffit where little load relieves it, if that load stays
 */
export function pressedFace({topKsi, bottomKsi}: Pick<FiberStresses, "topKsi" | "bottomKsi">, soffitNearEndKsi = bottomKsi): PressedFace {
  const soffitKsi = Math.max(bottomKsi, soffitNearEndKsi);
  return soffitKsi > Math.max(0, topKsi)
    ? {face: "soffit", where: soffitNearEndKsi > bottomKsi ? "near the ends" : "at midspan", stressKsi: soffitKsi}
    : {face: "top", where: "at midspan", stressKsi: Math.max(0, topKsi)};
}

/**
 * Compression of a beam's soffit, ksi, where its straight strands have transferred their force and the least of the dead
 * load relieves it, after all losses; the course of the moment is taken as that of an even load.
 *
 * @param laterPlf - dead load beyond the beam's own weight
 * @param transferIn - transfer length
 */
export function soffitNearEndKsi(member: Member, spanFt: number, laterPlf: number, transferIn: number): number {
  const share = Math.min(0.5, feet(transferIn) / spanFt);
  const state = prestressState(member, spanFt, share, laterPlf);
  return fiberStresses(member, state, state.effectiveForceKip, {
    precastKipIn: uniformMomentKipIn(member.selfWeightPlf, spanFt, share), fullKipIn: uniformMomentKipIn(laterPlf, spanFt, share),
  }).bottomKsi;
}
