import type {Design} from "../design/design.js";

/** How a room hears its ducts: the noise criterion RC(N) that a velocity keeps to. */
export type NoiseClass = "RC 25" | "RC 35" | "RC 45" | "louder than RC 45";

/** What lies between a duct and the ears in the room. */
export type DuctCover = "box" | "ceiling" | "nothing";

/** What a class means, in a few words (common practice; from memory). */
export const NOISE_WORDS: Readonly<Record<NoiseClass, string>> = {
  "RC 25": "quiet enough to read, to teach and to record",
  "RC 35": "an office, a shop, a quiet hall",
  "RC 45": "a lobby, a kitchen, a workshop",
  "louder than RC 45": "where people raise their voices anyway",
};

const CLASSES = ["RC 25", "RC 35", "RC 45"] as const;

/**
 * Greatest velocities in a rectangular main for the noise criteria RC(N) 25, 35 and 45, ft/min: in a shaft or behind
 * gypsum board, above a suspended acoustic ceiling, and in the open room (ASHRAE Handbook HVAC Applications, "Noise and
 * Vibration Control", maximum recommended duct airflow velocities).
 */
export const MAIN_NOISE_FPM: Readonly<Record<DuctCover, readonly [number, number, number]>> = {
  box: [1700, 2500, 3500],
  ceiling: [1200, 1750, 2500],
  nothing: [950, 1450, 2000],
};

/** Branches keep to this share of a main's velocities, runouts to their outlets to half of them (same table, its notes). */
export const BRANCH_NOISE_SHARE = 0.8;

/** The quietest class that a velocity keeps to. */
export function noiseClass(velocityFpm: number, use: "main" | "branch", cover: DuctCover): NoiseClass {
  const share = use === "main" ? 1 : BRANCH_NOISE_SHARE;
  // Stryker disable next-line EqualityOperator: the two part in the ninth digit
  const at = MAIN_NOISE_FPM[cover].findIndex((mostFpm) => velocityFpm <= mostFpm * share * (1 + 1e-9));
  return CLASSES[at] ?? "louder than RC 45";
}

/** What covers the main of a design. */
export function mainCover({air, story}: Pick<Design, "air" | "story">): DuctCover {
  return air.run === "box" ? "box" : story.ceiling === "none" && air.run === "plenum" ? "nothing" : "ceiling";
}
