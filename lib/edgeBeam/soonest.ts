import {ledgePunching} from "../beams/ledgePunching.js";
import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import type {EdgeBeamDemand} from "./demand.js";
import {LEAST_LEDGE_IN, geometryChecks, seatChecks, type Checks} from "./edgeBeamChecks.js";
import {MOST_USE, ledgePlaces, linePlfAndBars, type LedgeStrength} from "./ledge.js";
import {bearingChecks, ledgeChecks} from "./ledgeChecks.js";
import type {EdgeBeamSection} from "./section.js";
import {handlingChecks, serviceChecks} from "./serviceChecks.js";
import {bendingChecks, shearTorsionChecks} from "./strengthChecks.js";
import {mostCoverIn} from "./twist.js";
import type {LoadedSection, UncheckedBeam} from "./unchecked.js";

/** Every check of the edge beam, what is known soonest first; whether a beam with bars cracks on its way its section alone tells. */
const SOONEST: Readonly<Record<Design["edgeBeam"]["steel"], readonly Checks[]>> = {
  bars: [(_, beam) => handlingChecks(beam), geometryChecks, bendingChecks, shearTorsionChecks, serviceChecks, seatChecks, (design, beam, member) => bearingChecks(design, member, beam)],
  strands: [geometryChecks, bendingChecks, shearTorsionChecks, serviceChecks, seatChecks, (design, beam, member) => bearingChecks(design, member, beam), (_, beam) => handlingChecks(beam)],
};
/** Those of its ledge, or of what carries the deck otherwise, with its dimensions. */
export const OF_SEAT: readonly Checks[] = [geometryChecks, seatChecks];

/**
 * Whether any check of a beam fails that counts. The beam may be on trial: no more of it is computed than it takes to know.
 *
 * @param among - the checks that are asked
 */
export function failsAny(design: Design, member: Member, beam: UncheckedBeam, counts: (id: string) => boolean, among = SOONEST[design.edgeBeam.steel]): boolean {
  return among.some((checks) => checks(design, beam, member).some(({id, verdict}) => verdict === "fails" && counts(id)));
}

/**
 * Whether the ledge's own checks surely hold, or those of what carries the deck otherwise: however much of its strength
 * the beam uses at the stems. It saves making a beam to learn how much that is.
 */
export function seatSurelyHolds(design: Design, catalog: Catalog, member: Member, {section, demand}: LoadedSection): boolean {
  if (section.kind !== "ledge") return true;
  if (design.edgeBeam.ledgeDepthIn < LEAST_LEDGE_IN) return false;
  const ledge = leastStrongLedge(design, catalog, member, section, demand);
  return ledge !== undefined && !ledgeChecks(design, {ledge}).some(({verdict}) => verdict === "fails");
}

/**
 * The ledge with the least strength that it can have by its size: where the beam's own stress lowers it most and no
 * prestress raises it, and at an end under the stem of all that stands nearest to one. Undefined where it is too thin for
 * its bars, or its web for stirrups.
 */
function leastStrongLedge(design: Design, catalog: Catalog, member: Member, section: EdgeBeamSection, demand: EdgeBeamDemand): LedgeStrength | undefined {
  const places = design.edgeBeam.coverIn > mostCoverIn(section) ? undefined : ledgePlaces(design, member, section, demand);
  return places && {
    loadKip: demand.stemKip, places,
    punching: places.flatMap(({place, ledge}) => (place === "line" ? [] : [{place, punching: ledgePunching(ledge, {use: MOST_USE})}])),
    ...linePlfAndBars(catalog, section, demand, places),
  };
}
