import * as Plot from "@observablehq/plot";
import {STRAND_STRENGTH_KSI, strandStressKsi} from "../../lib/materials/strand.js";
import type {StrandState, UltimateState} from "../../lib/member/ultimate.js";
import {decimals} from "../../lib/units.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";

/** Strain that every strand must reach before it breaks (ASTM A416). */
export const LEAST_BREAKING_STRAIN = 0.035;

/** The strand's stress by strain, with where this design's strands start and where they are when the member breaks. */
export function strandCurveChart({jacked, effective, rows}: UltimateState, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const most = Math.max(1.15 * LEAST_BREAKING_STRAIN, 1.1 * Math.max(...rows.map((row) => row.strain)));
  const curve = Array.from({length: 121}, (_, i): StrandState => {
    const strain = (most * i) / 120;
    return {strain, stressKsi: strandStressKsi(strain)};
  });
  // Words go where there is more room beside the line.
  const tight = LEAST_BREAKING_STRAIN > most / 2;
  const [deepest, highest] = [rows[0], rows.at(-1)];
  const name = (state: StrandState | undefined, words: string, options: Plot.TextOptions) =>
    Plot.text(state ? [state] : [], {x: "strain", y: "stressKsi", text: () => words, stroke: "var(--paper)", strokeWidth: 4, fill: "var(--ink)", fontSize: 12.5, textAnchor: "start", ...options});
  return Plot.plot({
    width, height: Math.min(380, Math.max(300, width * 0.62)), marginLeft: 44, marginTop: 26, marginBottom: 40,
    x: {label: "strain, inches per inch", domain: [0, most], ticks: width < 480 ? 4 : 8, grid: true},
    y: {label: "stress in the strand, ksi", domain: [0, 290], grid: true, ticks: 6},
    marks: [
      Plot.ruleY([STRAND_STRENGTH_KSI], {stroke: "var(--ink)", strokeDasharray: "7 3"}),
      Plot.text([[most, STRAND_STRENGTH_KSI]], {x: "0", y: "1", text: () => "breaks at 270 ksi", textAnchor: "end", dx: -4, dy: -8, fontSize: 12.5}),
      Plot.ruleX([LEAST_BREAKING_STRAIN], {y1: 0, y2: STRAND_STRENGTH_KSI, stroke: "var(--ink-soft)", strokeDasharray: "2 3"}),
      Plot.text([[LEAST_BREAKING_STRAIN, 0]], {x: "0", y: "1", text: () => "every strand stretches\nat least this far", textAnchor: tight ? "end" : "start", lineAnchor: "bottom", dx: tight ? -6 : 6, dy: -8, fontSize: 12.5, fill: "var(--ink-soft)"}),
      Plot.line(curve, {x: "strain", y: "stressKsi", stroke: "var(--steel)", strokeWidth: 2.4}),
      Plot.dot([jacked], {x: "strain", y: "stressKsi", r: 4.5, stroke: "var(--steel)", strokeWidth: 2, fill: "var(--paper)"}),
      Plot.dot([effective], {x: "strain", y: "stressKsi", r: 5, fill: "var(--steel)", stroke: "var(--paper)"}),
      Plot.dot(rows, {x: "strain", y: "stressKsi", r: 5, symbol: "diamond2", fill: "var(--accent)", stroke: "var(--paper)"}),
      name(jacked, `pulled, ${decimals(jacked.stressKsi, 1)} ksi`, {dx: 9, dy: 2}),
      name(effective, `left after losses, ${decimals(effective.stressKsi, 1)} ksi`, {dx: 9, dy: 8}),
      name(deepest, `${rows.length > 1 ? "lowest row" : "all strands"} at breaking, ${decimals(deepest?.stressKsi ?? 0, 1)} ksi`, {dy: 22, textAnchor: (deepest?.strain ?? 0) > most / 2 ? "end" : "start", fill: "var(--accent)", fontWeight: 600}),
      ...(rows.length > 1 && highest && (deepest?.stressKsi ?? 0) - highest.stressKsi > 25
        ? [name(highest, `highest row, ${decimals(highest.stressKsi, 1)} ksi`, {dy: 16, dx: 6, fill: "var(--accent)"})] : []),
    ],
  });
}
