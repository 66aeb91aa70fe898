/** A value that a part of all values does not exceed. */
export interface Quantile {
  readonly share: number;
  readonly value: number;
}

/** How many values fall between two bounds; the last takes its upper bound in. */
export interface HistogramBar {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** What is to be reported of many values, as plain data. */
export interface Distribution {
  readonly count: number;
  readonly mean: number;
  /** Standard deviation of the values as a sample. */
  readonly deviation: number;
  readonly least: number;
  readonly greatest: number;
  readonly quantiles: readonly Quantile[];
  readonly histogram: readonly HistogramBar[];
}

/** Parts for which quantiles are reported. */
export const QUANTILE_SHARES = [0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99] as const;

/** Mean, deviation, quantiles and histogram of values; at least one. The values are sorted in place. */
export function distribution(values: Float64Array, bars = 30): Distribution {
  // The running mean, unlike the sum, gives equal values back to the last digit.
  let mean = 0;
  let squares = 0;
  for (let i = 0; i < values.length; i++) {
    const away = (values[i] as number) - mean;
    mean += away / (i + 1);
    squares += away * ((values[i] as number) - mean);
  }
  values.sort();
  return {
    count: values.length, mean,
    deviation: values.length > 1 ? Math.sqrt(squares / (values.length - 1)) : 0,
    least: values[0] as number,
    greatest: values.at(-1) as number,
    quantiles: QUANTILE_SHARES.map((share) => ({share, value: quantile(values, share)})),
    histogram: histogram(values, bars),
  };
}

/** The reported quantile for a part of all values; one of {@link QUANTILE_SHARES}. */
export function quantileOf({quantiles}: Distribution, share: (typeof QUANTILE_SHARES)[number]): number {
  return (quantiles.find((quantile) => quantile.share === share) as Quantile).value;
}

/** The quantile of sorted values, straight between the two nearest: the first is 0, the last 1. */
export function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] as number;
  const high = sorted[Math.min(sorted.length - 1, below + 1)] as number;
  return low + (high - low) * (place - below);
}

/** Equal bars from the least value to the greatest; one bar where all are alike. */
function histogram(sorted: Float64Array, bars: number): HistogramBar[] {
  const least = sorted[0] as number;
  const range = (sorted.at(-1) as number) - least;
  // Values that differ by rounding alone are alike.
  if (range <= 1e-12 * Math.abs(least)) return [{from: least, to: sorted.at(-1) as number, count: sorted.length}];
  const counts = new Array<number>(bars).fill(0);
  for (const value of sorted) {
    const bar = Math.min(bars - 1, Math.floor(((value - least) / range) * bars));
    counts[bar] = (counts[bar] as number) + 1;
  }
  return counts.map((count, i) => ({from: least + (range * i) / bars, to: least + (range * (i + 1)) / bars, count}));
}
