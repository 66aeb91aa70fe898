import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {handledChecks} from "../member/handledChecks.js";
import {allowables} from "../member/allowables.js";
import {TENSION_CONTROLLED_STRAIN} from "../member/flexure.js";
import {CRACKING_MARGIN} from "../member/minimumStrength.js";
import {pressedFace, type PressedFace} from "../beams/pressedFace.js";
import {OF_GIRDER, transferChecks} from "../member/transferChecks.js";
import type {GirderSeat} from "./seat.js";
import type {GirderBending, UncheckedGirder} from "./unchecked.js";

/** Minimum ledge projection and depth of an inverted tee, in (common practice). */
export const LEAST_GIRDER_LEDGE_IN = 8;

/** Checks of the girder: size, load, strength, shear, torsion, stresses, movement, seat and ledges, making and hauling. */
export function girderChecks(design: Design, girder: UncheckedGirder): Check[] {
  return [
    ...sizeChecks(design, girder),
    ...bendingChecks(girder),
    ...shearChecks(girder),
    ...serviceChecks(design, girder),
    ...ofGirder([...girder.seat.checks, ...girderLedgeChecks(girder.seat)]),
    ...ofGirder([
      ...transferChecks(girder.member, girder.transfer, OF_GIRDER),
      ...handledChecks(girder.stripping),
      ...handledChecks(girder.onTheRoad),
    ]),
  ];
}

/** Parts of the library say what they check, but not in which beam: names and labels get the girder's. */
export function ofGirder(checks: readonly Check[]): Check[] {
  return checks.map((check) => ({...check, id: `girder ${check.id}`, label: `Girder: ${check.label.charAt(0).toLowerCase()}${check.label.slice(1)}`}));
}

function sizeChecks({girder: input}: Design, girder: UncheckedGirder): Check[] {
  const ledge = input.kind === "inverted tee" ? [
    atLeast({
      id: "girder ledge projection", label: "Girder: ledge projection", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The ledges are wide enough for pad, joint and tolerances.",
      fails: `The ledges are too narrow to seat the deck with its pad, joint and tolerances: widen them to ${LEAST_GIRDER_LEDGE_IN} in.`,
    }, input.ledgeProjectionIn, LEAST_GIRDER_LEDGE_IN),
    atLeast({
      id: "girder ledge depth", label: "Girder: ledge depth", unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The ledges are deep enough for a first size.",
      fails: `The ledges are too shallow to carry the deck: deepen them to ${LEAST_GIRDER_LEDGE_IN} in.`,
    }, input.ledgeDepthIn, LEAST_GIRDER_LEDGE_IN),
  ] : [];
  return [
    ...ledge,
    atMost({
      id: "girder strands", label: "Girder: strands that fit its rows", unit: "", clause: "common practice", meetingIsEnough: true,
      holds: "All strands fit below the girder's mid-height, between its stirrups.",
      fails: `Only ${girder.strandsMost} strands fit, and the numbers here are for those. Make the girder deeper or wider, or use fewer.`,
    }, girder.strandsAsked, girder.strandsMost),
  ];
}

function bendingChecks(girder: GirderBending): Check[] {
  const {strength, momentKipIn, development} = girder;
  const neededKipIn = Math.min(CRACKING_MARGIN * girder.crackingMomentKipIn, 2 * momentKipIn);
  return [
    atMost({
      id: "girder load", label: "Girder: load beyond its own weight", unit: "plf", clause: `Governing limit: ${girder.capacity.governs}.`,
      holds: "The girder carries both bays.",
      fails: "The two bays together load the girder with more than it can safely carry: a deeper girder, more strands, or columns closer together.",
    }, girder.demandPlf, girder.capacity.safeLoadPlf),
    atMost({
      id: "girder strength", label: "Girder: strength in bending", unit: "kip-in", clause: "ACI 318-19 22.3, 21.2.2",
      holds: "The factored moment stays below the design strength.",
      fails: "The factored moment exceeds the design strength: more strands, a deeper girder, or columns closer together.",
    }, momentKipIn, strength.designMomentKipIn),
    atLeast({
      id: "girder minimum strength", label: "Girder: strength beyond first cracking", unit: "kip-in", clause: "ACI 318-19 9.6.2.1, 9.6.2.2",
      holds: "The girder would crack and sag long before it breaks.",
      fails: `The girder could break as it first cracks: ${strength.tensileStrain < TENSION_CONTROLLED_STRAIN ? "stronger concrete, or fewer strands" : "more strands, or a narrower web"}.`,
    }, strength.designMomentKipIn, neededKipIn),
    atMost({
      id: "girder development", label: "Girder: strength where the strands develop", unit: "kip-in", clause: "ACI 318-19 25.4.8, 21.2.3",
      holds: "Near the ends the strands can develop the stress that the load requires.",
      fails: "Near the ends the strands would slip before they develop the stress that the load requires: more strands, a deeper girder, or columns closer together.",
    }, development.factoredMomentKipIn, development.strength.designMomentKipIn),
  ];
}

function shearChecks(girder: UncheckedGirder): Check[] {
  const {shear, twist} = girder;
  return [
    atMost({
      id: "girder shear", label: "Girder: shear, with stirrups", unit: "kip", clause: "ACI 318-19 22.5.6.3, 22.5.1.2",
      holds: stirrupWords(girder),
      fails: "The web is too small for the shear, whatever the stirrups: widen or deepen it.",
    }, shear.factoredKip, shear.designKip),
    {...ofGirder(twist.design.checks)[0] as Check, message: twistMessage(girder)},
  ];
}

/** What shear requires of the girder's stirrups, where it requires most. */
function stirrupWords({spanFt, shear: {stirrups: {share, forShearIn2PerFt, leastIn2PerFt}}}: UncheckedGirder): string {
  if (forShearIn2PerFt === 0) return "The concrete carries the shear; minimum stirrups are enough.";
  const where = `${forShearIn2PerFt.toFixed(2)} in² per foot where the most is needed, ${(share * spanFt).toFixed(1)} ft from the ends`;
  return forShearIn2PerFt > leastIn2PerFt ? `Stirrups can carry what the concrete does not: ${where}.` : `Minimum stirrups carry what the concrete does not: ${where}.`;
}

function twistMessage({twist}: UncheckedGirder): string {
  const [check] = twist.design.checks as [Check];
  if (check.verdict === "fails") return "With live load on one bay only, the web is too small for shear and torsion together, whatever the stirrups: widen or deepen it.";
  return twist.design.negligible
    ? "With live load on one bay only, the torsion is small enough to neglect."
    : "With live load on one bay only, the girder twists; closed stirrups and longitudinal bars can carry that.";
}

function serviceChecks({criteria}: Design, girder: GirderBending): Check[] {
  const allowed = allowables(girder.member, criteria.tensionClass);
  const {totalStresses: total, sustainedStresses: held} = girder;
  return [
    // A class C member may crack; crack control and sag bound it instead.
    criteria.tensionClass === "C"
      ? atMost({
        id: "girder crack control", label: "Girder: service moment against crack control", unit: "kip-in", clause: "ACI 318-19 24.3.2",
        holds: "On the cracked section the strands are stressed little enough to keep cracks fine.",
        fails: "On the cracked section the strands gain more than 36 ksi, and cracks open wide: more strands, a deeper girder, or columns closer together.",
      }, girder.serviceMomentKipIn, girder.crackControlKipIn)
      : atMost({
        id: "girder tension", label: "Girder: tension in the soffit", unit: "ksi", clause: "ACI 318-19 24.5.2.1",
        holds: "Under full load the soffit stays within its class.",
        fails: "Under full load the soffit would crack more than its class allows: more strands, a deeper girder, or columns closer together.",
      }, Math.max(0, -total.bottomKsi), allowed.serviceTensionKsi),
    compression("sustained", pressedFace(held, girder.soffitNearEndKsi), allowed.sustainedCompressionKsi),
    compression("total", pressedFace(total), allowed.totalCompressionKsi),
    atMost({
      id: "girder sag", label: `Girder: movement, ${criteria.sagLimit}`, unit: "in", clause: "ACI 318-19 24.2.2",
      holds: "It deflects little enough for what is built on it.",
      fails: "It deflects more than what is built on it can tolerate: a deeper girder, more strands, or columns closer together.",
    }, girder.movementIn, girder.allowedMovementIn),
  ];
}

/** The face that is compressed most, by name: what mends the one may not mend the other. */
function compression(load: "sustained" | "total", {face, where, stressKsi}: PressedFace, allowedKsi: number): Check {
  const [holds, fails] = load === "sustained"
    ? [`The ${face} is not compressed so hard that creep runs away.`, "stays compressed so hard that creep would run away"]
    : [`The ${face} can take the full load.`, "is compressed too hard under the full load"];
  return atMost({
    id: `girder ${load} compression`, label: `Girder: compression in the ${face} under ${load} load`, unit: "ksi", clause: "ACI 318-19 24.5.4.1", holds,
    fails: face === "top" ? `The top ${fails}: stronger concrete, a wider or deeper girder, or columns closer together.`
      : `The soffit ${fails}, by the strands ${where}: fewer strands, or stronger concrete.`,
  }, stressKsi, allowedKsi);
}

/** Checks of an inverted tee's ledges, before they are named as the girder's. */
export function girderLedgeChecks({ledge, factoredKip}: GirderSeat): Check[] {
  if (!ledge) return [];
  if (ledge.linePlf === undefined) return [...ledge.checks];
  return [atMost({
    id: "ledge line", label: "Ledge under the planks", unit: "plf", clause: "PCI Design Handbook, 6th ed., 4.5.1 (from memory)",
    holds: "The ledge is deep enough under the planks.",
    fails: "The planks could shear the ledge off: make it deeper.",
  }, 1000 * factoredKip, ledge.linePlf), ...ledge.checks];
}
