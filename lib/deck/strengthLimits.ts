import {partlyDevelopedStrength, developmentShares} from "../member/development.js";
import type {Member} from "../member/member.js";
import {CRACKING_MARGIN, crackingMomentKipIn} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {memberStrength} from "../member/strength.js";
import {countsOf, type Criteria} from "./criteria.js";
import {lower, unfactoredPsf, type LoadsFound} from "./loadOf.js";

/**
 * Loads at which the factored moment reaches the design strength at a place, and at which it reaches half of it where
 * the strength lies less than a fifth above cracking (ACI 318-19 9.6.2.2); updates the least of each.
 */
export function strengthLimits(member: Member, spanFt: number, state: PrestressState, criteria: Criteria, found: LoadsFound): void {
  const {designMomentKipIn} = memberStrength(member, state.share, state.losses.effectiveStressKsi);
  const perPsf = uniformMomentKipIn(1, spanFt, state.share) * member.widthFt;
  const counts = countsOf(criteria);
  if (counts.strength) lower(found, "strength", unfactoredPsf(member, designMomentKipIn / perPsf, criteria));
  if (!counts["minimum strength"]) return;
  if (designMomentKipIn < CRACKING_MARGIN * crackingMomentKipIn(member, spanFt, state)) {
    lower(found, "minimum strength", unfactoredPsf(member, designMomentKipIn / 2 / perPsf, criteria));
  }
}

/** Load at which the factored moment reaches the strength somewhere in the stretch where the strands take hold, psf. */
export function developmentLimit(member: Member, spanFt: number, deadPlf: number, criteria: Criteria): number {
  const middle = prestressState(member, spanFt, 0.5, deadPlf);
  const fse = middle.losses.effectiveStressKsi;
  const developed = memberStrength(member, 0.5, fse);
  let leastPsf = Infinity;
  for (const share of developmentShares(member, spanFt, fse, developed)) {
    const state = prestressState(member, spanFt, share, deadPlf);
    const {designMomentKipIn} = partlyDevelopedStrength(member, spanFt, state, developed);
    leastPsf = Math.min(leastPsf, designMomentKipIn / (uniformMomentKipIn(1, spanFt, share) * member.widthFt));
  }
  return unfactoredPsf(member, leastPsf, criteria);
}
