import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import type {FireSetting} from "../member/fire.js";
import {HANDBOOK_LIMITS, LOAD_LIMITS, USUAL_LIMITS, type LimitName} from "./limits.js";
import type {Rules} from "./rules.js";

/** By what rules a safe superimposed load is found. */
export interface Criteria extends Rules {
  /** The limits that count; what is not in the list does not bound the load. */
  readonly limits: readonly LimitName[];
}

/** Bearing length of a handbook's member, in: its tables do not print one (common practice for stems). */
const HANDBOOK_SEAT_IN = 6;

/**
 * The criteria of the trade handbook's load tables: 10 psf of the safe load dead for untopped members and 15 psf for
 * topped ones, the rest live; 1.2D + 1.6L and no other combination; tension to 12 sqrt(f'c) (PCI Design Handbook,
 * MNL-120, ch. 3, explanation of tables; the last from memory); none of the limits that its tables leave to the reader,
 * save development and bearing, which stop members on spans shorter than those printed.
 */
export function handbookCriteria(topped: boolean): Criteria {
  return {
    superimposedDeadPsf: topped ? 15 : 10,
    sustainedLiveShare: 0,
    tensionClass: "T",
    deadFactor: DEAD_FACTOR,
    liveFactor: LIVE_FACTOR,
    deadOnlyFactor: DEAD_FACTOR,
    limits: HANDBOOK_LIMITS,
    sagLimit: "L/360",
    seatIn: HANDBOOK_SEAT_IN,
    walking: undefined,
    fire: undefined,
  };
}

/** The criteria that a design sets for its own deck: every limit on the load, camber only where it is required. */
export function designCriteria(design: Design, catalog: Catalog, superimposedDeadPsf: number): Criteria {
  const {criteria} = design;
  const hours = Number(criteria.fireHours);
  return {
    superimposedDeadPsf,
    sustainedLiveShare: criteria.sustainedLiveShare,
    tensionClass: criteria.tensionClass,
    deadFactor: DEAD_FACTOR,
    liveFactor: LIVE_FACTOR,
    deadOnlyFactor: DEAD_ONLY_FACTOR,
    limits: criteria.keepCamber ? LOAD_LIMITS : USUAL_LIMITS,
    sagLimit: criteria.sagLimit,
    seatIn: seatIn(design),
    walking: criteria.walking === "none" ? undefined : criteria.walking,
    fire: hours > 0 ? {hours, ...fireSetting(design, catalog)} : undefined,
  };
}

/** Bearing length of a design's deck on its edge beam, in. */
export function seatIn({edgeBeam}: Pick<Design, "edgeBeam">): number {
  return Math.max(0, seatReachIn(edgeBeam) - edgeBeam.jointGapIn);
}

/** How far the edge beam reaches under the deck from the face of its web, in; the whole of a beam that lies below it. */
export function seatReachIn({kind, webWidthIn, ledgeProjectionIn}: Design["edgeBeam"]): number {
  return kind === "below" ? webWidthIn : ledgeProjectionIn;
}

/** What a design's floor is judged by in a fire, also where no rating is required. */
export function fireSetting({criteria, deck}: Pick<Design, "criteria" | "deck">, catalog: Pick<Catalog, "fire">): FireSetting {
  return {tables: catalog.fire, aggregate: deck.aggregate, restrained: criteria.fireRestrained};
}

/** Relative humidity of the handbook's examples, %; its load tables do not print theirs. */
export const HANDBOOK_HUMIDITY_PERCENT = 70;
/** Strengths of the handbook's tables, psi: member, at release, and topping (PCI Design Handbook, MNL-120, ch. 3, explanation of tables; the last two from memory). */
export const HANDBOOK_STRENGTHS_PSI = {member: 5000, release: 3500, topping: 3000} as const;
