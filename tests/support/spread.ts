import type {Scatter} from "../../lib/topping/scatter.js";
import {spread, type Spread, type SpreadInput} from "../../lib/topping/spread.js";

/** No scatter: every piece is the design's. */
export const NO_SCATTER: Scatter = {stiffness: 0, releaseStrength: 0, force: 0, age: 0, weight: 0, lengthIn: 0, likeness: 0};

/** Runs {@link spread} to its end at once. */
export function spreadNow(input: SpreadInput): Spread {
  const work = spread(input);
  for (let step = work.next(); ; step = work.next()) if (step.done) return step.value;
}
