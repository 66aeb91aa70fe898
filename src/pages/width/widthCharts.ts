import * as Plot from "@observablehq/plot";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import {failsOf, groups, isMade, measureNamed, valueOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";
import {kindLook} from "../../components/shared/schemeLooks.js";

/** Spans that are tried, ft. */
export const SPANS_FT = {from: 20, to: 100, by: 1} as const;
/** The frame that all charts share, px. */
export const FRAME = {left: 44, right: 14} as const;
/** Ends of the axis, ft: a foot beyond the spans, so that marks at the ends are whole. */
export const AXIS_FT = [SPANS_FT.from - 1, SPANS_FT.to + 1] as const;

/** One of the aligned charts. */
export interface WidthMeasure {
  readonly key: MeasureKey;
  readonly title: string;
  readonly fromZero: boolean;
  readonly top?: number;
}

export const WIDTH_MEASURES: readonly WidthMeasure[] = [
  {key: "deckDepthIn", title: "Deck with topping, in deep", fromZero: true},
  {key: "floorToFloorFt", title: "Floor-to-floor height for the same ceiling, ft", fromZero: false},
  {key: "goodDaylightPercent", title: "Floor with good daylight, %", fromZero: true, top: 100},
  {key: "wallFt2PerFt2", title: "Wall per floor, ft\u00b2/ft\u00b2", fromZero: true},
  {key: "carbonKgPerFt2", title: "Embodied carbon, kgCO\u2082e/ft\u00b2", fromZero: true},
  {key: "pieces", title: "Precast pieces of the building", fromZero: true},
  {key: "parkingStalls", title: "Stalls of a level of cars below", fromZero: true},
];

/** Pixels of a span along the shared axis. */
export function spanPx(spanFt: number, widthPx: number): number {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  return FRAME.left + ((spanFt - AXIS_FT[0]) / (AXIS_FT[1] - AXIS_FT[0])) * (width - FRAME.left - FRAME.right);
}

/** The span at a place along the axis, in whole feet within the range. */
export function spanAt(x: number, widthPx: number): number {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const at = AXIS_FT[0] + ((x - FRAME.left) / (width - FRAME.left - FRAME.right)) * (AXIS_FT[1] - AXIS_FT[0]);
  return Math.min(SPANS_FT.to, Math.max(SPANS_FT.from, Math.round(at)));
}

/** A measure over the spans, a line for each kind; what fails is hollow. */
export function widthChart({key, fromZero, top}: WidthMeasure, rows: readonly SchemeRow[], own: SchemeRow | undefined, widthPx: number, last: boolean): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const {decimals} = measureNamed(key);
  const made = rows.filter((row) => isMade(row) && valueOf(row, key) !== undefined).sort((a, b) => a.span_ft - b.span_ft);
  const y = (row: SchemeRow) => valueOf(row, key);
  const values = [...made, ...(own ? [own] : [])].map(y).filter((value) => value !== undefined);
  const high = top ?? Math.max(1e-6, ...values) * 1.06;
  const low = fromZero || values.length === 0 ? 0 : Math.min(...values) - (high - Math.min(...values)) * 0.12 - 0.1;
  const spanOf = (row: SchemeRow) => row.span_ft;
  const ownAt = own && valueOf(own, key) !== undefined ? [own] : [];
  return Plot.plot({
    width, height: last ? 122 : 96, marginLeft: FRAME.left, marginRight: FRAME.right, marginTop: 8, marginBottom: last ? 36 : 10,
    x: {domain: [...AXIS_FT], label: last ? "deck span, ft" : null, ticks: last ? [20, 30, 40, 50, 60, 70, 80, 90, 100] : [], grid: true},
    y: {domain: [low, high], label: null, ticks: 3, grid: true, tickFormat: (value: number) => String(Number(value.toFixed(Math.min(2, decimals + 1))))},
    marks: [
      Plot.ruleX([20, 40, 60, 80, 100], {stroke: "var(--rule)", strokeWidth: 0.7}),
      ...(own ? [Plot.ruleX([own.span_ft], {stroke: "var(--accent)", strokeWidth: 1.4})] : []),
      ...[...groups(made, ({kind}) => kind)].flatMap(([kind, list]) => {
        const {dash, color, symbol} = kindLook(kind);
        // A line has a gap where the kind cannot be made.
        const line = Array.from({length: SPANS_FT.to - SPANS_FT.from + 1}, (_, i) => SPANS_FT.from + i).map((span) => list.find(({span_ft}) => span_ft === span));
        const whole = made.length >= rows.filter(isMade).length && list.length > 12;
        return [
          ...(whole ? [Plot.line(line.map((row, i) => ({span: SPANS_FT.from + i, value: row && y(row)})), {x: "span", y: "value", stroke: color, strokeWidth: 1.2, ...(dash ? {strokeDasharray: dash} : {})})] : []),
          Plot.dot(list.filter((row) => failsOf(row).length === 0), {x: spanOf, y, r: 2.1, symbol, fill: color}),
          Plot.dot(list.filter((row) => failsOf(row).length > 0), {x: spanOf, y, r: 2.1, symbol, fill: "var(--paper)", stroke: color, strokeWidth: 1}),
        ];
      }),
      Plot.dot(ownAt, {x: spanOf, y, r: 6, symbol: "diamond", fill: "none", stroke: "var(--accent)", strokeWidth: 2.2}),
    ],
  });
}
