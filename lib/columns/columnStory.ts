import type {AxisPlace} from "./axisToward.js";
import {biaxialCapacity, biaxialUse, resultantKipIn, type BiaxialCapacity, type BiaxialLoad} from "./biaxial.js";
import type {LivePattern} from "./columnBending.js";
import type {ColumnCombination} from "./columnCombinations.js";
import type {EndMoments} from "./columnMoments.js";
import type {ColumnSection} from "./section.js";
import {slenderness, type Magnified, type Slenderness} from "./slenderness.js";
import type {StoryLoad} from "./takedown.js";

/** The two ways in which a column bends: along its beams, and across them in the direction of the deck's span. */
export const BENDING_AXES = ["along", "across"] as const;
export type BendingAxis = (typeof BENDING_AXES)[number];

/** Bending of one story in one of the two ways. */
export interface AxisBending {
  readonly ends: EndMoments;
  readonly slenderness: Slenderness;
  /** Moment to design for, kip-in; where slenderness is beyond its method, the end moment. */
  readonly momentKipIn: number;
}

/** One story under the combination and the place of live load that are most severe for it. */
export interface ColumnStory {
  readonly load: StoryLoad;
  readonly combination: ColumnCombination;
  readonly pattern: LivePattern;
  readonly axialKip: number;
  readonly along: AxisBending;
  readonly across: AxisBending;
  /** The way in which the minimum moment of a slender column counts: one at a time (ACI 318-19 6.6.4.5.4). */
  readonly leastCounts: BendingAxis;
  /** Axial load and both moments to design for; the section's depth lies across the beams. */
  readonly asked: BiaxialLoad;
  /** Both moments as one, kip-in, and their direction: 0 degrees along the beams, 90 across them. */
  readonly momentKipIn: number;
  readonly angleDeg: number;
  readonly capacity: BiaxialCapacity;
  /** Share of the design strength in use; the story has the strength if it is 1 at most and slenderness is within limits. */
  readonly utilization: number;
  readonly carries: boolean;
}

/** Bending of a story in one way, before its slenderness is told by checks. */
export type AxisUse = Omit<AxisBending, "slenderness"> & {readonly slenderness: Magnified};

/** A story in one case, as sizes are compared by it: without checks, and without what only readers want. */
export interface StoryUse extends Omit<ColumnStory, "along" | "across" | "momentKipIn" | "angleDeg" | "capacity"> {
  readonly along: AxisUse;
  readonly across: AxisUse;
  /** The neutral axis of its capacity. */
  readonly axis: AxisPlace;
}

/** A case as it is reported. */
export function told(use: StoryUse, section: ColumnSection, sways: boolean): ColumnStory {
  const {load, combination, pattern, axialKip, leastCounts, asked, axis, utilization, carries} = use;
  const bending = ({ends, slenderness: found, momentKipIn}: AxisUse): AxisBending => ({ends, slenderness: slenderness({sways}, axialKip, found), momentKipIn});
  const [along, across] = [bending(use.along), bending(use.across)];
  return {
    load, combination, pattern, axialKip, along, across, leastCounts, asked, momentKipIn: resultantKipIn(asked),
    angleDeg: (Math.atan2(across.momentKipIn, along.momentKipIn) * 180) / Math.PI, capacity: biaxialCapacity(section, asked, axis), utilization, carries,
  };
}

/** The most severe case: what fails by slenderness first, then the greatest utilization. */
export function hardest<Case extends Pick<ColumnStory, "carries" | "utilization">>(cases: readonly Case[]): Case {
  const rank = (story: Case) => (story.carries || story.utilization > 1 ? 0 : 1000) + story.utilization;
  return cases.reduce((most, story) => (rank(story) > rank(most) ? story : most));
}

/** Share of the strength that a story would use without slenderness, with its end moments alone. */
export function useWithoutSlenderness(section: ColumnSection, {axialKip, along, across}: Pick<StoryUse, "axialKip" | "along" | "across">): number {
  return biaxialUse(section, {axialKip, depthMomentKipIn: across.slenderness.endMomentKipIn, widthMomentKipIn: along.slenderness.endMomentKipIn});
}
