import {partlyDevelopedStrength, developmentShares} from "../member/development.js";
import {CRACKING_MARGIN} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {crackingLoad, strengthLoad} from "./beyondCracking.js";
import {prestressAt, strengthAt, type Cell} from "./cell.js";
import {unfactoredPsf} from "./loadOf.js";

/** Load at which the factored moment reaches the design strength somewhere along the span, psf. */
export function strengthLimit(cell: Cell): number {
  return unfactoredPsf(cell.member, strengthLoad(cell).psf, cell.criteria);
}

/** Load of which strength holds twice as much, where it lies less than a fifth above cracking (ACI 318-19 9.6.2.2), psf; undefined where it lies higher. */
export function minimumStrengthLimit(cell: Cell): number | undefined {
  const {psf} = strengthLoad(cell);
  return psf < CRACKING_MARGIN * crackingLoad(cell).psf ? unfactoredPsf(cell.member, psf / 2, cell.criteria) : undefined;
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
