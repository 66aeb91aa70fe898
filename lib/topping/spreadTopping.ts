/** What the topping of pieces of one design depends on: shapes of 1 in at midspan, and how soft the span is. */
export interface ToppingBasis {
  readonly leastIn: number;
  /** Height of the finished surface's ends above the member's top at its ends, in, at which the design's own piece just has the least. */
  readonly levelIn: number;
  /** Flexibility of the design's piece against wet topping. */
  readonly ratio: number;
  /** Lift by strands and by own weight at places from the end to midspan. */
  readonly prestressShape: readonly number[];
  readonly selfShape: readonly number[];
  /** Their parts in the sine waves of {@link MODES}, and their means over the span. */
  readonly prestressWaves: readonly number[];
  readonly selfWaves: readonly number[];
  readonly prestressMean: number;
  readonly selfMean: number;
  /** The same of the finished surface above its ends, in; nothing where it is level. */
  readonly surfaceShape: readonly number[];
  readonly surfaceWaves: readonly number[];
  readonly surfaceMean: number;
  /** Volume of an inch of topping over one piece, yd3. */
  readonly yd3PerIn: number;
}

/** Waves in which a load's sag is computed: half waves along the span. The fifth adds a thousandth of the first. */
export const MODES = [1, 3, 5] as const;

/** Places from the end to midspan at which the piece's top is looked at. */
export const HALF_PLACES = 21;
/** Largest ratio that a single soft piece is given, so that its sag has an end; it is far beyond every limit anyway. */
const SOFTEST = 0.9;
/** Mean and midspan value of the waves. */
const WAVE_MEANS = MODES.map((n) => 2 / (n * Math.PI));
/** The waves at the places of the shapes, from the end to midspan; one place after the other. */
const WAVES_AT = Float64Array.from(
  Array.from({length: HALF_PLACES}, (_, i) => MODES.map((n) => Math.sin((n * Math.PI * i) / (2 * (HALF_PLACES - 1))))).flat(),
);
/** Sag of a uniform load at midspan over that of its first wave's formula: 5 pi^4/384. */
const UNIFORM = (5 * Math.PI ** 4) / 384;
/** Mean of the shape of a uniform load's sag. */
const UNIFORM_MEAN = 16 / 25;

/**
 * Thinnest and mean topping of one piece under the finished surface, in.
 *
 * The topping is t = S + F - y, with the surface S at its ends and F higher between them, and presses the piece's top y
 * below its bare rise y0. In sine waves the sag of a load is the load times c_n = C/n^4, so y_n = y0_n - c_n (S_n + F_n
 * - y_n), with S_n = 4 S/(n pi). Solved for y, and with the sag of the uniform part S taken exactly, y = y0 - (5 pi^4/384)
 * C S u(x) + sum of c_n (y0_n - F_n - c_n S_n)/(1 - c_n) sin(n pi x), where u is the shape of a uniform load's sag. No rounds are needed.
 *
 * @param prestressIn - lift by the strands at midspan when set, in
 * @param selfIn - lift by own weight (negative), in
 * @param softness - how much softer than the design's piece this one is
 * @param raisedIn - height of the surface above the design's, in
 */
export function memberTopping(
  basis: ToppingBasis, prestressIn: number, selfIn: number, softness: number, raisedIn: number,
): {thinnestIn: number; meanIn: number} {
  const ratio = Math.min(SOFTEST, basis.ratio * softness);
  const levelIn = basis.levelIn + raisedIn;
  const uniformIn = UNIFORM * ratio * levelIn;
  let meanIn = levelIn + basis.surfaceMean - prestressIn * basis.prestressMean - selfIn * basis.selfMean + uniformIn * UNIFORM_MEAN;
  // Stryker disable next-line ArrayDeclaration: each is set before it is read
  const waves = [0, 0, 0];
  for (let k = 0; k < MODES.length; k++) {
    const n = MODES[k] as number;
    const c = ratio / (n * n * n * n);
    const bareIn = prestressIn * (basis.prestressWaves[k] as number) + selfIn * (basis.selfWaves[k] as number) - (basis.surfaceWaves[k] as number);
    const waveIn = (c * (bareIn - (c * 4 * levelIn) / (n * Math.PI))) / (1 - c);
    waves[k] = waveIn;
    meanIn -= waveIn * (WAVE_MEANS[k] as number);
  }
  const [first, third, fifth] = waves as [number, number, number];
  let thinnestIn = Infinity;
  // Stryker disable next-line EqualityOperator: a place beyond midspan is none, and no thinner
  for (let i = 0, at = 0; i < HALF_PLACES; i++, at += MODES.length) {
    const riseIn = prestressIn * (basis.prestressShape[i] as number) + (selfIn - uniformIn) * (basis.selfShape[i] as number) +
      first * (WAVES_AT[at] as number) + third * (WAVES_AT[at + 1] as number) + fifth * (WAVES_AT[at + 2] as number);
    const thicknessIn = levelIn + (basis.surfaceShape[i] as number) - riseIn;
    // Stryker disable next-line EqualityOperator: of two alike either is the thinnest
    if (thicknessIn < thinnestIn) thinnestIn = thicknessIn;
  }
  return {thinnestIn, meanIn};
}

/** The level at which the design's own piece has just its minimum thickness, in. */
export function levelFor(basis: Omit<ToppingBasis, "levelIn">, prestressIn: number, selfIn: number): number {
  let levelIn = basis.leastIn;
  // Raising the level adds weight, which lowers the piece: each round closes most of the gap.
  // Stryker disable next-line EqualityOperator,UpdateOperator: it is found long before
  for (let round = 0; round < 200; round++) {
    const {thinnestIn} = memberTopping({...basis, levelIn}, prestressIn, selfIn, 1, 0);
    const short = basis.leastIn - thinnestIn;
    // Stryker disable next-line ConditionalExpression,EqualityOperator: further rounds change nothing
    if (Math.abs(short) < 1e-13) break;
    levelIn += short;
  }
  return levelIn;
}
