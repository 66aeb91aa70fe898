import {atLeast, atMost, outOfRange, requires, type Check} from "../checks.js";
import {USUAL_HOLD_DOWN_KIP} from "../member/holdDown.js";
import {PAYLOAD_KIP} from "../member/handling.js";
import {fireNeeds, type FireSetting} from "../member/fire.js";
import type {Member} from "../member/member.js";
import {SAG_LIMITS} from "../member/sagLimit.js";
import type {Handled} from "../member/stripping.js";
import {LEAST_FREQUENCY_HZ} from "../member/vibration.js";
import type {Criteria} from "./criteria.js";
import type {DeckService} from "./deckService.js";
import {LIMIT_INFO} from "./limits.js";

/** Checks of a deck member beside its strength and stresses. */
export function deckServiceChecks(member: Member, criteria: Criteria, service: DeckService): Check[] {
  return [
    ...endChecks(service),
    ...sagChecks(criteria, service),
    ...vibrationChecks(service),
    ...fireChecks(member, criteria, service),
    ...handlingChecks(service),
  ];
}

function endChecks({development, contact, bearing}: DeckService): Check[] {
  return [
    atMost({
      id: "deck development", label: "Strength where the strands develop", unit: "kip-in", clause: LIMIT_INFO.development.clause,
      holds: "Near the ends the strands can develop the stress that the load requires.",
      fails: "Near the ends the strands would slip before they develop the stress that the load requires: more strands, thinner ones, or a shorter span.",
    }, development.factoredMomentKipIn, development.strength.designMomentKipIn),
    ...(contact ? [atMost({
      id: "deck contact", label: "Shear between member and topping", unit: "kip", clause: LIMIT_INFO["horizontal shear"].clause,
      holds: "A clean, roughened surface transfers the shear without ties.",
      fails: "The topping would slip: ties across the interface are needed.",
    }, contact.factoredKip, contact.designKip)] : []),
    atMost({
      id: "deck bearing", label: "Bearing of the ends on their seats", unit: "kip", clause: LIMIT_INFO.bearing.clause,
      holds: "The ends can take their reaction.",
      fails: "The ends would crush on their seats: a longer seat, or stronger concrete in the deck.",
    }, bearing.factoredKip, bearing.designKip),
  ];
}

function sagChecks({tensionClass, limits, sagLimit}: Criteria, service: DeckService): Check[] {
  const attached = SAG_LIMITS[sagLimit].counts === "attached";
  return [
    atMost({
      id: "deck sag", label: attached ? `Movement after partitions are in, ${sagLimit}` : `Deflection under live load, ${sagLimit}`, unit: "in", clause: LIMIT_INFO.deflection.clause,
      holds: service.liveDeflection.uncrackedShare < 1 ? "It cracks under part of the load and still deflects little enough." : "It stays uncracked and deflects little enough.",
      fails: "It deflects more than what is built on it can tolerate: a deeper member or a shorter span.",
    }, service.movementIn, service.allowedMovementIn),
    ...(limits.includes("camber") ? [atLeast({
      id: "deck camber", label: "Camber under sustained load, long term", unit: "in", clause: LIMIT_INFO.camber.clause, meetingIsEnough: true,
      holds: "In the long term it still arches.",
      fails: "In the long term it sags: more strands, a deeper member or a shorter span.",
    }, service.lastingCamberIn, 0)] : []),
    ...(tensionClass === "C" ? [atMost({
      id: "deck crack control", label: "Service moment against crack control", unit: "kip-in", clause: LIMIT_INFO["crack control"].clause,
      holds: "On the cracked section the strands are stressed little enough to keep cracks fine.",
      fails: "On the cracked section the strands gain more than 36 ksi, and cracks open wide: more strands, a deeper member or a shorter span.",
    }, service.serviceMomentKipIn, service.crackControlKipIn)] : []),
  ];
}

function vibrationChecks({vibration}: DeckService): Check[] {
  if (!vibration) return [];
  return [
    atMost({
      id: "deck walking", label: "Vibration from walking, share of gravity", unit: "%", clause: LIMIT_INFO.vibration.clause,
      holds: "People sitting still do not feel others walk.",
      fails: "People sitting still feel others walk: a thicker topping, a deeper member or a shorter span.",
    }, 100 * vibration.acceleration, 100 * vibration.allowedAcceleration),
    atLeast({
      id: "deck frequency", label: "First natural frequency", unit: "Hz", clause: LIMIT_INFO.vibration.clause,
      holds: "It vibrates too fast for footsteps to drive it.",
      fails: "It vibrates as slowly as people step, and a few of them can drive it: a deeper member or a shorter span.",
    }, vibration.frequencyHz, LEAST_FREQUENCY_HZ),
  ];
}

function fireChecks(member: Member, {fire: asked}: Criteria, {fire: rating}: DeckService): Check[] {
  if (!asked || !rating) return [];
  const clause = LIMIT_INFO.fire.clause;
  const cover = {id: "deck fire cover", label: "Fire: cover of the strands", unit: "h", clause};
  return [
    atLeast({
      id: "deck fire thickness", label: "Fire: thickness against heat", unit: "h", clause: "IBC 2021 722.2.2.1", meetingIsEnough: true,
      holds: "The floor keeps the room above cool for the hours required.",
      fails: "The floor is too thin to keep the room above cool: a thicker topping, or carbonate or lightweight aggregate.",
    }, rating.byThicknessHours, asked.hours),
    rating.byCoverHours === undefined
      ? outOfRange({...cover, message: "The stems are smaller than the code's table covers; only a fire test can tell."}, asked.hours, 0)
      : atLeast({
        ...cover, clause: "IBC 2021 722.2.3", meetingIsEnough: true,
        holds: "The strands stay cool enough for the hours required.",
        fails: `The strands would get too hot: ${coolerStrands(member, asked)}.`,
      }, rating.byCoverHours, asked.hours),
  ];
}

/** What keeps the strands cooler for the hours asked; some stems are too thin for any cover. */
function coolerStrands(member: Member, asked: FireSetting & {readonly hours: number}): string {
  const ways = [
    ...(fireNeeds(member, asked, asked.hours).coverIn === undefined ? [] : ["higher strands"]),
    ...(asked.restrained ? [] : ["a frame that restrains the floor"]),
  ];
  return ways.length > 0 ? ways.join(", or ") : "wider stems or a coating that insulates them";
}

function handlingChecks({stripping, onTheRoad, handling, holdDown}: DeckService): Check[] {
  return [
    ...handledChecks(stripping, "Stripped from its form", "stripping"),
    ...handledChecks(onTheRoad, "On the road", "hauling"),
    handling.weightKip > PAYLOAD_KIP || handling.notes.length > 0
      ? requires({
        id: "deck hauling", label: "Weight of one piece", unit: "kip", clause: LIMIT_INFO.hauling.clause,
        word: handling.weightKip > PAYLOAD_KIP ? "needs a permit" : "see the note", message: handling.notes.join(" "),
      }, handling.weightKip, PAYLOAD_KIP)
      : atMost({
        id: "deck hauling", label: "Weight of one piece", unit: "kip", clause: LIMIT_INFO.hauling.clause,
        holds: `A truck takes ${handling.piecesPerTruck} of them as a legal load.`, fails: "",
      }, handling.weightKip, PAYLOAD_KIP),
    ...(holdDown ? [atMost({
      id: "deck hold-down", label: "Uplift on a hold-down, each stem", unit: "kip", clause: "common practice; producers differ",
      holds: "The bed's devices can hold the strands down.",
      fails: "The bed's devices could not hold the strands down at one point: two points, fewer strands, or a flatter profile.",
    }, holdDown.forcePerStemKip, USUAL_HOLD_DOWN_KIP)] : []),
  ];
}

/**
 * Checks of a piece that hangs or rides, face by face: tension beyond the limit asks for bonded steel where the top is
 * pulled, and fails where the soffit is, for bars in the top do not help it; compression must hold.
 */
export function handledChecks(state: Handled, label: string, id: string): Check[] {
  const clause = LIMIT_INFO.stripping.clause;
  const top = {id: `${id} tension top`, label: `${label}: tension in the top`, unit: "ksi", clause};
  return [
    state.topTensionKsi > state.allowedTensionKsi
      ? requires({...top, word: "needs top steel", message: `The top would crack near the supports, so ${state.topSteelIn2.toFixed(2)} in2 of bonded bars must take the tension.`}, state.topTensionKsi, state.allowedTensionKsi)
      : atMost({...top, holds: "The top does not crack.", fails: ""}, state.topTensionKsi, state.allowedTensionKsi),
    atMost({
      id: `${id} tension soffit`, label: `${label}: tension in the soffit`, unit: "ksi", clause,
      holds: "The soffit does not crack.", fails: "The soffit would crack as the piece hangs: supports farther in, a shorter piece, or more strands.",
    }, state.soffitTensionKsi, state.allowedTensionKsi),
    atMost({
      id: `${id} compression`, label: `${label}: compression`, unit: "ksi", clause,
      holds: "The concrete can take the compression.", fails: "The concrete is compressed too hard: more release strength, or fewer strands.",
    }, state.compressionKsi, state.allowedCompressionKsi),
  ];
}
