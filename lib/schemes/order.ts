/**
 * The numbers from 0 to a count so that any first part of them is spread over all: first the ends, then every other time
 * the middles between those taken. A chart that fills in this order shows its shape at once and then its details.
 */
export function coarseToFine(count: number): number[] {
  const order: number[] = [];
  const taken = new Set<number>();
  const take = (i: number) => {
    if (taken.has(i)) return;
    taken.add(i);
    order.push(i);
  };
  let step = 1;
  while (2 * step < count) step *= 2;
  for (; step >= 1; step /= 2) for (let i = 0; i < count; i += step) take(i);
  return order;
}

/** An order in as many parts as there are workers, each with every so manieth group of it; a group is never parted, for its schemes share their parts. */
export function sharedOut(order: readonly (readonly number[])[], workers: number): number[][] {
  return Array.from({length: workers}, (_, worker) => order.filter((_group, i) => i % workers === worker).flat());
}
