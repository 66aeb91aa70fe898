import type {Dimensions, ScaleFunctions} from "@observablehq/plot";
import {svgElement, uniqueId} from "../dom.js";

/** Below this a chart has no room for its own margins, px. */
export const LEAST_WIDTH_PX = 240;

/** A point of a chart in its own units. */
export type ChartPoint = readonly [x: number, y: number];

/** What draws itself into a chart's frame; the plotting library calls it with the scales. */
export type FrameMark = (index: unknown, scales: ScaleFunctions, channels: unknown, dimensions: Dimensions) => SVGElement | null;

type Scale = (value: number) => number;

/** Maps a point to the paper. */
export function place(scales: ScaleFunctions, [x, y]: ChartPoint): [number, number] {
  return [(scales.x as Scale)(x), (scales.y as Scale)(y)];
}

/** Width of the band of short strokes beside a limit, px, their distance, and how far they lean. */
const BAND_PX = 9;
const STROKE_STEP_PX = 6;
const LEAN = 0.5;

/** Short strokes on the far side of a limiting curve, as a drafter marks ground: what lies there cannot be had. */
export function beyondCurve(points: readonly ChartPoint[], color: string): FrameMark {
  return (_index, scales, _channels, {width, height, marginTop, marginRight, marginBottom, marginLeft}) => {
    if (points.length < 2) return null;
    const clip = uniqueId("beyond");
    const strokes: string[] = [];
    const on = points.map((point) => place(scales, point));
    let walked = 0;
    for (let i = 1; i < on.length; i++) {
      const [[x0, y0], [x1, y1]] = [on[i - 1] as [number, number], on[i] as [number, number]];
      const length = Math.hypot(x1 - x0, y1 - y0);
      // Strokes stand to the right of a curve that falls to the right.
      for (let along = STROKE_STEP_PX - (walked % STROKE_STEP_PX); along < length; along += STROKE_STEP_PX) {
        const [ux, uy] = [(x1 - x0) / length, (y1 - y0) / length];
        const [x, y] = [x0 + ux * along, y0 + uy * along];
        strokes.push(`M${x.toFixed(1)} ${y.toFixed(1)}l${((uy + LEAN * ux) * BAND_PX).toFixed(1)} ${((LEAN * uy - ux) * BAND_PX).toFixed(1)}`);
      }
      walked += length;
    }
    return svgElement(
      "g",
      {},
      svgElement("clipPath", {id: clip}, svgElement("rect", {x: marginLeft, y: marginTop, width: Math.max(0, width - marginLeft - marginRight), height: Math.max(0, height - marginTop - marginBottom)})),
      svgElement("path", {d: strokes.join(""), fill: "none", stroke: color, "stroke-width": 1, "clip-path": `url(#${clip})`}),
    );
  };
}

/** A name led to a point of a chart. */
export interface LedLabel {
  readonly at: ChartPoint;
  readonly text: string;
  /** Printed in the accent's weight. */
  readonly own?: boolean;
}

const ROW_PX = 18;

/**
 * Names of points of one height, stacked in the free corner above and right of them. Each is led up and across; the
 * leftmost point has the topmost name, so that leaders never cross.
 */
export function ledLabels(labels: readonly LedLabel[], textWidth: (text: string) => number): FrameMark {
  return (_index, scales, _channels, {width, marginTop, marginRight}) => {
    const placed = labels.map((label) => ({...label, spot: place(scales, label.at)})).sort((a, b) => a.spot[0] - b.spot[0]);
    const widest = Math.max(0, ...placed.map(({text}) => textWidth(text)));
    const rightmost = Math.max(0, ...placed.map(({spot}) => spot[0]));
    const column = Math.min(rightmost + 16, width - marginRight - widest);
    const group = svgElement("g", {"font-size": 12.5, "text-anchor": "start"});
    placed.forEach(({text, own, spot: [x, y]}, row) => {
      const at = marginTop + 12 + row * ROW_PX;
      // A name that would leave the picture stands left of its leader.
      const back = Math.max(column, x + 8) + textWidth(text) > width;
      const across = back ? x - 6 : Math.max(column, x + 8);
      group.append(
        svgElement("path", {d: `M${x} ${y}V${at}H${back ? x - 2 : across - 4}`, fill: "none", stroke: own ? "var(--accent)" : "var(--edge)", "stroke-width": own ? 1.4 : 1}),
        svgElement("circle", {cx: x, cy: y, r: own ? 3.5 : 2.6, fill: own ? "var(--accent)" : "var(--ink-soft)"}),
        svgElement("text", {
          x: across, y: at, dy: "0.35em", "text-anchor": back ? "end" : "start", fill: own ? "var(--accent)" : "var(--ink)", "font-weight": own ? 600 : 400,
          stroke: "var(--paper)", "stroke-width": 4, "paint-order": "stroke", "stroke-linejoin": "round",
        }, text),
      );
    });
    return group;
  };
}
