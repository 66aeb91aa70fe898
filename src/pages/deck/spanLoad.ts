import * as Plot from "@observablehq/plot";
import {governingRuns, type GoverningRun, type Reach} from "../../lib/deck/reach.js";
import {LIMITS} from "../../lib/deck/limits.js";
import type {SafeLoad} from "../../lib/deck/safeLoad.js";
import {decimals, feetText} from "../../lib/units.js";
import {textWidth} from "../../components/drawings/placement.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {reachWords} from "../../components/charts/reachWords.js";
import {LEAST_WIDTH_PX, beyondCurve, ledLabels, type ChartPoint, type LedLabel} from "../../components/charts/marks.js";

/** One deck's safe load over the spans. */
export interface SpanCurve {
  readonly id: string;
  /** Whether it is the open design's. */
  readonly own: boolean;
  readonly cells: readonly SafeLoad[];
  /** What the floor asks of a deck of its width, psf: live load is reduced by the area that a piece carries. */
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

type Row = {readonly spanFt: number; readonly psf: number; readonly run: string};

/** Safe superimposed load by span, the floor's load across it, and what governs along each curve. */
export function spanLoadChart(data: SpanLoadData, widthPx: number): SVGSVGElement | HTMLElement {
  const {curves, spanFt, demandPsf, safePsf, spansFt, mostPsf} = data;
  const narrow = widthPx < 480;
  const own = curves.find((curve) => curve.own);
  const ownPoints = (own?.cells ?? []).map((cell): ChartPoint => [cell.spanFt, cell.safeLoadPsf]);
  const label = (text: string, at: ChartPoint, options: Plot.TextOptions) =>
    Plot.text([at], {x: "0", y: "1", text: () => text, stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5, ...options});
  return Plot.plot({
    // A page tells its width only once it is laid out.
    width: Math.max(LEAST_WIDTH_PX, widthPx), height: Math.min(460, Math.max(340, widthPx * 0.62)), marginLeft: 44, marginTop: 26, marginRight: 8, marginBottom: 40,
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
      letters(own ? governingRuns(own.cells) : [], mostPsf),
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
      strokeWidth: own ? 2.6 : 1.3, strokeOpacity: own ? 1 : 0.75, clip: true,
    })] : [];
  }));
}

/** The letter of each limit in the middle of its stretch of the design's own curve. */
function letters(runs: readonly GoverningRun[], mostPsf: number): Plot.Markish {
  const spots = runs.flatMap(({governs, cells}) => {
    const seen = cells.filter((cell) => cell.safeLoadPsf < mostPsf * 0.96 && cell.safeLoadPsf > 0);
    const middle = seen[Math.floor(seen.length * 0.4)];
    return middle ? [{spanFt: middle.spanFt, psf: middle.safeLoadPsf, look: LIMIT_LOOKS[governs]}] : [];
  });
  return Plot.text(spots, {
    x: "spanFt", y: "psf", text: (spot) => spot.look.letter, fill: (spot) => spot.look.color, stroke: "var(--paper)",
    strokeWidth: 5, fontSize: 14, fontWeight: 600, dx: -11, dy: 9,
  });
}
