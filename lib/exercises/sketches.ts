import {camberOverTime} from "../deck/overTime.js";
import {SPAN_RANGE_FT, safeLoad} from "../deck/safeLoad.js";
import type {Evaluation} from "../evaluate.js";
import {girderDiagrams} from "../girder/diagrams.js";
import {USUAL_SCHEDULE} from "../prestress/schedule.js";
import {roundAbove, curveValueAt} from "./sketch.js";

/** A curve that the reader draws before the true one appears. */
export interface Sketch {
  /** The page that asks it. */
  readonly page: string;
  readonly question: string;
  /** What runs along the axis, and what its places are called: "30 ft". */
  readonly along: string;
  /** What is drawn, and its unit. */
  readonly what: string;
  readonly unit: string;
  /** Digits behind the point of a value. */
  readonly places: number;
  /** The true curve at its places along the axis; undefined where the design has none. */
  readonly curve: (evaluation: Evaluation) => SketchCurve | undefined;
}

/** The true curve at some places that stand evenly along the axis. */
export interface SketchCurve {
  readonly at: readonly string[];
  readonly values: readonly number[];
  /** Ends of the axis of values; the upper one does not tell how high the curve goes. */
  readonly least: number;
  readonly most: number;
}

/** How many places a curve is drawn at. */
const PLACES = 9;
const SHARES = Array.from({length: PLACES}, (_, i) => i / (PLACES - 1));

const curveOf = (at: readonly string[], values: readonly number[]): SketchCurve => {
  const [low, high] = [Math.min(0, ...values), Math.max(...values)];
  return {at, values, least: low < 0 ? -roundAbove(-low) : 0, most: roundAbove(high)};
};

/** Curves to be drawn, each on the page of its chart. */
export const SKETCHES = {
  loadOverSpan: {
    page: "deck", question: "Draw how the safe load of this very piece changes with its span.", along: "span", what: "safe load", unit: "psf", places: 0,
    curve: ({member, deck, design}) => {
      const step = Math.max(1, Math.round(design.bay.spanFt / 10));
      const from = Math.max(SPAN_RANGE_FT.min, Math.min(Math.round(0.6 * design.bay.spanFt), SPAN_RANGE_FT.max - (PLACES - 1) * step));
      const spans = SHARES.map((_, i) => from + i * step);
      return curveOf(spans.map((spanFt) => `${spanFt} ft`), spans.map((spanFt) => safeLoad(member, spanFt, deck.criteria).safeLoadPsf));
    },
  },
  camberThroughTime: {
    page: "camber", question: "Draw the camber at midspan from the day the strands are cut to fifty years later.", along: "age, each place several times the one before", what: "camber", unit: "in", places: 2,
    curve: (evaluation) => {
      const {history} = camberOverTime(evaluation, USUAL_SCHEDULE);
      const logs = history.map(({day, camberIn}) => [Math.log(day), camberIn] as const);
      const [first, last] = [logs[0]?.[0] ?? 0, logs.at(-1)?.[0] ?? 1];
      const places = SHARES.map((share) => first + share * (last - first));
      return curveOf(places.map((place) => ageText(Math.exp(place))), places.map((place) => curveValueAt(logs, place)));
    },
  },
  daylightInward: {
    page: "daylight", question: "Draw the daylight factor from the window wall across the floor.", along: "distance from the window wall", what: "daylight factor", unit: "%", places: 1,
    curve: ({daylight}) => {
      if (!daylight) return undefined;
      const points = daylight.result.points.map(({distanceFt, factorPercent}) => [distanceFt, factorPercent] as const);
      const places = SHARES.map((share) => share * daylight.input.depthFt);
      return curveOf(places.map((ft) => `${Math.round(ft)} ft`), places.map((ft) => curveValueAt(points, ft)));
    },
  },
  momentAlongGirder: {
    page: "girder", question: "Draw the bending moment along the girder, from column to column.", along: "place along the span", what: "moment", unit: "kip-ft", places: 0,
    curve: ({girder}) => {
      if (!girder) return undefined;
      const points = girderDiagrams(girder).momentKipFt.map(({share, value}) => [share, value] as const);
      return curveOf(SHARES.map((share) => (share === 0.5 ? "midspan" : `${Number((share * girder.spanFt).toFixed(1))} ft`)), SHARES.map((share) => curveValueAt(points, share)));
    },
  },
} satisfies Record<string, Sketch>;

export type SketchName = keyof typeof SKETCHES;

/** An age as one says it. */
function ageText(days: number): string {
  if (days < 1.5) return "1 day";
  if (days < 60) return `${Math.round(days)} days`;
  if (days < 700) return `${Math.round(days / 30.4)} months`;
  return `${Math.round(days / 365.25)} years`;
}
