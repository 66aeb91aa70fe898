import {InputError} from "../errors.js";
import {hashOf, mixed} from "./hash.js";

/** Draws the numbers of one exercise. */
export interface Draw {
  /** A number from `min` to `max` in equal steps, all equally likely: `from(20, 60, 2)` is 20, 22, ... 60. */
  from(min: number, max: number, step?: number): number;
  /** One of a list. */
  one<T>(list: readonly T[]): T;
  /** A list in another order. */
  shuffled<T>(list: readonly T[]): T[];
}

/** Seeds that an exercise may have. */
export const SEED_RANGE = {min: 0, max: 2 ** 32 - 1} as const;
/** A prime further apart than seeds that are used side by side: how far the second exercise of a kind within a set stands from the first. */
const TURN = 1_000_003;

/**
 * Deals the numbers of an exercise out of a seed. A kind's variants are not thrown like dice but counted through in a
 * shuffled order, each digit of the count one draw: seeds next to each other give different numbers until every variant
 * has come, and still look as if drawn at random. So a class whose seeds follow each other has no two alike.
 *
 * @param name - whose exercise it is, so that two kinds do not move in step
 * @param seed - whole number, 0 to 2^32 - 1
 * @param turn - which exercise of this kind within one set, from 1
 */
export function dealt(name: string, seed: number, turn = 1): Draw {
  let left = seed + TURN * (turn - 1);
  let stir = hashOf(name);
  /** A whole number from 0 up to but not `count`: one digit of the seed, turned by what was drawn before. */
  const digit = (count: number): number => {
    if (!(count >= 1)) throw new InputError({path: "draw", label: "draw", value: count, allowed: "at least one to draw from"});
    const own = left % count;
    left = Math.floor(left / count);
    const drawn = (own * strideOf(count) + (stir % count)) % count;
    stir = mixed(stir + own + 1);
    return drawn;
  };
  const shuffled = <T>(list: readonly T[]): T[] => {
    const order = [...list];
    // From the front, so that the first few of many are decided first.
    for (let i = 0; i < order.length - 1; i++) {
      const j = i + digit(order.length - i);
      [order[i], order[j]] = [order[j] as T, order[i] as T];
    }
    return order;
  };
  return {
    from: (min, max, step = 1) => tidy(min + step * digit(Math.floor((max - min) / step + 1e-9) + 1)),
    one: (list) => list[digit(list.length)] as (typeof list)[number],
    shuffled,
  };
}

const STRIDES = new Map<number, number>();

/** A step through `count` places that meets each once, about 0.618 of the way round, so that neighbors fall far apart. */
function strideOf(count: number): number {
  const known = STRIDES.get(count);
  if (known !== undefined) return known;
  let stride = Math.max(1, Math.round(count * 0.6180339887));
  while (divisor(stride, count) > 1) stride++;
  STRIDES.set(count, stride);
  return stride;
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/** A number without what binary fractions leave behind: 0.1 + 0.2 is 0.3. */
function tidy(value: number): number {
  return Number(value.toFixed(9));
}
