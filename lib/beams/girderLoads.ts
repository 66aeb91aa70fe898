import type {Design} from "../design/design.js";
import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import {loadOn, type ElementLoad, type FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, type Member} from "../member/member.js";
import {IN_PER_FT, LB_PER_KIP, feet} from "../units.js";
import {diagramsAt, pointLoadDiagrams, stemPlacesFt, type PointLoad, type PointLoadDiagrams} from "./stemLoads.js";

/** How the deck of both bays stands on the girder: on stems, or evenly. */
export interface DeckStems {
  /** Places of the stems along the girder, ft from the left column line; the same on both sides. Empty under planks. */
  readonly placesFt: readonly number[];
  /** What each stem brings of a deck of 1,000 plf. */
  readonly points: readonly PointLoad[];
  /** Bending and end reaction under the stems over those under the same load spread evenly; never taken below 1. */
  readonly momentFactor: number;
  readonly reactionFactor: number;
  /** Diagrams under a deck of 1,000 plf; undefined under planks. */
  readonly unit: PointLoadDiagrams | undefined;
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
  const {spanFt, beamSpanFt} = design.bay;
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
    stems: deckStems(member, beamSpanFt),
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

/** Stems side by side from a joint on the column line on; planks and slabs stand evenly. */
function deckStems(member: Member, beamSpanFt: number): DeckStems {
  if (member.shape.family !== "double tee") return {placesFt: [], points: [], momentFactor: 1, reactionFactor: 1, unit: undefined};
  const stemSpacingFt = feet(member.shape.dimensions["stemSpacingIn"] as number);
  const placesFt = stemPlacesFt({
    spanFt: beamSpanFt, memberWidthFt: member.widthFt, stemSpacingFt, firstStemFt: (member.widthFt - stemSpacingFt) / 2,
  });
  const points = placesFt.map((atFt) => ({atFt, loadKip: member.widthFt / 2, eccentricityIn: 0}));
  const unit = pointLoadDiagrams({spanFt: beamSpanFt, points, uniformPlf: 0, uniformEccentricityIn: 0});
  return {
    placesFt, points, unit,
    momentFactor: Math.max(1, unit.greatestMomentKipFt / (beamSpanFt ** 2 / 8)),
    reactionFactor: Math.max(1, Math.max(unit.leftKip, unit.rightKip) / (beamSpanFt / 2)),
  };
}

/** Shear at a place along the girder for 1 plf of deck, kip: by stems or spread evenly, whichever is more. */
export function deckShearKipPerPlf({stems}: GirderLoads, spanFt: number, share: number): number {
  const evenKip = (spanFt * Math.abs(0.5 - share)) / LB_PER_KIP;
  if (!stems.unit) return evenKip;
  const at = (place: number) => Math.abs(diagramsAt(stems.unit as PointLoadDiagrams, place * spanFt).shearKip);
  return Math.max(evenKip, Math.max(at(share), at(1 - share)) / LB_PER_KIP);
}

/** Factored shear at a place along the girder under both bays' load, kip. */
export function factoredShearKip(loads: GirderLoads, spanFt: number, share: number, live = loads.livePlf): number {
  const evenKip = (spanFt * Math.abs(0.5 - share)) / LB_PER_KIP;
  const deckKip = deckShearKipPerPlf(loads, spanFt, share);
  return factored(loads.selfPlf * evenKip, {deadPlf: loads.deckDeadPlf * deckKip, livePlf: live * deckKip}, 1);
}

/** Distance between stems along the girder, in: the lesser of that within a member and that across a joint. */
export function stemSpacingIn(member: Member): number {
  const within = member.shape.dimensions["stemSpacingIn"] as number;
  return Math.min(within, member.widthFt * IN_PER_FT - within);
}
