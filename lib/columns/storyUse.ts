import {biaxialCapacity, biaxialShare} from "./biaxial.js";
import type {CaseEnds, StoryEnds} from "./caseEnds.js";
import type {EndMoments} from "./columnMoments.js";
import {BENDING_AXES, type AxisUse, type BendingAxis, type StoryUse} from "./columnStory.js";
import type {ColumnSection} from "./section.js";
import {magnified, stands, strut, type Strut} from "./slenderness.js";
import type {StoryLoad} from "./takedown.js";

/** What the slenderness of a column's stories depends on, besides its section and loads. */
export interface StoryRules {
  readonly lengthFactor: number;
  readonly sways: boolean;
  readonly sustainedLiveShare: number;
}

/** A story of a size, bent in its two ways. */
export type StoryStruts = Readonly<Record<BendingAxis, Strut>>;

/** The struts of a size's stories, top first; stories of one height share them, and so do both ways of a square column. */
export function strutsOf({lengthFactor, sways}: StoryRules, section: ColumnSection, stories: readonly StoryLoad[]): StoryStruts[] {
  const {widthIn, depthIn, concrete} = section;
  const faces = {across: section, along: {depthIn: widthIn, inertiaIn4: (depthIn * widthIn ** 3) / 12, concrete}};
  const byHeight = new Map<number, StoryStruts>();
  return stories.map(({level}) => {
    const unbracedFt = level.clearHeightFt ?? level.storyHeightFt;
    const known = byHeight.get(unbracedFt);
    if (known) return known;
    const across = strut({section: faces.across, unbracedFt, lengthFactor, sways});
    const struts = {along: widthIn === depthIn ? across : strut({section: faces.along, unbracedFt, lengthFactor, sways}), across};
    byHeight.set(unbracedFt, struts);
    return struts;
  });
}

/**
 * A story under one combination and one place of live load, with the minimum moment along the beams or across them,
 * whichever can decide: where it enlarges the moment in one way only, counting it there is more severe than not counting it.
 *
 * @param nth - the combination's place among those of the loads
 */
export function storyUses(rules: StoryRules, section: ColumnSection, load: StoryLoad, struts: StoryStruts, {pattern, combination, nth, stories}: CaseEnds, story: number): StoryUse[] {
  const ends = stories[story] as StoryEnds;
  const axialKip = (load.factored[nth] as {kip: number}).kip;
  const sustainedKip = combination.dead * load.deadKip + combination.live * rules.sustainedLiveShare * load.liveKip;
  const sustainedShare = axialKip > 0 ? Math.min(1, sustainedKip / axialKip) : 0;
  const bent = (axis: BendingAxis, countsLeast: boolean) => bentStory(struts[axis], axialKip, sustainedShare, ends[axis], countsLeast);
  const least = {along: bent("along", true), across: bent("across", true)};
  const use = (leastCounts: BendingAxis): StoryUse => {
    // Where the minimum is below the end moment, counting it changes nothing.
    const of = (axis: BendingAxis) => (axis === leastCounts || !leastAbove(least[axis]) ? least[axis] : bent(axis, false));
    const [along, across] = [of("along"), of("across")];
    const asked = {axialKip, depthMomentKipIn: across.momentKipIn, widthMomentKipIn: along.momentKipIn};
    const capacity = biaxialCapacity(section, asked);
    const utilization = biaxialShare(section, asked, capacity);
    const carries = utilization <= 1 && stands(rules, axialKip, along.slenderness) && stands(rules, axialKip, across.slenderness);
    return {load, combination, pattern, axialKip, along, across, leastCounts, asked, capacity, utilization, carries};
  };
  const enlarged = BENDING_AXES.filter((axis) => least[axis].slenderness.slender && leastAbove(least[axis]));
  return enlarged.length > 0 ? enlarged.map(use) : [use(BENDING_AXES[0])];
}

function leastAbove({slenderness: {leastMomentKipIn, endMomentKipIn}}: AxisUse): boolean {
  return leastMomentKipIn > endMomentKipIn;
}

/** A story in one way of bending. */
function bentStory(struts: Strut, axialKip: number, sustainedShare: number, ends: EndMoments, countsLeast: boolean): AxisUse {
  const {topKipIn, bottomKipIn, curvature, smaller} = ends;
  const momentKipIn: readonly [number, number] = topKipIn >= bottomKipIn ? [topKipIn, smaller.bottomKipIn] : [smaller.topKipIn, bottomKipIn];
  const found = magnified(struts, {axialKip, momentKipIn, curvature, countsLeast, sustainedShare});
  return {ends, slenderness: found, momentKipIn: found.momentKipIn ?? found.endMomentKipIn};
}
