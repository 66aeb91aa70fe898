/** The topping at one place along the span. */
export interface ToppingPoint {
  readonly share: number;
  /** Rise of the member's top above its ends, in; negative where it sags. */
  readonly riseIn: number;
  readonly thicknessIn: number;
}

/** Mean of evenly spaced values over their range, by Simpson's rule. */
export function simpson(values: readonly number[]): number {
  const intervals = values.length - 1;
  const sum = values.reduce((total, value, i) => total + value * (i === 0 || i === intervals ? 1 : i % 2 === 1 ? 4 : 2), 0);
  return sum / (3 * intervals);
}
