import {precastFt, strandPsf} from "../../deck/measures.js";
import type {Design} from "../../design/design.js";
import {meshIn2PerFtOf} from "../../diaphragm/floorDiaphragm.js";
import type {EdgeBeamResult} from "../../edgeBeam/edgeBeam.js";
import type {Evaluation} from "../../evaluate.js";
import type {GirderResult} from "../../girder/girder.js";
import type {Member} from "../../member/member.js";
import type {RoofResult} from "../../roof/roof.js";
import {IN2_PER_FT2, feet, inches} from "../../units.js";
import type {DeckEdge} from "../../walls/deckEdge.js";
import {beamLengthIn} from "../../walls/planes.js";
import {STEEL_LB_PER_IN3, edgeBeamBars, girderBars, type BeamBars} from "./steel.js";

/** What one part takes. */
export interface Amounts {
  readonly concreteFt3: number;
  readonly strandLb: number;
  readonly barsLb: number;
}

/** What one level of the building takes. */
export interface LevelAmounts {
  readonly deck: Amounts;
  /** Cast in place: topping, strips of the deck where the building ends. */
  readonly topping: Amounts;
  readonly edgeBeams: Amounts;
  readonly girders: Amounts;
}

/** A level's deck, beams and edges, of a floor or of a roof. */
interface Level {
  readonly design: Design;
  readonly member: Member;
  readonly edge: DeckEdge;
  readonly toppingIn: number;
  readonly edgeBeam: EdgeBeamResult;
  readonly girder: GirderResult | undefined;
}

export const NOTHING: Amounts = {concreteFt3: 0, strandLb: 0, barsLb: 0};

/** What one floor takes, with all the topping that fills its deck's camber. */
export function floorAmounts({design, member, walls, topping, edgeBeam, girder}: Evaluation): LevelAmounts {
  return levelAmounts({design, member, edge: walls.edge, toppingIn: topping?.averageIn ?? 0, edgeBeam, girder});
}

/** What a roof of its own takes, under a topping of one thickness. */
export function roofAmounts({design, member, edgeBeam, girder}: RoofResult, edge: DeckEdge): LevelAmounts {
  return levelAmounts({design, member, edge, toppingIn: design.deck.toppingIn, edgeBeam, girder});
}

/**
 * Deck pieces are as long as their span, and a last one counts by its width. Beams are as long as they are cut between
 * columns; what pockets take of an edge beam, and strands of any concrete, is not taken off.
 */
function levelAmounts({design, member, edge, toppingIn, edgeBeam, girder}: Level): LevelAmounts {
  const {bay} = design;
  const widthFt = bay.spanFt * bay.baysAcross;
  const deckFt2 = (bay.beamSpanFt * bay.baysAlong - edge.pieces.stripFt) * widthFt;
  const stripsFt3 = feet(edge.firstStripIn + edge.lastStripIn) * feet(edge.thicknessIn) * widthFt;
  const lengthIn = beamLengthIn(design);
  const strands = edgeBeam.strands?.member.layout;
  return {
    deck: {concreteFt3: precastFt(member) * deckFt2, strandLb: strandPsf(member) * deckFt2, barsLb: 0},
    topping: {concreteFt3: feet(toppingIn) * deckFt2 + stripsFt3, strandLb: 0, barsLb: meshLbPerFt2(design.deck.toppingIn) * deckFt2},
    edgeBeams: beams(2 * bay.baysAlong, lengthIn, edgeBeam.section.areaIn2, strands, edgeBeamBars(edgeBeam, design.edgeBeam.coverIn)),
    girders: girder ? beams((bay.baysAcross - 1) * bay.baysAlong, lengthIn, girder.member.section.areaIn2, girder.member.layout, girderBars(girder)) : NOTHING,
  };
}

function beams(count: number, lengthIn: number, areaIn2: number, strands: Member["layout"] | undefined, {mainLbPerIn, stirrupLbPerIn, ledgeLbPerIn}: BeamBars): Amounts {
  return {
    concreteFt3: count * feet(lengthIn) * (areaIn2 / IN2_PER_FT2),
    strandLb: strands ? count * feet(lengthIn) * strands.count * strands.strand.weightPlf : 0,
    barsLb: count * lengthIn * (mainLbPerIn + stirrupLbPerIn + ledgeLbPerIn),
  };
}

/** Mesh of a topping, both ways, lb per square foot, without laps; 0 where it is too thin for any. */
function meshLbPerFt2(toppingIn: number): number {
  const eachWayIn2PerFt = meshIn2PerFtOf(toppingIn) ?? 0;
  return STEEL_LB_PER_IN3 * 2 * eachWayIn2PerFt * inches(1);
}
