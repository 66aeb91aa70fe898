import {allowables} from "../member/allowables.js";
import {fireRating} from "../member/fire.js";
import {PAYLOAD_KIP, handling} from "../member/handling.js";
import type {Member} from "../member/member.js";
import {handled} from "../member/stripping.js";
import {transfer} from "../member/transfer.js";
import {LEAST_FREQUENCY_HZ, vibration} from "../member/vibration.js";
import {cellOf} from "./cell.js";
import {soffitMostPressed} from "./compression.js";
import type {Criteria} from "./criteria.js";
import type {LimitName} from "./limits.js";

/** What a candidate of the search must pass besides carrying the load; steel in the top and permits cure the rest. */
export const WORKING_GATES: readonly LimitName[] = ["transfer", "soffit compression", "vibration", "fire"];

/** The gates that a member does not pass on a span, of those that count. */
export function failedGates(member: Member, spanFt: number, criteria: Criteria): LimitName[] {
  return criteria.limits.filter((name) => (gateUse(name, member, spanFt, criteria) ?? 0) > 1 + 1e-9);
}

/** Use of a gate that has nothing to set against what is asked: far beyond it. */
const BEYOND = 99;

/** How much of a gate a member uses, 1 being its limit; undefined where it asks nothing, and for limits on the load. */
export function gateUse(name: LimitName, member: Member, spanFt: number, criteria: Criteria): number | undefined {
  return USES[name]?.(member, spanFt, criteria);
}

type Use = (member: Member, spanFt: number, criteria: Criteria) => number | undefined;

const USES: Partial<Record<LimitName, Use>> = {
  transfer: (member, spanFt) => transfer(member, spanFt).releaseStrengthNeededPsi / member.releaseStrengthPsi,
  // Load on the floor relieves the soffit, and none can be counted on.
  "soffit compression": (member, spanFt, criteria) =>
    soffitMostPressed(cellOf(member, spanFt, criteria)).stressKsi / allowables(member, criteria.tensionClass).sustainedCompressionKsi,
  vibration: (member, spanFt, {walking, superimposedDeadPsf}) => {
    if (!walking) return undefined;
    const {frequencyHz, acceleration, allowedAcceleration} = vibration(member, spanFt, superimposedDeadPsf * member.widthFt, walking);
    return Math.max(LEAST_FREQUENCY_HZ / frequencyHz, acceleration / allowedAcceleration);
  },
  fire: (member, _, {fire}) => {
    if (!fire) return undefined;
    const {byThicknessHours, byCoverHours} = fireRating(member, fire);
    const hours = Math.min(byThicknessHours, byCoverHours ?? 0);
    return Math.min(BEYOND, fire.hours / hours);
  },
  stripping: (member, spanFt) => Math.max(...(["stripping", "hauling"] as const).map((moment) => {
    const {tensionKsi, allowedTensionKsi, compressionKsi, allowedCompressionKsi} = handled(member, spanFt, moment);
    return Math.max(tensionKsi / allowedTensionKsi, compressionKsi / allowedCompressionKsi);
  })),
  hauling: (member, spanFt) => handling(member, spanFt).weightKip / PAYLOAD_KIP,
};
