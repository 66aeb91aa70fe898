import * as Plot from "@observablehq/plot";
import type {SagCurve, WalkingCurve} from "../../lib/deck/serviceCurves.js";
import {decimals} from "../../lib/units.js";
import {LEAST_WIDTH_PX, beyondCurve, type ChartPoint} from "../../components/charts/marks.js";

const note = (at: ChartPoint, text: string, options: Plot.TextOptions) =>
  Plot.text([at], {x: "0", y: "1", text: () => text, fill: "var(--ink)", stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5, ...options});

/** Sag against live load: two straight stretches that meet where the soffit cracks, what is allowed, and today's load. */
export function sagChart({points, cracks, today, allowedIn}: SagCurve, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const mostPsf = points.at(-1)?.livePsf ?? 0;
  // Past twice the limit the picture tells nothing more, unless today lies there.
  const mostIn = Math.max(1.25 * allowedIn, 1.15 * today.sagIn, Math.min(2 * allowedIn, points.at(-1)?.sagIn ?? 0));
  return Plot.plot({
    width, height: Math.min(340, Math.max(270, width * 0.5)), marginLeft: 44, marginTop: 26, marginBottom: 40, marginRight: 12,
    x: {label: "live load, psf", domain: [0, mostPsf], ticks: 6, grid: true},
    y: {label: "movement at midspan, in", domain: [0, mostIn], ticks: 6, grid: true},
    marks: [
      beyondCurve([[0, allowedIn], [mostPsf, allowedIn]], "var(--edge)"),
      Plot.ruleY([allowedIn], {stroke: "var(--ink)", strokeWidth: 1.6}),
      note([0, allowedIn], `allowed, ${decimals(allowedIn, 2)} in`, {textAnchor: "start", dx: 6, dy: 10, fill: "var(--ink)", fontWeight: 600}),
      Plot.line(points, {x: "livePsf", y: "sagIn", stroke: "var(--accent)", strokeWidth: 2.6, clip: true}),
      ...(cracks && cracks.sagIn < mostIn ? [
        Plot.dot([cracks], {x: "livePsf", y: "sagIn", r: 4, symbol: "diamond2", fill: "var(--paper)", stroke: "var(--ink)", strokeWidth: 1.6}),
        note([cracks.livePsf, cracks.sagIn], `cracks at ${decimals(cracks.livePsf)} psf`, {textAnchor: cracks.livePsf > mostPsf * 0.6 ? "end" : "start", dx: cracks.livePsf > mostPsf * 0.6 ? -9 : 9, dy: cracks.livePsf > mostPsf * 0.6 ? -10 : 12}),
      ] : []),
      Plot.ruleX([today.livePsf], {y1: 0, y2: today.sagIn, stroke: "var(--load)", strokeWidth: 1.6}),
      Plot.dot([today], {x: "livePsf", y: "sagIn", r: 6, fill: "var(--accent)", stroke: "var(--paper)", strokeWidth: 1.5}),
      note([today.livePsf, 0], `${decimals(today.livePsf)} psf live load`, {textAnchor: "start", dx: 6, dy: -9, fill: "var(--load)"}),
    ],
  });
}

/** Acceleration by a walker over the span, with the frequency under each span, what is tolerated, and the design. */
export function walkingChart({points, allowedPercent}: WalkingCurve, here: {readonly spanFt: number; readonly accelerationPercent: number}, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const [from, to] = [points[0]?.spanFt ?? 0, points.at(-1)?.spanFt ?? 1];
  const mostPercent = Math.max(1.3 * allowedPercent, Math.min(2.5 * allowedPercent, 1.15 * Math.max(...points.map((point) => point.accelerationPercent))), 1.15 * here.accelerationPercent);
  const frequency = new Map(points.map((point) => [point.spanFt, point.frequencyHz]));
  const every = width < 480 ? 20 : 10;
  const ticks = points.map(({spanFt}) => spanFt).filter((spanFt) => spanFt % every === 0);
  return Plot.plot({
    width, height: Math.min(340, Math.max(270, width * 0.5)), marginLeft: 50, marginTop: 26, marginBottom: 64, marginRight: 24,
    x: {label: "span, ft, and first natural frequency, Hz", labelOffset: 56, domain: [from, to], ticks, grid: true, tickFormat: (spanFt: number) => `${spanFt} ft\n${decimals(frequency.get(spanFt) ?? 0, 1)} Hz`},
    y: {label: "acceleration, % of gravity", domain: [0, mostPercent], ticks: 6, grid: true},
    marks: [
      beyondCurve([[from, allowedPercent], [to, allowedPercent]], "var(--edge)"),
      Plot.ruleY([allowedPercent], {stroke: "var(--ink)", strokeWidth: 1.6}),
      note([from, allowedPercent], `tolerated, ${decimals(allowedPercent, 1)} %`, {textAnchor: "start", dx: 6, dy: 10, fill: "var(--ink)", fontWeight: 600}),
      Plot.line(points, {x: "spanFt", y: "accelerationPercent", stroke: "var(--accent)", strokeWidth: 2.6, clip: true}),
      Plot.ruleX([here.spanFt], {y1: 0, y2: here.accelerationPercent, stroke: "var(--accent)", strokeWidth: 1.4}),
      Plot.dot([[here.spanFt, here.accelerationPercent]], {x: "0", y: "1", r: 6, fill: "var(--accent)", stroke: "var(--paper)", strokeWidth: 1.5}),
      note([here.spanFt, here.accelerationPercent], "this design", {textAnchor: "end", dx: -9, dy: -10, fill: "var(--accent)", fontWeight: 600}),
    ],
  });
}
