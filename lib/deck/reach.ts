import type {Member} from "../member/member.js";
import type {Criteria} from "./criteria.js";
import type {LimitName} from "./limits.js";
import {SPAN_RANGE_FT, safeLoad, type SafeLoad} from "./safeLoad.js";

/** A stretch of a span-load curve that one limit governs. */
export interface GoverningRun {
  readonly governs: LimitName;
  readonly cells: readonly SafeLoad[];
}

/** Cuts a span-load curve where another limit takes over; each run but the first begins with the last cell of the one before. */
export function governingRuns(curve: readonly SafeLoad[]): GoverningRun[] {
  const runs: {governs: LimitName; cells: SafeLoad[]}[] = [];
  for (const cell of curve) {
    const last = runs.at(-1);
    if (last?.governs === cell.governs) last.cells.push(cell);
    else runs.push({governs: cell.governs, cells: last ? [last.cells.at(-1) as SafeLoad, cell] : [cell]});
  }
  return runs;
}

/** How near the longest span is found, ft. */
const REACH_TOLERANCE_FT = 0.05;

/**
 * The longest span over which a member carries a superimposed load, ft, by halving: capacity falls with span.
 *
 * @param loadPsf - superimposed load, above 0; a hair above 0 asks where the member can only just carry itself
 * @returns undefined where even the shortest span that the methods cover is too long
 */
export function longestSpanFt(member: Member, criteria: Criteria, loadPsf: number): number | undefined {
  const carries = (spanFt: number) => safeLoad(member, spanFt, criteria).safeLoadPsf >= loadPsf;
  let {min: holdsFt, max: failsFt} = SPAN_RANGE_FT;
  if (!carries(holdsFt)) return undefined;
  if (carries(failsFt)) return failsFt;
  while (failsFt - holdsFt > REACH_TOLERANCE_FT) {
    const middleFt = (holdsFt + failsFt) / 2;
    if (carries(middleFt)) holdsFt = middleFt;
    else failsFt = middleFt;
  }
  return holdsFt;
}
