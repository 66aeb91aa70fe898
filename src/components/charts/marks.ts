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
const LABEL_PX = 12.5;

/** A part of the paper that words or lines take up, px. */
export interface Taken {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function overlap(a: Taken, b: Taken): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** A led name on the paper: its point, its row's height, where its text begins or ends, and whether it stands left of its leader. */
interface PlacedLabel extends LedLabel {
  readonly spot: readonly [number, number];
  readonly rowY: number;
  readonly across: number;
  readonly back: boolean;
  readonly widthPx: number;
}

function placeLed(labels: readonly LedLabel[], textWidth: (text: string) => number, scales: ScaleFunctions, {width, marginTop, marginRight}: Dimensions): PlacedLabel[] {
  const placed = labels.map((label) => ({...label, spot: place(scales, label.at), widthPx: textWidth(label.text)})).sort((a, b) => a.spot[0] - b.spot[0]);
  const widest = Math.max(0, ...placed.map(({widthPx}) => widthPx));
  const rightmost = Math.max(0, ...placed.map(({spot}) => spot[0]));
  const column = Math.min(rightmost + 16, width - marginRight - widest);
  return placed.map((label, row) => {
    const [x] = label.spot;
    // A name that would leave the picture stands left of its leader.
    const back = Math.max(column, x + 8) + label.widthPx > width;
    return {...label, rowY: marginTop + 12 + row * ROW_PX, back, across: back ? x - 6 : Math.max(column, x + 8)};
  });
}

/** What {@link ledLabels} takes up, so that other words of the chart can keep off it. */
export function takenByLed(labels: readonly LedLabel[], textWidth: (text: string) => number, scales: ScaleFunctions, dimensions: Dimensions): Taken[] {
  return placeLed(labels, textWidth, scales, dimensions).flatMap(({spot: [x, y], rowY, across, back, widthPx}) => [
    {left: back ? across - widthPx : across, right: back ? across : across + widthPx, top: rowY - ROW_PX / 2, bottom: rowY + ROW_PX / 2},
    {left: x - 1, right: x + 1, top: rowY, bottom: y},
    {left: Math.min(x, across), right: Math.max(x, across), top: rowY - 1, bottom: rowY + 1},
  ]);
}

/**
 * Names of points of one height, stacked in the free corner above and right of them. Each is led up and across; the
 * leftmost point has the topmost name, so that leaders never cross.
 */
export function ledLabels(labels: readonly LedLabel[], textWidth: (text: string) => number): FrameMark {
  return (_index, scales, _channels, dimensions) => {
    const group = svgElement("g", {"font-size": LABEL_PX, "text-anchor": "start"});
    for (const {text, own, spot: [x, y], rowY, across, back} of placeLed(labels, textWidth, scales, dimensions)) {
      group.append(
        svgElement("path", {d: `M${x} ${y}V${rowY}H${back ? x - 2 : across - 4}`, fill: "none", stroke: own ? "var(--accent)" : "var(--edge)", "stroke-width": own ? 1.4 : 1}),
        svgElement("circle", {cx: x, cy: y, r: own ? 3.5 : 2.6, fill: own ? "var(--accent)" : "var(--ink-soft)"}),
        svgElement("text", {
          x: across, y: rowY, dy: "0.35em", "text-anchor": back ? "end" : "start", fill: own ? "var(--accent)" : "var(--ink)", "font-weight": own ? 600 : 400,
          stroke: "var(--paper)", "stroke-width": 4, "paint-order": "stroke", "stroke-linejoin": "round",
        }, text),
      );
    }
    return group;
  };
}
