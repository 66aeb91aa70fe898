import type {SnowSurface} from "../../lib/snow/surface.js";

/** Load of the snow at a place, psf, by the words of the code: on the balanced snow whichever drift is deeper there. */
export function snowAtPsf({balancedPsf, drifts, lengthFt, widthFt}: SnowSurface, xFt: number, yFt: number): number {
  const away = {south: yFt, north: widthFt - yFt, west: xFt, east: lengthFt - xFt};
  return balancedPsf + Math.max(0, ...drifts.map(({side, drift}) => drift.peakPsf * (1 - away[side] / drift.widthFt)));
}
