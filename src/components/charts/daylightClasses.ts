import {THRESHOLDS, type FloorShares} from "../../lib/daylight/shares.js";

/** Classes of daylight from the best down, each with a letter and a density of tint, so that color is not all. */
export const DAYLIGHT_CLASSES: readonly {readonly key: keyof FloorShares; readonly letter: string; readonly words: string; readonly opacity: number}[] = [
  {key: "good", letter: "G", words: "good", opacity: 0.75},
  {key: "partial", letter: "P", words: "partial", opacity: 0.42},
  {key: "little", letter: "L", words: "little", opacity: 0.17},
  {key: "dark", letter: "D", words: "dark", opacity: 0},
];

/** The class of a daylight factor. */
export function classOf(percent: number): (typeof DAYLIGHT_CLASSES)[number] {
  const {goodPercent, partialPercent, littlePercent} = THRESHOLDS;
  const i = percent >= goodPercent ? 0 : percent >= partialPercent ? 1 : percent >= littlePercent ? 2 : 3;
  return DAYLIGHT_CLASSES[i] as (typeof DAYLIGHT_CLASSES)[number];
}
