import type {Member} from "./member.js";
import type {FibreStresses} from "./stress.js";

/** Stress that bonded steel against cracking at transfer may take, ksi: 0.6 fy, at most 30 (ACI 318-19 24.5.3.2.1). */
export const TOP_STEEL_STRESS_KSI = 30;

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
