import {requireNumber} from "../check.js";
import {atMost, type Check} from "../checks.js";
import {InputError} from "../errors.js";
import type {Bar} from "../materials/reinforcement.js";
import {IN2_PER_FT2} from "../units.js";
import {chooseBars} from "./chooseBars.js";
import {endMoments, type ColumnSeat, type EndMoments} from "./columnMoments.js";
import type {ColumnCombination} from "./columnCombinations.js";
import {capacityAlong, shareOf, utilisationOf, type ColumnCapacity} from "./interaction.js";
import {levelWords, requireLevels} from "./levels.js";
import {columnSection, type ColumnSection} from "./section.js";
import {slenderness, type Slenderness} from "./slenderness.js";
import {takedown, type StoreyLoad, type Takedown, type TakedownInput} from "./takedown.js";

/** What the first size of a column depends on. */
export interface FirstColumnInput extends Omit<TakedownInput, "columnPlf"> {
  readonly strengthPsi: number;
  /** Concrete outside the ties, in. */
  readonly coverIn: number;
  /** Share of steel to aim at, such as 0.015 to 0.02. */
  readonly steelRatio: number;
  /** Sizes of bar to choose from. */
  readonly bars: readonly Bar[];
  readonly seat: ColumnSeat;
  /** Effective length factor k; 1.0 in a braced frame. */
  readonly lengthFactor: number;
  /** Whether the columns, instead of walls, keep the building upright. */
  readonly sways: boolean;
  /** Part of the live load that stays for years, 0 to 1. */
  readonly sustainedLiveShare: number;
  /** Longest piece that can be cast and hauled, ft; the column is spliced above it. */
  readonly pieceLengthFt: number;
}

/** One storey under the combination that asks most of it. */
export interface ColumnStorey {
  readonly load: StoreyLoad;
  readonly combination: ColumnCombination;
  readonly axialKip: number;
  readonly ends: EndMoments;
  readonly slenderness: Slenderness;
  /** Moment to design for, kip-in; where slenderness is beyond its method, the end moment. */
  readonly momentKipIn: number;
  readonly capacity: ColumnCapacity;
  /** Share of the design strength in use; the storey carries if it is 1 at most and slenderness holds. */
  readonly utilisation: number;
  readonly carries: boolean;
}

/** What decides the size of a column: why the next smaller one would not do, or that none smaller is tried. */
export type ColumnGoverns = "axial load" | "axial load with moment" | "slenderness" | "room for bars" | "least size";

/** The first size of a column. */
export interface FirstColumn {
  readonly sideIn: number;
  readonly section: ColumnSection;
  readonly takedown: Takedown;
  /** Top first. */
  readonly storeys: readonly ColumnStorey[];
  /** The storey that asks most. */
  readonly worst: ColumnStorey;
  /** Whether this size carries every storey; if not, none up to the largest does. */
  readonly suffices: boolean;
  readonly governs: ColumnGoverns;
  /** Every size that was tried, smallest first; without a utilisation where no bars fit. */
  readonly tried: readonly {readonly sideIn: number; readonly utilisation: number | undefined; readonly carries: boolean}[];
  /** Pieces that the column is cast in. */
  readonly pieces: number;
  readonly checks: readonly Check[];
}

/** Sides of square precast columns that are tried, in (common practice). */
export const COLUMN_SIDES_IN = {least: 12, most: 48, step: 2} as const;

/**
 * The least square column that carries every storey's factored load with the moments of its seats, at a chosen share of
 * steel. The column's own weight is part of what it carries.
 *
 * Moment about one axis only: a column with eccentric beams in both directions needs more. Wind and earthquake are left
 * to walls.
 *
 * @throws InputError for levels, seats or bars that cannot be, a piece shorter than a storey, and bars that fit no size
 */
export function firstColumn(input: FirstColumnInput): FirstColumn {
  requireLevels(input.levels);
  requireNumber(input.sustainedLiveShare, {path: "sustainedLiveShare", label: "sustained share of the live load", unit: "", min: 0, max: 1});
  const pieces = piecesOf(input);
  const tried: {sideIn: number; utilisation: number | undefined; carries: boolean}[] = [];
  let last: ReturnType<typeof trial>;
  let governs: ColumnGoverns = "least size";
  for (let sideIn: number = COLUMN_SIDES_IN.least; sideIn <= COLUMN_SIDES_IN.most; sideIn += COLUMN_SIDES_IN.step) {
    const found = trial(input, sideIn);
    tried.push({sideIn, utilisation: found?.worst.utilisation, carries: found?.carries ?? false});
    if (!found) {
      governs = "room for bars";
      continue;
    }
    last = found;
    if (found.carries) break;
    governs = reason(found.section, found.worst);
  }
  if (!last) {
    const allowed = `bars that reach ${100 * input.steelRatio} % and fit a column of ${COLUMN_SIDES_IN.least} to ${COLUMN_SIDES_IN.most} in`;
    throw new InputError({path: "bars", label: "bars", value: input.bars.map((bar) => bar.size).join(", "), allowed});
  }
  const {section, worst, carries} = last;
  return {
    sideIn: section.depthIn, section, takedown: last.takedown, storeys: last.storeys, worst, suffices: carries,
    governs, tried, pieces, checks: [...section.checks, ...slendernessChecks(last.cases), strengthCheck(worst)],
  };
}

/** A size with all its storeys; undefined where no bars fit it. */
function trial(input: FirstColumnInput, sideIn: number) {
  const bars = chooseBars(sideIn, input.steelRatio, input.bars, input.coverIn);
  if (!bars) return undefined;
  const section = columnSection({...bars, widthIn: sideIn, depthIn: sideIn, faces: "all", coverIn: input.coverIn, strengthPsi: input.strengthPsi});
  const down = takedown({...input, columnPlf: (section.grossIn2 / IN2_PER_FT2) * section.concrete.unitWeightPcf});
  const cases = down.storeys.map((load, i) => load.factored.map(({combination, kip}) => {
    const ends = endMoments(input.levels, input.seat, sideIn, combination)[i] as EndMoments;
    return storeyUnder(input, section, load, combination, kip, ends);
  }));
  const storeys = cases.map(hardest);
  return {section, takedown: down, storeys, cases: cases.flat(), worst: hardest(storeys), carries: storeys.every((storey) => storey.carries)};
}

/**
 * Each check of slenderness once, from the storey and the combination that come nearest to its limit or pass it farthest:
 * one storey may be nearest to buckling, another to having its moment enlarged too much.
 */
function slendernessChecks(cases: readonly ColumnStorey[]): Check[] {
  const found = new Map<string, Check>();
  for (const {load, slenderness: slender} of cases) {
    for (const check of slender.checks) {
      const most = found.get(check.id);
      if (most && most.utilisation >= check.utilisation) continue;
      found.set(check.id, {...check, message: `In the story under ${levelWords(load.level)}: ${check.message.charAt(0).toLowerCase()}${check.message.slice(1)}`});
    }
  }
  return [...found.values()];
}

function storeyUnder(
  input: FirstColumnInput, section: ColumnSection, load: StoreyLoad, combination: ColumnCombination, axialKip: number, ends: EndMoments,
): ColumnStorey {
  const sustainedKip = combination.dead * load.deadKip + combination.live * input.sustainedLiveShare * load.liveKip;
  const slender = slenderness({
    section, axialKip, momentKipIn: [ends.topKipIn, ends.bottomKipIn], curvature: ends.curvature,
    unbracedFt: load.level.clearHeightFt ?? load.level.storeyHeightFt,
    lengthFactor: input.lengthFactor, sways: input.sways, sustainedShare: axialKip > 0 ? Math.min(1, sustainedKip / axialKip) : 0,
  });
  const momentKipIn = slender.momentKipIn ?? slender.endMomentKipIn;
  const capacity = capacityAlong(section, {axialKip, momentKipIn});
  const utilisation = shareOf(section, {axialKip, momentKipIn}, capacity);
  const stands = slender.checks.every((check) => check.verdict === "ok" || check.verdict === "near");
  return {
    load, combination, axialKip, ends, slenderness: slender, momentKipIn, capacity, utilisation,
    carries: utilisation <= 1 && stands,
  };
}

/** The storey or combination that asks most: what fails by slenderness first, then the greatest utilisation. */
function hardest(storeys: readonly ColumnStorey[]): ColumnStorey {
  const rank = (storey: ColumnStorey) => (storey.carries || storey.utilisation > 1 ? 0 : 1000) + storey.utilisation;
  return storeys.reduce((most, storey) => (rank(storey) > rank(most) ? storey : most));
}

/** Why a size does not carry. */
function reason(section: ColumnSection, {axialKip, slenderness: slender, utilisation, capacity}: ColumnStorey): ColumnGoverns {
  // Slenderness decides where the column would carry with its end moment alone.
  const withoutSlenderness = utilisationOf(section, {axialKip, momentKipIn: slender.endMomentKipIn});
  if (utilisation <= 1 || withoutSlenderness <= 1) return "slenderness";
  return capacity.capped ? "axial load" : "axial load with moment";
}

function strengthCheck({load, axialKip, capacity, combination}: ColumnStorey): Check {
  return atMost({
    id: "column strength", label: "Axial load with its moment", unit: "kip", clause: "ACI 318-19 22.4, 21.2.2",
    holds: `The column carries the storey under ${levelWords(load.level)} with ${combination.name}.`,
    fails: `No square column up to ${COLUMN_SIDES_IN.most} in carries the storey under ${levelWords(load.level)} with ${combination.name}.`,
  }, axialKip, capacity.axialKip);
}

/** Pieces of whole storeys from the ground up. */
function piecesOf(input: FirstColumnInput): number {
  const tallestFt = Math.max(...input.levels.map((level) => level.storeyHeightFt));
  const lengthFt = requireNumber(input.pieceLengthFt, {
    path: "pieceLengthFt", label: "longest piece of column", unit: "ft", min: tallestFt, max: 120,
  });
  let pieces = 1;
  let usedFt = 0;
  for (const {storeyHeightFt} of [...input.levels].reverse()) {
    if (usedFt + storeyHeightFt > lengthFt) {
      pieces += 1;
      usedFt = 0;
    }
    usedFt += storeyHeightFt;
  }
  return pieces;
}
