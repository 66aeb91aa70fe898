import type {Member} from "../../lib/member/member.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {designShearKip, shearAt} from "../../lib/member/shear.js";
import {nearestShearShare, weakestShear} from "../../lib/member/shearPlace.js";

/** Dead load, psf. */
const DEAD_PSF = 10;
export const stateAt = ({member, spanFt}: {member: Member; spanFt: number}, share: number) => prestressState(member, spanFt, share, DEAD_PSF * member.widthFt);

/** What the section may carry beside the shear of a uniform load, at a place. */
export const ratioAt = (member: Member, spanFt: number, share: number) =>
  designShearKip(member, shearAt(member, spanFt, stateAt({member, spanFt}, share))) / (0.5 - share);

/** The same where it is least, as found. */
export function found(member: Member, spanFt: number): number {
  const {designKip, state} = weakestShear(member, spanFt, nearestShearShare(member, spanFt), {member, spanFt}, stateAt);
  return designKip / (0.5 - state.share);
}

/** The same by a search of four hundred places. */
export function searched(member: Member, spanFt: number): number {
  return leastOf(member, spanFt, nearestShearShare(member, spanFt), 0.49).ratio;
}

/** The place itself by a search of four hundred places, and of two hundred more about the least of them. */
export function searchedShare(member: Member, spanFt: number): number {
  const from = nearestShearShare(member, spanFt);
  const {share} = leastOf(member, spanFt, from, 0.49);
  const step = (0.49 - from) / 400;
  return leastOf(member, spanFt, Math.max(from, share - step), share + step, 200).share;
}

function leastOf(member: Member, spanFt: number, from: number, to: number, count = 400): {share: number; ratio: number} {
  const places = Array.from({length: count}, (_, i) => from + ((to - from) * i) / count).map((share) => ({share, ratio: ratioAt(member, spanFt, share)}));
  return places.reduce((least, place) => (place.ratio < least.ratio ? place : least));
}
