/** Factor on dead load in 1.2D + 1.6L (ASCE 7-16 2.3.1, combination 2; ACI 318-19 5.3.1b). */
export const DEAD_FACTOR = 1.2;
/** Factor on live load in 1.2D + 1.6L (ASCE 7-16 2.3.1, combination 2). */
export const LIVE_FACTOR = 1.6;
/** Factor in 1.4D (ASCE 7-16 2.3.1, combination 1; ACI 318-19 5.3.1a). */
export const DEAD_ONLY_FACTOR = 1.4;

/** The larger of 1.4D and 1.2D + 1.6L, in the unit of the loads given. */
export function factoredLoad(dead: number, live: number): number {
  return Math.max(DEAD_ONLY_FACTOR * dead, DEAD_FACTOR * dead + LIVE_FACTOR * live);
}
