import {equivalentDiameterIn} from "../../lib/air/friction.js";

/** Width of the rectangular duct of a depth that is equivalent to a round one, in, by halving: the equivalent grows with the width. */
export function widthForRoundIn(diameterIn: number, depthIn: number): number {
  let [low, high] = [0.1, 1200];
  while (high - low > 1e-11 * high) {
    const middle = (low + high) / 2;
    if (equivalentDiameterIn({kind: "rectangular", widthIn: middle, depthIn}) < diameterIn) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
