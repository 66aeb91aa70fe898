import * as Plot from "@observablehq/plot";
import {JACKING_STRESS_KSI} from "../../lib/prestress/losses.js";
import type {ByCause, SectionAtTime} from "../../lib/prestress/timeStep.js";
import {decimals} from "../../lib/units.js";
import {LOSS_COLORS, lossPart} from "./losses.js";
import {lights} from "../../components/charts/lights.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";
import {edgeNames, eventLines, timeAxis, type TimeEvent} from "../../components/charts/timeAxis.js";

/** The causes from the jacking stress downward; what comes last lies next to what is left. */
const CAUSES: readonly {readonly cause: keyof ByCause; readonly name: keyof typeof LOSS_COLORS}[] = [
  {cause: "elastic", name: "shortening"}, {cause: "creep", name: "creep"}, {cause: "shrinkage", name: "shrinkage"}, {cause: "relaxation", name: "relaxation"},
];

type Point = {readonly day: number; readonly from: number; readonly to: number};

/** The stress in the strands from release to the end, what each cause has taken of the jacking stress, and where the component method ends. */
export function lossesOverTimeChart(history: readonly SectionAtTime[], events: readonly TimeEvent[], componentKsi: number, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const bands = CAUSES.map(({cause, name}, i) => ({
    name, cause, points: history.map(({day, lostKsi}): Point => {
      const above = CAUSES.slice(0, i).reduce((sum, other) => sum + lostKsi[other.cause], 0);
      return {day, from: JACKING_STRESS_KSI - above, to: JACKING_STRESS_KSI - above - lostKsi[cause]};
    }),
  }));
  const last = history.at(-1) as SectionAtTime;
  const least = Math.min(componentKsi, ...history.map((row) => row.stressKsi));
  const floor = Math.floor((least - 8) / 10) * 10;
  const first = events[0]?.day ?? 1;
  const chart = Plot.plot({
    width, height: Math.min(360, Math.max(326, width * 0.58)), marginLeft: 44, marginTop: 60, marginBottom: 40, marginRight: width < 480 ? 112 : 118,
    x: timeAxis(events),
    y: {label: null, domain: [floor, JACKING_STRESS_KSI], grid: true, ticks: 6},
    marks: [
      ...bands.map(({name, points}) => Plot.areaY(points, {x: "day", y1: "to", y2: "from", fill: LOSS_COLORS[name], fillOpacity: 0.6, ...lights(lossPart(name))})),
      ...bands.slice(0, -1).map(({points}) => Plot.line(points, {x: "day", y: "to", stroke: "var(--paper)", strokeWidth: 1})),
      eventLines(events),
      Plot.ruleY([componentKsi], {stroke: "var(--accent)", strokeWidth: 1.8, strokeDasharray: "7 3"}),
      Plot.line(history, {x: "day", y: "stressKsi", stroke: "var(--steel)", strokeWidth: 2.6, ...lights("strand")}),
      Plot.dot(history.filter((row) => row.moment), {x: "day", y: "stressKsi", r: 3.4, fill: "var(--steel)", stroke: "var(--paper)"}),
      Plot.text([[first, JACKING_STRESS_KSI]], {x: "0", y: "1", frameAnchor: "top", text: () => "stress in the strands, ksi", textAnchor: "start", dx: -40, dy: -54, fill: "var(--ink)"}),
      edgeNames([
        ...bands.map(({name, cause, points}) => ({text: `${name} \u2212${decimals(last.lostKsi[cause], 1)}`, at: ((points.at(-1)?.from ?? 0) + (points.at(-1)?.to ?? 0)) / 2, color: "var(--ink)"})),
        {text: `left ${decimals(last.stressKsi, 1)}`, at: last.stressKsi, color: "var(--steel)", bold: true},
        {text: `component ${decimals(componentKsi, 1)}`, at: componentKsi, color: "var(--accent)", bold: true},
      ], "ksi"),
    ],
  });
  // Its heading stands above the frame and is no axis's label.
  chart.dataset["yUnit"] = "ksi";
  return chart;
}
