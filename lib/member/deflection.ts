import {ruptureModulusKsi} from "../materials/concrete.js";
import {STRAND_MODULUS_KSI} from "../materials/strand.js";
import {IN_PER_FT} from "../units.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import type {PrestressState} from "./prestressState.js";
import {fiberStresses} from "./stress.js";

/** Sag of a member under its live load. */
export interface LiveDeflection {
  /** Immediate sag at midspan, in. */
  readonly deflectionIn: number;
  /** Part of the live moment that the uncracked section takes, 0 to 1. */
  readonly uncrackedShare: number;
  readonly crackedInertiaIn4: number;
}

/**
 * Second moment of a cracked prestressed section, in4: n Aps dp^2 (1 - 1.6 sqrt(n rho)) (PCI Design Handbook, 7th ed.,
 * 5.8; from memory), never more than the whole section's.
 */
export function crackedInertiaIn4(member: Member, state: Pick<PrestressState, "eccentricityIn">): number {
  const {layout, full, section, compression} = member;
  const depthIn = compression.depthIn - (section.ybIn - state.eccentricityIn);
  const n = STRAND_MODULUS_KSI / member.modulusKsi;
  const rho = layout.areaIn2 / (member.shape.widthIn * depthIn);
  return Math.min(full.inertiaIn4, n * layout.areaIn2 * depthIn ** 2 * (1 - 1.6 * Math.sqrt(n * rho)));
}

/**
 * Immediate sag under live load with bilinear stiffness (ACI 318-19 24.2.3.9; the trade handbook): the part of the live
 * moment that brings the soffit to its rupture stress bends the whole section, the rest the cracked one.
 *
 * @param state - prestress at midspan
 */
export function liveDeflection(
  member: Member, spanFt: number, state: PrestressState, superimposedDeadPlf: number, livePlf: number,
): LiveDeflection {
  const {crackingLivePlf, wholeInPerPlf, crackedInPerPlf, crackedInertiaIn4: cracked} = liveStiffness(member, spanFt, state, superimposedDeadPlf);
  const uncrackedShare = livePlf > 0 ? Math.min(1, crackingLivePlf / livePlf) : 1;
  const deflectionIn = livePlf * (uncrackedShare * wholeInPerPlf + (1 - uncrackedShare) * crackedInPerPlf);
  return {deflectionIn, uncrackedShare, crackedInertiaIn4: cracked};
}

/** The live load per foot of member at which {@link liveDeflection} reaches a sag, plf; its inverse. */
export function liveLoadForSagPlf(
  member: Member, spanFt: number, state: PrestressState, superimposedDeadPlf: number, sagIn: number,
): number {
  const {crackingLivePlf, wholeInPerPlf, crackedInPerPlf} = liveStiffness(member, spanFt, state, superimposedDeadPlf);
  const wholeIn = crackingLivePlf * wholeInPerPlf;
  // Stryker disable next-line EqualityOperator: the two lines meet at the first crack
  return sagIn <= wholeIn ? sagIn / wholeInPerPlf : crackingLivePlf + (sagIn - wholeIn) / crackedInPerPlf;
}

/** The two slopes of the load-sag line, and the live load at which it bends. */
function liveStiffness(member: Member, spanFt: number, state: PrestressState, superimposedDeadPlf: number) {
  const {full} = member;
  const dead = fiberStresses(member, state, state.effectiveForceKip, {
    precastKipIn: uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, spanFt, 0.5),
    fullKipIn: uniformMomentKipIn(superimposedDeadPlf, spanFt, 0.5),
  });
  const unitKipIn = uniformMomentKipIn(1, spanFt, 0.5);
  const roomKipIn = Math.max(0, (dead.bottomKsi + ruptureModulusKsi(member.concrete)) * full.sbIn3);
  const cracked = crackedInertiaIn4(member, state);
  const flexibility = (5 * unitKipIn * (spanFt * IN_PER_FT) ** 2) / (48 * member.modulusKsi);
  return {
    crackingLivePlf: roomKipIn / unitKipIn,
    wholeInPerPlf: flexibility / full.inertiaIn4,
    crackedInPerPlf: flexibility / cracked,
    crackedInertiaIn4: cracked,
  };
}
