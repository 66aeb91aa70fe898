import type {Design} from "../design/design.js";
import {Kept} from "../kept.js";
import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import {loadOn, type ElementLoad, type FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, type Member} from "../member/member.js";
import {LB_PER_KIP} from "../units.js";
import {pointLoadDiagrams, shearBesideKip, type PointLoad, type PointLoadDiagrams} from "../beams/stemLoads.js";
import {nearestStem, stemToEndIn, stemsOfBays, teeRow, teeRowKey, type BayStems, type TeeRow} from "../beams/stemRow.js";

/** The stems on the girder of one bay; the same on both sides. */
export interface GirderStems extends BayStems {
  /** What each stem brings of a deck of 1,000 plf, and the girder's diagrams under it. */
  readonly points: readonly PointLoad[];
  readonly unit: PointLoadDiagrams;
}

/** How the deck of both sides stands on the girder: on stems, or evenly. */
export interface DeckStems {
  /** Every bay on which the stems fall otherwise; empty under planks. */
  readonly bays: readonly GirderStems[];
  /** The bay whose girder bends most, and the one whose end is pressed most; undefined under planks. */
  readonly bending: GirderStems | undefined;
  readonly end: GirderStems | undefined;
  /** Bending and end reaction under the stems of the worst bay over those under the same load spread evenly; never taken below 1. */
  readonly momentFactor: number;
  readonly reactionFactor: number;
  /** Least distance of a stem from its girder's end, in, negative beyond that end; undefined under planks. */
  readonly endDistanceIn: number | undefined;
}

/** Loads on the girder per foot of its length. */
export interface GirderLoads {
  readonly load: ElementLoad;
  /** The live load of one bay alone is felt over that bay only, so it is reduced as on an edge beam. */
  readonly oneBay: ElementLoad;
  /** Width of floor that the girder carries: half a span from each side, ft. */
  readonly tributaryWidthFt: number;
  readonly selfPlf: number;
  /** Deck, topping and superimposed dead load of both bays. */
  readonly deckDeadPlf: number;
  readonly livePlf: number;
  readonly deadPlf: number;
  /** Dead and live load beyond the girder's own weight. */
  readonly superimposedPlf: number;
  /** Live load of one bay, with nothing on the other. */
  readonly oneBayLivePlf: number;
  /** Factored load of the deck spread evenly, with the girder. */
  readonly factoredPlf: number;
  readonly stems: DeckStems;
}

/** A dead and a live load on the deck of a girder, plf. */
export interface DeckPlf {
  readonly deadPlf: number;
  readonly livePlf: number;
}

/**
 * Loads from both bays on the girder between them.
 *
 * @param selfPlf - the girder's own weight
 * @throws RangeError if the grid has one bay across, and so no girder
 */
export function girderLoads(design: Design, member: Member, loads: FloorLoads, selfPlf: number): GirderLoads {
  return {...evenGirderLoads(design, member, loads, selfPlf), stems: deckStems(design, member)};
}

/** The same without how the deck's stems stand on it. */
export function evenGirderLoads(design: Pick<Design, "bay">, member: Member, loads: FloorLoads, selfPlf: number): Omit<GirderLoads, "stems"> {
  const {spanFt} = design.bay;
  const load = loadOn(loads, "interior beam");
  const oneBay = loadOn(loads, "edge beam");
  const deckDeadPlf = (ownPsf(member) + loads.superimposedDeadPsf) * spanFt;
  const livePlf = load.governing.totalPsf * spanFt;
  return {
    load, oneBay, tributaryWidthFt: spanFt, selfPlf, deckDeadPlf, livePlf,
    deadPlf: deckDeadPlf + selfPlf,
    superimposedPlf: deckDeadPlf + livePlf,
    oneBayLivePlf: (oneBay.governing.totalPsf * spanFt) / 2,
    factoredPlf: factored(selfPlf, {deadPlf: deckDeadPlf, livePlf}, 1),
  };
}

/**
 * The larger of 1.4D and 1.2D + 1.6L (ASCE 7-16 2.3.1), with the deck's part times a factor for the way it stands on
 * the girder; in the unit of the loads.
 */
export function factored(selfPlf: number, {deadPlf, livePlf}: DeckPlf, deckFactor: number): number {
  const dead = selfPlf + deckFactor * deadPlf;
  return Math.max(DEAD_ONLY_FACTOR * dead, DEAD_FACTOR * dead + LIVE_FACTOR * deckFactor * livePlf);
}

/** Bays of the rows that were asked for last: every size of girder that is tried lies under the same one. */
const BAYS = new Kept<readonly GirderStems[]>(100);

/** Stems on the girders of all bays, of which the worst count; planks and slabs load it evenly. */
function deckStems(design: Design, member: Member): DeckStems {
  const row = teeRow(design, member);
  const nearest = row && nearestStem(row);
  // Stryker disable next-line LogicalOperator: a row has its stems, the nearest among them
  if (!row || !nearest) return {bays: [], bending: undefined, end: undefined, momentFactor: 1, reactionFactor: 1, endDistanceIn: undefined};
  const {beamSpanFt} = design.bay;
  const bays = BAYS.get(teeRowKey(row), () => stemsOfBays(row).map((bay) => underStems(bay, row)));
  const reactionKip = ({unit}: GirderStems) => Math.max(unit.leftKip, unit.rightKip);
  // Stryker disable next-line EqualityOperator: the two part in the tenth digit
  const most = (value: (bay: GirderStems) => number) => bays.reduce((greatest, bay) => (value(bay) > value(greatest) + 1e-9 ? bay : greatest));
  const bending = most(({unit}) => unit.greatestMomentKipFt);
  const end = most(reactionKip);
  return {
    bays, bending, end,
    momentFactor: Math.max(1, bending.unit.greatestMomentKipFt / (beamSpanFt ** 2 / 8)),
    reactionFactor: Math.max(1, reactionKip(end) / (beamSpanFt / 2)),
    endDistanceIn: stemToEndIn(design, nearest.atFt),
  };
}

function underStems(bay: BayStems, {spanFt, teeWidthFt}: TeeRow): GirderStems {
  const points = bay.placesFt.map((atFt) => ({atFt, loadKip: teeWidthFt / 2, eccentricityIn: 0}));
  return {...bay, points, unit: pointLoadDiagrams({spanFt, points, uniformPlf: 0, uniformEccentricityIn: 0})};
}

/**
 * Shear at a place along the girder for 1 plf of deck, kip: by the stems of any bay, from either end and on the worse side
 * of a stem, or spread evenly, whichever is more.
 */
export function deckShearKipPerPlf({stems: {bays}}: Pick<GirderLoads, "stems">, spanFt: number, share: number): number {
  if (bays.length === 0) return mostShearKipPerPlf(bays, spanFt, share);
  let shears = SHEARS.get(bays);
  if (!shears) SHEARS.set(bays, (shears = new Kept(PLACES_KEPT)));
  return shears.get(share, () => mostShearKipPerPlf(bays, spanFt, share));
}

/** Shears under bays that are still in use, and so of one span: all girders that are tried there are looked at in the same hundredths of it. */
const SHEARS = new WeakMap<readonly GirderStems[], Kept<number, number>>();
/** Places of one span that are kept: its hundredths, and those that a girder's depth tells. */
const PLACES_KEPT = 200;

function mostShearKipPerPlf(bays: readonly GirderStems[], spanFt: number, share: number): number {
  let mostKip = (spanFt * Math.abs(0.5 - share)) / LB_PER_KIP;
  for (const {unit} of bays) {
    const besideKip = Math.max(shearBesideKip(unit, share * spanFt), shearBesideKip(unit, (1 - share) * spanFt));
    mostKip = Math.max(mostKip, besideKip / LB_PER_KIP);
  }
  return mostKip;
}

/** Factored shear at a place along the girder under both bays' load, kip. */
export function factoredShearKip(loads: GirderLoads, spanFt: number, share: number, live = loads.livePlf): number {
  const evenKip = (spanFt * Math.abs(0.5 - share)) / LB_PER_KIP;
  const deckKip = deckShearKipPerPlf(loads, spanFt, share);
  return factored(loads.selfPlf * evenKip, {deadPlf: loads.deckDeadPlf * deckKip, livePlf: live * deckKip}, 1);
}
