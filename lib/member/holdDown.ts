import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {holdDownShare} from "../prestress/layout.js";
import {IN_PER_FT} from "../units.js";
import type {Member} from "./member.js";

/** What it takes to hold depressed strands down in the casting bed. */
export interface HoldDown {
  readonly points: 1 | 2;
  /** Slope of the strands' centroid from the end to the hold-down. */
  readonly slope: number;
  /** Upward pull at each point in each stem, kip. */
  readonly forcePerStemKip: number;
}

/** Pull that the devices of casting beds commonly take at one point of one stem, kip (common practice; producers differ). */
export const USUAL_HOLD_DOWN_KIP = 40;

/**
 * Upward pull of depressed strands on each hold-down point, kip: the vertical part of the jacking force on one side of
 * the point, and on both sides of a single one. Undefined for straight strands.
 */
export function holdDown(member: Member, spanFt: number): HoldDown | undefined {
  const {layout, shape} = member;
  if (layout.profile === "straight") return undefined;
  const points = layout.profile === "one-point" ? 1 : 2;
  const slope = (layout.centroidEndIn - layout.centroidCenterIn) / (holdDownShare(layout.profile) * spanFt * IN_PER_FT);
  const verticalKip = layout.areaIn2 * JACKING_STRESS_KSI * Math.sin(Math.atan(slope));
  return {points, slope, forcePerStemKip: ((points === 1 ? 2 : 1) * verticalKip) / shape.webCentersIn.length};
}
