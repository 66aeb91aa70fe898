import {axisOf, biaxialShareAt} from "./biaxial.js";
import type {CaseEnds, StoryEnds} from "./caseEnds.js";
import type {EndMoments} from "./columnMoments.js";
import type {AxisUse, BendingAxis, StoryUse} from "./columnStory.js";
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
 * @param story - its place from the top
 */
export function storyUses(rules: StoryRules, section: ColumnSection, load: StoryLoad, struts: StoryStruts, one: CaseEnds, story: number): StoryUse[] {
  const ends = one.stories[story] as StoryEnds;
  const axialKip = (load.factored[one.nth] as {kip: number}).kip;
  const sustainedKip = one.combination.dead * load.deadKip + one.combination.live * rules.sustainedLiveShare * load.liveKip;
  const sustainedShare = axialKip > 0 ? Math.min(1, sustainedKip / axialKip) : 0;
  const along = bent(struts.along, axialKip, sustainedShare, ends.along, true);
  const across = bent(struts.across, axialKip, sustainedShare, ends.across, true);
  const enlarged = {along: along.slenderness.slender && leastAbove(along), across: across.slenderness.slender && leastAbove(across)};
  const uses: StoryUse[] = [];
  if (enlarged.along || !enlarged.across) {
    // Where the minimum is below the end moment, counting it changes nothing.
    const other = leastAbove(across) ? bent(struts.across, axialKip, sustainedShare, ends.across, false) : across;
    uses.push(used(rules, section, load, one, axialKip, "along", along, other));
  }
  if (enlarged.across) {
    const other = leastAbove(along) ? bent(struts.along, axialKip, sustainedShare, ends.along, false) : along;
    uses.push(used(rules, section, load, one, axialKip, "across", other, across));
  }
  return uses;
}

function leastAbove({slenderness: {leastMomentKipIn, endMomentKipIn}}: AxisUse): boolean {
  return leastMomentKipIn > endMomentKipIn;
}

/** A story in one way of bending. */
function bent(of: Strut, axialKip: number, sustainedShare: number, ends: EndMoments, countsLeast: boolean): AxisUse {
  const {topKipIn, bottomKipIn, curvature, smaller} = ends;
  const momentKipIn: readonly [number, number] = topKipIn >= bottomKipIn ? [topKipIn, smaller.bottomKipIn] : [smaller.topKipIn, bottomKipIn];
  const found = magnified(of, {axialKip, momentKipIn, curvature, countsLeast, sustainedShare});
  return {ends, slenderness: found, momentKipIn: found.momentKipIn ?? found.endMomentKipIn};
}

/** What a story bent in its two ways uses of its strength. */
function used(
  rules: StoryRules, section: ColumnSection, load: StoryLoad, {pattern, combination}: CaseEnds, axialKip: number, leastCounts: BendingAxis, along: AxisUse, across: AxisUse,
): StoryUse {
  const asked = {axialKip, depthMomentKipIn: across.momentKipIn, widthMomentKipIn: along.momentKipIn};
  const axis = axisOf(section, asked);
  const utilization = biaxialShareAt(section, asked, axis);
  const carries = utilization <= 1 && stands(rules, axialKip, along.slenderness) && stands(rules, axialKip, across.slenderness);
  return {load, combination, pattern, axialKip, along, across, leastCounts, asked, axis, utilization, carries};
}
