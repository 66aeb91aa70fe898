import {namedBy} from "./remedies.js";
import type {Mend, Trial} from "./trial.js";
import {allAlong, made, numberWay, outward, type Way} from "./way.js";

/** Designs that are evaluated at most for one check, so that a search ends within seconds. */
const MOST_TRIED = 200;
/** Of the remedies that break something else so many are mended in turn, and so often. */
const SECOND = {mends: 3, times: 3} as const;

const clean = (mend: Mend | undefined): boolean => mend?.newly.length === 0;

/** Whether a mend is better than another: it breaks less, or as little by a smaller change. */
function beats(one: Mend, other: Mend | undefined): boolean {
  return !other || one.newly.length < other.newly.length || (one.newly.length === other.newly.length && one.size < other.size);
}

/**
 * The smallest change, of those that the remedies in a check's own words make, with which the check holds and no other
 * newly fails; where there is none, the one with which the fewest do. Each remedy is tried by itself; where one breaks
 * something else, with a remedy of that as well; where none does, all of them together.
 *
 * @returns undefined where none of them makes the check hold
 */
export function mended(trial: Trial): Mend | undefined {
  const {check, catalog, design} = trial;
  const named = namedBy(check, catalog).flatMap(({ways}) => ways ?? []);
  const alone = through(trial, named.flatMap((ways) => ways(design)), undefined);
  const known = alone.length > 0 || named.length < 2 ? alone : through(trial, allAlong(design, named), undefined);
  let best = bestOf(known);
  let broken = nearest(known);
  for (let time = 0; time < SECOND.times && broken.length > 0 && !clean(best); time++) {
    // What a second change breaks in its turn may be mended by a third, even where it is no less than before.
    broken = nearest(broken.flatMap((mend) => seconds(trial, mend, best)));
    best = bestOf([...(best ? [best] : []), ...broken]);
  }
  return best && leaner(trial, best);
}

/** The best few of some mends. */
function nearest(mends: readonly Mend[]): Mend[] {
  return [...mends].sort((a, b) => a.newly.length - b.newly.length || a.size - b.size).slice(0, SECOND.mends);
}

function bestOf(mends: readonly Mend[]): Mend | undefined {
  return mends.reduce<Mend | undefined>((best, mend) => (beats(mend, best) ? mend : best), undefined);
}

/** Mends that also keep the first of what one of them breaks. */
function seconds(trial: Trial, mend: Mend, best: Mend | undefined): Mend[] {
  const [first] = mend.newly.filter(({verdict}) => verdict === "fails");
  if (!first) return [];
  return through(trial, namedBy(first, trial.catalog).flatMap(({ways}) => ways?.(mend.design) ?? []), best);
}

/** What each of the ways comes to, small ones first: none is followed beyond the smallest that breaks nothing. */
function through(trial: Trial, ways: readonly Way[], known: Mend | undefined): Mend[] {
  const near = ways.map((way) => ({way, size: firstSize(trial, way)})).sort((a, b) => a.size - b.size);
  const found: Mend[] = [];
  let best = known;
  for (const {way} of near) {
    const mend = along(trial, way, best);
    if (!mend) continue;
    found.push(mend);
    if (beats(mend, best)) best = mend;
  }
  return found;
}

function firstSize(trial: Trial, way: Way): number {
  const first = way.at(1);
  return first ? trial.sizeOf(first) : Infinity;
}

/** The nearest step of a way with which the check holds and the fewest others newly fail. */
function along(trial: Trial, way: Way, best: Mend | undefined): Mend | undefined {
  const most = best && clean(best) ? best.size : Infinity;
  const sized = (step: number) => {
    const design = way.at(step);
    return design && trial.sizeOf(design) < most ? design : undefined;
  };
  const at = (step: number): Mend | undefined => {
    const design = trial.tried < MOST_TRIED ? sized(step) : undefined;
    return design && trial.at(design);
  };
  let found: {readonly step: number; readonly mend: Mend; readonly after: number} | undefined;
  let before = 0;
  const look = (step: number) => {
    const mend = at(step);
    if (mend && (!found || mend.newly.length < found.mend.newly.length)) found = {step, mend, after: before};
    before = step;
  };
  for (const step of outward(way)) {
    // Nothing larger than what is known to do is of use: the last step below it is looked at, and no farther one.
    const within = most === Infinity || sized(step) ? step : lastWithin(before, step, sized);
    if (within > before) look(within);
    if (within < step || clean(found?.mend)) break;
  }
  if (!found || (best && found.mend.newly.length > best.newly.length)) return found?.mend;
  let {step: high, after: low, mend} = found;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const nearer = at(middle);
    if (nearer && nearer.newly.length <= mend.newly.length) [high, mend] = [middle, nearer];
    else low = middle;
  }
  return mend;
}

/** The last step after one and before another that some condition lets pass; the first where none does. */
function lastWithin(from: number, to: number, passes: (step: number) => unknown): number {
  let [low, high] = [from, to];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (passes(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** A mend of several changes without those that it can do without, and each other no farther than it must go beside the rest. */
function leaner(trial: Trial, mend: Mend): Mend {
  if (mend.changes.length < 2) return mend;
  let best = mend;
  for (const {path, from} of mend.changes) {
    if (best.changes.length < 2 || trial.tried >= MOST_TRIED) break;
    const without = made(best.design, {[path]: from});
    const found = without && trial.at(without);
    if (found && beats(found, best)) best = found;
  }
  for (const {path, from, to} of best.changes) {
    const before = typeof to === "number" ? made(best.design, {[path]: from}) : undefined;
    for (const way of before ? numberWay(before, path, to as number) : []) best = nearestOn(trial, way, best);
  }
  return best;
}

/** The nearest step of a way that does as well as its last. */
function nearestOn(trial: Trial, way: Way, last: Mend): Mend {
  let best = last;
  for (let low = 0, high = way.steps; high - low > 1 && trial.tried < MOST_TRIED;) {
    const middle = Math.floor((low + high) / 2);
    const design = way.at(middle);
    const found = design && trial.at(design);
    if (found && found.newly.length <= best.newly.length) [high, best] = [middle, found];
    else low = middle;
  }
  return best;
}
