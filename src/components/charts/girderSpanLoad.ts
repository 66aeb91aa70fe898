import * as Plot from "@observablehq/plot";
import type {BeamCapacity, BeamLimit} from "../../lib/beams/beamCapacity.js";
import type {GirderCurve} from "../../lib/girder/curve.js";
import {decimals, feetText} from "../../lib/units.js";
import {textWidth} from "../drawings/placement.js";
import {limitPart} from "../drawings/parts.js";
import {lights} from "./lights.js";
import {LIMIT_LOOKS} from "./limits.js";
import {LEAST_WIDTH_PX, beyondCurve, ledLabels, type ChartPoint, type LedLabel} from "./marks.js";

/** What {@link girderSpanLoadChart} draws. */
export interface GirderSpanLoad {
  readonly curves: readonly GirderCurve[];
  readonly spanFt: number;
  readonly demandPlf: number;
  readonly spansFt: readonly [number, number];
}

/** Safe load beyond the girder's own weight by span, in thousands of pounds a foot, with what governs along each curve. */
export function girderSpanLoadChart({curves, spanFt, demandPlf, spansFt}: GirderSpanLoad, widthPx: number): SVGSVGElement | HTMLElement {
  const own = curves.find((curve) => curve.own);
  const klf = (plf: number) => plf / 1000;
  const most = klf(Math.max(2.2 * demandPlf, 1000));
  const ownPoints = (own?.cells ?? []).map((cell): ChartPoint => [cell.spanFt, klf(cell.safeLoadPlf)]);
  const rows = curves.flatMap((curve) => runs(curve.cells).flatMap(({governs, cells}, run) =>
    cells.map((cell) => ({spanFt: cell.spanFt, klf: klf(cell.safeLoadPlf), governs, own: curve.own, run: `${curve.strands} ${run}`}))));
  const lines = [...new Set(rows.map((row) => `${row.governs}|${row.own}`))].map((key) => {
    const [governs, isOwn] = key.split("|") as [BeamLimit, string];
    const look = LIMIT_LOOKS[governs];
    return Plot.line(rows.filter((row) => row.governs === governs && String(row.own) === isOwn), {
      x: "spanFt", y: "klf", z: "run", stroke: look.color, strokeDasharray: look.dash, strokeWidth: isOwn === "true" ? 2.6 : 1.3, clip: true, ...lights(limitPart(governs)),
    });
  });
  const halo = {stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5};
  const names = curves.flatMap(({reachFt, own, strands}): LedLabel[] => (reachFt === undefined ? [] : [{
    at: [reachFt, klf(demandPlf)], own, text: `${strands} strands${widthPx < 480 ? "" : ` reach ${decimals(reachFt)} ft`}`,
  }]));
  const letters = own ? runs(own.cells).flatMap(({governs, cells}) => {
    const seen = cells.filter((cell) => klf(cell.safeLoadPlf) < most * 0.85 && cell.safeLoadPlf > 0);
    const middle = seen[Math.floor(seen.length / 2)];
    return middle ? [{x: middle.spanFt, y: klf(middle.safeLoadPlf), look: LIMIT_LOOKS[governs]}] : [];
  }) : [];
  return Plot.plot({
    width: Math.max(LEAST_WIDTH_PX, widthPx), height: Math.min(420, Math.max(320, widthPx * 0.6)), marginLeft: 44, marginTop: 26, marginRight: 12, marginBottom: 40,
    x: {label: "span of the girder, ft", domain: spansFt, ticks: widthPx < 480 ? 5 : 10, grid: true},
    y: {label: "safe load beyond its own weight, kip per ft", domain: [0, most], ticks: 6, grid: true},
    marks: [
      beyondCurve(ownPoints, "var(--edge)"),
      Plot.line(ownPoints, {x: "0", y: "1", stroke: "var(--accent)", strokeOpacity: 0.22, strokeWidth: 9, clip: true}),
      ...lines,
      Plot.ruleY([klf(demandPlf)], {stroke: "var(--load)", strokeWidth: 1.6}),
      Plot.text([[spansFt[0], klf(demandPlf)]], {x: "0", y: "1", text: () => `both bays need ${decimals(klf(demandPlf), 1)}`, textAnchor: "start", dx: 4, dy: 11, fill: "var(--load)", ...halo}),
      Plot.ruleX([spanFt], {y1: 0, y2: klf(demandPlf), stroke: "var(--accent)", strokeWidth: 1.4}),
      Plot.dot([[spanFt, klf(demandPlf)]], {x: "0", y: "1", r: 6, fill: "var(--accent)", stroke: "var(--paper)", strokeWidth: 1.5}),
      Plot.text([[spanFt, 0]], {x: "0", y: "1", text: () => feetText(spanFt), dy: -9, dx: -5, textAnchor: "end", fill: "var(--accent)", fontWeight: 600, ...halo}),
      ledLabels(names, (text) => textWidth(text, 12.5) * 1.02),
      Plot.text(letters, {x: "x", y: "y", text: (spot) => spot.look.letter, fill: (spot) => spot.look.color, dx: -11, dy: 9, ...halo, fontSize: 14, fontWeight: 600, strokeWidth: 5}),
    ],
  });
}

/** Stretches of a curve that one limit governs; each but the first begins with the last cell of the one before. */
function runs(cells: readonly BeamCapacity[]): {governs: BeamLimit; cells: BeamCapacity[]}[] {
  const found: {governs: BeamLimit; cells: BeamCapacity[]}[] = [];
  for (const cell of cells) {
    const last = found.at(-1);
    if (last?.governs === cell.governs) last.cells.push(cell);
    else found.push({governs: cell.governs, cells: last ? [last.cells.at(-1) as BeamCapacity, cell] : [cell]});
  }
  return found;
}

/** What the chart shows, as its title. */
export function girderSpanFinding({curves, demandPlf, spanFt}: GirderSpanLoad): string {
  const own = curves.find((curve) => curve.own);
  const reach = own?.cells.filter((cell) => cell.safeLoadPlf >= demandPlf).at(-1);
  if (!own || !reach) return "This girder cannot carry both bays at any span";
  const {governs} = reach;
  return reach.spanFt < spanFt ? `Under this load the girder reaches only ${decimals(reach.spanFt)} ft, short of its span; ${governs} governs` : `Under this load the girder could reach ${decimals(reach.spanFt)} ft, where ${governs} governs`;
}

/** The letters that occur, with their limits. */
export function girderLimitKey({curves}: GirderSpanLoad): string {
  const occurring = [...new Set(curves.flatMap((curve) => curve.cells.map((cell) => cell.governs)))];
  return occurring.map((limit) => `${LIMIT_LOOKS[limit].letter}, ${LIMIT_LOOKS[limit].line}: ${limit}`).join("; ");
}
