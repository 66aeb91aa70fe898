import type {Member} from "./member.js";

/** Moving a member from the plant to the building. */
export interface Handling {
  readonly weightKip: number;
  readonly lengthFt: number;
  readonly widthFt: number;
  /** How a truck may carry it by its width when it lies flat. */
  readonly widthClass: "legal" | "permit" | "escort";
  /** Tilt at which a member too wide for a routine permit is narrow enough, degrees, and its height then, ft; undefined where it may lie flat. */
  readonly tilt: {readonly degrees: number; readonly heightFt: number} | undefined;
  /** Members that a legal load can hold; 0 where one alone is too heavy. */
  readonly piecesPerTruck: number;
  /** Said about width, weight, length or tilt. */
  readonly notes: readonly string[];
}

/** Widest legal load, ft (23 CFR 658.15), and widest on a routine permit (state rules; common practice). */
export const ROAD_WIDTH_FT = {legal: 8.5, permit: 12} as const;
/** Height of what stands on a low trailer, ft: 13.5 ft of clearance less a deck of 3 ft (common practice). */
export const ROAD_HEIGHT_FT = 10.5;
/** Usual payload of a legal truck, kip (80 kip gross less the rig; common practice). */
export const PAYLOAD_KIP = 48;
/** Length from which a member needs a steerable rear axle and a route survey, ft (common practice). */
export const LONG_LOAD_FT = 70;

/** Hauling by weight, width and length; limits are of one country's roads and differ by state. */
export function handling(member: Member, spanFt: number): Handling {
  const weightKip = (member.selfWeightPlf * spanFt) / 1000;
  const {widthFt} = member;
  const widthClass = widthFt <= ROAD_WIDTH_FT.legal ? "legal" : widthFt <= ROAD_WIDTH_FT.permit ? "permit" : "escort";
  const tilt = widthClass === "escort" ? tiltFor(widthFt, member.shape.depthIn / 12) : undefined;
  const notes: string[] = [];
  if (widthClass === "permit") notes.push("Wider than a legal load: each haul needs a permit.");
  if (tilt) {
    notes.push(`Too wide for a routine permit laid flat: it travels tilted by ${Math.round(tilt.degrees)} degrees and then stands ${tilt.heightFt.toFixed(1)} ft high${tilt.heightFt > ROAD_HEIGHT_FT ? ", too high for many bridges on a low trailer" : ""}, or flat with an escort.`);
  }
  if (weightKip > PAYLOAD_KIP) notes.push("One piece outweighs a legal load: each haul needs an overweight permit.");
  if (spanFt > LONG_LOAD_FT) notes.push("A long load: check the turns along the route.");
  return {weightKip, lengthFt: spanFt, widthFt, widthClass, tilt, piecesPerTruck: Math.floor(PAYLOAD_KIP / weightKip), notes};
}

/** Trucks that bring a number of members; one that is too heavy for a legal load rides alone, with a permit. */
export function truckLoads(pieces: number, {piecesPerTruck}: Pick<Handling, "piecesPerTruck">): number {
  return Math.ceil(pieces / Math.max(1, piecesPerTruck));
}

/**
 * The least tilt at which the rectangle around a section is no wider than a routine permit allows: b cos(t) + h sin(t),
 * on the falling side of its greatest value. No shape is so deep that it were too wide on its side.
 */
function tiltFor(widthFt: number, depthFt: number): NonNullable<Handling["tilt"]> {
  const across = (angle: number) => widthFt * Math.cos(angle) + depthFt * Math.sin(angle);
  let [low, high] = [Math.atan2(depthFt, widthFt), Math.PI / 2];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (across(middle) > ROAD_WIDTH_FT.permit) low = middle;
    else high = middle;
  }
  return {degrees: (high * 180) / Math.PI, heightFt: widthFt * Math.sin(high) + depthFt * Math.cos(high)};
}
