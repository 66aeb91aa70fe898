import * as Plot from "@observablehq/plot";
import {governingRuns, type GoverningRun, type Reach} from "../../lib/deck/reach.js";
import {LIMITS} from "../../lib/deck/limits.js";
import type {SafeLoad} from "../../lib/deck/safeLoad.js";
import {decimals, feetText} from "../../lib/units.js";
import {textWidth} from "../../components/drawings/placement.js";
import {lights} from "../../components/charts/lights.js";
import {limitPart} from "../../components/drawings/parts.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {reachWords} from "../../components/charts/reachWords.js";
import {LEAST_WIDTH_PX, beyondCurve, ledLabels, type ChartPoint, type LedLabel} from "../../components/charts/marks.js";

/** One deck's safe load over the spans. */
export interface SpanCurve {
  readonly id: string;
  /** Whether it is the open design's. */
  readonly own: boolean;
  readonly cells: readonly SafeLoad[];
  /** What the floor requires of a deck of its width, psf: live load is reduced by the area that a piece carries. */
  readonly askedPsf: number;
  /** How far it carries that; undefined where it does over no span. */
  readonly reach: Reach | undefined;
}

/** What {@link spanLoadChart} draws. */
export interface SpanLoadData {
  readonly curves: readonly SpanCurve[];
  readonly spanFt: number;
  readonly demandPsf: number;
  /** What the design's own deck carries at its span, psf. */
  readonly safePsf: number;
  readonly spansFt: readonly [number, number];
  readonly mostPsf: number;
}

const MARGIN = {left: 44, top: 26, right: 8, bottom: 40} as const;

type Row = {readonly spanFt: number; readonly psf: number; readonly run: string};

/** Safe superimposed load by span, the floor's load across it, and what governs along each curve. */
export function spanLoadChart(data: SpanLoadData, widthPx: number): SVGSVGElement | HTMLElement {
  const {curves, spanFt, demandPsf, safePsf, spansFt, mostPsf} = data;
  const narrow = widthPx < 480;
  const own = curves.find((curve) => curve.own);
  const ownPoints = (own?.cells ?? []).map((cell): ChartPoint => [cell.spanFt, cell.safeLoadPsf]);
  // A page tells its width only once it is laid out.
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const height = Math.min(460, Math.max(340, widthPx * 0.62));
  const label = (text: string, at: ChartPoint, options: Plot.TextOptions) =>
    Plot.text([at], {x: "0", y: "1", text: () => text, fill: "var(--ink)", stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5, ...options});
  return Plot.plot({
    width, height, marginLeft: MARGIN.left, marginTop: MARGIN.top, marginRight: MARGIN.right, marginBottom: MARGIN.bottom,
    x: {label: "span, ft", domain: spansFt, ticks: narrow ? 5 : 10, grid: true},
    y: {label: "safe superimposed load, psf", domain: [0, mostPsf], ticks: 6, grid: true},
    marks: [
      beyondCurve(ownPoints, "var(--edge)"),
      Plot.line(ownPoints, {x: "0", y: "1", stroke: "var(--accent)", strokeOpacity: 0.22, strokeWidth: 9, clip: true}),
      ...governedLines(curves),
      Plot.ruleY([demandPsf], {stroke: "var(--load)", strokeWidth: 1.6}),
      label(`this floor needs ${decimals(demandPsf)} psf`, [spansFt[1], demandPsf], {textAnchor: "end", dx: -2, dy: -9, fill: "var(--load)"}),
      Plot.ruleX([spanFt], {y1: 0, y2: Math.min(mostPsf, Math.max(safePsf, demandPsf)), stroke: "var(--accent)", strokeWidth: 1.4}),
      Plot.dot([[spanFt, demandPsf]], {x: "0", y: "1", r: 6, fill: "var(--accent)", stroke: "var(--paper)", strokeWidth: 1.5}),
      label(feetText(spanFt), [spanFt, 0], {dy: -9, dx: -5, textAnchor: "end", fill: "var(--accent)", fontWeight: 600}),
      letters(own ? governingRuns(own.cells) : [], data, [(width - MARGIN.left - MARGIN.right) / (spansFt[1] - spansFt[0]), (height - MARGIN.top - MARGIN.bottom) / mostPsf]),
      ledLabels(curves.flatMap((curve): LedLabel[] => (curve.reach === undefined ? [] : [{
        at: [curve.reach.longestFt, curve.askedPsf], own: curve.own,
        text: narrow ? `${curve.id}` : `${curve.id} reaches ${reachWords(curve.reach.longestFt)} ft${otherLoad(curve, demandPsf)}`,
      }])), (text) => textWidth(text, 12.5) * 1.02),
    ],
  });
}

/** What is asked of a deck, where that is not what is asked of the design's own. */
function otherLoad({askedPsf}: SpanCurve, demandPsf: number): string {
  const asked = decimals(askedPsf);
  return asked === decimals(demandPsf) ? "" : ` under ${asked} psf`;
}

/** The curves in stretches of one limit; one mark for all stretches of a limit keeps the chart quick. */
function governedLines(curves: readonly SpanCurve[]): Plot.Markish[] {
  const rows = new Map<string, Row[]>();
  for (const curve of curves) {
    governingRuns(curve.cells).forEach(({governs, cells}, index) => {
      const key = `${governs}|${curve.own}`;
      const list = rows.get(key) ?? [];
      list.push(...cells.map((cell) => ({spanFt: cell.spanFt, psf: cell.safeLoadPsf, run: `${curve.id} ${index}`})));
      rows.set(key, list);
    });
  }
  return [false, true].flatMap((own) => LIMITS.flatMap((limit) => {
    const list = rows.get(`${limit}|${own}`);
    const look = LIMIT_LOOKS[limit];
    return list ? [Plot.line(list, {
      x: "spanFt", y: "psf", z: "run", stroke: look.color, strokeDasharray: look.dash,
      strokeWidth: own ? 2.6 : 1.3, strokeOpacity: own ? 1 : 0.75, clip: true, ...(own ? lights(limitPart(limit)) : {}),
    })] : [];
  }));
}

/** Where a letter stands from its point of the curve, and how near to it other lines may come, px. */
const LETTER = {left: 11, down: 9, room: 11} as const;
/** Where along its stretch a letter is tried, from the best place on. */
const PLACES = [0.4, 0.5, 0.3, 0.6, 0.2, 0.7, 0.8, 0.1] as const;

/** The letter of each limit near the middle of its stretch of the design's own curve, clear of the leaders and the load's line. */
function letters(runs: readonly GoverningRun[], {curves, spanFt, demandPsf, mostPsf}: SpanLoadData, [pxPerFt, pxPerPsf]: readonly [number, number]): Plot.Markish {
  const leaders = curves.flatMap(({reach, askedPsf}) => (reach ? [{ft: reach.longestFt, low: askedPsf, high: Infinity}] : []));
  const uprights = [...leaders, {ft: spanFt, low: -Infinity, high: demandPsf}];
  const clear = (cell: SafeLoad) => {
    const [ft, psf] = [cell.spanFt - LETTER.left / pxPerFt, cell.safeLoadPsf - LETTER.down / pxPerPsf];
    const slack = LETTER.room / pxPerPsf;
    return Math.abs(psf - demandPsf) > slack
      && uprights.every((line) => Math.abs(ft - line.ft) * pxPerFt > LETTER.room || psf < line.low - slack || psf > line.high + slack);
  };
  const spots = runs.flatMap(({governs, cells}) => {
    const seen = cells.filter((cell) => cell.safeLoadPsf < mostPsf * 0.96 && cell.safeLoadPsf > 0);
    const tried = PLACES.flatMap((share) => seen[Math.floor(seen.length * share)] ?? []);
    const best = tried.find(clear) ?? tried[0];
    return best ? [{spanFt: best.spanFt, psf: best.safeLoadPsf, look: LIMIT_LOOKS[governs]}] : [];
  });
  return Plot.text(spots, {
    x: "spanFt", y: "psf", text: (spot) => spot.look.letter, fill: (spot) => spot.look.color, stroke: "var(--paper)",
    strokeWidth: 5, fontSize: 14, fontWeight: 600, dx: -LETTER.left, dy: LETTER.down,
  });
}
