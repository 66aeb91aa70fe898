import {uniformMomentKipIn} from "../member/moments.js";
import type {PrestressState} from "../member/prestressState.js";
import {fiberStresses, type FiberStresses} from "../member/stress.js";
import {holdDownShare} from "../prestress/layout.js";
import {prestressAt, stressesAllowed, type Cell, type ServicePlace} from "./cell.js";
import {leastShare} from "./shares.js";

/** How far before the hold-down the second of two places lies through which a line is drawn. */
const STEP_BACK = 0.1;
const UNLOADED = {precastKipIn: 0, fullKipIn: 0};

/**
 * Places at which the stresses of a simple span may reach what is allowed in service: midspan, and for depressed
 * strands the places where soffit and top have least room beside the load's moment. What the strands press grows nearly
 * in a straight line up to the hold-down, so a line through two places there finds the rest; the moments of member and
 * topping go as the load's own and move nothing.
 */
export function servicePlaces(cell: Cell): readonly ServicePlace[] {
  return cell.places ??= foundPlaces(cell);
}

function foundPlaces(cell: Cell): readonly ServicePlace[] {
  const {member} = cell;
  const allowed = stressesAllowed(cell);
  const midspan = servicePlace(cell, 0.5);
  // Stryker disable next-line ConditionalExpression: level strands leave least room at midspan; elsewhere is looked in vain
  if (member.layout.profile === "straight") return [midspan];
  const end = holdDownShare(member.layout.profile);
  const start = end - STEP_BACK;
  const before = servicePlace(cell, start);
  // Stryker disable next-line ConditionalExpression,EqualityOperator: midspan is at hand, and what the strands press between two hold-downs is the same
  const at = end === 0.5 ? midspan : servicePlace(cell, end);
  const pressedBefore = pressed(cell, before.state);
  const pressedAt = pressed(cell, at.state);
  const soffit = leastShare(start, allowed.serviceTensionKsi + pressedBefore.bottomKsi, end, allowed.serviceTensionKsi + pressedAt.bottomKsi);
  const top = leastShare(start, allowed.totalCompressionKsi - pressedBefore.topKsi, end, allowed.totalCompressionKsi - pressedAt.topKsi);
  const held = leastShare(start, allowed.sustainedCompressionKsi - pressedBefore.topKsi, end, allowed.sustainedCompressionKsi - pressedAt.topKsi);
  // The two places of the top lie so near each other that the one between them does for both.
  return [before, at, servicePlace(cell, soffit), servicePlace(cell, (top + held) / 2), midspan];
}

function servicePlace(cell: Cell, share: number): ServicePlace {
  const {member, spanFt} = cell;
  const state = prestressAt(cell, share);
  const unitKipIn = uniformMomentKipIn(1, spanFt, share);
  const precastKipIn = (member.selfWeightPlf + member.toppingWeightPlf) * unitKipIn;
  return {state, own: fiberStresses(member, state, state.effectiveForceKip, {precastKipIn, fullKipIn: 0}), perPsf: unitKipIn * member.widthFt};
}

/** Stresses by the strands alone. */
function pressed({member}: Cell, state: PrestressState): FiberStresses {
  return fiberStresses(member, state, state.effectiveForceKip, UNLOADED);
}

/**
 * The place where a load leaves the least compression in the soffit: midspan, or with depressed strands where what they press
 * falls as fast toward the ends as the moments do.
 *
 * @param laterPlf - superimposed load, plf
 */
export function leastPressed(cell: Cell, laterPlf: number): {readonly share: number; readonly bottomKsi: number} {
  const {member, spanFt} = cell;
  const shares = [0.5];
  const {profile} = member.layout;
  // Stryker disable next-line ConditionalExpression: what level strands press grows nowhere, and the place found is midspan
  if (profile !== "straight") {
    const end = holdDownShare(profile);
    const growthKsi = (pressed(cell, prestressAt(cell, end)).bottomKsi - pressed(cell, prestressAt(cell, end - STEP_BACK)).bottomKsi) / STEP_BACK;
    const momentKsi = 4 * uniformMomentKipIn(1, spanFt, 0.5) *
      ((member.selfWeightPlf + member.toppingWeightPlf) / member.section.sbIn3 + laterPlf / member.full.sbIn3);
    shares.unshift(Math.max(0, Math.min(end, (1 - growthKsi / momentKsi) / 2)));
  }
  const places = shares.map((share) => {
    const {own, perPsf} = servicePlace(cell, share);
    return {share, bottomKsi: own.bottomKsi - ((laterPlf / member.widthFt) * perPsf) / member.full.sbIn3};
  });
  // Stryker disable next-line EqualityOperator: of two alike either does
  return places.reduce((least, place) => (place.bottomKsi < least.bottomKsi ? place : least));
}
