import {exceeds} from "./checks.js";
import {decimals} from "./units.js";

/** A number as text to a count of digits: decimals, or significant ones, as the writer takes them. */
export type Writer = (value: number, digits: number) => string;

/** A demand and its capacity, as texts. */
export interface PairText {
  readonly asked: string;
  readonly given: string;
}

/** Most digits that are added until two numbers read apart. */
const MOST_MORE = 12;

/**
 * A demand and its capacity written to the same digits, and where the demand fails to as many more as it takes that its
 * text reads as the greater: a pair that fails never reads as one that holds.
 *
 * @param digits - as many as are wanted where the pair holds
 */
export function pairText(asked: number, given: number, digits = 0, write: Writer = decimals): PairText {
  const to = (count: number): PairText => ({asked: write(asked, count), given: write(given, count)});
  const most = exceeds(asked, given) ? digits + MOST_MORE : digits;
  let count = digits;
  let text = to(count);
  while (text.asked === text.given && count < most) text = to(++count);
  return text;
}

/** How much of a capacity is used as a percentage, which reads above 100 % wherever it is: 1.004 is "100.4 %". */
export function usedPercent(share: number): string {
  return `${pairText(100 * share, 100).asked}\u00a0%`;
}
