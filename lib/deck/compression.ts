import {uniformMomentKipIn} from "../member/moments.js";
import type {PrestressState} from "../member/prestressState.js";
import {fiberStresses, type FiberStresses} from "../member/stress.js";
import {transferLengthIn} from "../member/transfer.js";
import {holdDownShare} from "../prestress/layout.js";
import {feet} from "../units.js";
import {prestressAt, type Cell} from "./cell.js";

/** The face and the place at which the compression of a member in service is greatest. */
export interface MostPressed {
  readonly face: "top" | "soffit";
  readonly share: number;
  /** Compression there, ksi. */
  readonly stressKsi: number;
}

/** Spacing of the places that are looked at, as a share of the span. */
const STEP = 0.025;

/**
 * Where the strands have transferred their force, as a share of the span: before it they compress less, beyond it the
 * load relieves the soffit.
 */
function handedOverShare({member, spanFt, midspan}: Cell): number {
  return Math.min(0.5, feet(transferLengthIn(midspan.losses.effectiveStressKsi, member.layout.strand.diameterIn)) / spanFt);
}

/** The stresses where prestress is known, under the dead load and a live load, psf, after all losses. */
function stressesAt({member, spanFt, deadPlf}: Cell, state: PrestressState, livePsf: number): FiberStresses {
  const unitKipIn = uniformMomentKipIn(1, spanFt, state.share);
  return fiberStresses(member, state, state.effectiveForceKip, {
    precastKipIn: (member.selfWeightPlf + member.toppingWeightPlf) * unitKipIn, fullKipIn: (deadPlf + livePsf * member.widthFt) * unitKipIn,
  });
}

/** The places along the span at which compression is looked at, with the prestress there. */
export function pressedPlaces(cell: Cell): PrestressState[] {
  const start = handedOverShare(cell);
  // Stryker disable next-line EqualityOperator: the place where it begins is looked at anyhow
  const regular = Array.from({length: 0.5 / STEP + 1}, (_, i) => i * STEP).filter((share) => share > start);
  return [start, ...regular, holdDownShare(cell.member.layout.profile)].map((share) => prestressAt(cell, share));
}

/**
 * The greatest compression in the member's own concrete anywhere along the span: of the top under a live load, and of the
 * soffit on an empty floor, because live load relieves it.
 *
 * @param livePsf - live load that presses the top: its lasting part, or all of it
 * @param places - {@link pressedPlaces}, where they are known
 */
export function mostPressed(cell: Cell, livePsf: number, places = pressedPlaces(cell)): MostPressed {
  let most: MostPressed = {face: "top", share: 0, stressKsi: -Infinity};
  const look = (face: MostPressed["face"], share: number, stressKsi: number) => {
    // Stryker disable next-line EqualityOperator: of two alike either does
    if (stressKsi > most.stressKsi) most = {face, share, stressKsi};
  };
  for (const state of places) {
    look("top", state.share, stressesAt(cell, state, livePsf).topKsi);
    look("soffit", state.share, stressesAt(cell, state, 0).bottomKsi);
  }
  return most;
}

/** The place where nothing but dead load lets the strands compress the soffit hardest: where their force is there, or where they lie lowest. */
export function soffitMostPressed(cell: Cell): {readonly share: number; readonly stressKsi: number} {
  const {profile} = cell.member.layout;
  const share = handedOverShare(cell);
  const emptyKsi = (at: number) => stressesAt(cell, prestressAt(cell, at), 0).bottomKsi;
  const end = {share, stressKsi: emptyKsi(share)};
  // Stryker disable next-line ConditionalExpression: dead load relieves level strands at midspan, so the end stays
  if (profile === "straight") return end;
  const low = {share: holdDownShare(profile), stressKsi: emptyKsi(holdDownShare(profile))};
  // Stryker disable next-line EqualityOperator: of two alike either does
  return low.stressKsi > end.stressKsi ? low : end;
}
