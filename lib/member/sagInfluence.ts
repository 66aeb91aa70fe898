/** Sag at each place of a simple span by a load at each place; see {@link sagInfluence}. */
export interface SagInfluence {
  readonly places: number;
  /** Row by row: place of the sag, then place of the load. */
  readonly values: Float64Array;
}

/**
 * What a load that varies along a simple span does at each of evenly spaced places, for L^4/(E I) = 1.
 *
 * Each place sums the load times the deflection that a unit load there makes: x b (1 - x^2 - b^2)/6 for a load at b from
 * the far end, x from the near one up to the load (textbook). Simpson's rule over the places.
 *
 * @param intervals - even number of intervals between the places
 */
export function sagInfluence(intervals: number): SagInfluence {
  const places = intervals + 1;
  const values = new Float64Array(places * places);
  for (let i = 0; i < places; i++) {
    for (let j = 1; j < intervals; j++) {
      // Mirrored where the load stands nearer to the start than the place does.
      const x = (i <= j ? i : intervals - i) / intervals;
      const b = (i <= j ? intervals - j : j) / intervals;
      values[i * places + j] = ((j % 2 === 1 ? 4 : 2) / (3 * intervals)) * ((x * b * (1 - x * x - b * b)) / 6);
    }
  }
  return {places, values};
}

/**
 * Sag of a simple span under a load that varies along it, in, at the influence's places.
 *
 * @param loadKipPerIn - at the same places
 */
export function sagUnder({places, values}: SagInfluence, loadKipPerIn: readonly number[], spanIn: number, modulusKsi: number, inertiaIn4: number): number[] {
  const flexibility = spanIn ** 4 / (modulusKsi * inertiaIn4);
  return Array.from({length: places}, (_, i) => {
    let sum = 0;
    for (let j = 1; j + 1 < places; j++) sum += (values[i * places + j] as number) * (loadKipPerIn[j] as number);
    return sum * flexibility;
  });
}
