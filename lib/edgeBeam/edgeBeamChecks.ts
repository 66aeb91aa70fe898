import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {bearingChecks, ledgeChecks, pocketChecks} from "./ledgeChecks.js";
import {handlingChecks, serviceChecks, stressChecks} from "./serviceChecks.js";
import {bendingChecks, shearTorsionChecks} from "./strengthChecks.js";
import type {UncheckedBeam} from "./unchecked.js";

/** Minimum ledge projection and depth, in (common practice). */
export const LEAST_LEDGE_IN = 8;
/** Usual and greatest upstand above the structural floor, in (common practice): above it daylight and view suffer. */
export const UPSTAND_IN = {usual: 30, most: 36} as const;

/** Some checks of a beam. */
export type Checks = (design: Design, beam: UncheckedBeam, member: Member) => readonly Check[];

/** Every check of the edge beam, in the order of its page, or those that are named. */
export function edgeBeamChecks(design: Design, member: Member, beam: UncheckedBeam, among = ALL): Check[] {
  return among.flatMap((checks) => checks(design, beam, member));
}

/** The ledge's checks, or those of pockets. */
export function seatChecks(design: Design, beam: UncheckedBeam): readonly Check[] {
  return beam.kind === "ledge" ? ledgeChecks(design, beam) : beam.kind === "pockets" ? pocketChecks(design, beam) : [];
}

const ALL: readonly Checks[] = [
  geometryChecks, bendingChecks, shearTorsionChecks, seatChecks, (design, beam, member) => bearingChecks(design, member, beam),
  serviceChecks, (_, beam) => handlingChecks(beam),
];
/** The checks that the beam's depth answers for among others: all but its sag and those of its seat and its way. */
export const OF_SIZE: readonly ((design: Design, beam: UncheckedBeam) => readonly Check[])[] = [bendingChecks, shearTorsionChecks, (_, beam) => stressChecks(beam)];

/** Its dimensions, beside what they are in practice. */
export function geometryChecks({edgeBeam: input}: Design, beam: UncheckedBeam): Check[] {
  const ledge = [
    atLeast({
      id: "ledge projection", label: "Ledge projection", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The ledge is wide enough for pad, joint and tolerances.",
      fails: `The ledge is too narrow to seat the deck with its pad, joint and tolerances: widen it to ${LEAST_LEDGE_IN} in.`,
    }, input.ledgeProjectionIn, LEAST_LEDGE_IN),
    atLeast({
      id: "ledge depth", label: "Depth of the ledge", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The ledge is deep enough for a first size.",
      fails: `The ledge is too shallow to carry the deck: deepen it to ${LEAST_LEDGE_IN} in.`,
    }, input.ledgeDepthIn, LEAST_LEDGE_IN),
  ];
  const upstand = atMost({
    id: "upstand", label: "Upstand", unit: "in", clause: "common practice", meetingIsEnough: true,
    holds: "The upstand leaves the window low enough to see out when seated.",
    fails: `The upstand blocks the view of anyone seated and shades the desk behind it: lower it to ${UPSTAND_IN.most} in.`,
  }, input.upstandIn, UPSTAND_IN.most);
  return [...(beam.kind === "ledge" ? ledge : []), ...beam.seat.checks, upstand];
}
