import type {Member} from "../member/member.js";
import {prestressState} from "../member/prestressState.js";
import {isDeepPlank, shearAt} from "../member/shear.js";
import {nearestShearShare, shearShares, weakestShear, type ShearPlace} from "../member/shearPlace.js";
import {mostStirrups, stirrups, type PlacedStirrups} from "../member/stirrups.js";
import {prestressAt, type Cell} from "./cell.js";

/** Shear of a deck member: the place where it comes nearest to what the section may carry, and the stirrups that it requires. */
export interface DeckShear extends ShearPlace {
  readonly factoredKip: number;
  /** Where the shear requires most of the stirrups, and how much; the least of any place counts too. */
  readonly stirrups: PlacedStirrups;
}

/** Shear along the span under a factored load, psf. */
export function deckShear(cell: Cell, factoredPsf: number): DeckShear {
  const {member, spanFt} = cell;
  const {state, strength, designKip} = weakestShear(member, spanFt, nearestShearShare(member, spanFt), cell, prestressAt);
  return {state, strength, designKip, factoredKip: factoredShearKip(member, spanFt, factoredPsf, state.share), stirrups: stirrupsAsked(cell, factoredPsf)};
}

function factoredShearKip(member: Member, spanFt: number, factoredPsf: number, share: number): number {
  return (factoredPsf * member.widthFt * spanFt * (0.5 - share)) / 1000;
}

function stirrupsAsked({member, spanFt, deadPlf}: Cell, factoredPsf: number): PlacedStirrups {
  return mostStirrups(shearShares(member, spanFt).map((share) => {
    const strength = shearAt(member, spanFt, prestressState(member, spanFt, share, deadPlf));
    return {share, ...stirrups(member, strength, factoredShearKip(member, spanFt, factoredPsf, share))};
  }));
}

/** What the webs' shear means for them. */
export function shearWords(member: Member, spanFt: number, {stirrups: {share, forShearIn2PerFt, leastIn2PerFt}}: DeckShear): string {
  const where = `${(share * spanFt).toFixed(1)} ft from the ends`;
  if (forShearIn2PerFt > leastIn2PerFt) return `The webs carry the shear with stirrups: ${forShearIn2PerFt.toFixed(2)} in² per foot where the most is needed, ${where}.`;
  if (forShearIn2PerFt > 0) {
    return `The webs carry the shear with minimum stirrups, ${leastIn2PerFt.toFixed(2)} in² per foot; the shear needs the most, ${forShearIn2PerFt.toFixed(2)} in², ${where}.`;
  }
  if (leastIn2PerFt > 0) return "The concrete carries the shear; the stems get minimum stirrups.";
  if (isDeepPlank(member)) return "The concrete of the webs alone carries the shear, at half of its web strength, as it must in a deep plank without stirrups.";
  return "The concrete of the webs alone carries the shear.";
}
