import {decimals, feetAndInches} from "../../lib/units.js";
import {chain} from "./dimension.js";
import {textWidth} from "./placement.js";
import {createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "./sheet.js";
import {support} from "./elevation.js";
import {el, pathThrough, type PaperPoint} from "./svg.js";

/** Values along a span: `share` from 0 to 1. Two points of one share make a jump. */
export type AlongSpan = readonly {readonly share: number; readonly value: number}[];

/** What {@link spanDiagram} draws. */
export interface SpanDiagramOptions extends DrawingOptions {
  readonly spanFt: number;
  readonly momentKipFt: AlongSpan;
  readonly shearKip: AlongSpan;
}

/** Moment and shear along a span, one above the other, with their extremes written at them. */
export function spanDiagram(options: SpanDiagramOptions): SVGSVGElement {
  const {spanFt, momentKipFt, shearKip, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const rowPx = bare ? 20 : Math.min(120, Math.max(70, widthPx * 0.11));
  const side = bare ? 1 : 18;
  const gap = bare ? 4 : textPx * 5;
  const first = bare ? 1 : textPx * 3.6 + 24;
  const heightPx = Math.ceil(first + 2 * rowPx + gap + (bare ? 1 : 86));
  const sheet = createSheet({
    kind: "span", widthPx, heightPx, bare, label: options.label ?? "Moment and shear along the span",
    description: options.description ?? `Moment reaches ${decimals(extreme(momentKipFt).value)} kip-ft and shear ${decimals(Math.abs(extreme(shearKip).value), 1)} kip over ${feetAndInches(spanFt * 12)}.`,
  });
  const x = (share: number) => side + share * (widthPx - 2 * side);
  if (!bare) {
    line(sheet.lines, "cut", [[x(0), 12], [x(1), 12]]);
    for (const share of [0, 1]) support(sheet, x(share), 14);
  }
  drawRow(sheet, x, momentKipFt, first, rowPx, "Moment", (value) => `${decimals(value)} kip-ft`, "moment");
  drawRow(sheet, x, shearKip, first + rowPx + gap, rowPx, "Shear", (value) => `${decimals(Math.abs(value), 1)} kip`, "shear");
  if (!bare) {
    const edge = first + 2 * rowPx + gap + textPx * 1.7;
    chain(sheet, {axis: "x", outward: 1, line: edge + 20, stops: [0, 1].map((share) => ({at: x(share), edge})), texts: [{value: feetAndInches(spanFt * 12), name: "span"}]});
  }
  return sheet.svg;
}

function extreme(values: AlongSpan): {share: number; value: number} {
  return values.reduce((best, one) => (Math.abs(one.value) > Math.abs(best.value) ? one : best), {share: 0.5, value: 0});
}

/** One diagram along a span with its name and its extremes; `compared` is drawn beside it as a dashed line. */
export function drawRow(
  sheet: Sheet, x: (share: number) => number, values: AlongSpan, top: number, height: number, name: string,
  written: (value: number) => string, hatch: "moment" | "shear", compared: AlongSpan = [],
): void {
  const most = Math.max(0, ...[...values, ...compared].map(({value}) => value));
  const least = Math.min(0, ...[...values, ...compared].map(({value}) => value));
  const scale = height / Math.max(1e-9, most - least);
  const base = top + most * scale;
  const points = values.map(({share, value}): PaperPoint => [x(share), base - value * scale]);
  const outline = [[x(values[0]?.share ?? 0), base] as PaperPoint, ...points, [x(values.at(-1)?.share ?? 1), base] as PaperPoint];
  const part = name.toLowerCase();
  sheet.body.append(el("path", {d: pathThrough(outline, true), class: `curve-${hatch}`, style: `fill: ${sheet.pattern(hatch)}`, "data-part": part}));
  line(sheet.lines, "seen", [[x(0), base], [x(1), base]]);
  if (compared.length > 0) line(sheet.lines, "hidden", compared.map(({share, value}): PaperPoint => [x(share), base - value * scale]));
  if (sheet.bare) return;
  const size = sheet.textPx;
  text(sheet.notes, sheet, [x(0), top - size * 2.5], name, {kind: "name", anchor: "start", part, className: "text-title"});
  // Each extreme stands outside the figure: over its highest point, under its lowest.
  const highest = values.reduce((best, one) => (one.value > best.value ? one : best), {share: 0.5, value: 0});
  const lowest = values.reduce((best, one) => (one.value < best.value ? one : best), {share: 0.5, value: 0});
  for (const [point, away] of [[highest, -1], [lowest, 1]] as const) {
    if (Math.abs(point.value) <= (most - least) * 0.02) continue;
    const half = textWidth(written(point.value), size) / 2;
    const at = Math.min(x(1) - half, Math.max(x(0) + half, x(point.share)));
    const y = base - point.value * scale;
    sheet.lines.append(el("circle", {cx: x(point.share), cy: y, r: 2.4, class: "leader-dot"}));
    text(sheet.notes, sheet, [at, y + away * size * 0.95], written(point.value), {part});
  }
}
