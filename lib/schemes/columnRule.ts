import {COLUMN_SIDES_IN} from "../columns/firstSize.js";
import type {Design} from "../design/design.js";
import {factoredLoad} from "../loads/combinations.js";
import {loadOn, type FloorLoads} from "../loads/floorLoads.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {ownPsf, type Member} from "../member/member.js";
import {LB_PER_KIP} from "../units.js";

/** Use of the greatest axial strength at which a column is first guessed: the rest is left to moments (our choice). */
const FIRST_USE = 0.5;
/** Weight of beams beside that of the deck that they carry, in a first guess (common practice). */
const BEAM_SHARE = 0.15;
/** The least side that beams are cut for, in: an edge column with its corbels. */
const LEAST_SIDE_IN = 14;

/**
 * A first guess of the widest column's side, in even inches, for which the beams are cut before any column is sized:
 * half the greatest axial strength of the column with the largest floor (ACI 318-19 22.4.2, 21.2.2).
 */
export function guessedSideIn(design: Design, laid: Member, loads: FloorLoads): number {
  const {bay, column} = design;
  const inner = bay.baysAcross > 1 && bay.baysAlong > 1;
  const element = inner ? "interior column" : bay.baysAlong > 1 ? "edge column" : bay.baysAcross > 1 ? "girder end column" : "corner column";
  const areaFt2 = (bay.spanFt * bay.beamSpanFt) / (inner ? 1 : bay.baysAlong > 1 || bay.baysAcross > 1 ? 2 : 4);
  const floorPsf = factoredLoad((1 + BEAM_SHARE) * ownPsf(laid) + loads.superimposedDeadPsf, loadOn(loads, element).governing.totalPsf);
  const kip = (areaFt2 * (bay.floors * floorPsf + factoredLoad(column.roofDeadPsf, column.roofLivePsf))) / LB_PER_KIP;
  const ratio = column.steelPercent / 100;
  const strengthKsi = 0.65 * 0.8 * ((0.85 * column.strengthPsi * (1 - ratio)) / 1000 + ratio * BAR_YIELD_KSI);
  const sideIn = Math.ceil(Math.sqrt(kip / (FIRST_USE * strengthKsi)) / COLUMN_SIDES_IN.step - 1e-9) * COLUMN_SIDES_IN.step;
  return Math.min(COLUMN_SIDES_IN.most, Math.max(LEAST_SIDE_IN, sideIn));
}
