import {failsOf, groups, isMade, valueOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";
import {svgElement} from "../../components/dom.js";
import {readerTicks} from "../../components/reader/readerTicks.js";
import {kindLook, type KindLook} from "../../components/shared/schemeLooks.js";
import {FRAME, SPANS_FT, spanPx, type WidthMeasure} from "./widthMeasures.js";

/** Heights of a chart and of what it keeps free above and below, px; the last one has the axis. */
const HEIGHT = {chart: 78, top: 8, bottom: 10, axis: 36} as const;
const RULES_FT = [20, 40, 60, 80, 100] as const;
const LABELS_FT = [20, 30, 40, 50, 60, 70, 80, 90, 100] as const;
const FONT_PX = 11.5;
/** A line is drawn once its kind has this many schemes: before that it would join what lies far apart. */
const LINE_FROM = 12;

type Point = readonly [x: number, y: number];

/**
 * A measure over the spans, a line for each kind; what fails is hollow. Seven of these are drawn anew several times a
 * second while schemes come in and the reader moves the span, so each is a few paths and nothing more.
 */
export function widthChart({key, unit = "", fromZero, top}: WidthMeasure, rows: readonly SchemeRow[], own: SchemeRow | undefined, widthPx: number, last: boolean): SVGSVGElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const made = rows.filter((row) => isMade(row) && valueOf(row, key) !== undefined).sort((a, b) => a.span_ft - b.span_ft);
  const valueOfRow = (row: SchemeRow) => valueOf(row, key) as number;
  const ownAt = own && valueOf(own, key) !== undefined ? own : undefined;
  const values = [...made, ...(ownAt ? [ownAt] : [])].map(valueOfRow);
  const high = top ?? Math.max(1e-6, ...values) * 1.06;
  const least = Math.min(...values);
  const low = fromZero || values.length === 0 ? 0 : least - (high - least) * 0.12 - 0.1;
  const heightPx = HEIGHT.top + HEIGHT.chart + (last ? HEIGHT.axis : HEIGHT.bottom);
  const foot = HEIGHT.top + HEIGHT.chart;
  const y = (value: number) => foot - ((value - low) / (high - low)) * HEIGHT.chart;
  const at = (row: SchemeRow): Point => [spanPx(row.span_ft, widthPx), y(valueOfRow(row))];
  const right = width - FRAME.right;
  const marks = readerTicks(unit, low, high, ticks(low, high).map((value) => ({at: value, text: tickText(value)})));
  const svg = svgElement("svg", {width, height: heightPx, viewBox: `0 0 ${width} ${heightPx}`, "font-size": FONT_PX},
    svgElement("path", {class: "width-grid", d: [...marks.map((tick) => `M${FRAME.left} ${px(y(tick.at))}H${right}`), ...spanTicks(RULES_FT).map(({at: span}) => `M${px(spanPx(span, widthPx))} ${HEIGHT.top}V${foot}`)].join("")}),
    ...marks.map((tick) => svgElement("text", {x: FRAME.left - 6, y: px(y(tick.at) + 4), "text-anchor": "end"}, tick.text)),
    ...(last ? axis(widthPx, foot) : []),
    own ? svgElement("path", {class: "width-own", d: `M${px(spanPx(own.span_ft, widthPx))} ${HEIGHT.top}V${foot}`}) : null);
  const whole = made.length >= rows.filter(isMade).length;
  for (const [kind, list] of groups(made, ({kind: one}) => one)) {
    const {dash, color, symbol} = kindLook(kind);
    if (whole && list.length > LINE_FROM) svg.append(svgElement("path", {d: lineThrough(list, at), fill: "none", stroke: color, "stroke-width": 1.2, ...(dash ? {"stroke-dasharray": dash} : {})}));
    const signs = (fails: boolean) => list.filter((row) => failsOf(row).length > 0 === fails).map((row) => mark(symbol, at(row))).join("");
    svg.append(svgElement("path", {d: signs(false), fill: color}), svgElement("path", {d: signs(true), fill: "var(--paper)", stroke: color}));
  }
  if (ownAt) {
    const [ownX, ownY] = at(ownAt);
    svg.append(svgElement("path", {class: "width-own-mark", d: `M${px(ownX)} ${px(ownY - 9)}l6 9l-6 9l-6 -9Z`}));
  }
  return svg;
}

/** Spans along the axis, at round numbers of the reader's unit. */
const spanTicks = (own: readonly number[]) => readerTicks("ft", SPANS_FT.from, SPANS_FT.to, own.map((span) => ({at: span, text: String(span)})));

const px = (value: number) => Number(value.toFixed(1));

/** A line with a gap where its kind cannot be made. */
function lineThrough(list: readonly SchemeRow[], at: (row: SchemeRow) => Point): string {
  return list.map((row, i) => {
    const before = list[i - 1];
    const joined = before && row.span_ft - before.span_ft <= SPANS_FT.by + 1e-9;
    return `${joined ? "L" : "M"}${at(row).map(px).join(" ")}`;
  }).join("");
}

/** One mark as a part of a path. */
function mark(symbol: KindLook["symbol"], [x, y]: Point): string {
  const [left, up] = [px(x - 2), px(y - 2)];
  switch (symbol) {
    case "circle": return `M${px(x - 2.2)} ${px(y)}a2.2 2.2 0 1 0 4.4 0a2.2 2.2 0 1 0 -4.4 0`;
    case "square": return `M${left} ${up}h4v4h-4Z`;
    case "triangle": return `M${px(x)} ${px(y - 2.8)}l2.6 4.6h-5.2Z`;
  }
}

/** The axis that all charts share, below the last. */
function axis(widthPx: number, foot: number): SVGElement[] {
  const right = spanPx(SPANS_FT.to, widthPx);
  return [
    ...spanTicks(LABELS_FT).map(({at, text}) => svgElement("text", {x: px(spanPx(at, widthPx)), y: foot + 16, "text-anchor": "middle"}, text)),
    svgElement("text", {x: px(right + 8), y: foot + 32, "text-anchor": "end"}, "deck span, ft \u2192"),
  ];
}

/** Round numbers along an axis: two to five of them. */
function ticks(low: number, high: number): number[] {
  const wanted = (high - low) / 3;
  const tens = 10 ** Math.floor(Math.log10(wanted));
  const step = [1, 2, 5, 10].map((times) => times * tens).find((one) => one >= wanted * 0.75) ?? 10 * tens;
  const first = Math.ceil(low / step - 1e-9);
  return Array.from({length: Math.max(0, Math.floor(high / step + 1e-9) - first + 1)}, (_, i) => (first + i) * step);
}

function tickText(value: number): string {
  return Number(value.toPrecision(3)).toLocaleString("en-US");
}
