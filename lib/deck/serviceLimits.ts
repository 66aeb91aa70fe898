import {allowables} from "../member/allowables.js";
import {camber, sag} from "../member/camber.js";
import {CRACK_CONTROL_KSI, crackedStateAt} from "../member/crackedSection.js";
import {liveLoadForSagPlf} from "../member/deflection.js";
import type {Member} from "../member/member.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {LASTING_MULTIPLIER, SAG_LIMITS, allowedSagIn, creepSagIn} from "../member/sagLimit.js";
import {fibreStresses} from "../member/stress.js";
import {IN_PER_FT} from "../units.js";
import {countsOf, type Criteria} from "./criteria.js";
import {lastingPsf, lower, ownPsf, type LoadsFound} from "./loadOf.js";
import {serviceShares} from "./shares.js";

/**
 * Loads at which a face reaches its allowed stress in service somewhere along the span; updates the least of each. The
 * least over the places is kept as a number and told once, because a table asks this many thousand times a second.
 */
export function serviceLimits(member: Member, spanFt: number, deadPlf: number, criteria: Criteria, found: LoadsFound): void {
  const {full, composite} = member;
  const counts = countsOf(criteria);
  const allowed = allowables(member, criteria.tensionClass);
  const cracked = criteria.tensionClass === "C" && counts["crack control"];
  const topArmIn = composite ? composite.interfaceAboveCentroidIn : full.ytIn;
  const toppingPerKsi = composite ? composite.modularRatio / composite.stIn3 : 0;
  let tensionPsf = Infinity;
  let crackPsf = Infinity;
  let totalPsf = Infinity;
  let heldPsf = Infinity;
  for (const share of serviceShares(member)) {
    const state = prestressState(member, spanFt, share, deadPlf);
    const unitKipIn = uniformMomentKipIn(1, spanFt, share);
    const own = fibreStresses(member, state, state.effectiveForceKip, {
      precastKipIn: (member.selfWeightPlf + member.toppingWeightPlf) * unitKipIn, fullKipIn: 0,
    });
    // Stress per psf of superimposed load at each face.
    const perPsf = unitKipIn * member.widthFt;
    const top = (perPsf * topArmIn) / full.inertiaIn4;
    if (cracked) crackPsf = Math.min(crackPsf, crackedStateAt(member, state, CRACK_CONTROL_KSI.most).momentKipIn / perPsf - ownPsf(member));
    tensionPsf = Math.min(tensionPsf, (own.bottomKsi + allowed.serviceTensionKsi) / (perPsf / full.sbIn3));
    if (top > 0) {
      totalPsf = Math.min(totalPsf, (allowed.totalCompressionKsi - own.topKsi) / top);
      heldPsf = Math.min(heldPsf, (allowed.sustainedCompressionKsi - own.topKsi) / top);
    }
    if (allowed.toppingTotalKsi && allowed.toppingSustainedKsi) {
      totalPsf = Math.min(totalPsf, allowed.toppingTotalKsi / (toppingPerKsi * perPsf));
      heldPsf = Math.min(heldPsf, allowed.toppingSustainedKsi / (toppingPerKsi * perPsf));
    }
  }
  if (cracked) lower(found, "crack control", crackPsf);
  if (criteria.tensionClass !== "C" && counts["service tension"]) lower(found, "service tension", tensionPsf);
  if (counts["total compression"] && totalPsf < Infinity) lower(found, "total compression", totalPsf);
  if (counts["sustained compression"] && heldPsf < Infinity) lower(found, "sustained compression", lastingPsf(heldPsf, criteria));
}

/**
 * Loads at which the member sags as far as its limit allows, and at which what stays for years leaves no camber;
 * updates the least of each.
 */
export function stiffnessLimits(member: Member, spanFt: number, deadPlf: number, criteria: Criteria, found: LoadsFound): void {
  const {sagLimit, superimposedDeadPsf: deadPsf, sustainedLiveShare} = criteria;
  const counts = countsOf(criteria);
  const state = prestressState(member, spanFt, 0.5, deadPlf);
  const shape = camber(member, spanFt, deadPlf);
  const sagPerPsfIn = sag(member.widthFt, spanFt * IN_PER_FT, member.modulusKsi, member.full.inertiaIn4);
  if (counts.deflection) {
    const attached = SAG_LIMITS[sagLimit].counts === "attached";
    const creepIn = attached ? creepSagIn(shape) : 0;
    const roomIn = allowedSagIn(sagLimit, spanFt) - creepIn;
    // Where creep under dead load alone uses the limit up, dead load has to go until it does not.
    const limitPsf = roomIn > 0
      ? liveRoomPlf(member, spanFt, state, deadPlf, roomIn, attached ? sustainedLiveShare : 0) / member.widthFt
      : roomIn / ((LASTING_MULTIPLIER - 1) * sagPerPsfIn);
    lower(found, "deflection", deadPsf + limitPsf);
  }
  if (counts.camber) {
    lower(found, "camber", lastingPsf(deadPsf + shape.longTermIn / (LASTING_MULTIPLIER * sagPerPsfIn), criteria));
  }
}

/** Live load that sags by as much as there is room for, with the growth of its lasting part, plf. */
function liveRoomPlf(member: Member, spanFt: number, state: PrestressState, deadPlf: number, roomIn: number, lastingShare: number): number {
  if (lastingShare === 0) return liveLoadForSagPlf(member, spanFt, state, deadPlf, roomIn);
  // Creep multiplies the lasting part of the sag; the whole sag may be cracked, so its share is taken of that.
  return liveLoadForSagPlf(member, spanFt, state, deadPlf, roomIn / (1 + (LASTING_MULTIPLIER - 1) * lastingShare));
}
