import type {RoofLoads} from "./roofLoads.js";
import type {SideDrift} from "./surface.js";

/** The drift that weighs most at its deepest, the first of equals; undefined where none counts. */
export function deepestDrift({surface}: Pick<RoofLoads, "surface">): SideDrift | undefined {
  return surface.drifts.reduce<SideDrift | undefined>((most, one) => (most && most.drift.peakPsf >= one.drift.peakPsf ? most : one), undefined);
}

/** The greatest load of snow on any square foot of the roof, psf: the deepest drift on the balanced snow, the balanced snow with rain, or the minimum. */
export function deepestSnowPsf(loads: Pick<RoofLoads, "surface" | "snow">): number {
  const {flatPsf, minimumPsf, rainOnSnowPsf} = loads.snow;
  return Math.max(flatPsf + (deepestDrift(loads)?.drift.peakPsf ?? 0), flatPsf + rainOnSnowPsf, minimumPsf);
}
