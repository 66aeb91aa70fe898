import type {Check} from "../checks.js";

/** The least of a row of sizes that does, and what stops the one before it. */
export interface Least<T> {
  readonly value: number;
  readonly found: T;
  /** The check that fails one size less; undefined where none less is tried. */
  readonly stops: Check | undefined;
}

/**
 * The least size of an ascending row for which no check fails, by strides that double and then by halving: what holds at
 * one size is taken to hold at those next to it. The answer holds and the size before it fails.
 *
 * @param failing - what fails at a size, or nothing
 * @param from - the place in the row to begin at, such as what another check has shown to be the least
 * @returns undefined where the greatest does not do
 */
export function leastOf<T>(sizes: readonly number[], at: (size: number) => T, failing: (found: T) => Check | undefined, from = 0): Least<T> | undefined {
  const last = sizes.length - 1;
  let low = from - 1;
  let stops: Check | undefined;
  for (let high = from, stride = 1; ; high = Math.min(last, high + stride), stride *= 2) {
    let found = at(sizes[high] as number);
    const failed = failing(found);
    if (failed) {
      if (high === last) return undefined;
      [low, stops] = [high, failed];
      continue;
    }
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      const tried = at(sizes[middle] as number);
      const stopped = failing(tried);
      if (stopped) [low, stops] = [middle, stopped];
      else [high, found] = [middle, tried];
    }
    return {value: sizes[high] as number, found, stops};
  }
}

/** Whole numbers, or steps of another size, from one to another. */
export function ladder(from: number, to: number, step = 1): number[] {
  return Array.from({length: Math.floor((to - from) / step + 1e-9) + 1}, (_, i) => from + i * step);
}

/** The failing check that is passed most, of those that a filter names. */
export function worstFailing(checks: readonly Check[], counts: (id: string) => boolean = () => true): Check | undefined {
  let worst: Check | undefined;
  for (const check of checks) {
    if (check.verdict === "fails" && counts(check.id) && (!worst || check.utilization > worst.utilization)) worst = check;
  }
  return worst;
}

/** Stands for what fails where sizes make nothing at all. */
export const NOTHING_MADE: Check = {
  id: "size", label: "These sizes", demand: 1, capacity: 0, unit: "", sense: "at most", utilization: 1, verdict: "fails", clause: "geometry", message: "These sizes make no beam.",
};
