/** A number that a reader arrives at by a usual slip, and what to say to it. */
export interface Mistake {
  readonly value: number;
  readonly message: string;
}

/** How a guess compares with the answer. */
export interface Grade {
  readonly verdict: "close" | "high" | "low" | "mistake";
  readonly message: string;
}

/** A usual slip is recognized within this share of its value. */
const SLIP_TOLERANCE = 0.02;

/**
 * Grades a guess: close if within the tolerance of the answer, else a usual slip if it is one, else high or low.
 *
 * @param tolerancePercent - how far off still counts as close, % of the answer, 0 to 100
 */
export function gradeGuess(guess: number, answer: number, tolerancePercent: number, mistakes: readonly Mistake[] = []): Grade {
  const off = guess - answer;
  if (Math.abs(off) <= (Math.abs(answer) * tolerancePercent) / 100) return {verdict: "close", message: "Close: you have a good feel for it."};
  const slip = mistakes.find((mistake) => Math.abs(guess - mistake.value) <= Math.abs(mistake.value) * SLIP_TOLERANCE);
  if (slip) return {verdict: "mistake", message: slip.message};
  const share = answer === 0 ? "" : ` by ${Math.round((100 * Math.abs(off)) / Math.abs(answer))} %`;
  // Stryker disable next-line EqualityOperator: a guess that is not off at all is close
  return off > 0 ? {verdict: "high", message: `Too high${share}.`} : {verdict: "low", message: `Too low${share}.`};
}
