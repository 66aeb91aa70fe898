import {CRACKING_MARGIN, crackingMomentKipIn} from "../member/minimumStrength.js";
import {uniformMomentKipIn} from "../member/moments.js";
import {holdDownShare} from "../prestress/layout.js";
import {prestressAt, strengthAt, type Cell} from "./cell.js";
import {leastShare, strengthShares} from "./shares.js";

/** A load on the whole span, its own weight included, and the place that it is too much for. */
export interface ReachedLoad {
  readonly psf: number;
  /** 0 to 0.5 of the span. */
  readonly share: number;
}

/** The factored load that the member's strength holds: the least over the places where strength may govern. */
export function strengthLoad(cell: Cell): ReachedLoad {
  return least(cell, strengthShares(cell.member), designMomentKipIn);
}

/** The load under which the soffit first cracks somewhere along the span. */
export function crackingLoad(cell: Cell): ReachedLoad {
  return least(cell, crackingShares(cell), crackingKipIn);
}

/**
 * Strength beyond first cracking: the load that strength holds must be 1.2 times the load that cracks the member, unless
 * it is twice what is required (ACI 318-19 9.6.2.1, 9.6.2.2, whose demand on shear is not looked at). The code compares
 * loads and not moments place by place: a place that cracks late cracks under a load that the member never reaches.
 *
 * @param factoredPsf - what is required, own weight included
 */
export function beyondCracking(cell: Cell, factoredPsf: number): {readonly strength: ReachedLoad; readonly cracking: ReachedLoad; readonly neededPsf: number} {
  const [strength, cracking] = [strengthLoad(cell), crackingLoad(cell)];
  return {strength, cracking, neededPsf: Math.min(CRACKING_MARGIN * cracking.psf, 2 * factoredPsf)};
}

/** Midspan, and where depressed strands, which press the soffit harder the nearer they are to it, leave least beside the moment. */
function crackingShares({member, midspan}: Cell): readonly number[] {
  const {layout, section} = member;
  // Stryker disable next-line ConditionalExpression: of level strands the line through both places finds midspan too, later
  if (layout.profile === "straight") return [0.5];
  const holdDown = holdDownShare(layout.profile);
  const pressedKsi = (heightIn: number) => midspan.effectiveForceKip * (1 / section.areaIn2 + (section.ybIn - heightIn) / section.sbIn3);
  return [leastShare(0, RUPTURE_KSI + pressedKsi(layout.centroidEndIn), holdDown, RUPTURE_KSI + pressedKsi(layout.centroidCenterIn)), 0.5];
}

/** Near enough to the rupture stress for an estimate of the place, ksi. */
const RUPTURE_KSI = 0.5;

function designMomentKipIn(cell: Cell, share: number): number {
  return strengthAt(cell, share).designMomentKipIn;
}

function crackingKipIn(cell: Cell, share: number): number {
  return crackingMomentKipIn(cell.member, cell.spanFt, prestressAt(cell, share));
}

function least(cell: Cell, shares: readonly number[], momentKipIn: (cell: Cell, share: number) => number): ReachedLoad {
  const {member, spanFt} = cell;
  let leastPsf = Infinity;
  let at = 0.5;
  for (const share of shares) {
    const psf = momentKipIn(cell, share) / (uniformMomentKipIn(1, spanFt, share) * member.widthFt);
    // Stryker disable next-line EqualityOperator: of two alike either does
    if (psf < leastPsf) {
      leastPsf = psf;
      at = share;
    }
  }
  return {psf: leastPsf, share: at};
}
