/** Mean of evenly spaced values over their range, by Simpson's rule. */
export function simpson(values: readonly number[]): number {
  const intervals = values.length - 1;
  const sum = values.reduce((total, value, i) => total + value * (i === 0 || i === intervals ? 1 : i % 2 === 1 ? 4 : 2), 0);
  return sum / (3 * intervals);
}
