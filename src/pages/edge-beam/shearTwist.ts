import * as Plot from "@observablehq/plot";
import type {EdgeBeamTwist} from "../../lib/edgeBeam/twist.js";
import {decimals} from "../../lib/units.js";
import {LEAST_WIDTH_PX, beyondCurve, type ChartPoint} from "../../components/charts/marks.js";

/** Stress of shear against stress of torsion, with the limit of both together as a quarter of a circle. */
export function shearTwistChart({design, shearPsi, torsionPsi}: EdgeBeamTwist, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.min(460, Math.max(LEAST_WIDTH_PX, widthPx));
  const limitPsi = design.greatestStressPsi;
  const mostPsi = 1.12 * Math.max(limitPsi, shearPsi, torsionPsi);
  const arc = Array.from({length: 61}, (_, i): ChartPoint => [limitPsi * Math.sin((Math.PI * i) / 120), limitPsi * Math.cos((Math.PI * i) / 120)]);
  const own = [{x: shearPsi, y: torsionPsi}];
  const right = shearPsi > mostPsi * 0.6;
  const labels = {stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5} as const;
  return Plot.plot({
    width, height: Math.round(width * 0.82), marginLeft: 52, marginBottom: 42, marginTop: 22,
    x: {label: "shear stress, psi", domain: [0, mostPsi], ticks: 5, grid: true},
    y: {label: "torsion stress, psi", domain: [0, mostPsi], ticks: 5, grid: true},
    marks: [
      beyondCurve(arc.map(([x, y]): ChartPoint => [x, y]), "var(--ink-soft)"),
      Plot.line(arc, {x: "0", y: "1", stroke: "var(--ink)", strokeWidth: 1.8}),
      Plot.text([arc[20]], {x: "0", y: "1", text: () => `${decimals(limitPsi)} psi together`, textAnchor: "end", dx: -6, dy: 16, fill: "var(--ink)", ...labels}),
      Plot.link(own, {x1: 0, y1: 0, x2: "x", y2: "y", stroke: "var(--accent)", strokeWidth: 1.4, strokeDasharray: "4 3"}),
      Plot.dot(own, {x: "x", y: "y", fill: "var(--accent)", r: 5}),
      Plot.text(own, {x: "x", y: "y", text: () => `this beam, ${decimals(design.stressPsi)} psi`, textAnchor: right ? "end" : "start", dx: right ? -9 : 9, dy: -8, fill: "var(--accent)", fontWeight: 600, ...labels}),
    ],
  });
}
