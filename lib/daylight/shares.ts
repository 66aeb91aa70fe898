import {requireNumber} from "../check.js";
import {roundedParts} from "../units.js";

/** Daylight factors from which a place counts as well, partly or little lit, %. */
export interface Thresholds {
  readonly goodPercent: number;
  readonly partialPercent: number;
  readonly littlePercent: number;
}

/**
 * Usual thresholds: from 5 % a room hardly needs lamps by day, from 2 % it needs them now and then, below 2 % most of
 * the day (British Standard 8206-2 and the lighting guides, for a room's average; from memory). Below 1 % it looks dark
 * even beside the window's brightness (common practice). To hold single places against them is our reading.
 *
 * EN 17037 has superseded that standard. What it asks of half and of nearly all of the floor follows from how bright the
 * place's own sky is over the year, which a design does not state; the older numbers need no place, and are kept.
 */
export const THRESHOLDS: Thresholds = {goodPercent: 5, partialPercent: 2, littlePercent: 1};

/** Parts of the floor's depth by how well they are lit; together 1. */
export interface FloorShares {
  readonly good: number;
  readonly partial: number;
  readonly little: number;
  readonly dark: number;
}

/** Returns thresholds that fall from good to little; throws InputError otherwise. */
export function checkedThresholds(t: Thresholds): Thresholds {
  requireNumber(t.goodPercent, {path: "goodPercent", label: "threshold of good daylight", unit: "%", min: 0.1, max: 50});
  requireNumber(t.partialPercent, {path: "partialPercent", label: "threshold of partial daylight", unit: "%", min: 0, max: t.goodPercent});
  requireNumber(t.littlePercent, {path: "littlePercent", label: "threshold of little daylight", unit: "%", min: 0, max: t.partialPercent});
  return t;
}

/**
 * Parts of the depth at or above each threshold. The values stand at the middles of equal strips and run straight
 * between them, so a part changes smoothly as the room does.
 */
export function floorShares(valuesPercent: readonly number[], thresholds: Thresholds = THRESHOLDS): FloorShares {
  const {goodPercent, partialPercent, littlePercent} = checkedThresholds(thresholds);
  const good = partAbove(valuesPercent, goodPercent);
  const partial = partAbove(valuesPercent, partialPercent);
  const little = partAbove(valuesPercent, littlePercent);
  return {good, partial: partial - good, little: little - partial, dark: 1 - little};
}

/** Shares in whole percent that add up to 100, with what has daylight to work by. */
export interface SharePercents extends FloorShares {
  /** Good and partial together. */
  readonly daylit: number;
}

/** Shares as they are shown, in whole percent: rounded so that they add up to 100. */
export function sharePercents({good, partial, little, dark}: FloorShares): SharePercents {
  const told = roundedParts([good, partial, little, dark].map((share) => 100 * share)) as [number, number, number, number];
  return {good: told[0], partial: told[1], little: told[2], dark: told[3], daylit: told[0] + told[1]};
}

/** Part of the range over which values at the middles of equal strips, joined by straight lines, reach a level. */
function partAbove(values: readonly number[], level: number): number {
  const reaches = (value: number) => (value >= level ? 1 : 0);
  // Half a strip at each end lies beyond the outermost value.
  let strips = (reaches(values[0] as number) + reaches(values.at(-1) as number)) / 2;
  for (let i = 0; i + 1 < values.length; i++) {
    const from = values[i] as number;
    const to = values[i + 1] as number;
    if (reaches(from) === reaches(to)) strips += reaches(from);
    else strips += (Math.max(from, to) - level) / Math.abs(to - from);
  }
  return strips / values.length;
}
