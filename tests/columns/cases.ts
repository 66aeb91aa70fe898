import {caseEnds} from "../../lib/columns/caseEnds.js";
import {corbelLeverIn, type ColumnBending} from "../../lib/columns/columnBending.js";
import {told, type ColumnStory} from "../../lib/columns/columnStory.js";
import type {ColumnSection} from "../../lib/columns/section.js";
import {sizeCases, type SizeCases} from "../../lib/columns/sizeCases.js";
import {magnified, slenderness, strut, type Slenderness, type StrutInput, type StrutLoad} from "../../lib/columns/slenderness.js";
import type {StoryRules} from "../../lib/columns/storyUse.js";
import type {StoryLoad} from "../../lib/columns/takedown.js";

/** What bends a column, and the rules of its slenderness. */
export type Bent = StoryRules & {readonly bending: ColumnBending};

/** All cases of one size, made for it alone. */
export function casesOfSize(rules: Bent, section: ColumnSection, stories: readonly StoryLoad[]): SizeCases {
  return sizeCases(rules, section, stories, caseEnds(rules.bending, stories.map(({level}) => level), corbelLeverIn(rules.bending.seat, section.depthIn)));
}

/** Every story's cases as they are reported, top first. */
export function storyCases(rules: Bent, section: ColumnSection, stories: readonly StoryLoad[]): ColumnStory[][] {
  return casesOfSize(rules, section, stories).all().map((story) => story.map((use) => told(use, section, rules.sways)));
}

/** Slenderness of one story under one load. */
export function slendernessOf(input: StrutInput & StrutLoad): Slenderness {
  const of = strut(input);
  return slenderness(of, input.axialKip, magnified(of, input));
}
