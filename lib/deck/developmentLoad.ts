import {developmentShares, partlyDevelopedStrength} from "../member/development.js";
import type {FlexuralStrength} from "../member/flexure.js";
import {uniformMomentKipIn} from "../member/moments.js";
import type {ReachedLoad} from "./beyondCracking.js";
import {prestressAt, strengthAt, type Cell} from "./cell.js";

/** The factored load that a member holds in the stretch where its strands take hold, its own weight included, and with what strength. */
export interface DevelopmentLoad extends ReachedLoad {
  readonly strength: FlexuralStrength;
}

/** The factored load whose moment first reaches the strength of partly developed strands. */
export function developmentLoad(cell: Cell): DevelopmentLoad {
  const {member, spanFt, midspan} = cell;
  const developed = strengthAt(cell, 0.5);
  let least: DevelopmentLoad | undefined;
  for (const share of developmentShares(member, spanFt, midspan.losses.effectiveStressKsi, developed)) {
    const strength = partlyDevelopedStrength(member, spanFt, prestressAt(cell, share), developed);
    const psf = strength.designMomentKipIn / (uniformMomentKipIn(1, spanFt, share) * member.widthFt);
    // Stryker disable next-line EqualityOperator: of two alike either does
    if (!least || psf < least.psf) least = {psf, share, strength};
  }
  return least as DevelopmentLoad;
}
