import {exceeds} from "../checks.js";
import type {Member} from "../member/member.js";
import type {Criteria} from "./criteria.js";
import {LIMITS, type LimitName} from "./limits.js";
import {SPAN_RANGE_FT, safeLoad, type SafeLoad} from "./safeLoad.js";

/** Spans over which a member does not carry a load that it carries over shorter and longer ones, ft. */
export interface ReachGap {
  readonly fromFt: number;
  readonly toFt: number;
  /** What stops it there. */
  readonly governs: LimitName;
}

/** How far a member carries a load. */
export interface Reach {
  /** The shortest span over which it carries the load, ft: 10 ft, where the methods begin, unless a gate stops short pieces. */
  readonly shortestFt: number;
  /** The longest span over which it carries the load, ft. */
  readonly longestFt: number;
  /** What stops it beyond; undefined where the methods go no further. */
  readonly stops: LimitName | undefined;
  /** Spans between over which it does not, the shortest first. */
  readonly gaps: readonly ReachGap[];
}

/** Distance of the spans that are looked at, ft; where a limit sets in or out is found between them. */
export const SCAN_STEP_FT = 2;
/** How near the place is found where a limit sets in or out, and where the load is just carried, ft. */
const TOLERANCE_FT = 0.005;

/**
 * A member's safe loads over all spans that the methods cover, rising, up to where it would break under its own weight.
 *
 * Capacity need not fall with the span: the rule on least strength, and gates such as transfer, stop a short piece and
 * let a longer one pass. Between such places it falls, because every limit's load does, so wherever a limit sets in or out
 * the two sides of that place are among the spans.
 */
export function spanScan(member: Member, criteria: Criteria, stepFt = SCAN_STEP_FT): readonly SafeLoad[] {
  const at = (spanFt: number) => safeLoad(member, spanFt, criteria);
  const cells: SafeLoad[] = [at(SPAN_RANGE_FT.min)];
  for (let spanFt = SPAN_RANGE_FT.min + stepFt; spanFt <= SPAN_RANGE_FT.max; spanFt += stepFt) {
    const cell = at(spanFt);
    cells.push(...turns(at, cells.at(-1) as SafeLoad, cell), cell);
    // Stryker disable next-line EqualityOperator: no span is just the one at which nothing is left
    if ((cell.limitsPsf.strength ?? Infinity) <= 0) break;
  }
  return cells;
}

/** The two sides of each place between two spans at which a limit sets in or out. */
function turns(at: (spanFt: number) => SafeLoad, from: SafeLoad, to: SafeLoad): SafeLoad[] {
  if (sameLimits(from, to)) return [];
  let [low, high] = [from, to];
  // Stryker disable next-line EqualityOperator: halves of a step never are just the tolerance
  while (high.spanFt - low.spanFt > TOLERANCE_FT) {
    const middle = at((low.spanFt + high.spanFt) / 2);
    if (sameLimits(from, middle)) low = middle;
    else high = middle;
  }
  // Stryker disable next-line MethodExpression,ConditionalExpression,LogicalOperator: it drops a side that is an end of the interval, where hardly any limit turns
  const found = [low, high].filter((cell) => cell !== from && cell !== to);
  // A second place may follow in the same interval.
  return [...found, ...turns(at, high, to)];
}

function sameLimits({limitsPsf: a}: SafeLoad, {limitsPsf: b}: SafeLoad): boolean {
  return LIMITS.every((name) => (a[name] === undefined) === (b[name] === undefined));
}

/**
 * How far a member carries a superimposed load, with the spans between at which it does not.
 *
 * @param loadPsf - superimposed load, above 0; a hair above 0 asks where the member can only just carry itself
 * @param scan - the member's {@link spanScan} under the same criteria, if it is at hand
 * @returns undefined where it carries the load over no span that the methods cover
 */
export function reachOf(member: Member, criteria: Criteria, loadPsf: number, scan = spanScan(member, criteria)): Reach | undefined {
  const holds = (cell: SafeLoad) => !exceeds(loadPsf, cell.safeLoadPsf);
  /** The last cell on the near side of a change between two cells, and the first beyond it. */
  const change = (near: SafeLoad, far: SafeLoad): readonly [SafeLoad, SafeLoad] => {
    // Stryker disable next-line EqualityOperator: halves of a step never are just the tolerance
    while (far.spanFt - near.spanFt > TOLERANCE_FT) {
      const middle = safeLoad(member, (near.spanFt + far.spanFt) / 2, criteria);
      if (holds(middle) === holds(near)) near = middle;
      else far = middle;
    }
    return [near, far];
  };
  const gaps: ReachGap[] = [];
  let longest = holds(scan[0] as SafeLoad) ? scan[0] : undefined;
  let shortest = longest;
  let failed: SafeLoad | undefined;
  scan.slice(1).forEach((cell, i) => {
    const before = scan[i] as SafeLoad;
    if (holds(before) && !holds(cell)) [longest, failed] = change(before, cell);
    else if (holds(cell)) {
      // Stryker disable next-line ConditionalExpression: between two that hold there is nothing to find
      if (!holds(before)) {
        const [, first] = change(before, cell);
        if (failed) gaps.push({fromFt: (longest as SafeLoad).spanFt, toFt: first.spanFt, governs: failed.governs});
        shortest ??= first;
        failed = undefined;
      }
      longest = cell;
    }
  });
  // Stryker disable next-line LogicalOperator: there is the one where there is the other
  return longest && shortest && {shortestFt: shortest.spanFt, longestFt: longest.spanFt, stops: failed?.governs, gaps};
}

/** Whether a member that reaches so far carries the load over a span, ft. */
export function reaches({shortestFt, longestFt, gaps}: Reach, spanFt: number): boolean {
  return spanFt >= shortestFt && spanFt <= longestFt && !gaps.some(({fromFt, toFt}) => spanFt > fromFt && spanFt < toFt);
}

/** The longest span in whole feet over which the load is carried; undefined where there is none. */
export function longestWholeFt(reach: Reach): number | undefined {
  for (let spanFt = Math.floor(reach.longestFt); spanFt >= SPAN_RANGE_FT.min; spanFt--) if (reaches(reach, spanFt)) return spanFt;
  return undefined;
}

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
