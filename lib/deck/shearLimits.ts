import {horizontalShearKip} from "../member/horizontalShear.js";
import {bearingStrengthKip} from "../member/endBearing.js";
import {nearestShearShare, weakestShear} from "../member/shearPlace.js";
import {prestressAt, type Cell} from "./cell.js";
import {unfactoredPsf} from "./loadOf.js";

/**
 * Load at which the factored shear reaches the design strength somewhere along the span, psf. Stems are given the
 * stirrups that they need, up to the code's ceiling; a plank has only its concrete.
 */
export function shearLimit(cell: Cell): number {
  const {member, spanFt, criteria} = cell;
  const {state, designKip} = weakestShear(member, spanFt, nearestShearShare(member, spanFt), cell, prestressAt);
  return unfactoredPsf(member, (designKip * 1000) / (spanFt * (0.5 - state.share) * member.widthFt), criteria);
}

/** Load at which the contact with the topping would slip near the ends, psf; undefined without topping. */
export function contactLimit({member, spanFt, criteria}: Cell): number | undefined {
  const nearest = nearestShearShare(member, spanFt);
  const capacityKip = horizontalShearKip(member);
  return capacityKip && unfactoredPsf(member, (capacityKip * 1000) / (spanFt * (0.5 - nearest) * member.widthFt), criteria);
}

/** Load at which the concrete of an end would crush on its seat, psf. */
export function bearingLimit({member, spanFt, criteria}: Cell): number {
  return unfactoredPsf(member, (bearingStrengthKip(member, criteria.seatIn) * 2000) / (spanFt * member.widthFt), criteria);
}
