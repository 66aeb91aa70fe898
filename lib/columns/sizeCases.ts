import {axialCapKip} from "./axialLimits.js";
import type {CaseEnds} from "./caseEnds.js";
import {hardest, type StoryUse} from "./columnStory.js";
import type {ColumnSection} from "./section.js";
import {MOST_AXIAL_KIP} from "./slenderness.js";
import {storyUses, strutsOf, type StoryRules, type StoryStruts} from "./storyUse.js";
import type {StoryLoad} from "./takedown.js";

/** A story in a case: the story's place from the top, and the case's among all. */
export interface CasePlace {
  readonly story: number;
  readonly nth: number;
}

/** A size of a column in all of its cases, each worked out when it is first wanted. */
export interface SizeCases {
  /** The first case found that the size does not carry; undefined if it carries all. What failed a smaller size is tried first. */
  readonly failing: (likely: CasePlace | undefined) => CasePlace | undefined;
  /** Every story's cases, top first. */
  readonly all: () => readonly (readonly StoryUse[])[];
}

/** Beyond the cap by more than rounding. */
const ABOVE = 1 + 1e-6;

/** The cases of a size: every story under each combination and each place of live load, with the minimum moment in either way. */
export function sizeCases(rules: StoryRules, section: ColumnSection, stories: readonly StoryLoad[], cases: readonly CaseEnds[]): SizeCases {
  const struts = strutsOf(rules, section, stories);
  const known: (readonly StoryUse[] | undefined)[] = [];
  const at = (story: number, nth: number): readonly StoryUse[] =>
    (known[nth * stories.length + story] ??= storyUses(rules, section, stories[story] as StoryLoad, struts[story] as StoryStruts, cases[nth] as CaseEnds, story));
  /** One place of live load after the other, in it one combination after the other, and the lowest story first. */
  const firstOf = (wanted: (uses: readonly StoryUse[]) => boolean): CasePlace | undefined => {
    for (let nth = 0; nth < cases.length; nth++) {
      for (let story = stories.length - 1; story >= 0; story--) if (wanted(at(story, nth))) return {story, nth};
    }
    return undefined;
  };
  return {
    failing: (likely) => crushed(section, stories, cases) ?? (likely && fails(at(likely.story, likely.nth)) ? likely : firstOf(fails)),
    all: () => {
      // All are worked out in that order, so that of several that are refused the first is told.
      firstOf(() => false);
      return stories.map((_, story) => cases.flatMap((__, nth) => at(story, nth)));
    },
  };
}

function fails(uses: readonly StoryUse[]): boolean {
  return uses.some(({carries}) => !carries);
}

/** A case with more axial load than the cap, which no moment lets a column take; what is beyond all methods is left to them to refuse. */
function crushed(section: ColumnSection, stories: readonly StoryLoad[], cases: readonly CaseEnds[]): CasePlace | undefined {
  const mostKip = ABOVE * axialCapKip(section);
  if (stories.some(({governing}) => governing.kip > MOST_AXIAL_KIP)) return undefined;
  const story = stories.findIndex(({governing}) => governing.kip > mostKip);
  return story < 0 ? undefined : {story, nth: cases.findIndex(({combination}) => combination === stories[story]?.governing.combination)};
}

/** The hardest of all cases. */
export function hardestOf(cases: SizeCases): StoryUse {
  return hardest(cases.all().map(hardest));
}
