import {allowables} from "../member/allowables.js";
import {camber, sag} from "../member/camber.js";
import {CRACK_CONTROL_KSI, crackedStateAt} from "../member/crackedSection.js";
import {liveLoadForSagPlf} from "../member/deflection.js";
import {ownPsf} from "../member/member.js";
import {LASTING_MULTIPLIER, SAG_LIMITS, allowedSagIn, creepSagIn} from "../member/sagLimit.js";
import {IN_PER_FT} from "../units.js";
import type {Cell} from "./cell.js";
import {lastingPsf, note, type LoadsFound} from "./loadOf.js";
import {servicePlaces} from "./servicePlaces.js";

/** Loads at which a face reaches its allowed stress in service somewhere along the span. */
export function serviceLimits(cell: Cell, found: LoadsFound): void {
  const {member, criteria, counts} = cell;
  const {full, composite} = member;
  const allowed = allowables(member, criteria.tensionClass);
  const topArmIn = composite ? composite.interfaceAboveCentroidIn : full.ytIn;
  const toppingPerKsi = composite ? composite.modularRatio / composite.stIn3 : 0;
  const cracked = criteria.tensionClass === "C" && counts["crack control"];
  let tensionPsf = Infinity;
  let crackPsf = Infinity;
  let totalPsf = Infinity;
  let heldPsf = Infinity;
  for (const {state, own, perPsf} of servicePlaces(cell, allowed)) {
    // Stress of the member's top by one psf of superimposed load.
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
  if (cracked) note(found, "crack control", crackPsf);
  if (criteria.tensionClass !== "C" && counts["service tension"]) note(found, "service tension", tensionPsf);
  if (counts["total compression"]) note(found, "total compression", totalPsf);
  if (counts["sustained compression"]) note(found, "sustained compression", lastingPsf(heldPsf, criteria));
}

/** Loads at which the member sags as far as its limit allows, and at which what stays for years leaves no camber. */
export function stiffnessLimits(cell: Cell, found: LoadsFound): void {
  const {member, spanFt, criteria, counts, deadPlf} = cell;
  const {sagLimit, superimposedDeadPsf: deadPsf, sustainedLiveShare} = criteria;
  const shape = camber(member, spanFt, deadPlf);
  const sagPerPsfIn = sag(member.widthFt, spanFt * IN_PER_FT, member.modulusKsi, member.full.inertiaIn4);
  if (counts.deflection) {
    const attached = SAG_LIMITS[sagLimit].counts === "attached";
    const creepIn = attached ? creepSagIn(shape) : 0;
    const roomIn = allowedSagIn(sagLimit, spanFt) - creepIn;
    // Where creep under dead load alone uses the limit up, dead load has to go until it does not.
    const limitPsf = roomIn > 0
      ? liveRoomPlf(cell, roomIn, attached ? sustainedLiveShare : 0) / member.widthFt
      : roomIn / ((LASTING_MULTIPLIER - 1) * sagPerPsfIn);
    note(found, "deflection", deadPsf + limitPsf);
  }
  if (counts.camber) {
    note(found, "camber", lastingPsf(deadPsf + shape.longTermIn / (LASTING_MULTIPLIER * sagPerPsfIn), criteria));
  }
}

/** Live load that sags by as much as there is room for, with the growth of its lasting part, plf. */
function liveRoomPlf({member, spanFt, deadPlf, midspan}: Cell, roomIn: number, lastingShare: number): number {
  // Creep multiplies the lasting part of the sag; the whole sag may be cracked, so its share is taken of that.
  return liveLoadForSagPlf(member, spanFt, midspan, deadPlf, roomIn / (1 + (LASTING_MULTIPLIER - 1) * lastingShare));
}
