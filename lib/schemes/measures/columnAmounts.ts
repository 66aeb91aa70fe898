import {COLUMN_PIECE_FT, type ColumnResult, type ColumnsResult} from "../../columns/columnsResult.js";
import type {ColumnPosition} from "../../columns/levels.js";
import type {Design} from "../../design/design.js";
import {IN2_PER_FT2, IN_PER_FT, LB_PER_KIP, inches} from "../../units.js";
import type {Amounts} from "./level.js";
import type {HauledKind} from "./road.js";
import {STEEL_LB_PER_IN3} from "./steel.js";

/** Columns of each kind on the plan. */
export function columnCounts({bay: {baysAlong, baysAcross}}: Pick<Design, "bay">): Readonly<Record<ColumnPosition, number>> {
  return {
    "interior column": (baysAlong - 1) * (baysAcross - 1), "edge column": 2 * (baysAlong - 1), "girder end column": 2 * (baysAcross - 1), "corner column": 4,
  };
}

/** Beams that end on a column on each level, each on a corbel. */
const CORBELS: Readonly<Record<ColumnPosition, number>> = {"interior column": 2, "edge column": 2, "girder end column": 1, "corner column": 1};

/** What all columns take, with their corbels, and their footings. */
export interface ColumnAmounts {
  /** Undefined where a corbel is beyond the methods. */
  readonly columns: Amounts | undefined;
  /** Undefined where a footing is. */
  readonly footings: Amounts | undefined;
  /** The columns' own weight as the load take-down counts it, without corbels, kip. */
  readonly ownKip: number;
  readonly pieces: readonly HauledKind[];
}

/** What the columns of a design take; undefined where one of them has no size. */
export function columnAmounts(design: Design, {columns, unsized}: ColumnsResult): ColumnAmounts | undefined {
  if (unsized.length > 0) return undefined;
  const counts = columnCounts(design);
  let [concreteFt3, barsLb, ownKip, corbels, footed] = [0, 0, 0, true, true];
  let [footingFt3, footingBarsLb] = [0, 0];
  const pieces: HauledKind[] = [];
  for (const result of columns) {
    const count = counts[result.position];
    const {stories} = result.column.takedown;
    let [lengthFt, tallestFt, kip] = [0, 0, 0];
    for (const {level, columnKip} of stories) {
      lengthFt += level.storyHeightFt;
      tallestFt = Math.max(tallestFt, level.storyHeightFt);
      kip += columnKip;
    }
    const corbel = corbelOf(result);
    if (!corbel) corbels = false;
    if (!result.footing) footed = false;
    const corbelCount = CORBELS[result.position] * stories.length;
    const footing = footingOf(result);
    concreteFt3 += count * (lengthFt * (result.column.section.grossIn2 / IN2_PER_FT2) + corbelCount * (corbel?.concreteFt3 ?? 0));
    barsLb += count * (inches(lengthFt) * columnBarsLbPerIn(result) + corbelCount * (corbel?.barsLb ?? 0));
    footingFt3 += count * footing.concreteFt3;
    footingBarsLb += count * footing.barsLb;
    ownKip += count * kip;
    pieces.push(pieceOf(result, count, {lengthFt, tallestFt, kip, stories: stories.length}));
  }
  return {
    columns: corbels ? {concreteFt3, strandLb: 0, barsLb} : undefined,
    footings: footed ? {concreteFt3: footingFt3, strandLb: 0, barsLb: footingBarsLb} : undefined,
    ownKip, pieces,
  };
}

/** Bars and ties of a column, lb per inch of its height: closed ties with crossties that hold two bars each. */
function columnBarsLbPerIn({column: {section}}: ColumnResult): number {
  const {steelIn2, ties, widthIn, depthIn, coverIn} = section;
  const insetIn = 2 * coverIn + ties.diameterIn;
  const tieIn2 = (Math.PI * ties.diameterIn ** 2) / 4;
  const tieIn = 2 * (widthIn + depthIn - 2 * insetIn) + (ties.heldBars / 2) * (depthIn - insetIn);
  return STEEL_LB_PER_IN3 * (steelIn2 + (tieIn2 * tieIn) / ties.spacingIn);
}

/** One corbel: as deep at its front as at the column, its bars as long as corbel and column together. */
function corbelOf({corbel, column: {sideIn}}: ColumnResult): Omit<Amounts, "strandLb"> | undefined {
  if (!corbel) return undefined;
  const {projectionIn, input: {depthIn, widthIn}, mainSteelIn2, stirrupSteelIn2} = corbel;
  return {
    concreteFt3: (projectionIn * depthIn * widthIn) / IN_PER_FT ** 3,
    barsLb: STEEL_LB_PER_IN3 * (mainSteelIn2 + stirrupSteelIn2) * (projectionIn + sideIn),
  };
}

/** Cover of a footing's bars at their ends, in (ACI 318-19 Table 20.5.1.3.1). */
const FOOTING_COVER_IN = 3;

/** One footing with bars both ways over its whole side. */
function footingOf({footing}: ColumnResult): Omit<Amounts, "strandLb"> {
  if (!footing) return {concreteFt3: 0, barsLb: 0};
  const {sideIn, thicknessIn, steelIn2} = footing;
  return {
    concreteFt3: (sideIn ** 2 * thicknessIn) / IN_PER_FT ** 3,
    barsLb: STEEL_LB_PER_IN3 * 2 * steelIn2 * (sideIn - 2 * FOOTING_COVER_IN),
  };
}

/** The pieces that a column is hauled in, of whole stories; each counts as the one with the most of them. */
function pieceOf({column: {pieces, sideIn}}: ColumnResult, count: number, of: {lengthFt: number; tallestFt: number; kip: number; stories: number}): HauledKind {
  const storiesInPiece = Math.ceil(of.stories / pieces);
  const lengthFt = pieces === 1 ? of.lengthFt : Math.min(COLUMN_PIECE_FT, storiesInPiece * of.tallestFt);
  return {count: count * pieces, weightLb: LB_PER_KIP * of.kip * (lengthFt / of.lengthFt), lengthFt, acrossFt: sideIn / IN_PER_FT, highFt: sideIn / IN_PER_FT};
}
