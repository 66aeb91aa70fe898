import {requireChoice, requireNumber, type NumberRule} from "../check.js";
import {InputError} from "../errors.js";
import {steps} from "./brief.js";

/** A range of spans, ft. */
export interface SpanRange {
  readonly fromFt: number;
  readonly toFt: number;
}

/** How far apart the spans of a map of bays may be, ft. */
export const BAY_STEPS_FT = [4, 2, 1] as const;
export type BayStepFt = (typeof BAY_STEPS_FT)[number];

/** The part of all bays that a map shows, and how finely. */
export interface BayWindow {
  readonly deckFt: SpanRange;
  readonly beamFt: SpanRange;
  readonly byFt: BayStepFt;
}

/** All deck spans and beam spans that are tried, every 4 ft. */
export const ALL_BAYS: BayWindow = {deckFt: {fromFt: 20, toFt: 100}, beamFt: {fromFt: 20, toFt: 60}, byFt: 4};

/** Most spans of one direction that a map shows: more cells could not be read. */
const MOST_SPANS = 41;
/** How many steps a closer look reaches to each side of a place. */
const AROUND = 4;

type End = "deckFt.fromFt" | "deckFt.toFt" | "beamFt.fromFt" | "beamFt.toFt";

const LABELS: Readonly<Record<End, string>> = {"deckFt.fromFt": "shortest deck span", "deckFt.toFt": "longest deck span", "beamFt.fromFt": "shortest beam span", "beamFt.toFt": "longest beam span"};

/** What one end of a range may be, in whole feet. */
export function bayRule(end: End): NumberRule {
  const {fromFt, toFt} = end.startsWith("deck") ? ALL_BAYS.deckFt : ALL_BAYS.beamFt;
  return {path: end, label: LABELS[end], unit: "ft", min: fromFt, max: toFt, integer: true};
}

/**
 * A window that a map can show.
 *
 * @throws InputError where an end is no whole number of feet in its range, a range ends before it begins, a step is not
 *   one of {@link BAY_STEPS_FT}, or there are more spans than a map shows
 */
export function bayWindow(window: BayWindow): BayWindow {
  requireChoice(String(window.byFt), {path: "byFt", label: "step of the map", choices: BAY_STEPS_FT.map(String)});
  for (const [name, {fromFt, toFt}] of [["deckFt", window.deckFt], ["beamFt", window.beamFt]] as const) {
    requireNumber(fromFt, bayRule(`${name}.fromFt`));
    requireNumber(toFt, bayRule(`${name}.toFt`));
    const label = LABELS[`${name}.toFt`];
    if (toFt < fromFt) throw new InputError({path: `${name}.toFt`, label, value: toFt, unit: "ft", allowed: `${fromFt} ft and more: the range begins there`});
    const mostFt = fromFt + (MOST_SPANS - 1) * window.byFt;
    if (toFt > mostFt) throw new InputError({path: `${name}.toFt`, label, value: toFt, unit: "ft", allowed: `${fromFt} to ${mostFt} ft where a span is tried every ${window.byFt} ft`});
  }
  return window;
}

/** Spans of a window, ft; the last may fall short of the range's end by less than a step. */
export function spansIn({deckFt, beamFt, byFt}: BayWindow): {readonly spansFt: number[]; readonly beamSpansFt: number[]} {
  const of = ({fromFt, toFt}: SpanRange) => steps({from: fromFt, to: toFt, by: byFt});
  return {spansFt: of(deckFt), beamSpansFt: of(beamFt)};
}

/** A closer look at one place: four steps to each side of it, as far as bays go. */
export function bayAround(deckFt: number, beamFt: number, byFt: BayStepFt): BayWindow {
  const around = (at: number, {fromFt, toFt}: SpanRange): SpanRange => {
    const middle = Math.min(toFt, Math.max(fromFt, Math.round(at)));
    // Whole steps from the middle, so that the place itself is one of the spans.
    const before = Math.min(AROUND, Math.floor((middle - fromFt) / byFt));
    const after = Math.min(AROUND, Math.floor((toFt - middle) / byFt));
    return {fromFt: middle - before * byFt, toFt: middle + after * byFt};
  };
  return {deckFt: around(deckFt, ALL_BAYS.deckFt), beamFt: around(beamFt, ALL_BAYS.beamFt), byFt};
}

/** The next finer step; undefined for the finest. */
export function finer(byFt: BayStepFt): BayStepFt | undefined {
  return BAY_STEPS_FT[BAY_STEPS_FT.indexOf(byFt) + 1];
}

/** Whether a map can show all spans of a window. */
export function fitsMap({deckFt, beamFt, byFt}: BayWindow): boolean {
  return [deckFt, beamFt].every(({fromFt, toFt}) => toFt - fromFt <= (MOST_SPANS - 1) * byFt);
}

/**
 * A window by its own step, or by the next coarser one by which a map can show all of it.
 *
 * @throws InputError where it is no window; see {@link bayWindow}
 */
export function bayFitting(window: BayWindow): BayWindow {
  const byFt = [...BAY_STEPS_FT].reverse().find((step) => step >= window.byFt && fitsMap({...window, byFt: step}));
  return bayWindow({...window, byFt: byFt ?? window.byFt});
}

/** A closer look at the part that was marked out on a map: by the next finer step where a map can show all of it so. */
export function bayCloser({byFt}: BayWindow, deckFt: SpanRange, beamFt: SpanRange): BayWindow {
  return bayFitting({deckFt, beamFt, byFt: finer(byFt) ?? byFt});
}

/** Whether a window is all bays. */
export function isAllBays({deckFt, beamFt, byFt}: BayWindow): boolean {
  return byFt === ALL_BAYS.byFt && [[deckFt, ALL_BAYS.deckFt], [beamFt, ALL_BAYS.beamFt]].every(([a, b]) => a?.fromFt === b?.fromFt && a?.toFt === b?.toFt);
}
