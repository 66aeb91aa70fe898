/** A source of numbers that look random and are the same for the same seed. */
export interface Random {
  /** The next number, 0 up to but not 1, all equally likely. */
  uniform(): number;
  /** The next deviate of the normal distribution with mean 0 and standard deviation 1. */
  normal(): number;
}

/**
 * A seeded generator: mulberry32 (T. Ettinger, 2017, in the public domain), which runs through all 2^32 states; plenty
 * for some ten thousand draws, no good for secrets. Normal deviates by Box and Muller (1958), which gives two at a time.
 *
 * @param seed - whole number; its lowest 32 bits count
 */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  let spare: number | undefined;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 15), z | 1);
    z ^= z + Math.imul(z ^ (z >>> 7), z | 61);
    return ((z ^ (z >>> 14)) >>> 0) / 4294967296;
  };
  const normal = () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    // One less the number is never 0, so the logarithm is finite.
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return {uniform, normal};
}
