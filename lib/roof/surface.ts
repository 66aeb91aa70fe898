import type {Design} from "../design/design.js";
import {camberAt, uniformLoadShape, type Camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {riseAtIn, type FallPlan} from "./fallPlan.js";

/** When a roof's surface is looked at: at handover, and in the long term, after creep. */
export const ROOF_AGES = ["new", "in the long term"] as const;
export type RoofAge = (typeof ROOF_AGES)[number];

/** Parts into which each member's span is divided; even. */
export const ROOF_INTERVALS = 40;

/** A place of the roof's surface. */
export interface SurfacePoint {
  /** From one long edge, ft. */
  readonly atFt: number;
  /** Height above the bearings at the drains, in: fall and the member's camber, under dead load alone. */
  readonly heightIn: number;
  readonly drains: boolean;
}

/**
 * The roof's surface across the building, bay by bay: the fall, and on it each member's camber, which starts anew at each
 * bearing. Layers lie on it in one thickness (the taper makes the fall), so they are neglected.
 */
export function roofSurface(plan: FallPlan, {spanFt, baysAcross}: Design["bay"], member: Member, camber: Camber, age: RoofAge): SurfacePoint[][] {
  const curve = Array.from({length: ROOF_INTERVALS + 1}, (_, i) => camberAtAge(member, camber, i / ROOF_INTERVALS, age));
  const drainsFt = plan.lines.filter(({drains}) => drains).map(({atFt}) => atFt);
  const near = spanFt / ROOF_INTERVALS / 100;
  return Array.from({length: baysAcross}, (_, bay) => curve.map((camberIn, i): SurfacePoint => {
    const atFt = (bay + i / ROOF_INTERVALS) * spanFt;
    // Stryker disable next-line EqualityOperator: a drain is at a place or a whole place off
    return {atFt, heightIn: riseAtIn(plan, atFt) + camberIn, drains: drainsFt.some((drainFt) => Math.abs(drainFt - atFt) < near)};
  }));
}

/** Camber of a roof's member at a place along its span, under all dead load and nothing else, in. */
export function camberAtAge(member: Member, camber: Camber, share: number, age: RoofAge): number {
  const at = camberAt(member, camber, share);
  return age === "new" ? at.toppedIn + camber.superimposedIn * uniformLoadShape(share) : at.longTermIn;
}
