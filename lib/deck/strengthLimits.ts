import {partlyDevelopedStrength, developmentShares} from "../member/development.js";
import {CRACKING_MARGIN, crackingMomentKipIn} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {prestressAt, strengthAt, type Cell} from "./cell.js";
import {unfactoredPsf} from "./loadOf.js";
import {crackingShares, strengthShares} from "./shares.js";

/** Load at which the factored moment reaches the design strength somewhere along the span, psf. */
export function strengthLimit(cell: Cell): number {
  const {member, spanFt, criteria} = cell;
  let leastPsf = Infinity;
  for (const share of strengthShares(member)) {
    const {designMomentKipIn} = strengthAt(cell, share);
    leastPsf = Math.min(leastPsf, designMomentKipIn / (uniformMomentKipIn(1, spanFt, share) * member.widthFt));
  }
  return unfactoredPsf(member, leastPsf, criteria);
}

/**
 * Load at which the factored moment reaches half of the design strength at a place where that lies less than a fifth
 * above cracking (ACI 318-19 9.6.2.2), psf; undefined where there is none.
 */
export function minimumStrengthLimit(cell: Cell): number | undefined {
  const {member, spanFt, criteria} = cell;
  let leastPsf = Infinity;
  for (const share of crackingShares(member)) {
    const {designMomentKipIn} = strengthAt(cell, share);
    if (designMomentKipIn >= CRACKING_MARGIN * crackingMomentKipIn(member, spanFt, prestressAt(cell, share))) continue;
    leastPsf = Math.min(leastPsf, designMomentKipIn / 2 / (uniformMomentKipIn(1, spanFt, share) * member.widthFt));
  }
  return leastPsf < Infinity ? unfactoredPsf(member, leastPsf, criteria) : undefined;
}

/** Load at which the factored moment reaches the strength somewhere in the stretch where the strands take hold, psf. */
export function developmentLimit(cell: Cell): number {
  const {member, spanFt, criteria, midspan} = cell;
  const fse = midspan.losses.effectiveStressKsi;
  const developed = strengthAt(cell, 0.5);
  let leastPsf = Infinity;
  for (const share of developmentShares(member, spanFt, fse, developed)) {
    const state = prestressAt(cell, share);
    const {designMomentKipIn} = partlyDevelopedStrength(member, spanFt, state, developed);
    leastPsf = Math.min(leastPsf, designMomentKipIn / (uniformMomentKipIn(1, spanFt, share) * member.widthFt));
  }
  return unfactoredPsf(member, leastPsf, criteria);
}
