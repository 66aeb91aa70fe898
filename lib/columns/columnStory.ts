import {biaxialCapacity, biaxialShare, biaxialUse, resultantKipIn, type BiaxialCapacity, type BiaxialLoad} from "./biaxial.js";
import {corbelLeverIn, type ColumnBending, type LivePattern} from "./columnBending.js";
import {momentUnder, underCombination, type ColumnCombination} from "./columnCombinations.js";
import {endMoments, type EndMoments} from "./columnMoments.js";
import type {ColumnSection} from "./section.js";
import {slenderness, type Slenderness} from "./slenderness.js";
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

/** What the slenderness of a column's stories depends on, besides its section and loads. */
export interface StoryRules {
  readonly bending: ColumnBending;
  readonly lengthFactor: number;
  readonly sways: boolean;
  readonly sustainedLiveShare: number;
}

/** Every story, top first, under each combination and each place of live load, with the minimum moment in either way. */
export function storyCases(rules: StoryRules, section: ColumnSection, stories: readonly StoryLoad[]): ColumnStory[][] {
  const cases = stories.map((): ColumnStory[] => []);
  for (const [i, found] of eachCase(rules, section, stories)) (cases[i] as ColumnStory[]).push(found);
  return cases;
}

/** Whether every story has the strength in all of its cases; for a size that is too small it stops at the first that has not. */
export function allCarry(rules: StoryRules, section: ColumnSection, stories: readonly StoryLoad[]): boolean {
  for (const [, {carries}] of eachCase(rules, section, stories)) if (!carries) return false;
  return true;
}

/** One case after the other with its story's place from the top; the lowest story first, which is likely to govern. */
function* eachCase(rules: StoryRules, section: ColumnSection, stories: readonly StoryLoad[]): Generator<readonly [number, ColumnStory]> {
  const levels = stories.map(({level}) => level);
  const leverIn = corbelLeverIn(rules.bending.seat, section.depthIn);
  const combinations = (stories[0] as StoryLoad).factored;
  for (const pattern of rules.bending.patterns) {
    for (let nth = 0; nth < combinations.length; nth++) {
      const {combination} = combinations[nth] as {combination: ColumnCombination};
      const moments = {
        along: pattern.levels.map(({along}) => underCombination(along, combination) * leverIn),
        across: pattern.levels.map(({across}) => momentUnder(across, combination)),
      };
      const dead = {...combination, live: 0, roof: 0};
      const bare = {
        along: pattern.levels.map(({along}) => underCombination(along, dead) * leverIn),
        across: pattern.levels.map(({across}) => momentUnder(across, dead)),
      };
      const along = endMoments(levels, moments.along, pattern.curvature.along, bare.along);
      const across = endMoments(levels, moments.across, pattern.curvature.across, bare.across);
      for (let i = stories.length - 1; i >= 0; i--) {
        const load = stories[i] as StoryLoad;
        const {kip} = load.factored[nth] as {kip: number};
        for (const found of storyUnder(rules, section, load, combination, pattern, kip, {along: along[i] as EndMoments, across: across[i] as EndMoments})) yield [i, found];
      }
    }
  }
}

/**
 * A story with the minimum moment along the beams or across them, whichever can decide: where it enlarges the moment in
 * one way only, counting it there is more severe than not counting it.
 */
function storyUnder(
  rules: StoryRules, section: ColumnSection, load: StoryLoad, combination: ColumnCombination, pattern: LivePattern, axialKip: number,
  ends: Readonly<Record<BendingAxis, EndMoments>>,
): ColumnStory[] {
  const sustainedKip = combination.dead * load.deadKip + combination.live * rules.sustainedLiveShare * load.liveKip;
  const bent = (axis: BendingAxis, countsLeast: boolean): AxisBending => {
    const {topKipIn, bottomKipIn, curvature, smaller} = ends[axis];
    const slender = slenderness({
      section: facing(section, axis), axialKip, momentKipIn: topKipIn >= bottomKipIn ? [topKipIn, smaller.bottomKipIn] : [smaller.topKipIn, bottomKipIn], curvature, countsLeast,
      unbracedFt: load.level.clearHeightFt ?? load.level.storyHeightFt,
      lengthFactor: rules.lengthFactor, sways: rules.sways, sustainedShare: axialKip > 0 ? Math.min(1, sustainedKip / axialKip) : 0,
    });
    return {ends: ends[axis], slenderness: slender, momentKipIn: slender.momentKipIn ?? slender.endMomentKipIn};
  };
  const least = {along: bent("along", true), across: bent("across", true)};
  const enlarged = BENDING_AXES.filter((axis) => least[axis].slenderness.slender && least[axis].slenderness.leastMomentKipIn > least[axis].slenderness.endMomentKipIn);
  return (enlarged.length > 0 ? enlarged : [BENDING_AXES[0]]).map((leastCounts): ColumnStory => {
    const along = leastCounts === "along" ? least.along : bent("along", false);
    const across = leastCounts === "across" ? least.across : bent("across", false);
    const asked = {axialKip, depthMomentKipIn: across.momentKipIn, widthMomentKipIn: along.momentKipIn};
    const capacity = biaxialCapacity(section, asked);
    const utilization = biaxialShare(section, asked, capacity);
    const stands = [along, across].every(({slenderness: {checks}}) => checks.every(({verdict}) => verdict === "ok" || verdict === "near"));
    return {
      load, combination, pattern, axialKip, along, across, leastCounts, asked, momentKipIn: resultantKipIn(asked),
      angleDeg: (Math.atan2(across.momentKipIn, along.momentKipIn) * 180) / Math.PI, capacity, utilization,
      carries: utilization <= 1 && stands,
    };
  });
}

/** The section as a bending along or across the beams sees it. */
function facing(section: ColumnSection, axis: BendingAxis): Pick<ColumnSection, "depthIn" | "inertiaIn4" | "concrete"> {
  return axis === "across" ? section : {depthIn: section.widthIn, inertiaIn4: (section.depthIn * section.widthIn ** 3) / 12, concrete: section.concrete};
}

/** The most severe case: what fails by slenderness first, then the greatest utilization. */
export function hardest(cases: readonly ColumnStory[]): ColumnStory {
  const rank = (story: ColumnStory) => (story.carries || story.utilization > 1 ? 0 : 1000) + story.utilization;
  return cases.reduce((most, story) => (rank(story) > rank(most) ? story : most));
}

/** Share of the strength that a story would use without slenderness, with its end moments alone. */
export function useWithoutSlenderness(section: ColumnSection, {axialKip, along, across}: ColumnStory): number {
  return biaxialUse(section, {axialKip, depthMomentKipIn: across.slenderness.endMomentKipIn, widthMomentKipIn: along.slenderness.endMomentKipIn});
}
