import * as Plot from "@observablehq/plot";
import type {ScaleFunctions} from "@observablehq/plot";
import type {Range, Ranges} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {measureOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {measureName} from "../../components/compare/words.js";
import {svgElement} from "../../components/dom.js";
import {LEAST_WIDTH_PX, place} from "../../components/charts/marks.js";
import {kindLook} from "../../components/shared/schemeLooks.js";

/** What a chart of two measures shows. */
export interface ScatterData {
  readonly x: MeasureEntry;
  readonly y: MeasureEntry;
  /** Schemes whose checks hold, those of them within the ranges, and those that no other beats. */
  readonly holding: readonly SchemeRow[];
  readonly within: readonly SchemeRow[];
  /** The ranges that are marked out. */
  readonly ranges: Ranges;
  readonly best: readonly SchemeRow[];
  readonly own: SchemeRow | undefined;
  readonly chosen: number | undefined;
}

/** What is marked out in a chart: ranges of its two measures; undefined for a mere click, with the scheme next to it. */
export interface ScatterEvents {
  brush(x: readonly [number, number], y: readonly [number, number]): void;
  pick(index: number): void;
}

/** How far the pointer must go to mean a range, and how near to a mark to mean it, px. */
const DRAG_PX = 6;
const REACH_PX = 18;

export function bayScatter({x, y, holding, within, ranges, best, own, chosen}: ScatterData, widthPx: number, events: ScatterEvents): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const known = (row: SchemeRow) => measureOf(row, x) !== undefined && measureOf(row, y) !== undefined;
  const at = (row: SchemeRow) => [measureOf(row, x) as number, measureOf(row, y) as number] as const;
  const all = [...holding, ...(own ? [own] : [])].filter(known);
  const domain = (i: 0 | 1): [number, number] => {
    let [low, high] = [Infinity, -Infinity];
    for (const row of all) [low, high] = [Math.min(low, at(row)[i]), Math.max(high, at(row)[i])];
    if (low > high) return [0, 1];
    const room = high > low ? (high - low) * 0.06 : Math.max(1e-6, Math.abs(high) * 0.1);
    return [low - room, high + room];
  };
  let scales: ScaleFunctions | undefined;
  /** Schemes as specks: those outside the ranges fainter, and what is marked out as a box. */
  const specks: Plot.Markish = (_index: unknown, given: ScaleFunctions) => {
    scales = given;
    const inside = new Set(within);
    const path = (rows: readonly SchemeRow[]) => [...new Set(rows.filter(known).map((row) => `M${place(given, at(row)).map((value) => value.toFixed(0)).join(" ")}h0`))].join("");
    return svgElement("g", {}, markedOut(given, [ranges.get(x.key), domain(0)], [x === y ? undefined : ranges.get(y.key), domain(1)]),
      svgElement("path", {d: path(holding.filter((row) => !inside.has(row))), class: "bay-specks is-out"}),
      svgElement("path", {d: path(within), class: "bay-specks"}));
  };
  const marked = best.filter(known);
  const node = Plot.plot({
    width, height: Math.round(Math.min(300, Math.max(220, width * 0.7))), marginLeft: 48, marginRight: 12, marginTop: 24, marginBottom: 38,
    x: {label: measureName(x), domain: domain(0), ticks: 5, grid: true}, y: {label: measureName(y), domain: domain(1), ticks: 5, grid: true},
    marks: [
      specks,
      ...[...new Set(marked.map(({kind}) => kind))].map((kind) => Plot.dot(marked.filter((row) => row.kind === kind), {
        x: (row: SchemeRow) => at(row)[0], y: (row: SchemeRow) => at(row)[1], r: 4, symbol: kindLook(kind).symbol, fill: kindLook(kind).color,
      })),
      Plot.dot(all.filter((row) => row.index === chosen && row !== own), {x: (row: SchemeRow) => at(row)[0], y: (row: SchemeRow) => at(row)[1], r: 8, fill: "none", stroke: "var(--load)", strokeWidth: 2}),
      Plot.dot(own && known(own) ? [own] : [], {x: (row: SchemeRow) => at(row)[0], y: (row: SchemeRow) => at(row)[1], r: 6, symbol: "diamond", fill: "none", stroke: "var(--accent)", strokeWidth: 2.4}),
    ],
  });
  const svg = node instanceof SVGSVGElement ? node : node.querySelector("svg");
  const plotted = node as unknown as Plot.Plot;
  if (svg) listen(svg, (name, px) => plotted.scale(name)?.invert?.(px) as number | undefined, events, (px, py) => {
    let near: {index: number; far: number} | undefined;
    if (!scales) return undefined;
    for (const row of marked) {
      const [sx, sy] = place(scales, at(row));
      const far = Math.hypot(px - sx, py - sy);
      if (far < REACH_PX && (!near || far < near.far)) near = {index: row.index, far};
    }
    return near?.index;
  });
  return node;
}

/** The part of a chart that lies within the ranges of its measures; nothing where neither is set. */
function markedOut({x, y}: ScaleFunctions, [ofX, xDomain]: Marked, [ofY, yDomain]: Marked): SVGElement | null {
  if (!ofX && !ofY) return null;
  const [left, right] = spread(x as Scale, ofX, xDomain);
  const [bottom, top] = spread(y as Scale, ofY, yDomain);
  return svgElement("rect", {x: left, y: top, width: Math.max(0, right - left), height: Math.max(0, bottom - top), class: "bay-brush is-kept"});
}

type Marked = readonly [range: Range | undefined, domain: readonly [number, number]];
type Scale = (value: number) => number;

/** Pixels of a range's lesser and greater end along an axis, as far as the chart goes. */
function spread(scale: Scale, range: Range | undefined, [low, high]: readonly [number, number]): [number, number] {
  const [least = low, most = high] = range ?? [];
  const px = (value: number) => scale(Math.min(high, Math.max(low, value)));
  return [px(least), px(most)];
}

function listen(svg: SVGSVGElement, invert: (name: "x" | "y", px: number) => number | undefined, events: ScatterEvents, nearest: (x: number, y: number) => number | undefined): void {
  const box = svgElement("rect", {class: "bay-brush", "aria-hidden": "true"});
  let from: readonly [number, number] | undefined;
  const spot = (event: PointerEvent): [number, number] => {
    const {left, top, width} = svg.getBoundingClientRect();
    const scale = Number(svg.getAttribute("width")) / width;
    return [(event.clientX - left) * scale, (event.clientY - top) * scale];
  };
  svg.style.touchAction = "pan-y";
  svg.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    from = spot(event);
    svg.setPointerCapture(event.pointerId);
    svg.append(box);
  });
  svg.addEventListener("pointermove", (event) => {
    if (!from) return;
    const to = spot(event);
    for (const [name, value] of Object.entries({x: Math.min(from[0], to[0]), y: Math.min(from[1], to[1]), width: Math.abs(to[0] - from[0]), height: Math.abs(to[1] - from[1])})) box.setAttribute(name, value.toFixed(1));
  });
  svg.addEventListener("pointerup", (event) => {
    const [start, to] = [from, spot(event)];
    from = undefined;
    box.remove();
    if (!start) return;
    if (Math.hypot(to[0] - start[0], to[1] - start[1]) < DRAG_PX) {
      const index = nearest(...to);
      if (index !== undefined) events.pick(index);
      return;
    }
    const read = (name: "x" | "y", a: number, b: number): [number, number] => {
      const ends = [a, b].map((px) => invert(name, px) ?? 0).sort((one, other) => one - other);
      return [ends[0] as number, ends[1] as number];
    };
    events.brush(read("x", start[0], to[0]), read("y", start[1], to[1]));
  });
  svg.addEventListener("pointercancel", () => {
    from = undefined;
    box.remove();
  });
}
