import type {ElementLoad} from "./floorLoads.js";
import {reduceLiveLoad} from "./reduction.js";

/** A place on the curve of the reduction. */
export interface CurvePoint {
  readonly influenceFt2: number;
  readonly factor: number;
}

/** Influence area of an element over all the floors that load it, ft2. */
export function influenceOf(element: ElementLoad): number {
  return element.influenceFt2 * element.floors;
}

/** The factor of an ordinary live load against influence area, at places that lie evenly on a logarithmic scale. */
export function reductionCurve(floors: 1 | 2, fromFt2: number, toFt2: number, places = 121): CurvePoint[] {
  return Array.from({length: places}, (_, i) => {
    const influenceFt2 = Math.max(1, fromFt2 * (toFt2 / fromFt2) ** (i / (places - 1)));
    return {influenceFt2, factor: reduceLiveLoad({livePsf: 50, rule: "yes", influenceFt2, floors}).factor};
  });
}
