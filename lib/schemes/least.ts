import type {Check} from "../checks.js";
import {InputError} from "../errors.js";

/** The least of a row of sizes that does, and what stops the one before it. */
export interface Least<T, F> {
  readonly value: number;
  readonly found: T;
  /** What fails one size less; undefined where none less is tried. */
  readonly stops: F | undefined;
}

/**
 * The least size of an ascending row for which no check fails, by strides that double and then by halving: what holds at
 * one size is taken to hold at those next to it. The answer holds and the size before it fails.
 *
 * @param failing - what fails at a size, or nothing
 * @param near - the place in the row to begin at, such as what an estimate says
 * @returns undefined where the greatest does not do
 */
export function leastOf<T, F>(sizes: readonly number[], at: (size: number) => T, failing: (found: T) => F | undefined, near = 0): Least<T, F> | undefined {
  const last = sizes.length - 1;
  const start = Math.min(last, Math.max(0, near));
  let low = -1;
  let stops: F | undefined;
  let high = start;
  let found = at(sizes[high] as number);
  let failed = failing(found);
  if (failed) {
    for (let stride = 1; failed; stride *= 2) {
      if (high === last) return undefined;
      [low, stops] = [high, failed];
      high = Math.min(last, high + stride);
      found = at(sizes[high] as number);
      failed = failing(found);
    }
  } else {
    for (let stride = 1, below = high - 1; below >= 0; stride *= 2, below = Math.max(low + 1, below - stride)) {
      const tried = at(sizes[below] as number);
      const stopped = failing(tried);
      if (stopped) {
        [low, stops] = [below, stopped];
        break;
      }
      [high, found] = [below, tried];
      if (below === 0) break;
    }
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

/** Whether {@link leastOf} finds any size that does: the first part of its search, which is all that asks for. */
export function someHolds<T, F>(sizes: readonly number[], at: (size: number) => T, failing: (found: T) => F | undefined, near = 0): boolean {
  const last = sizes.length - 1;
  for (let high = Math.min(last, Math.max(0, near)), stride = 1; ; high = Math.min(last, high + stride), stride *= 2) {
    if (!failing(at(sizes[high] as number))) return true;
    if (high === last) return false;
  }
}

/** What is made of sizes; undefined where they make nothing. */
export function ifMade<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** What is made of a number, made once. */
export function once<T>(make: (of: number) => T): (of: number) => T {
  const known = new Map<number, T>();
  return (of) => {
    if (!known.has(of)) known.set(of, make(of));
    return known.get(of) as T;
  };
}

/** Whole numbers, or steps of another size, from one to another. */
export function ladder(from: number, to: number, step = 1): number[] {
  return Array.from({length: Math.floor((to - from) / step + 1e-9) + 1}, (_, i) => from + i * step);
}

/** Place of the first size of a row that is no less than a size; the last where none is. */
export function placeOf(sizes: readonly number[], size: number): number {
  const at = sizes.findIndex((one) => one >= size);
  return at < 0 ? sizes.length - 1 : at;
}

/** About the depth at which a ledge would just do that with a lesser one is passed by a utilization, in: where a stem punches through it, depth counts twice, in height and in width. */
export function deeperIn(depthIn: number, utilization: number): number {
  return utilization > 1 && utilization < Infinity ? depthIn * utilization ** 0.6 : depthIn;
}

/** A length rounded up to the next half inch, as formwork is set; one that meets a half inch to the last digit keeps it. */
export function halfInchUp(lengthIn: number): number {
  return Math.ceil(2 * lengthIn - 1e-9) / 2;
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
