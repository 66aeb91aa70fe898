import * as Plot from "@observablehq/plot";
import type {SpanUnderLine} from "../../lib/snow/simpleSpan.js";
import {decimals} from "../../lib/units.js";
import {svgElement} from "../../components/dom.js";
import {LEAST_WIDTH_PX, place, type FrameMark} from "../../components/charts/marks.js";
import {spread} from "../../components/drawings/placement.js";

/** What {@link memberLoadChart} shows. */
export interface MemberLoad {
  readonly span: SpanUnderLine;
  readonly balancedPsf: number;
  /** Uniform loads that bend it as much, and load its support as much, psf. */
  readonly momentPsf: number;
  readonly shearPsf: number;
  /** What else may lie on it, each evenly: a name and psf. */
  readonly others: readonly {readonly name: string; readonly psf: number}[];
}

/** Snow along the deck member that carries most, with the uniform loads that do as much and what else may lie there. */
export function memberLoadChart({span, balancedPsf, momentPsf, shearPsf, others}: MemberLoad, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const {line, lengthFt} = span;
  const most = Math.max(...line.map(({load}) => load), shearPsf, momentPsf, ...others.map(({psf}) => psf));
  const alike = Math.abs(shearPsf - momentPsf) < 0.05;
  const levels = [
    ...(shearPsf > balancedPsf + 0.05 ? [{name: alike ? "as uniform" : "as uniform, by its support", psf: shearPsf, color: "var(--accent)", dash: "8 4"}] : []),
    ...(!alike && momentPsf > balancedPsf + 0.05 ? [{name: "as uniform, by bending", psf: momentPsf, color: "var(--accent)", dash: "2 3"}] : []),
    ...others.map((other) => ({...other, color: "var(--ink-soft)", dash: "5 4"})),
  ];
  const marginRight = width < 480 ? 12 : 226;
  return Plot.plot({
    width, height: Math.min(340, Math.max(260, width * 0.46)), marginLeft: 46, marginRight, marginTop: 26, marginBottom: 40,
    x: {label: "along the deck member, ft", domain: [0, lengthFt], ticks: 8},
    y: {label: "load, psf", domain: [0, most * 1.12], grid: true, ticks: 6},
    marks: [
      Plot.areaY(line, {x: "xFt", y: "load", fill: "var(--load)", fillOpacity: 0.18}),
      Plot.areaY(line, {x: "xFt", y: () => balancedPsf, fill: "var(--load)", fillOpacity: 0.14}),
      Plot.line(line, {x: "xFt", y: "load", stroke: "var(--load)", strokeWidth: 2.4}),
      Plot.ruleY([0], {stroke: "var(--ink)", strokeWidth: 1.2}),
      ...levels.map(({psf, color, dash}) => Plot.ruleY([psf], {stroke: color, strokeDasharray: dash, strokeWidth: 1.8})),
      levelNames(levels, lengthFt, width < 480),
    ],
  });
}

/** Names of the levels: beside the chart where there is room, over their lines where there is none; none over another. */
function levelNames(levels: readonly {readonly name: string; readonly psf: number; readonly color: string}[], lengthFt: number, inside: boolean): FrameMark {
  return (_index, scales, _channels, {height, marginTop, marginBottom}) => {
    const spots = levels.map((level) => ({...level, spot: place(scales, [lengthFt, level.psf])})).sort((a, b) => a.spot[1] - b.spot[1]);
    const rows = spread(spots.map(({spot}) => spot[1] - (inside ? 9 : 0)), spots.map(() => 16), marginTop, height - marginBottom, 2);
    const group = svgElement("g", {"font-size": 13, "text-anchor": inside ? "end" : "start"});
    spots.forEach(({name, psf, spot: [x, y]}, i) => {
      const to = rows[i] as number;
      const words = `${name}, ${decimals(psf, 1)} psf`;
      const at = inside ? {x: x - 4, y: to} : {x: x + 16, y: to};
      if (!inside) group.append(svgElement("path", {d: `M${x} ${y}L${x + 12} ${to}`, stroke: "var(--edge)", fill: "none"}));
      group.append(svgElement("text", {...at, dy: "0.35em", fill: "var(--ink)", stroke: "var(--paper)", "stroke-width": 5, "paint-order": "stroke", "stroke-linejoin": "round"}, words));
    });
    return group;
  };
}
