import type {Member} from "./member.js";
import type {FiberStresses} from "./stress.js";

/** Stress that bonded steel against cracking at transfer may take, ksi: 0.6 fy, at most 30 (ACI 318-19 24.5.3.2.1). */
export const TOP_STEEL_STRESS_KSI = 30;

/** A band of the section in which the concrete is in tension: straight sides, and a stress that changes evenly. */
export interface PulledBand {
  readonly fromIn: number;
  readonly toIn: number;
  readonly widthFromIn: number;
  readonly widthToIn: number;
  /** Tension at the lower and the upper edge, ksi. */
  readonly tensionFromKsi: number;
  readonly tensionToKsi: number;
  readonly pullKip: number;
}

/**
 * The part in tension of a section whose top is in tension, band by band from below; empty where the top is in compression.
 *
 * @param stresses - at the place in question, compression positive
 */
export function pulledBands(member: Member, {topKsi, bottomKsi}: Pick<FiberStresses, "topKsi" | "bottomKsi">): PulledBand[] {
  if (topKsi >= 0) return [];
  const slope = (topKsi - bottomKsi) / member.section.depthIn;
  const zeroIn = bottomKsi > 0 ? -bottomKsi / slope : 0;
  return member.shape.bands.flatMap((band) => {
    const fromIn = Math.max(band.bottomIn, zeroIn);
    const toIn = band.topIn;
    if (fromIn >= toIn) return [];
    const widthAt = (y: number) => band.widthBottomIn + ((band.widthTopIn - band.widthBottomIn) * (y - band.bottomIn)) / (band.topIn - band.bottomIn);
    const tensionAt = (y: number) => -(bottomKsi + slope * y);
    const [widthFromIn, widthToIn, tensionFromKsi, tensionToKsi] = [widthAt(fromIn), widthAt(toIn), tensionAt(fromIn), tensionAt(toIn)];
    // Stress and width are linear, so their product is quadratic and Simpson's rule exact.
    const pullKip = ((toIn - fromIn) / 6) * (tensionFromKsi * widthFromIn + (tensionFromKsi + tensionToKsi) * (widthFromIn + widthToIn) + tensionToKsi * widthToIn);
    return [{fromIn, toIn, widthFromIn, widthToIn, tensionFromKsi, tensionToKsi, pullKip}];
  });
}

/**
 * Bonded steel that takes the whole tension of the concrete near the top at transfer, in2 (ACI 318-19 24.5.3.2.1).
 *
 * @param stresses - at the place in question, compression positive; 0 is returned where the top is not in tension
 */
export function topSteelIn2(member: Member, stresses: Pick<FiberStresses, "topKsi" | "bottomKsi">): number {
  return pulledBands(member, stresses).reduce((sum, {pullKip}) => sum + pullKip, 0) / TOP_STEEL_STRESS_KSI;
}
