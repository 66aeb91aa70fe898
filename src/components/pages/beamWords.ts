import type {Evaluation} from "../../lib/evaluate.js";
import {beamBelowDeck} from "../../lib/storey/parts.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {height} from "./part.js";

/** What a beam hung below the deck would cost. */
export function belowSentence({edgeBeam, storey}: Evaluation): string {
  const below = beamBelowDeck(storey, edgeBeam.depthIn);
  const same = "A beam that carried the deck on its top would need about the same depth, all of it under the deck";
  if (below.loweredIn <= 0) return `${same}; here it would still end above the ceiling.`;
  const where = below.headIn > 0 ? `${height(below.headIn)} above the floor instead of ${height(storey.headIn)}` : "nowhere above the floor at all";
  return `${same}: the head of the glass would stand ${where}, ${feetAndInches(below.loweredIn)} lower, and the view and the ceiling at the window with it.`;
}

/** The bars, and whether they suffice. */
export function barSentence({edgeBeam}: Evaluation): string {
  const {bars, barsSuffice} = edgeBeam;
  const rows = bars.rows.length > 1 ? ` in ${bars.rows.length} rows` : "";
  return barsSuffice
    ? `${bars.count} ${bars.bar.size} bars${rows} in the bottom are the fewest that carry the bending.`
    : `Even ${bars.count} ${bars.bar.size} bars${rows}, the most that help, do not carry the bending: larger bars, a deeper ledge or upstand, or a shorter span are needed.`;
}

/** How the twist compares with what may be left out. */
export function twistSentence({edgeBeam}: Evaluation): string {
  const times = edgeBeam.torsionKipIn / edgeBeam.torsionThresholdKipIn;
  return times <= 1
    ? "Here the twist is small enough to be left out of the count."
    : `Here the twist is ${decimals(times, 1)} times what may be left out of the count. That is usual for a beam with a ledge on one side, and out of the range of this first size.`;
}
