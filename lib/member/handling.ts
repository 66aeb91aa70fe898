import type {Member} from "./member.js";
import type {FibreStresses} from "./stress.js";

/** Moving a member from the plant to the building. */
export interface Handling {
  readonly weightKip: number;
  readonly lengthFt: number;
  readonly widthFt: number;
  /** How a truck may carry it by its width. */
  readonly widthClass: "legal" | "permit" | "escort";
  /** Members that a legal load can hold; 0 where one alone is too heavy. */
  readonly piecesPerTruck: number;
  /** Said about width, weight, length or tilt. */
  readonly notes: readonly string[];
}

/** Widest legal load, ft (23 CFR 658.15), and widest on a routine permit (state rules; common practice). */
export const ROAD_WIDTH_FT = {legal: 8.5, permit: 12} as const;
/** Usual payload of a legal truck, kip (80 kip gross less the rig; common practice). */
export const PAYLOAD_KIP = 48;
/** Length from which a member needs a steerable rear axle and a route survey, ft (common practice). */
export const LONG_LOAD_FT = 70;

/** Hauling by weight, width and length; limits are of one country's roads and differ by state. */
export function handling(member: Member, spanFt: number): Handling {
  const weightKip = (member.selfWeightPlf * spanFt) / 1000;
  const {widthFt} = member;
  const widthClass = widthFt <= ROAD_WIDTH_FT.legal ? "legal" : widthFt <= ROAD_WIDTH_FT.permit ? "permit" : "escort";
  const notes: string[] = [];
  if (widthClass === "permit") notes.push("Wider than a legal load: each haul needs a permit.");
  if (widthClass === "escort") notes.push("Too wide for a routine permit laid flat: it travels tilted, or with an escort.");
  if (weightKip > PAYLOAD_KIP) notes.push("One piece outweighs a legal load: each haul needs an overweight permit.");
  if (spanFt > LONG_LOAD_FT) notes.push("A long load: the route's corners have to be looked at.");
  return {weightKip, lengthFt: spanFt, widthFt, widthClass, piecesPerTruck: Math.floor(PAYLOAD_KIP / weightKip), notes};
}

/** Stress that bonded steel against cracking at transfer may take, ksi: 0.6 fy, at most 30 (ACI 318-19 24.5.3.2.1). */
const TOP_STEEL_STRESS_KSI = 30;

/**
 * Bonded steel that takes the whole tension of the concrete near the top at transfer, in2 (ACI 318-19 24.5.3.2.1).
 *
 * @param stresses - at the place in question, compression positive; 0 is returned where the top is not in tension
 */
export function topSteelIn2(member: Member, stresses: Pick<FibreStresses, "topKsi" | "bottomKsi">): number {
  const {topKsi, bottomKsi} = stresses;
  if (topKsi >= 0) return 0;
  const depthIn = member.section.depthIn;
  const slope = (topKsi - bottomKsi) / depthIn;
  const zeroIn = bottomKsi > 0 ? -bottomKsi / slope : 0;
  let tensionKip = 0;
  for (const band of member.shape.bands) {
    const from = Math.max(band.bottomIn, zeroIn);
    if (from >= band.topIn) continue;
    const widthAt = (y: number) => band.widthBottomIn + ((band.widthTopIn - band.widthBottomIn) * (y - band.bottomIn)) / (band.topIn - band.bottomIn);
    const pull = (y: number) => -(bottomKsi + slope * y) * widthAt(y);
    // Stress and width are linear, so their product is quadratic and Simpson's rule exact.
    tensionKip += ((band.topIn - from) / 6) * (pull(from) + 4 * pull((from + band.topIn) / 2) + pull(band.topIn));
  }
  return tensionKip / TOP_STEEL_STRESS_KSI;
}
