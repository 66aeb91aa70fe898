import {ledgePunching} from "../beams/ledgePunching.js";
import {strandOfSize} from "../beams/prestressedBeam.js";
import type {Catalog} from "../catalog.js";
import {exceeds, utilizationOf, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {LEAST_LEDGE_IN, geometryChecks, seatChecks, type Checks} from "./edgeBeamChecks.js";
import {MOST_USE, punchingPlaces, type LedgeBySize, type LedgeStrength} from "./ledge.js";
import {bearingChecks, ledgeChecks, pocketWebCheck} from "./ledgeChecks.js";
import {greatestWebShearKip} from "./trial.js";
import {handlingChecks, serviceChecks} from "./serviceChecks.js";
import {bendingChecks, shearTorsionChecks} from "./strengthChecks.js";
import {edgeBeamTwist, mostCoverIn} from "./twist.js";
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
 * By how much the ledge's own checks, or those of what carries the deck otherwise, may be passed however much of its
 * strength the beam uses at the stems: the utilization of the one that is passed most, and 0 where all surely hold. It
 * saves making a beam to learn how much that is.
 *
 * @param onStemKip - what a strip of floor beyond the end lines brings to the stem nearest an end, kip
 */
export function seatMayLack(design: Design, catalog: Catalog, under: LoadedSection, onStemKip = 0): number {
  if (under.section.kind !== "ledge") return 0;
  const ledge = design.edgeBeam.ledgeDepthIn < LEAST_LEDGE_IN ? undefined : leastStrongLedge(design, catalog, under);
  if (!ledge) return Infinity;
  const {loadKip, punching} = ledge;
  return Math.max(0,
    ...ledgeChecks(design, {ledge}).filter(({verdict}) => verdict === "fails").map(({utilization}) => utilization),
    ...punching.filter((at) => punches(at, loadKip + onStemKip)).map(({punching: {designKip}}) => utilizationOf(loadKip + onStemKip, designKip)));
}

/**
 * Whether a check that counts surely fails by the beam's size alone, whatever its steel: its ledge by the most strength
 * that it can have, what its pockets leave of the web, or shear and torsion, for no steel lies deeper than the beam is.
 * It saves making a beam. Of strands as many may be tried as the design has.
 *
 * @param strip - what a strip of floor beyond the end lines brings to the stem nearest an end, and to the beam's end, kip
 */
export function sizeSurelyFails(
  design: Design, catalog: Catalog, under: LoadedSection, counts: (id: string) => boolean, {onStemKip, endKip}: {readonly onStemKip: number; readonly endKip: number} = NO_STRIP,
): boolean {
  const {section} = under;
  // What the load does not change comes first.
  if (section.kind === "pockets" && fails(counts)(pocketWebCheck(design, section))) return true;
  const {demand} = under;
  if (counts("beam shear") && exceeds(demand.shearKip + endKip, greatestWebShearKip(section, section.depthIn))) return true;
  if (counts("beam shear and torsion")) {
    const twist = edgeBeamTwist(design, section, demand, section.depthIn);
    if (twist && !twist.slender.applies && twist.design.checks.some(fails(counts))) return true;
  }
  if (section.kind !== "ledge") return false;
  const ledge = strongestLedge(design, catalog, under);
  return ledgeChecks(design, {ledge}).some(fails(counts)) || (ledge !== undefined && counts("ledge punching end") && punchedAtEnd(ledge, onStemKip));
}

const NO_STRIP = {onStemKip: 0, endKip: 0};

function fails(counts: (id: string) => boolean): (check: Check) => boolean {
  return ({id, verdict}) => verdict === "fails" && counts(id);
}

/** Whether the stem nearest an end punches through the ledge, with what a strip brings to it. */
function punchedAtEnd({loadKip, punching}: LedgeStrength, onStemKip: number): boolean {
  return punching.some((at) => punches(at, loadKip + onStemKip));
}

/** Whether a stem nearest an end with all that it brings punches through the ledge there. */
function punches({place, punching: {designKip}}: LedgeStrength["punching"][number], loadKip: number): boolean {
  return place === "end" && exceeds(loadKip, designKip);
}

/** The ledge with the most strength that it can have by its size: with no stress of the beam's own and with all prestress that its strands could bring. */
function strongestLedge(design: Design, catalog: Catalog, under: LoadedSection): LedgeStrength | undefined {
  const ledge = madeLedge(design, catalog, under);
  const {section, demand} = under;
  const {steel, strands} = design.edgeBeam;
  const centroidStressKsi = steel === "strands" ? (strands * strandOfSize(catalog).areaIn2 * JACKING_STRESS_KSI) / section.shape.section.areaIn2 : 0;
  return ledge && {...ledge, punching: demand.stemmed ? punchingPlaces(design, ledge.places, demand, {use: () => 0, centroidStressKsi}) : []};
}

/**
 * The ledge with the least strength that it can have by its size: where the beam's own stress lowers it most and no
 * prestress raises it, and at an end under the stem of all that stands nearest to one. Undefined where it is too thin for
 * its bars, or its web for stirrups.
 */
function leastStrongLedge(design: Design, catalog: Catalog, under: LoadedSection): LedgeStrength | undefined {
  const ledge = madeLedge(design, catalog, under);
  return ledge && {
    ...ledge, punching: ledge.places.flatMap(({place, ledge}) => (place === "line" ? [] : [{place, punching: ledgePunching(ledge, {use: MOST_USE})}])),
  };
}

/** The ledge by its size alone; undefined where it is too thin for its bars, or its web for stirrups. */
function madeLedge({edgeBeam: {coverIn}}: Design, catalog: Catalog, under: LoadedSection): LedgeBySize | undefined {
  return coverIn > mostCoverIn(under.section) ? undefined : under.ledge(catalog, coverIn);
}
