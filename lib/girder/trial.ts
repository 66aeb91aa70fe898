import type {Catalog} from "../catalog.js";
import {exceeds, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {lazy} from "../kept.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {CRACKING_MARGIN} from "../member/minimumStrength.js";
import {handled} from "../member/stripping.js";
import {transfer, type Transfer} from "../member/transfer.js";
import {girderBent, type GirderResult} from "./girder.js";
import {girderLedgeChecks, ofGirder} from "./girderChecks.js";
import {
  crackControlKipIn, girderAtMidspan, girderBending, girderMovement, girderSeatOn, girderShear, girderStrength, serviceMomentKipIn,
  type GirderAtMidspan, type GirderBending, type GirderStrength,
} from "./unchecked.js";

/** A girder with some number of strands, of which no more is computed than is asked for. */
export interface GirderTrial {
  readonly at: GirderAtMidspan;
  readonly strength: () => GirderStrength;
  /** Whether anything fails that more strands would mend: load, strength, minimum strength, tension, cracks, sag, development, by the numbers of their checks. */
  readonly lacks: () => boolean;
  /** Whether its strands press the young concrete too hard, as they are cut or as it is lifted from its form, by the numbers of those checks. */
  readonly crushes: () => boolean;
  /** Checks of an inverted tee's ledges; none of a rectangle. */
  readonly ledge: () => Check[];
  readonly whole: () => GirderResult;
}

/**
 * A girder that is tried with some number of strands.
 *
 * @param like - one of the same size and concrete
 * @throws InputError if its sizes make no girder
 */
export function girderTrial(design: Design, catalog: Catalog, deck: Member, loads: FloorLoads, like?: GirderTrial): GirderTrial {
  const at = girderAtMidspan(design, catalog, deck, loads, like?.at);
  const {member, spanFt} = at;
  const strength = lazy(() => girderStrength(at));
  const movement = lazy(() => girderMovement(design, at));
  const cut = lazy(() => transfer(member, spanFt));
  const stripping = lazy(() => handled(member, spanFt, "stripping"));
  const shear = lazy(() => girderShear(at));
  const seat = lazy(() => girderSeatOn(design, deck, loads, at, strength, shear));
  const bent = lazy(() => girderBending(design, at, strength(), movement(), cut()));
  return {
    at, strength,
    // What fails most often comes first, and what takes longest last.
    lacks: () => cracks(design, at) || tooWeak(at, strength()) || exceeds(movement().movementIn, movement().allowedMovementIn) || overloaded(bent()),
    crushes: () => crushedAtTransfer(member, cut()) || exceeds(stripping().compressionKsi, stripping().allowedCompressionKsi),
    ledge: () => ofGirder(girderLedgeChecks(seat())),
    whole: () => girderBent(design, deck, loads, bent(), {shear: shear(), seat: seat(), stripping: stripping()}),
  };
}

function cracks({criteria: {tensionClass}}: Design, at: GirderAtMidspan): boolean {
  return tensionClass === "C"
    ? exceeds(serviceMomentKipIn(at), crackControlKipIn(at))
    : exceeds(Math.max(0, -at.totalStresses.bottomKsi), allowables(at.member, tensionClass).serviceTensionKsi);
}

function tooWeak({momentKipIn}: GirderAtMidspan, {strength: {designMomentKipIn}, crackingMomentKipIn}: GirderStrength): boolean {
  return exceeds(momentKipIn, designMomentKipIn) || exceeds(Math.min(CRACKING_MARGIN * crackingMomentKipIn, 2 * momentKipIn), designMomentKipIn);
}

function overloaded({development, demandPlf, capacity}: GirderBending): boolean {
  return exceeds(development.factoredMomentKipIn, development.strength.designMomentKipIn) || exceeds(demandPlf, capacity.safeLoadPlf);
}

function crushedAtTransfer(member: Member, {places}: Transfer): boolean {
  const allowed = allowables(member, "U");
  return places.some(({place, stresses: {bottomKsi, topKsi}}) =>
    exceeds(Math.max(bottomKsi, topKsi), place === "end" ? allowed.transferCompressionEndKsi : allowed.transferCompressionKsi));
}
