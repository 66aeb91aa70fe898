import type {ColumnBending, LivePattern} from "./columnBending.js";
import {FACTORED, momentUnder, underCombination, type ColumnCombination} from "./columnCombinations.js";
import {endMoments, type EndMoments} from "./columnMoments.js";
import type {BendingAxis} from "./columnStory.js";
import type {ColumnLevel} from "./levels.js";

/** Moments at the ends of one story, both ways. */
export type StoryEnds = Readonly<Record<BendingAxis, EndMoments>>;

/** What bends a column in one case: one place of live load under one combination. */
export interface CaseEnds {
  readonly pattern: LivePattern;
  readonly combination: ColumnCombination;
  /** The combination's place among {@link FACTORED}, as loads are combined. */
  readonly nth: number;
  /** Top first. */
  readonly stories: readonly StoryEnds[];
}

/**
 * The moments of every case at the ends of every story, for beams that bear at a distance from the column's center line:
 * sizes with the same distance share them.
 */
export function caseEnds({patterns}: ColumnBending, levels: readonly ColumnLevel[], leverIn: number): CaseEnds[] {
  return patterns.flatMap((pattern) => FACTORED.map((combination, nth): CaseEnds => {
    const under = (of: ColumnCombination) => ({
      along: pattern.levels.map(({along}) => underCombination(along, of) * leverIn),
      across: pattern.levels.map(({across}) => momentUnder(across, of)),
    });
    const [all, dead] = [under(combination), under({...combination, live: 0, roof: 0})];
    const along = endMoments(levels, all.along, pattern.curvature.along, dead.along);
    const across = endMoments(levels, all.across, pattern.curvature.across, dead.across);
    return {pattern, combination, nth, stories: levels.map((_, i) => ({along: along[i] as EndMoments, across: across[i] as EndMoments}))};
  }));
}
