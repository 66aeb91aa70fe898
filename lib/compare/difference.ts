import {decimals} from "../units.js";

/** What a measure must say of itself so that two values of it can be compared. */
export interface Comparable {
  /** Which way is better; neither where more or less is a matter of taste. */
  readonly better: "less" | "more" | "neither";
  /** Decimals that are shown. */
  readonly decimals: number;
}

/** How a value stands to another. */
export type Standing = "better" | "worse" | "more" | "less" | "alike" | "not comparable";

/** The difference of a value from another, as it is shown. */
export interface Difference {
  readonly standing: Standing;
  /** How far apart the two are, 0 or more, in the measure's unit: of the values as they are shown, so that a reader who subtracts finds the same. */
  readonly by: number;
  /** The same as a share of the value that it is compared with; undefined where that is 0. */
  readonly share: number | undefined;
}

/**
 * How a value stands to the one that it is compared with. Values that read alike are alike; where either is missing, as
 * stalls where no cars park, nothing can be said.
 */
export function difference({better, decimals: places}: Comparable, base: number | undefined, value: number | undefined): Difference {
  if (base === undefined || value === undefined) return {standing: "not comparable", by: 0, share: undefined};
  const [from, to] = [rounded(base, places), rounded(value, places)];
  const by = rounded(Math.abs(to - from), places);
  if (by === 0) return {standing: "alike", by, share: undefined};
  // Stryker disable next-line EqualityOperator: two that are alike have left
  const way = to > from ? "more" : "less";
  return {standing: better === "neither" ? way : better === way ? "better" : "worse", by, share: from === 0 ? undefined : by / Math.abs(from)};
}

function rounded(value: number, places: number): number {
  return Number(value.toFixed(places));
}

/** Most that a share is written as a percentage; beyond it "three times" says more than "200 %". */
const MOST_SHARE = 1;

/** A difference in words: "better by 6 (15 %)", "6 more", "alike". */
export function differenceWords({standing, by, share = 0}: Difference, places: number): string {
  if (standing === "alike") return "alike";
  if (standing === "not comparable") return "";
  const text = decimals(by, places);
  const percent = share >= 0.005 && share <= MOST_SHARE ? ` (${decimals(100 * share)}\u00a0%)` : "";
  return standing === "more" || standing === "less" ? `${text} ${standing}${percent}` : `${standing} by ${text}${percent}`;
}

/** How many measures of a design are better, worse, only different and alike. */
export interface StandingCount {
  readonly better: number;
  readonly worse: number;
  readonly different: number;
  readonly alike: number;
}

export function countStandings(standings: readonly Standing[]): StandingCount {
  const count = (...which: readonly Standing[]) => standings.filter((one) => which.includes(one)).length;
  return {better: count("better"), worse: count("worse"), different: count("more", "less"), alike: count("alike")};
}
