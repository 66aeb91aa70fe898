import {InputError} from "../errors.js";

/** The course of the strands along the member: straight, or held down at one or two points. */
export type Profile = "straight" | "one-point" | "two-point";

/** A strand pattern, as in `128-D1`: 12 strands of 8/16 in, depressed at one point. */
export interface Pattern {
  readonly text: string;
  readonly count: number;
  /** Diameter in sixteenths of an inch; 10 is the 0.6 in strand. */
  readonly sixteenths: number;
  readonly profile: Profile;
}

/**
 * Reads a strand pattern as the trade writes it: number of strands, diameter in sixteenths of an inch, `S` for straight
 * or `D` for depressed with the number of depression points.
 *
 * @throws InputError if the text does not parse, or names no strand
 */
export function parsePattern(text: string, path = "pattern"): Pattern {
  const match = /^([1-9]\d?)(10|[6-9])-(?:(S)|D([12]))$/.exec(text);
  if (!match) {
    throw new InputError({path, label: "strand pattern", value: text,
      allowed: "strands 1 to 99, diameter 6 to 10 sixteenths, then -S, -D1 or -D2; for example 108-S or 128-D1"});
  }
  const profile = match[3] ? "straight" : match[4] === "1" ? "one-point" : "two-point";
  return {text, count: Number(match[1]), sixteenths: Number(match[2]), profile};
}

/** The text of a pattern from its parts; the inverse of {@link parsePattern}. */
export function patternText(count: number, sixteenths: number, profile: Profile): string {
  return `${count}${sixteenths}-${profile === "straight" ? "S" : profile === "one-point" ? "D1" : "D2"}`;
}
