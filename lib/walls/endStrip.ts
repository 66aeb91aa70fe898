import {atMost, type Check} from "../checks.js";
import type {DeckResult} from "../deck/deckResult.js";
import type {Design} from "../design/design.js";
import type {EdgeBeamResult} from "../edgeBeam/edgeBeam.js";
import type {GirderResult} from "../girder/girder.js";
import {factoredLoad} from "../loads/combinations.js";
import {loadOn, type FloorLoads} from "../loads/floorLoads.js";
import {nearestStem, onStems, teeRow} from "../beams/stemRow.js";
import type {Member} from "../member/member.js";
import {LB_PER_KIP, feet} from "../units.js";
import type {DeckEdge} from "./deckEdge.js";

/** Part of the span over which planks beside a free edge share its load at midspan (PCI Manual for the Design of Hollow Core Slabs; from memory). */
export const PLANKS_SHARE_OF_SPAN = 0.25;

/** The strip of floor beside the outermost pieces of deck, which they carry as a cantilever. */
export interface EndStrip {
  /** Width that the outermost piece carries, in, of the building's two ends the wider: what whole pieces leave of the length included. */
  readonly widthIn: number;
  /** Part of it beyond the end column lines, in, which no beam counts among its own load; the same at both ends. */
  readonly beyondIn: number;
  /** Its concrete with the layers on it, and its live load as the deck has it, per foot of the short side, plf. */
  readonly deadPlf: number;
  readonly livePlf: number;
  /** Added to the superimposed load of the outermost piece, or of the planks that share it, psf. */
  readonly onPiecePsf: number;
  /** Half of the strip over one span, factored, kip: at each end of the piece that carries it. */
  readonly pieceEndKip: number;
  /** What of it comes to the end of a beam besides that beam's own load: the part beyond the column line, kip. */
  readonly endKip: number;
  /** On the outermost stem: of the strip more than all of it, for the strip lies outside of both stems; 0 under planks. */
  readonly onStemKip: number;
  readonly checks: readonly Check[];
}

/** The strip of floor by itself, before deck and beams are held against it. */
export type StripLoads = Omit<EndStrip, "checks">;

/**
 * What the strip of floor beside the outermost pieces brings to deck, edge beams and girders; undefined where they reach
 * the column lines and no wall stands beyond. A tee that carries it at its edge presses with its outermost stem alone, by the statics of
 * two supports; what the flanges of its neighbors would take is not counted. All that lies beyond the column line
 * goes to the near end of the beam. Columns take its dead load with the walls and its live load with the floor's.
 */
export function endStrip(design: Design, of: {
  readonly member: Member; readonly edge: DeckEdge; readonly loads: FloorLoads; readonly deck: DeckResult; readonly edgeBeam: EdgeBeamResult; readonly girder: GirderResult | undefined;
}): EndStrip | undefined {
  const strip = stripLoads(design, of);
  return strip && {...strip, checks: stripChecks(strip, of.deck, of.edgeBeam, of.girder)};
}

/** What the strip weighs and brings, whatever carries it. */
export function stripLoads(design: Design, {member, edge, loads}: {readonly member: Member; readonly edge: DeckEdge; readonly loads: FloorLoads}): StripLoads | undefined {
  // At the far end lies what whole pieces leave besides.
  const [widthIn, beyondIn] = [edge.lastStripIn, edge.firstStripIn];
  if (widthIn <= 0) return undefined;
  const {spanFt} = design.bay;
  const deadPlf = edge.lastPlf + feet(widthIn) * loads.superimposedDeadPsf;
  const livePlf = feet(widthIn) * loadOn(loads, "deck member").governing.totalPsf;
  const tee = onStems(member);
  const sharedFt = tee ? member.widthFt : Math.max(member.widthFt, PLANKS_SHARE_OF_SPAN * spanFt);
  const onPiecePsf = (deadPlf + livePlf) / sharedFt;
  const pieceEndKip = (factoredLoad(deadPlf, livePlf) * spanFt) / 2 / LB_PER_KIP;
  const endKip = (pieceEndKip * beyondIn) / widthIn;
  const row = teeRow(design, member);
  const overhangFt = row && nearestStem(row) ? (row.teeWidthFt - row.stemSpacingFt) / 2 : 0;
  const onStemKip = row ? pieceEndKip * (1 + (overhangFt + feet(widthIn) / 2) / row.stemSpacingFt) : 0;
  return {widthIn, beyondIn, deadPlf, livePlf, onPiecePsf, pieceEndKip, endKip, onStemKip};
}

function stripChecks({onPiecePsf, endKip, onStemKip}: StripLoads, deck: DeckResult, beam: EdgeBeamResult, girder: GirderResult | undefined): Check[] {
  return [
    atMost({
      id: "end strip: deck load", label: "Outermost piece with the strip beside it, superimposed load", unit: "psf", clause: `Governing limit: ${deck.safe.governs}.`,
      holds: "The outermost piece carries the strip of floor beside it as well.",
      fails: "With the strip of floor beside it the outermost piece carries more than is safe: a deeper member, more strands or a shorter span.",
    }, deck.demandPsf + onPiecePsf, deck.safe.safeLoadPsf),
    ...edgeEndChecks(beam, {endKip, onStemKip}), ...(girder ? girderEndChecks(girder, {endKip, onStemKip}) : []),
  ];
}

/** What one bay's strip brings to the end of a beam, and to the outermost stem, kip. */
export type StripEnd = Pick<EndStrip, "endKip" | "onStemKip">;

/** An edge beam's end and its ledge under the outermost stem, with the strip. */
export function edgeEndChecks(beam: Pick<EdgeBeamResult, "checks" | "shearKip" | "greatestShearKip">, {endKip, onStemKip}: StripEnd): Check[] {
  const punching = beam.checks.find(({id}) => id === "ledge punching end");
  return [
    ...(punching && onStemKip > 0 ? [atMost({
      id: "end strip: ledge punching end", label: "Ledge under the outermost stem with the strip", unit: "kip", clause: punching.clause,
      holds: "The ledge is deep enough under the stem that carries the strip.",
      fails: "The stem that carries the strip could punch through the ledge: deepen the ledge, or make its concrete stronger.",
    }, punching.demand + onStemKip, punching.capacity)] : []),
    ...(endKip > 0 ? [atMost({
      id: "end strip: beam shear", label: "Edge beam's end with the strip, shear", unit: "kip", clause: "ACI 318-19 22.5.1.2",
      holds: "The web carries the strip at its end as well, with stirrups.",
      fails: "With the strip the web is too small for the shear at its end, whatever the stirrups: widen or deepen it.",
    }, beam.shearKip + endKip, beam.greatestShearKip)] : []),
  ];
}

/** A girder's end takes the strips of both bays; its ledge the stem of one. */
export function girderEndChecks({checks}: Pick<GirderResult, "checks">, {endKip, onStemKip}: StripEnd): Check[] {
  const punching = checks.find(({id}) => id === "girder ledge punching");
  const shear = checks.find(({id}) => id === "girder shear");
  return [
    ...(punching && onStemKip > 0 ? [atMost({
      id: "end strip: girder ledge punching", label: "Girder's ledge under the outermost stem with the strip", unit: "kip", clause: punching.clause,
      holds: "The girder's ledge is deep enough under the stem that carries the strip.",
      fails: "The stem that carries the strip could punch through the girder's ledge: deepen the ledge, or make its concrete stronger.",
    }, punching.demand + onStemKip, punching.capacity)] : []),
    ...(shear && endKip > 0 ? [atMost({
      id: "end strip: girder shear", label: "Girder's end with the strips of both bays, shear", unit: shear.unit, clause: shear.clause,
      holds: "The girder carries the strips at its end as well, with stirrups.",
      fails: "With the strips the girder's web is too small for the shear at its end, whatever the stirrups: widen or deepen it.",
    }, shear.demand + 2 * endKip, shear.capacity)] : []),
  ];
}
