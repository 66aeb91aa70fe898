/**
 * The sky that daylight is computed with: the CIE standard overcast sky, darkest at the horizon and three times as
 * bright at the zenith, the same in every direction of the compass (CIE S 011, sky type 16; first given by Moon and
 * Spencer, 1942). Luminances are shares of the zenith's, so no hour, season or place enters.
 */

/** A sky of the overcast kind, or one that is equally bright everywhere, which has simpler closed forms. */
export type Sky = "overcast" | "uniform";

/** Luminance of the overcast sky over that of its zenith: (1 + 2 sin a)/3, for altitudes of 0 to 90 degrees. */
export function overcastLuminance(altitudeDeg: number): number {
  return (1 + 2 * Math.sin(radians(altitudeDeg))) / 3;
}

/**
 * Illuminance of open level ground over the luminance of the zenith. Over the hemisphere the integral of
 * L sin a cos a da dphi is 2 pi (1/3) (1/2 + 2/3) = 7 pi/9 for the overcast sky, and pi for a uniform one.
 */
export const HORIZONTAL_ILLUMINANCE: Readonly<Record<Sky, number>> = {overcast: (7 * Math.PI) / 9, uniform: Math.PI};

/** Degrees to radians. */
export const radians = (angleDeg: number): number => (angleDeg * Math.PI) / 180;
/** Radians to degrees. */
export const degrees = (angleRad: number): number => (angleRad * 180) / Math.PI;
