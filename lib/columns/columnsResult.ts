import {BEAM_END_JOINT_IN, columnLineToBearingIn} from "../beams/beamEnds.js";
import type {Catalog} from "../catalog.js";
import {atMost, outOfRange, type Check} from "../checks.js";
import {InputError} from "../errors.js";
import {LB_PER_KIP} from "../units.js";
import {concreteBearingKip} from "../materials/bearing.js";
import {usualColumnBars} from "./chooseBars.js";
import {greatest} from "./columnCombinations.js";
import {corbel, type CorbelInput, type CorbelResult} from "./corbel.js";
import {firstColumn, type FirstColumn} from "./firstSize.js";
import {footing, type FootingResult} from "./footing.js";
import {bendingOf, carriesGirders, columnLevels, positionsOf, type Framing} from "./frame.js";
import type {ColumnPosition} from "./levels.js";
import type {StoryLoad} from "./takedown.js";

/** One column of the design from roof to ground. */
export interface ColumnResult {
  readonly position: ColumnPosition;
  readonly column: FirstColumn;
  /** The lowest story's load, which the footing carries. */
  readonly foot: StoryLoad;
  /** Undefined where the reaction is beyond what a corbel's method covers. */
  readonly corbel: Corbel | undefined;
  /** Undefined where the load is beyond what a single footing can be. */
  readonly footing: FootingResult | undefined;
  /** Allowable soil pressure, psf. */
  readonly allowablePsf: number;
  readonly checks: readonly Check[];
}

/** A corbel with its sizes. */
export interface Corbel extends CorbelResult {
  readonly input: CorbelInput;
  /** Out from the column's face, in. */
  readonly projectionIn: number;
}

/** A column that no method covers, and why. */
export interface UnsizedColumn {
  readonly position: ColumnPosition;
  readonly reason: string;
}

/** All columns that the grid has. */
export interface ColumnsResult {
  readonly columns: readonly ColumnResult[];
  /** Columns of the grid that are not among them; each has a check that says so. */
  readonly unsized: readonly UnsizedColumn[];
  readonly checks: readonly Check[];
}

/** Longest column that is cast and hauled in one piece, ft (common practice). */
export const COLUMN_PIECE_FT = 60;
/** Shortest bearing of a beam on its corbel, in, the step of its lengths, and concrete from it to the corbel's front (common practice). */
const BEARING_IN = {least: 4, step: 0.5, front: 1.5} as const;
/** Depths of corbel that are tried, in; cover and a bar to its main steel. */
const CORBEL_DEPTHS_IN = {least: 10, most: 48, step: 2} as const;
const CORBEL_STEEL_IN = 2;
/** Loads beyond these are left to other methods, kip. */
const MOST_KIP = {corbel: 2000, footing: 20000} as const;

/**
 * The columns of a design: loads level by level, first size, corbel and footing of an interior, an edge, a girder end and
 * a corner column, as far as the grid has them. It takes a quarter of a millisecond for each, so the pipeline leaves it to those that need it.
 *
 * A column whose loads no method covers is omitted, and a check says so.
 */
export function columnsResult(framing: Framing, catalog: Catalog): ColumnsResult {
  const columns: ColumnResult[] = [];
  const unsized: UnsizedColumn[] = [];
  const checks: Check[] = [];
  for (const position of positionsOf(framing)) {
    try {
      const result = columnResult(framing, catalog, position);
      columns.push(result);
      checks.push(...result.checks);
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      const reason = `Its load is beyond what these methods cover. ${problem.message}`;
      unsized.push({position, reason});
      checks.push(...named(position, [outOfRange({id: "first size", label: "First size", unit: "", clause: "range of the methods", message: reason}, 0, 0)]));
    }
  }
  return {columns, unsized, checks};
}

/**
 * One column of the design; see {@link columnsResult}.
 *
 * @throws InputError if levels, bars or strengths are out of the methods' range
 */
export function columnResult(framing: Framing, catalog: Catalog, position: ColumnPosition): ColumnResult {
  const {design} = framing;
  const {column: input, ground, criteria} = design;
  const levels = columnLevels(framing, position);
  const column = firstColumn({
    position, levels, rooms: framing.loads.rooms, bending: bendingOf(framing, position, levels),
    strengthPsi: input.strengthPsi, coverIn: input.coverIn, steelRatio: input.steelPercent / 100, bars: usualColumnBars(catalog.bars),
    lengthFactor: 1, sways: input.sways, sustainedLiveShare: criteria.sustainedLiveShare, pieceLengthFt: COLUMN_PIECE_FT,
  });
  const foot = column.takedown.stories.at(-1) as StoryLoad;
  const held = corbelUnder(framing, position, column.sideIn);
  const serviceKip = foot.governingService.kip;
  const founded = serviceKip > MOST_KIP.footing ? undefined : footing({
    serviceKip, factoredKip: foot.governing.kip, columnSideIn: column.sideIn, columnStrengthPsi: input.strengthPsi,
    footingStrengthPsi: ground.footingStrengthPsi, allowablePsf: ground.allowablePsf,
  });
  return {
    position, column, foot, corbel: held, footing: founded, allowablePsf: ground.allowablePsf,
    checks: named(position, [
      ...column.checks,
      beamEndsCheck(column.sideIn, input.sideIn),
      ...(held?.checks ?? [beyond("corbel shear", "Corbel in shear", beamReactionKip(framing, position), MOST_KIP.corbel)]),
      ...(founded?.checks ?? [beyond("footing side", "Load on the ground", serviceKip, MOST_KIP.footing)]),
    ]),
  };
}

/** The shallowest corbel, in steps, that carries one beam's reaction; the deepest that is tried where none does. */
function corbelUnder(framing: Framing, position: ColumnPosition, sideIn: number): Corbel | undefined {
  const shearKip = beamReactionKip(framing, position);
  if (shearKip > MOST_KIP.corbel) return undefined;
  const {column, girder, edgeBeam} = framing.design;
  const webIn = carriesGirders(position) ? girder.webWidthIn : edgeBeam.webWidthIn;
  const bearingWidthIn = Math.min(webIn, sideIn) - 2;
  const neededIn = shearKip / concreteBearingKip(column.strengthPsi, bearingWidthIn);
  // The reaction acts where the beams' ends are cut for it, which is farther from a narrower column's face.
  const armIn = Math.max(column.seatIn, columnLineToBearingIn({column}) - sideIn / 2);
  // The bearing lies under the beam, which ends at the joint.
  const bearingLengthIn = Math.min(2 * (column.seatIn - BEAM_END_JOINT_IN), Math.max(BEARING_IN.least, Math.ceil(neededIn / BEARING_IN.step) * BEARING_IN.step));
  let found: Corbel | undefined;
  for (let depthIn: number = CORBEL_DEPTHS_IN.least; depthIn <= CORBEL_DEPTHS_IN.most; depthIn += CORBEL_DEPTHS_IN.step) {
    const input: CorbelInput = {
      shearKip, armIn, depthIn, effectiveDepthIn: depthIn - CORBEL_STEEL_IN, widthIn: sideIn,
      strengthPsi: column.strengthPsi, bearingLengthIn, bearingWidthIn,
    };
    found = {...corbel(input), input, projectionIn: armIn + bearingLengthIn / 2 + BEARING_IN.front};
    if (found.checks.every((check) => check.id === "corbel bearing" || check.verdict !== "fails")) break;
  }
  return found;
}

/** Whether the beams' ends, cut for columns of one side, leave this column enough room. */
function beamEndsCheck(sideIn: number, cutForIn: number): Check {
  return atMost({
    id: "beam ends", label: "Side, against what the beams are cut to clear", unit: "in", clause: "geometry", meetingIsEnough: true,
    holds: "The beams stop clear of the column, with their joints.",
    fails: `The beams would run into the column: set the column side that their ends are cut for to ${sideIn} in.`,
  }, sideIn, cutForIn);
}

/** Factored end reaction of one beam on the column, kip: of a floor's, or of the roof's where that is more. */
export function beamReactionKip({girder, edge, roof}: Framing, position: ColumnPosition): number {
  return carriesGirders(position)
    ? Math.max(girder?.reactionKip ?? 0, roof?.girder?.reactionKip ?? 0)
    : Math.max(edge.demand.reactionKip, roof?.edgeBeam.demand.reactionKip ?? 0);
}

function beyond(id: string, label: string, kip: number, mostKip: number): Check {
  return outOfRange({
    id, label, unit: "kip", clause: "common practice",
    message: "The load is beyond what a first size covers: another structure is needed.",
  }, kip, mostKip);
}

/** Each column's checks under its own name. */
function named(position: ColumnPosition, checks: readonly Check[]): Check[] {
  const name = `${position.charAt(0).toUpperCase()}${position.slice(1)}`;
  return checks.map((check) => ({...check, id: `${position}: ${check.id}`, label: `${name}: ${check.label.charAt(0).toLowerCase()}${check.label.slice(1)}`}));
}

/** What one square foot of the floor's governing load comes to on its way down, for a picture of the load's path. */
export interface LoadPath {
  /** Dead and live load of a square foot of floor with the deck in it, psf, unfactored and factored. */
  readonly floorPsf: number;
  readonly factoredPsf: number;
  /** Reaction of one deck member at one end, kip; of one beam at one end; the column's load; soil pressure, psf. */
  readonly memberKip: number;
  readonly beamKip: number;
  readonly columnKip: number;
  readonly soilPsf: number | undefined;
}

/** The load's path from deck to soil at one column: factored to the column's foot, unfactored on the soil. */
export function loadPath(framing: Framing, result: ColumnResult, deck: {readonly floorPsf: number; readonly factoredPsf: number}): LoadPath {
  const areaFt2 = (framing.deck.widthFt * framing.design.bay.spanFt) / 2;
  return {
    ...deck,
    memberKip: (deck.factoredPsf * areaFt2) / LB_PER_KIP,
    beamKip: beamReactionKip(framing, result.position),
    columnKip: greatest(result.foot.factored).kip,
    soilPsf: result.footing?.servicePsf,
  };
}
