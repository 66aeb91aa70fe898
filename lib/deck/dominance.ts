/** A thing judged by several numbers, each the better the less. */
export type Values = readonly number[];

/** Whether one thing is no worse than another in every number and better in at least one (Pareto's order). */
export function dominates(one: Values, other: Values): boolean {
  let better = false;
  // Stryker disable next-line EqualityOperator: beyond the last number there is none that were greater or less
  for (let i = 0; i < one.length; i++) {
    const [a, b] = [one[i] as number, other[i] as number];
    if (a > b) return false;
    if (a < b) better = true;
  }
  return better;
}

/**
 * The things that no other dominates, ordered by their first number, then their second, and so on. Of things that are
 * equal in all numbers the first by `rank` is kept; where `rank` tells all of them apart, the order of the input does
 * not matter.
 *
 * Taken in that order, no thing is dominated by a later one, so each need be held against those already kept alone: a
 * thing that one of the dropped dominates, the one that dominates the dropped dominates as well.
 */
export function nonDominated<T>(things: readonly T[], valuesOf: (thing: T) => Values, rank: (a: T, b: T) => number): T[] {
  const ordered = things.map((thing) => ({thing, values: valuesOf(thing)})).sort((a, b) => compare(a.values, b.values) || rank(a.thing, b.thing));
  const kept: typeof ordered = [];
  for (const entry of ordered) {
    if (!kept.some(({values}) => dominates(values, entry.values) || compare(values, entry.values) === 0)) kept.push(entry);
  }
  return kept.map(({thing}) => thing);
}

function compare(one: Values, other: Values): number {
  for (let i = 0; i < one.length; i++) {
    const difference = (one[i] as number) - (other[i] as number);
    if (difference !== 0) return difference;
  }
  return 0;
}
