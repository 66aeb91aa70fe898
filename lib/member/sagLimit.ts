import {IN_PER_FT} from "../units.js";
import type {SagLimit} from "../design/design.js";
import type {Camber} from "./camber.js";

/**
 * How far a floor or a roof may move (ACI 318-19 Table 24.2.2): the immediate sag of a floor's live load over
 * 360, of a flat roof's live load, snow or rain over 180; or what happens after partitions or ceilings are attached, creep
 * and live load together, over 480 where they could be damaged and 240 where not.
 */
export const SAG_LIMITS = {
  "L/180": {spanOver: 180, counts: "live"},
  "L/360": {spanOver: 360, counts: "live"},
  "L/480": {spanOver: 480, counts: "attached"},
  "L/240": {spanOver: 240, counts: "attached"},
} as const satisfies Record<SagLimit, {spanOver: number; counts: "live" | "attached"}>;

/** Growth of a lasting load's sag by creep in the long term, as a multiplier of the immediate sag (Martin 1977, superimposed load). */
export const LASTING_MULTIPLIER = 3;

/** Greatest movement that a limit allows on a span, in. */
export function allowedSagIn(limit: SagLimit, spanFt: number): number {
  return (spanFt * IN_PER_FT) / SAG_LIMITS[limit].spanOver;
}

/**
 * Sag that creep still brings under dead load after floor and partitions are in place, in: from the camber with topping
 * and superimposed dead load just put on, to that in the long term. A member that goes on rising counts as still.
 */
export function creepSagIn(camber: Pick<Camber, "toppedIn" | "superimposedIn" | "longTermIn">): number {
  return Math.max(0, camber.toppedIn + camber.superimposedIn - camber.longTermIn);
}

/**
 * The deflection that a sag limit counts, in: the immediate sag of live load alone; or, where partitions are attached, what
 * creep still brings under dead load and the live load's sag with the creep of its lasting part.
 *
 * @param liveIn - immediate sag under live load, in
 * @param lastingShare - part of the live load that stays for years, 0 to 1
 */
export function countedMovementIn(limit: SagLimit, camber: Parameters<typeof creepSagIn>[0], liveIn: number, lastingShare: number): number {
  if (SAG_LIMITS[limit].counts === "live") return liveIn;
  return creepSagIn(camber) + liveIn * (1 + (LASTING_MULTIPLIER - 1) * lastingShare);
}
