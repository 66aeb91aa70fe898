import {allowables} from "./allowables.js";
import type {Member} from "./member.js";
import {uniformMomentKipIn} from "./moments.js";
import {prestressState} from "./prestressState.js";
import {fibreStresses, type FibreStresses} from "./stress.js";

/** Lifting points as a share of the length from each end: loops stand near the ends of tees, slings of planks too (common practice). */
export const LIFT_SHARE = 0.06;
/** Weight counted for suction in the form and jolts while lifting, and for the road, over the member's own (trade handbook; from memory). */
export const JOLT = {stripping: 1.3, hauling: 1.5} as const;

/** Stresses of a member as it hangs from its lifting points, or rides on supports at the same places. */
export interface Handled {
  readonly moment: keyof typeof JOLT;
  /** Over the lifting points, where the weight adds to the pull of the strands in the top. */
  readonly atLift: FibreStresses;
  readonly atMidspan: FibreStresses;
  /** Greatest tension and compression anywhere, ksi, and what the concrete of that age bears. */
  readonly tensionKsi: number;
  readonly compressionKsi: number;
  readonly allowedTensionKsi: number;
  readonly allowedCompressionKsi: number;
}

/**
 * Stresses when the member is lifted out of its form, at its release strength, or hauled, at its full strength: own
 * weight with a jolt, hung near the ends, with the prestress of that day (initial, and effective on the road).
 *
 * Tension is held to 6 sqrt(f'ci) over the lifting points, as at the ends at transfer (ACI 318-19 24.5.3.2), and to
 * 7.5 sqrt(f'c) / 1.5 on the road (trade handbook; from memory).
 */
export function handled(member: Member, spanFt: number, moment: keyof typeof JOLT): Handled {
  const stripping = moment === "stripping";
  const weightPlf = JOLT[moment] * member.selfWeightPlf;
  const at = (share: number, precastKipIn: number) => {
    const state = prestressState(member, spanFt, share, 0);
    return fibreStresses(member, state, stripping ? state.initialForceKip : state.effectiveForceKip, {precastKipIn, fullKipIn: 0});
  };
  // Cantilevers beyond the lifting points bend the other way and relieve midspan.
  const cantileverKipIn = -4 * LIFT_SHARE ** 2 * uniformMomentKipIn(weightPlf, spanFt, 0.5);
  const atLift = at(LIFT_SHARE, cantileverKipIn);
  const atMidspan = at(0.5, uniformMomentKipIn(weightPlf, spanFt, 0.5) * (1 - 4 * LIFT_SHARE));
  const all = [atLift, atMidspan].flatMap(({bottomKsi, topKsi}) => [bottomKsi, topKsi]);
  const allowed = allowables(member, "U");
  return {
    moment, atLift, atMidspan,
    tensionKsi: Math.max(0, -Math.min(...all)),
    compressionKsi: Math.max(...all),
    allowedTensionKsi: stripping ? allowed.transferTensionEndKsi : (5 * member.concrete.lambda * Math.sqrt(member.concrete.strengthPsi)) / 1000,
    allowedCompressionKsi: stripping ? allowed.transferCompressionEndKsi : allowed.totalCompressionKsi,
  };
}
