import {atMost, type Check} from "../checks.js";
import type {CamberPoint} from "../member/camber.js";

/** The step at a joint between two members, at one place along the span. */
export interface StepPoint {
  readonly share: number;
  /** How much the second stands above the first at erection, in; negative where it stands below. */
  readonly stepIn: number;
}

/**
 * Step at the joint of two pretopped members that may remain once they have been pulled level and welded, in: 1/4, for
 * wheels and feet cross it (PCI MNL-135-00, erection tolerances; from memory).
 */
export const REMAINING_STEP_IN = 0.25;

/** Two neighbors side by side. */
export interface JointStep {
  readonly points: readonly StepPoint[];
  /** Greatest step in size, in. */
  readonly greatestIn: number;
  readonly checks: readonly Check[];
}

/**
 * How far the camber of a member may stray from the design's, and from its neighbor's of the same design, in: 1/4 in
 * per 10 ft of length, at most 3/4 in (PCI MNL-135-00; from memory).
 */
export function camberToleranceIn(spanFt: number): number {
  return Math.min(0.75, (0.25 * spanFt) / 10);
}

/**
 * The step between two neighboring members of equal span as they lie after erection, before their edges are pulled
 * level and welded. Pretopped tees have no topping that would hide it.
 *
 * @param first - the curve of its camber, at the same places as the second's
 */
export function jointStep(first: readonly CamberPoint[], second: readonly CamberPoint[], spanFt: number): JointStep {
  const points = first.map(({share, erectionIn}, i): StepPoint => ({share, stepIn: (second[i] as CamberPoint).erectionIn - erectionIn}));
  const greatestIn = Math.max(...points.map((point) => Math.abs(point.stepIn)));
  return {points, greatestIn, checks: [atMost({
    id: "joint step", label: "Step between neighbors", unit: "in", clause: "PCI MNL-135-00 (from memory)",
    holds: "Neighbors can be pulled level at their joint.",
    fails: "Neighbors differ by more than the trade allows: sort the pieces by camber, load the higher one, or ask for strands alike.",
  }, greatestIn, camberToleranceIn(spanFt))]};
}
