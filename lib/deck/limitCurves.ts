import type {Member} from "../member/member.js";
import type {Criteria} from "./criteria.js";
import {failedGates} from "./gates.js";
import {GATES, LIMITS, LOAD_LIMITS, type LimitName} from "./limits.js";
import {safeLoad, type Limits} from "./safeLoad.js";

/** Every limit on a member over the span, whether or not the criteria count it. */
export interface LimitCurves {
  /** At each span the superimposed load that each limit on the load allows, psf; as in a safe load. */
  readonly cells: readonly LimitCell[];
  /** The stretches of span over which a gate is not passed. */
  readonly gates: readonly GateStretch[];
}

/** The limits on the load at one span. */
export interface LimitCell {
  readonly spanFt: number;
  readonly limitsPsf: Limits;
}

/** A stretch of span over which a gate is not passed. */
export interface GateStretch {
  readonly name: LimitName;
  readonly fromFt: number;
  readonly toFt: number;
}

/**
 * Every limit on a member at the given spans: all limits on the load, and where gates are not passed.
 *
 * @param spansFt - rising
 * @throws InputError if a span is out of range
 */
export function limitCurves(member: Member, criteria: Criteria, spansFt: readonly number[]): LimitCurves {
  const loads: Criteria = {...criteria, limits: LOAD_LIMITS};
  const cells = spansFt.map((spanFt): LimitCell => ({spanFt, limitsPsf: safeLoad(member, spanFt, loads).limitsPsf}));
  const failed = spansFt.map((spanFt) => failedGates(member, spanFt, {...criteria, limits: GATES}));
  return {cells, gates: GATES.flatMap((name) => gateStretches(name, spansFt, failed.map((names) => names.includes(name))))};
}

/** Runs of spans at which a gate fails; each reaches half-way to the spans beside it, where it is not known. */
function gateStretches(name: LimitName, spansFt: readonly number[], fails: readonly boolean[]): GateStretch[] {
  const found: GateStretch[] = [];
  let start: number | undefined;
  const between = (i: number) => ((spansFt[i - 1] ?? (spansFt[i] as number)) + (spansFt[i] ?? (spansFt[i - 1] as number))) / 2;
  for (let i = 0; i <= spansFt.length; i++) {
    if (fails[i] && start === undefined) start = between(i);
    if (!fails[i] && start !== undefined) {
      found.push({name, fromFt: start, toFt: between(i)});
      start = undefined;
    }
  }
  return found;
}

/** The least of some limits at a span. */
export interface EnvelopePoint extends LimitCell {
  readonly governs: LimitName;
  /** Never below 0, psf. */
  readonly safeLoadPsf: number;
}

/** The least of the limits that are chosen, at each span; spans at which none of them bounds the load are left out. */
export function envelope(cells: readonly LimitCell[], chosen: readonly LimitName[]): EnvelopePoint[] {
  return cells.flatMap(({spanFt, limitsPsf}) => {
    const [least] = rankedLimits(limitsPsf).filter(({name}) => chosen.includes(name));
    return least ? [{spanFt, limitsPsf, governs: least.name, safeLoadPsf: Math.max(0, least.psf)}] : [];
  });
}

/** A limit with the load that it allows, psf. */
export interface RankedLimit {
  readonly name: LimitName;
  readonly psf: number;
}

/** The limits that bound the load, the lowest first. */
export function rankedLimits(limitsPsf: Limits): RankedLimit[] {
  return LIMITS.flatMap((name) => {
    const psf = limitsPsf[name];
    return psf === undefined ? [] : [{name, psf}];
  }).sort((a, b) => a.psf - b.psf);
}

/** A stretch of span that one limit governs. */
export interface GoverningStretch {
  readonly governs: LimitName;
  readonly fromFt: number;
  readonly toFt: number;
}

/**
 * The stretches of an envelope that one limit governs, each ending where the curves of two limits cross (by straight
 * lines between the given spans) or, where a limit sets in with a jump, half-way between them.
 */
export function governingStretches(points: readonly EnvelopePoint[]): GoverningStretch[] {
  const found: GoverningStretch[] = [];
  points.forEach((point, i) => {
    const before = points[i - 1];
    const last = found.at(-1);
    if (last?.governs === point.governs) {
      found[found.length - 1] = {...last, toFt: point.spanFt};
      return;
    }
    const turnFt = before ? crossingFt(before, point) : point.spanFt;
    if (last) found[found.length - 1] = {...last, toFt: turnFt};
    found.push({governs: point.governs, fromFt: turnFt, toFt: point.spanFt});
  });
  return found;
}

function crossingFt(from: EnvelopePoint, to: EnvelopePoint): number {
  const lead = ({limitsPsf}: EnvelopePoint) => {
    const [first, second] = [limitsPsf[from.governs], limitsPsf[to.governs]];
    return first === undefined || second === undefined ? undefined : second - first;
  };
  const [before, after] = [lead(from), lead(to)];
  if (before === undefined || after === undefined || before === after) return (from.spanFt + to.spanFt) / 2;
  return from.spanFt + ((to.spanFt - from.spanFt) * before) / (before - after);
}
