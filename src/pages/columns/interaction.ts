import * as Plot from "@observablehq/plot";
import type {InteractionCut} from "../../lib/columns/interactionCut.js";
import {decimals, kipFt} from "../../lib/units.js";
import {svgElement} from "../../components/dom.js";
import {lights, lightsEach} from "../../components/charts/lights.js";
import {spread, textWidth} from "../../components/drawings/placement.js";
import {LEAST_WIDTH_PX, place, type FrameMark} from "../../components/charts/marks.js";

/** A story's factored axial load and moment. */
export interface InteractionPoint {
  readonly name: string;
  readonly axialKip: number;
  readonly momentKipIn: number;
  /** Whether it requires most of the column. */
  readonly worst: boolean;
  /** Whether its moments stand to each other at the angle of the cut; if not, the curve is not its own. */
  readonly inCut: boolean;
}

type Row = {readonly x: number; readonly y: number};

/** Axial load over moment in one direction: what the column can carry, nominal and by design, and what its stories ask. */
export function interactionChart(curve: InteractionCut, points: readonly InteractionPoint[], widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const row = ({momentKipIn, axialKip}: {momentKipIn: number; axialKip: number}): Row => ({x: kipFt(momentKipIn), y: axialKip});
  const nominal = curve.nominal.map(row);
  const design = curve.design.map(row);
  const asked = points.map((point) => ({...point, ...row(point)}));
  const mostX = 1.06 * Math.max(...nominal.map(({x}) => x), ...asked.map(({x}) => x));
  const mostY = 1.05 * Math.max(curve.squashKip, ...asked.map(({y}) => y));
  const halo = {stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5};
  const bulge = (rows: readonly Row[]) => rows.reduce((far, one) => (one.x > far.x ? one : far));
  const nominalAt = bulge(nominal);
  // The curve's name stands where no story's name does.
  const away = ({y}: Row) => Math.min(...asked.map((point) => Math.abs(point.y - y)));
  const beside = design.filter(({y}) => y > 0.1 * curve.capKip && y < 0.9 * curve.capKip);
  const designAt = beside.reduce((far, one) => (away(one) > away(far) ? one : far), bulge(design));
  return Plot.plot({
    width, height: Math.min(460, Math.max(340, width * 0.7)), marginLeft: 56, marginTop: 26, marginRight: 12, marginBottom: 40,
    x: {label: "combined moment, kip-ft", domain: [0, mostX], grid: true, ticks: width < 480 ? 5 : 8},
    y: {label: "axial load, kip (below 0: tension)", domain: [-1.05 * curve.tensionKip, mostY], grid: true, ticks: 8},
    marks: [
      Plot.areaX(design, {x1: 0, x2: "x", y: "y", fill: "var(--concrete-plant)", fillOpacity: 0.45, clip: true}),
      Plot.ruleY([0], {stroke: "var(--ink)"}),
      Plot.ruleX([0], {stroke: "var(--ink)"}),
      Plot.line(nominal, {x: "x", y: "y", stroke: "var(--ink-soft)", strokeWidth: 1.6, strokeDasharray: "7 4", ...lights("nominal strength")}),
      Plot.line(design, {x: "x", y: "y", stroke: "var(--ink)", strokeWidth: 2.4, ...lights("design strength")}),
      Plot.text([nominalAt], {x: "x", y: "y", text: () => "nominal", dx: -14, textAnchor: "end", fill: "var(--ink-soft)", ...halo}),
      Plot.text([designAt], {x: "x", y: "y", text: () => "design", dx: -12, textAnchor: "end", dy: 4, fill: "var(--ink)", fontWeight: 600, ...halo}),
      Plot.text([{x: kipFt(curve.cap.momentKipIn), y: curve.capKip}], {x: "x", y: "y", text: () => `most: ${decimals(curve.capKip)} kip`, textAnchor: "end", dy: -13, fill: "var(--ink)", ...halo, ...lights("most axial load")}),
      Plot.link(asked.filter(({worst}) => worst), {x1: 0, y1: 0, x2: "x", y2: "y", stroke: "var(--accent)", strokeDasharray: "2 3"}),
      Plot.dot(asked, {x: "x", y: "y", r: (point: InteractionPoint) => (point.worst ? 6 : 4), symbol: (point: InteractionPoint) => (point.worst ? "diamond" : "circle"), fill: (point: InteractionPoint) => (point.inCut ? "var(--accent)" : "var(--paper)"), stroke: (point: InteractionPoint) => (point.inCut ? "var(--paper)" : "var(--accent)"), strokeWidth: 1.4, ...lightsEach(asked, ({name}) => name)}),
      pointNames(asked),
    ],
  });
}

/** The stories' names at the right of their points, led to them, none over another. */
function pointNames(points: readonly (InteractionPoint & Row)[]): FrameMark {
  return (_index, scales, _channels, {width, height, marginTop, marginRight, marginBottom}) => {
    const spots = points.map((point) => ({...point, spot: place(scales, [point.x, point.y])})).sort((a, b) => a.spot[1] - b.spot[1]);
    const rows = spread(spots.map(({spot}) => spot[1]), spots.map(() => 16), marginTop, height - marginBottom, 1);
    const group = svgElement("g", {"font-size": 12.5, "text-anchor": "start"});
    spots.forEach(({name, worst, spot: [x, y]}, i) => {
      const to = rows[i] as number;
      const words = textWidth(name, 12.5);
      const left = Math.min(x + 24, width - marginRight - words - 2);
      group.append(
        svgElement("path", {d: `M${x + 5} ${y}L${left - 3} ${to}`, stroke: "var(--edge)", fill: "none"}),
        svgElement("text", {"data-part": name, x: left, y: to, dy: "0.35em", fill: "var(--accent)", "font-weight": worst ? 600 : 400, stroke: "var(--paper)", "stroke-width": 4, "paint-order": "stroke", "stroke-linejoin": "round"}, name),
      );
    });
    return group;
  };
}
