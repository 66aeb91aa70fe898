import {DEAD_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import type {Member} from "../member/member.js";
import {prestressState} from "../member/prestressState.js";
import {shearAt} from "../member/shear.js";
import {LB_PER_KIP} from "../units.js";
import {deckShearKipPerPlf, factored, type GirderLoads} from "./loads.js";
import {GIRDER_COVER_IN, GIRDER_STIRRUP_IN} from "./seat.js";
import {torsionDesign, type TorsionDesign} from "../beams/torsion.js";
import {torsionDimensionsOf} from "../beams/torsionOutline.js";

/** What twists the girder, and what holds it. */
export interface GirderTwist {
  /** Factored torsion at the support with live load on one bay alone, and the shear that comes with it, kip-in and kip. */
  readonly torsionKipIn: number;
  readonly shearKip: number;
  /** Torsion at the support while the deck of one bay lies and the other does not, factored, kip-in: unless the girder is propped. */
  readonly settingKipIn: number;
  readonly design: TorsionDesign;
}

/**
 * The girder twisted by one bay's live load: the dead loads of both sides balance, 1.6 times the live load of one does
 * not (ASCE 7-16 4.3.3, partial loading). Stirrups and bars for it together with the shear of that loading, at the
 * support; torsion divides between the two held ends.
 *
 * @param eccentricityIn - web's center line to one bay's load
 */
export function girderTwist(
  member: Member, spanFt: number, on: GirderLoads, deck: Member, shear: {readonly strength: {readonly depthIn: number}}, eccentricityIn: number,
): GirderTwist {
  const endKip = deckShearKipPerPlf(on, spanFt, 0);
  const shearKip = factored(on.selfPlf * (spanFt / 2 / LB_PER_KIP), {deadPlf: on.deckDeadPlf * endKip, livePlf: on.oneBayLivePlf * endKip}, 1);
  const torsionKipIn = LIVE_FACTOR * on.oneBayLivePlf * endKip * eccentricityIn;
  const oneDeckPlf = (deck.selfWeightPlf / deck.widthFt) * (on.tributaryWidthFt / 2);
  const atEnd = shearAt(member, spanFt, prestressState(member, spanFt, 0, on.deckDeadPlf));
  return {
    torsionKipIn, shearKip,
    settingKipIn: DEAD_FACTOR * oneDeckPlf * endKip * eccentricityIn,
    design: torsionDesign({
      dimensions: torsionDimensionsOf(member.shape), concrete: member.concrete, torsionKipIn, shearKip,
      effectiveDepthIn: shear.strength.depthIn, concreteShearKip: atEnd.concreteKip,
      coverIn: GIRDER_COVER_IN, stirrupDiameterIn: GIRDER_STIRRUP_IN,
      // At the support itself no prestress has built up yet.
      centroidStressKsi: 0, mostlyPrestressed: true,
    }),
  };
}
