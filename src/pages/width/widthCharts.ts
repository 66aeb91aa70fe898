import * as Plot from "@observablehq/plot";
import {failsOf, groups, isMade, measureNamed, valueOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";
import {kindLook} from "../../components/shared/schemeLooks.js";
import {AXIS_FT, FRAME, SPANS_FT, type WidthMeasure} from "./widthMeasures.js";

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
