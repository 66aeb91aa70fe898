/** A guess that a reader has made, as the browser keeps it. */
export type KeptGuess = {
  /** The question's name, and when it was answered, ms since 1970. */
  readonly name: string;
  readonly at: number;
} & (
  | {readonly kind: "number"; readonly guess: number; readonly truth: number}
  | {readonly kind: "sketch"; readonly offPercent: number}
  | {readonly kind: "pick"; readonly right: boolean}
);

/** Fewer guesses than this tell nothing of a reader's sense. */
export const FEWEST = 6;

/** What a row of guesses shows. */
export interface Progress {
  /** Guesses at numbers whose ratio to the truth can be formed: both positive. */
  readonly ratios: readonly {readonly name: string; readonly at: number; readonly ratio: number}[];
  /** The factor, 1 or more, by which a guess is off in the middle of all: half are nearer, half farther. Undefined where there are none. */
  readonly typical: number | undefined;
  /** The same of the first half and of the second; undefined with fewer than {@link FEWEST}. */
  readonly halves: readonly [earlier: number, later: number] | undefined;
  /** Geometric mean of the ratios: above 1 where the reader guesses high. */
  readonly lean: number | undefined;
  readonly sketches: {readonly count: number; readonly meanOffPercent: number | undefined};
  readonly picks: {readonly count: number; readonly right: number};
}

/** What guesses show of a reader's sense, in the order in which they were made. */
export function progressOf(guesses: readonly KeptGuess[]): Progress {
  const inOrder = [...guesses].sort((a, b) => a.at - b.at);
  const ratios = inOrder.flatMap((each) => (each.kind === "number" && each.guess > 0 && each.truth > 0 ? [{name: each.name, at: each.at, ratio: each.guess / each.truth}] : []));
  const factors = ratios.map(({ratio}) => Math.max(ratio, 1 / ratio));
  const half = Math.floor(factors.length / 2);
  const sketches = inOrder.flatMap((each) => (each.kind === "sketch" ? [each.offPercent] : []));
  const picks = inOrder.flatMap((each) => (each.kind === "pick" ? [each.right] : []));
  return {
    ratios,
    typical: median(factors),
    halves: factors.length < FEWEST ? undefined : [median(factors.slice(0, half)) as number, median(factors.slice(factors.length - half)) as number],
    lean: ratios.length === 0 ? undefined : Math.exp(ratios.reduce((sum, {ratio}) => sum + Math.log(ratio), 0) / ratios.length),
    sketches: {count: sketches.length, meanOffPercent: sketches.length === 0 ? undefined : sketches.reduce((sum, off) => sum + off, 0) / sketches.length},
    picks: {count: picks.length, right: picks.filter(Boolean).length},
  };
}

function median(values: readonly number[]): number | undefined {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return sorted.length === 0 ? undefined : ((sorted[Math.ceil(middle) - 1] as number) + (sorted[Math.floor(middle)] as number)) / 2;
}

/** How much better or worse the later half is, as a reader would say it. */
export function progressWords({ratios, typical, halves, lean}: Progress): string {
  if (typical === undefined || halves === undefined) {
    return ratios.length === 0
      ? "No guess at a number yet."
      : `${ratios.length === 1 ? "One guess" : `${ratios.length} guesses`} so far: too few to show a trend. From ${FEWEST} on this line says how your sense changes.`;
  }
  const off = (factor: number) => (factor < 1.005 ? "nothing" : factor < 2 ? `${Math.round(100 * (factor - 1))} %` : `a factor of ${factor.toFixed(1)}`);
  const [earlier, later] = halves;
  const trend = later < 1 + 0.8 * (earlier - 1) ? "It gets better" : later > 1 + 1.25 * (earlier - 1) ? "It got worse" : "It stays about the same";
  const leans = lean === undefined || Math.abs(Math.log(lean)) < Math.log(1.08) ? "" : ` You tend to guess ${lean > 1 ? "high" : "low"}.`;
  return `Half of your guesses are off by less than ${off(typical)}. ${trend}: off by ${off(earlier)} in the first half, by ${off(later)} in the second.${leans}`;
}
