import {requireNumber} from "../check.js";
import {atMost, utilizationOf, type Check} from "../checks.js";
import {InputError} from "../errors.js";
import {lazy} from "../kept.js";
import {IN2_PER_FT2} from "../units.js";
import {biaxialCapacity} from "./biaxial.js";
import {caseEnds, type CaseEnds} from "./caseEnds.js";
import {corbelLeverIn, type ColumnBending} from "./columnBending.js";
import {sizesOf, type SizeRules} from "./columnSizes.js";
import {BENDING_AXES, hardest, told, useWithoutSlenderness, type BendingAxis, type ColumnStory, type StoryUse} from "./columnStory.js";
import {levelWords, requireLevels} from "./levels.js";
import type {ColumnSection} from "./section.js";
import {hardestOf, sizeCases, type CasePlace, type SizeCases} from "./sizeCases.js";
import {slenderness, slendernessLimits} from "./slenderness.js";
import {takedowns, type Takedown, type TakedownInput} from "./takedown.js";

/** What the first size of a column depends on. */
export interface FirstColumnInput extends Omit<TakedownInput, "columnPlf">, SizeRules {
  readonly bending: ColumnBending;
  /** Effective length factor k; 1.0 in a braced frame. */
  readonly lengthFactor: number;
  /** Whether the columns, instead of walls, brace the building. */
  readonly sways: boolean;
  /** Sustained part of the live load, 0 to 1. */
  readonly sustainedLiveShare: number;
  /** Longest piece that can be cast and hauled, ft; the column is spliced above it. */
  readonly pieceLengthFt: number;
}

/** What governs the size of a column: why the next smaller one would not do, or that none smaller is tried. */
export type ColumnGoverns = "axial load" | "axial load with moment" | "slenderness" | "room for bars" | "least size";

/** The first size of a column. */
export interface FirstColumn {
  readonly sideIn: number;
  readonly section: ColumnSection;
  readonly bending: ColumnBending;
  readonly takedown: Takedown;
  /** Top first. */
  readonly stories: readonly ColumnStory[];
  /** The story that governs. */
  readonly worst: ColumnStory;
  /** Whether this size carries every story; if not, none up to the largest does. */
  readonly suffices: boolean;
  readonly governs: ColumnGoverns;
  /** Every size that was tried, smallest first. */
  readonly tried: readonly {readonly sideIn: number; readonly carries: boolean}[];
  /** Pieces that the column is cast in. */
  readonly pieces: number;
  readonly checks: readonly Check[];
}

/** Sides of square precast columns that are tried, in (common practice). */
export const COLUMN_SIDES_IN = {least: 12, most: 48, step: 2} as const;

/**
 * The smallest square column that carries every story's factored load with the moments of its beams about both axes, at a
 * chosen share of steel. The column's own weight is part of what it carries. Wind and earthquake are left to walls.
 *
 * @throws InputError for impossible levels, seats or bars, a piece shorter than a story, and bars that fit no size
 */
export function firstColumn(input: FirstColumnInput): FirstColumn {
  requireLevels(input.levels);
  requireNumber(input.sustainedLiveShare, {path: "sustainedLiveShare", label: "sustained share of the live load", unit: "", min: 0, max: 1});
  const pieces = piecesOf(input);
  const tried: {sideIn: number; carries: boolean}[] = [];
  const sizeOf = sizeMaker(input);
  let size: Size | undefined;
  let tooSmall: Size | "room for bars" | undefined;
  let failed: CasePlace | undefined;
  for (let sideIn: number = COLUMN_SIDES_IN.least; sideIn <= COLUMN_SIDES_IN.most; sideIn += COLUMN_SIDES_IN.step) {
    const next = sizeOf(sideIn);
    failed = next?.cases.failing(failed);
    const carries = next !== undefined && failed === undefined;
    tried.push({sideIn, carries});
    size = next ?? size;
    if (carries) break;
    tooSmall = next ?? "room for bars";
  }
  if (!size) {
    const allowed = `bars that reach ${100 * input.steelRatio} % and fit a column of ${COLUMN_SIDES_IN.least} to ${COLUMN_SIDES_IN.most} in`;
    throw new InputError({path: "bars", label: "bars", value: input.bars.map((bar) => bar.size).join(", "), allowed});
  }
  const {section, takedown} = size;
  const cases = size.cases.all();
  const stories = cases.map((story) => told(hardest(story), section, input.sways));
  const worst = hardest(stories);
  // Only a reader asks, and it takes as long as the size itself. It cannot refuse: less came down on the smaller size, and bent it less, than on the one that was worked out.
  const governs = lazy((): ColumnGoverns => (tooSmall === undefined ? "least size" : tooSmall === "room for bars" ? tooSmall : reason(tooSmall)));
  return {
    sideIn: section.depthIn, section, bending: input.bending, takedown, stories, worst, suffices: stories.every((story) => story.carries),
    get governs() {
      return governs();
    },
    tried, pieces, checks: [...section.checks, ...slendernessChecks(input, cases.flat()), strengthCheck(worst)],
  };
}

/** A size with what comes down on it, its own weight included. */
interface Size {
  readonly section: ColumnSection;
  readonly takedown: Takedown;
  readonly cases: SizeCases;
}

/** Makes the size of a side; undefined where no bars fit. What sizes share is computed once. */
function sizeMaker(input: FirstColumnInput): (sideIn: number) => Size | undefined {
  const [sectionOf, takedownOf] = [sizesOf(input), takedowns(input)];
  let [leverIn, ends]: [number, readonly CaseEnds[]] = [NaN, []];
  return (sideIn) => {
    const section = sectionOf(sideIn);
    if (!section) return undefined;
    const takedown = takedownOf((section.grossIn2 / IN2_PER_FT2) * section.concrete.unitWeightPcf);
    const reachIn = corbelLeverIn(input.bending.seat, sideIn);
    if (reachIn !== leverIn) [leverIn, ends] = [reachIn, caseEnds(input.bending, input.levels, reachIn)];
    return {section, takedown, cases: sizeCases(input, section, takedown.stories, ends)};
  };
}

/**
 * Each check of slenderness once, from the story, the combination and the way of bending that come nearest to its limit
 * or pass it farthest: one story may be nearest to buckling, another to having its moment enlarged too much.
 */
function slendernessChecks({sways}: FirstColumnInput, cases: readonly StoryUse[]): Check[] {
  const found = new Map<string, {readonly most: number; readonly use: StoryUse; readonly axis: BendingAxis}>();
  for (const use of cases) for (const axis of BENDING_AXES) {
    for (const {id, demand, capacity} of slendernessLimits({sways}, use.axialKip, use[axis].slenderness)) {
      const most = utilizationOf(demand, capacity);
      const known = found.get(id);
      if (!known || most > known.most) found.set(id, {most, use, axis});
    }
  }
  return [...found].map(([id, {use, axis}]) => {
    const check = slenderness({sways}, use.axialKip, use[axis].slenderness).checks.find((one) => one.id === id) as Check;
    return {...check, message: `In the story under ${levelWords(use.load.level)}: ${check.message.charAt(0).toLowerCase()}${check.message.slice(1)}`};
  });
}

/** Why a size does not have the strength. */
function reason({section, cases}: Size): ColumnGoverns {
  const worst = hardestOf(cases);
  // Slenderness governs where the column would have the strength with its end moments alone, which are never more.
  if (useWithoutSlenderness(section, worst) <= 1) return "slenderness";
  return biaxialCapacity(section, worst.asked, worst.axis).capped ? "axial load" : "axial load with moment";
}

function strengthCheck({load, axialKip, capacity, combination}: ColumnStory): Check {
  return atMost({
    id: "column strength", label: "Axial load with its moments", unit: "kip", clause: "ACI 318-19 22.4, 21.2.2",
    holds: `The column carries the story under ${levelWords(load.level)} with ${combination.name}.`,
    fails: `No square column up to ${COLUMN_SIDES_IN.most} in carries the story under ${levelWords(load.level)} with ${combination.name}: stronger concrete, or less floor on each column.`,
  }, axialKip, capacity.axialKip);
}

/** The fewest pieces of whole stories; from the ground up and from the roof down they come to the same. */
function piecesOf(input: FirstColumnInput): number {
  const tallestFt = Math.max(...input.levels.map((level) => level.storyHeightFt));
  const lengthFt = requireNumber(input.pieceLengthFt, {
    path: "pieceLengthFt", label: "longest piece of column", unit: "ft", min: tallestFt, max: 120,
  });
  let pieces = 1;
  let usedFt = 0;
  for (const {storyHeightFt} of input.levels) {
    if (usedFt + storyHeightFt > lengthFt) {
      pieces += 1;
      usedFt = 0;
    }
    usedFt += storyHeightFt;
  }
  return pieces;
}
