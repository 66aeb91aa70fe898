import {decimals} from "../units.js";

/** Decimals that a tick has at the most. */
const MOST_PLACES = 9;
/** Steps that people count in, as parts of a power of ten. */
const STEPS = [1, 2, 2.5, 5, 10] as const;

/**
 * Round numbers within a range, about as many as are wanted: whole multiples of 1, 2, 2.5 or 5 times a power of ten.
 *
 * @param count - how many are wanted, 1 or more; the step nearest to that is taken
 */
export function niceTicks(low: number, high: number, count: number): number[] {
  const span = high - low;
  if (!(span > 0) || !Number.isFinite(span)) return [];
  const rough = span / Math.max(1, count);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * STEPS.reduce((best, each) => (Math.abs(Math.log(each * power / rough)) < Math.abs(Math.log(best * power / rough)) ? each : best), STEPS[0] as number);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({length: Math.max(0, last - first + 1)}, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** Ticks as their axis writes them: all with as many decimals as one of them needs. */
export function tickTexts(ticks: readonly number[]): string[] {
  const isWhole = (scaled: number) => Math.abs(scaled - Math.round(scaled)) <= 1e-6;
  let places = 0;
  while (places < MOST_PLACES && !ticks.every((tick) => isWhole(tick * 10 ** places))) places++;
  return ticks.map((tick) => decimals(tick, places));
}
