import type {Reach} from "../../lib/deck/reach.js";
import {SPAN_RANGE_FT} from "../../lib/deck/safeLoad.js";
import {decimals} from "../../lib/units.js";

/** A span that is reached, ft: to the tenth below, as a foot that is not reached must not be reported. */
export function reachWords(spanFt: number): string {
  const tenthsFt = Math.floor(10 * spanFt + 0.05) / 10;
  return decimals(tenthsFt, tenthsFt % 1 ? 1 : 0);
}

/** The spans short of its reach over which a deck does not carry its load: ", but not from 24.4 to 32.9 ft". */
export function gapWords({shortestFt, gaps}: Pick<Reach, "shortestFt" | "gaps">): string {
  const stretches = [
    ...(shortestFt > SPAN_RANGE_FT.min ? [`below ${decimals(shortestFt, 1)} ft`] : []),
    ...gaps.map(({fromFt, toFt}) => `from ${decimals(fromFt, 1)} to ${decimals(toFt, 1)} ft`),
  ];
  return stretches.length === 0 ? "" : `, but not ${stretches.join(" nor ")}`;
}
