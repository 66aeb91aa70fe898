import type {Design} from "../design/design.js";
import {factoredLoad} from "../loads/combinations.js";
import {loadOn, type ElementLoad, type FloorLoads} from "../loads/floorLoads.js";
import {ownPsf, type Member} from "../member/member.js";
import {IN2_PER_FT2} from "../units.js";
import {deckEnds} from "../beams/deckEnds.js";
import {deckSeatLoad, type DeckSeatLoad} from "../beams/deckSeatLoad.js";
import type {EdgeBeamSection} from "./section.js";

/** Loads on the edge beam, per foot of its length. */
export interface EdgeBeamLoads {
  readonly load: ElementLoad;
  /** Width of floor that the beam carries, ft. */
  readonly tributaryWidthFt: number;
  readonly selfPlf: number;
  /** Wall and window that hang from it, and what closes the deck's ends in front of a beam below the deck. */
  readonly claddingPlf: number;
  /** Deck, topping and superimposed dead load that the deck brings. */
  readonly deckDeadPlf: number;
  readonly livePlf: number;
  readonly deadPlf: number;
  readonly factoredPlf: number;
  /** Factored load that the deck brings to its seat, and what is left: the beam itself and the cladding. */
  readonly factoredLedgePlf: number;
  readonly factoredOwnPlf: number;
  /** What one stem, or a foot of planks, presses on its seat. */
  readonly seat: DeckSeatLoad;
  /** Eccentricity of the beam's own weight and the cladding together about the web's center line, in; cladding hangs in it. */
  readonly ownEccentricityIn: number;
}

/** Loads on the edge beam of a design: half the deck's span, its own weight, and the cladding. */
export function loadsOn(design: Design, member: Member, loads: FloorLoads, section: EdgeBeamSection): EdgeBeamLoads {
  const load = loadOn(loads, "edge beam");
  const claddingPlf = design.edgeBeam.claddingPlf + (deckEnds(design, section.deckDepthIn)?.plf ?? 0);
  const selfPlf = selfPlfOf(section);
  const tributaryWidthFt = design.bay.spanFt / 2;
  const deckDeadPlf = (ownPsf(member) + loads.superimposedDeadPsf) * tributaryWidthFt;
  const livePlf = load.governing.totalPsf * tributaryWidthFt;
  const deadPlf = deckDeadPlf + selfPlf + claddingPlf;
  const factoredPlf = factoredLoad(deadPlf, livePlf);
  const factoredLedgePlf = factoredLoad(deckDeadPlf, livePlf);
  return {
    load, tributaryWidthFt, selfPlf, claddingPlf, deckDeadPlf, livePlf, deadPlf, factoredPlf, factoredLedgePlf,
    factoredOwnPlf: factoredPlf - factoredLedgePlf,
    seat: deckSeatLoad(design, member, loads),
    ownEccentricityIn: (section.selfEccentricityIn * selfPlf) / (selfPlf + claddingPlf),
  };
}

/** Weight of a beam of a section, plf. */
export function selfPlfOf({shape, concrete}: EdgeBeamSection): number {
  return (shape.section.areaIn2 * concrete.unitWeightPcf) / IN2_PER_FT2;
}
