import {fireRating} from "../member/fire.js";
import {PAYLOAD_KIP, handling} from "../member/handling.js";
import type {Member} from "../member/member.js";
import {handled, type Handled} from "../member/stripping.js";
import {transfer} from "../member/transfer.js";
import {LEAST_FREQUENCY_HZ, vibration} from "../member/vibration.js";
import type {Criteria} from "./criteria.js";
import type {LimitName} from "./limits.js";

/** What a candidate of the search must pass besides carrying the load; steel in the top and permits cure the rest. */
export const WORKING_GATES: readonly LimitName[] = ["transfer", "vibration", "fire"];

/** The gates that a member does not pass on a span, of those that count. */
export function failedGates(member: Member, spanFt: number, criteria: Criteria): LimitName[] {
  return criteria.limits.filter((name) => PASSES[name] && !PASSES[name](member, spanFt, criteria));
}

/** Whether a member passes each gate. */
const PASSES: Partial<Record<LimitName, (member: Member, spanFt: number, criteria: Criteria) => boolean>> = {
  transfer: (member, spanFt) => transfer(member, spanFt).releaseStrengthNeededPsi <= member.releaseStrengthPsi * (1 + 1e-9),
  vibration: (member, spanFt, {walking, superimposedDeadPsf}) => {
    if (!walking) return true;
    const {frequencyHz, acceleration, allowedAcceleration} = vibration(member, spanFt, superimposedDeadPsf * member.widthFt, walking);
    return frequencyHz >= LEAST_FREQUENCY_HZ && acceleration <= allowedAcceleration;
  },
  fire: (member, _, {fire}) => {
    if (!fire) return true;
    const {byThicknessHours, byCoverHours} = fireRating(member, fire);
    return byThicknessHours >= fire.hours && byCoverHours !== undefined && byCoverHours >= fire.hours;
  },
  stripping: (member, spanFt) => (["stripping", "hauling"] as const).every((moment) => holds(handled(member, spanFt, moment))),
  hauling: (member, spanFt) => handling(member, spanFt).weightKip <= PAYLOAD_KIP,
};

function holds({tensionKsi, allowedTensionKsi, compressionKsi, allowedCompressionKsi}: Handled): boolean {
  return tensionKsi <= allowedTensionKsi && compressionKsi <= allowedCompressionKsi;
}
