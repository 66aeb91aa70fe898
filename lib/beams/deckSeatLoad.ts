import type {Design} from "../design/design.js";
import {factoredLoad} from "../loads/combinations.js";
import {loadOn, type FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, type Member} from "../member/member.js";
import {LB_PER_KIP} from "../units.js";
import {onStems} from "./stemRow.js";

/** What one stem, or each foot of planks, presses on its seat. */
export interface DeckSeatLoad {
  /** Floor that it brings: half the deck's span by half a tee's width or a foot, ft2. */
  readonly areaFt2: number;
  /** Dead load of the deck with what lies on it, and the live load as the deck member's own area reduces it, psf. */
  readonly deadPsf: number;
  readonly livePsf: number;
  readonly serviceKip: number;
  readonly factoredKip: number;
}

/**
 * The load at one seat of the deck. One deck member loads it, so the live load is reduced for that member's area and not
 * for all that the beam carries (ASCE 7-16 4.7.2): ledge, hanger, pad and bearing feel this one.
 */
export function deckSeatLoad({bay}: Pick<Design, "bay">, member: Member, loads: FloorLoads): DeckSeatLoad {
  const areaFt2 = (bay.spanFt / 2) * (onStems(member) ? member.widthFt / 2 : 1);
  const deadPsf = ownPsf(member) + loads.superimposedDeadPsf;
  const livePsf = loadOn(loads, "deck member").governing.totalPsf;
  return {
    areaFt2, deadPsf, livePsf,
    serviceKip: ((deadPsf + livePsf) * areaFt2) / LB_PER_KIP,
    factoredKip: (factoredLoad(deadPsf, livePsf) * areaFt2) / LB_PER_KIP,
  };
}
