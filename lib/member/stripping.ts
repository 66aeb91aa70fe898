import {creepGrowth} from "../materials/timeModel.js";
import {holdDownShare} from "../prestress/layout.js";
import {withinBounds} from "../prestress/losses.js";
import {allowables} from "./allowables.js";
import {USUAL_AGE_DAYS} from "./camber.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import {prestressState, type PrestressState} from "./prestressState.js";
import {fiberStresses, type FiberStresses} from "./stress.js";
import {topSteelIn2} from "./topSteel.js";

/** Lifting points as a share of the length from each end: loops stand near the ends of tees, slings of planks too (common practice). */
export const LIFT_SHARE = 0.06;
/** Weight counted for suction in the form and jolts while lifting, and for the road, over the member's own (PCI Design Handbook, 7th ed., ch. 8; from memory). */
export const JOLT = {stripping: 1.3, hauling: 1.5} as const;

/** Stresses of a member as it hangs from its lifting points, or rides on supports at the same places. */
export interface Handled {
  readonly moment: keyof typeof JOLT;
  /** Over the lifting points, where the weight adds to the pull of the strands in the top; with the strands' force of that day. */
  readonly atLift: FiberStresses;
  /** At midspan, where the weight puts the soffit in tension; with the least force that the strands may have. */
  readonly atMidspan: FiberStresses;
  /** Greatest tension of each face and compression anywhere, ksi, and what the concrete of that age can take. */
  readonly topTensionKsi: number;
  readonly soffitTensionKsi: number;
  /** The greater of the two. */
  readonly tensionKsi: number;
  readonly compressionKsi: number;
  readonly allowedTensionKsi: number;
  readonly allowedCompressionKsi: number;
  /** Bonded bars that would take the whole tension of the top where it is greatest, in2. */
  readonly topSteelIn2: number;
}

/** Places looked at between the lifting points and midspan, beside the hold-downs. */
const BETWEEN = [0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.45] as const;

/**
 * Stresses when the member is lifted out of its form, at its release strength, or hauled, at its full strength: own
 * weight with a jolt, hung near the ends.
 *
 * Lifted, the strands pull with their initial force. On the road the top is in tension, and the soffit in compression, under what they
 * still have at {@link USUAL_AGE_DAYS}: the losses come as creep does (ACI 209R-92). The soffit is in tension,
 * and the top in compression, as if all losses had happened, as they may have.
 *
 * Tension of either face is held to 6 sqrt(f'ci) when lifted, as at the ends at transfer (ACI 318-19 24.5.3.2), and to
 * 7.5 sqrt(f'c) / 1.5 on the road (PCI Design Handbook, 7th ed., ch. 8; from memory).
 */
export function handled(member: Member, spanFt: number, moment: keyof typeof JOLT): Handled {
  const stripping = moment === "stripping";
  const weightPlf = JOLT[moment] * member.selfWeightPlf;
  // Cantilevers beyond the lifting points bend the other way and relieve all between.
  const reliefKipIn = 4 * LIFT_SHARE * uniformMomentKipIn(weightPlf, spanFt, 0.5);
  const at = (share: number) => {
    const state = prestressState(member, spanFt, share, 0);
    const moments = {precastKipIn: uniformMomentKipIn(weightPlf, spanFt, share) - reliefKipIn, fullKipIn: 0};
    const most = fiberStresses(member, state, stripping ? state.initialForceKip : forceOnRoadKip(state), moments);
    return {state, most, least: stripping ? most : fiberStresses(member, state, state.effectiveForceKip, moments)};
  };
  const lift = at(LIFT_SHARE);
  const midspan = at(0.5);
  // Between them all grows in a straight line with the moment where strands run level and no loss is held at a bound.
  const inLine = member.layout.profile === "straight" && [lift, midspan].every(({state}) => withinBounds(state.losses));
  const places = inLine ? [lift, midspan] : [lift, ...BETWEEN.map(at), at(holdDownShare(member.layout.profile)), midspan];
  const mostPulled = places.reduce((worst, place) => (place.most.topKsi < worst.most.topKsi ? place : worst)).most;
  const topTensionKsi = Math.max(0, -mostPulled.topKsi);
  const soffitTensionKsi = Math.max(0, ...places.map(({least}) => -least.bottomKsi));
  const allowed = allowables(member, "U");
  return {
    moment, atLift: lift.most, atMidspan: midspan.least, topTensionKsi, soffitTensionKsi,
    tensionKsi: Math.max(topTensionKsi, soffitTensionKsi),
    compressionKsi: Math.max(...places.flatMap(({most, least}) => [most.bottomKsi, least.topKsi])),
    allowedTensionKsi: stripping ? allowed.transferTensionEndKsi : (5 * member.concrete.lambda * Math.sqrt(member.concrete.strengthPsi)) / 1000,
    allowedCompressionKsi: stripping ? allowed.transferCompressionEndKsi : allowed.totalCompressionKsi,
    topSteelIn2: topSteelIn2(member, mostPulled),
  };
}

/** What the strands pull with on the road, kip: of the losses after release, the part that has come. */
export function forceOnRoadKip({initialForceKip, effectiveForceKip}: Pick<PrestressState, "initialForceKip" | "effectiveForceKip">): number {
  return initialForceKip - creepGrowth(USUAL_AGE_DAYS) * (initialForceKip - effectiveForceKip);
}
