import type {Bar} from "../materials/reinforcement.js";
import {chooseBars} from "./chooseBars.js";
import {columnSection, type ColumnSection} from "./section.js";

/** What all sizes of a column have in common. */
export interface SizeRules {
  readonly strengthPsi: number;
  /** Concrete outside the ties, in. */
  readonly coverIn: number;
  /** Share of steel to aim at, such as 0.015 to 0.02. */
  readonly steelRatio: number;
  /** Sizes of bar to choose from. */
  readonly bars: readonly Bar[];
}

/** Sections by side, of columns with the same rules; undefined where no bars fit. */
type Sizes = Map<number, ColumnSection | undefined>;

/** Sizes by the bars to choose from, and by the other rules. */
const KNOWN = new WeakMap<readonly Bar[], Map<string, Sizes>>();
/** Rules whose sizes are kept; the columns of one building have one set of them. */
const MOST_KEPT = 32;

/**
 * The square section of a side with the fewest usual bars that reach the share of steel; undefined where none fit. All
 * columns of a building are chosen from the same sections, and so are those of buildings that differ otherwise, so each is made once.
 *
 * @throws InputError if the rules are out of range
 */
export function sizesOf(rules: SizeRules): (sideIn: number) => ColumnSection | undefined {
  const {strengthPsi, coverIn, steelRatio, bars} = rules;
  const ofBars = KNOWN.get(bars) ?? new Map<string, Sizes>();
  KNOWN.set(bars, ofBars);
  const key = `${strengthPsi} ${coverIn} ${steelRatio}`;
  const sizes = ofBars.get(key) ?? new Map<number, ColumnSection | undefined>();
  if (!ofBars.has(key) && ofBars.size >= MOST_KEPT) ofBars.clear();
  ofBars.set(key, sizes);
  return (sideIn) => {
    if (!sizes.has(sideIn)) sizes.set(sideIn, sectionOf(sideIn, rules));
    return sizes.get(sideIn);
  };
}

function sectionOf(sideIn: number, {strengthPsi, coverIn, steelRatio, bars}: SizeRules): ColumnSection | undefined {
  const chosen = chooseBars(sideIn, steelRatio, bars, coverIn);
  return chosen && columnSection({...chosen, widthIn: sideIn, depthIn: sideIn, faces: "all", coverIn, strengthPsi});
}
