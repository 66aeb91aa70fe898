import * as Plot from "@observablehq/plot";
import type {Camber} from "../../lib/member/camber.js";
import type {CamberAtTime} from "../../lib/member/timeCamber.js";
import {decimals} from "../../lib/units.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";
import {edgeNames, eventLines, timeAxis, type TimeEvent} from "../../components/charts/timeAxis.js";

/** The multiplier method's cambers at the moments that it knows, in. */
export function multiplierPoints(camber: Camber, events: readonly TimeEvent[]): {readonly day: number; readonly camberIn: number}[] {
  const by = {release: camber.releaseIn, erection: camber.erectionIn, topping: camber.toppedIn, loading: undefined, end: camber.longTermIn};
  return events.flatMap(({moment, day}) => (by[moment] === undefined ? [] : [{day, camberIn: by[moment]}]));
}

/** Camber at midspan from release to the end by time steps, with what the multiplier method gives beside it. */
export function camberOverTimeChart(history: readonly CamberAtTime[], events: readonly TimeEvent[], camber: Camber, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const points = multiplierPoints(camber, events);
  const values = [...history, ...points].map((point) => point.camberIn);
  const [least, most] = [Math.min(0, ...values), Math.max(0.25, ...values)];
  const room = (most - least) * 0.1;
  const last = history.at(-1)?.camberIn ?? 0;
  const chart = Plot.plot({
    width, height: Math.min(340, Math.max(306, width * 0.54)), marginLeft: 44, marginTop: 60, marginBottom: 40, marginRight: 118,
    x: timeAxis(events),
    y: {label: null, domain: [least < 0 ? least - room : 0, most + room], grid: true, ticks: 6},
    marks: [
      Plot.ruleY([0], {stroke: "var(--ink)", strokeWidth: 1.2}),
      eventLines(events),
      Plot.line(history, {x: "day", y: "camberIn", stroke: "var(--accent)", strokeWidth: 2.6}),
      Plot.dot(history.filter((row) => row.moment), {x: "day", y: "camberIn", r: 3.2, fill: "var(--accent)", stroke: "var(--paper)"}),
      Plot.dot(points, {x: "day", y: "camberIn", r: 5.5, symbol: "diamond2", fill: "var(--paper)", stroke: "var(--ink)", strokeWidth: 1.8}),
      Plot.text([[events[0]?.day ?? 1, 0]], {x: "0", frameAnchor: "top", text: () => "rise above level at midspan, in", textAnchor: "start", dx: -40, dy: -54, fill: "var(--ink)"}),
      edgeNames([
        {text: `time steps, ${decimals(last, 2)}`, at: last, color: "var(--accent)", bold: true},
        {text: `\u25c7 multipliers, ${decimals(camber.longTermIn, 2)}`, at: camber.longTermIn, color: "var(--ink)"},
      ], "in"),
    ],
  });
  // Its heading stands above the frame and is no axis's label.
  chart.dataset["yUnit"] = "in";
  return chart;
}
