import * as Plot from "@observablehq/plot";
import type {DeckLoadComparison} from "../../lib/published/deckLoads.js";
import type {StrandCurvePoint} from "../../lib/published/strandCurve.js";

/** A point that differs from its published value. */
interface Off {
  readonly page: string;
  readonly spanFt: number;
  readonly off: number;
  readonly kind: string;
}

/** Least width of a chart, px: a page reports none before it is laid out. */
const LEAST_PX = 240;

const HALO = {stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5} as const;

/** Differences by span, one strip for each printed row, with the band of agreement shaded. */
function strips(points: readonly Off[], band: number, most: number, label: string, widthPx: number, marks: Plot.Markish[]) {
  const pages = [...new Set(points.map((point) => point.page))];
  return Plot.plot({
    width: Math.max(LEAST_PX, widthPx), height: 60 + pages.length * 118, marginLeft: 44, marginRight: 10, marginTop: 28, marginBottom: 38,
    x: {label: "span, ft", domain: [10, 64], ticks: widthPx < 480 ? 5 : 10, grid: true},
    y: {label, domain: [-most, most], ticks: [-band, 0, band], tickFormat: (d: number) => (d === 0 ? "0" : `${d > 0 ? "+" : "\u2212"}${Math.abs(d)}`)},
    fy: {domain: pages, axis: null, padding: 0.16},
    marks: [
      Plot.rectY(pages, {fy: (page) => page, x1: 10, x2: 64, y1: -band, y2: band, fill: "var(--sunken)"}),
      Plot.ruleY(pages.flatMap((page) => [-band, band].map((y) => ({page, y}))), {fy: "page", y: "y", stroke: "var(--edge)", strokeDasharray: "4 3"}),
      Plot.ruleY(pages, {fy: (page) => page, y: 0, stroke: "var(--ink-soft)"}),
      ...marks,
      Plot.text(pages, {fy: (page) => page, text: (page) => page, frameAnchor: "top-right", dx: -4, dy: 3, fontWeight: 600, fill: "var(--ink)", ...HALO}),
    ],
  });
}

/** Our safe loads less the printed ones where strength limits them, by span. */
export function loadDifferenceChart(cells: readonly DeckLoadComparison[], widthPx: number) {
  const points = cells
    .filter((cell) => cell.row.limit === "strength")
    .map((cell): Off => ({page: cell.page, spanFt: cell.row.spanFt, off: cell.safeLoad.difference, kind: "safe load"}));
  const marks = [Plot.dot(points, {fy: "page", x: "spanFt", y: "off", r: 3.6, fill: "var(--accent)"})];
  return strips(points, 1, 1.6, "ours less printed, psf", widthPx, marks);
}

/** Our cambers less the printed ones, by span: when set, and in the long term. */
export function camberDifferenceChart(cells: readonly DeckLoadComparison[], widthPx: number) {
  const points = cells.flatMap((cell): Off[] => [
    {page: cell.page, spanFt: cell.row.spanFt, off: cell.erectionCamber.difference, kind: "when set"},
    {page: cell.page, spanFt: cell.row.spanFt, off: cell.longTimeCamber.difference, kind: "after years"},
  ]);
  const of = (kind: string) => points.filter((point) => point.kind === kind);
  const marks = [
    Plot.dot(of("after years"), {fy: "page", x: "spanFt", y: "off", r: 4, symbol: "diamond", fill: "var(--paper)", stroke: "var(--pinned)", strokeWidth: 1.6}),
    Plot.dot(of("when set"), {fy: "page", x: "spanFt", y: "off", r: 3.6, fill: "var(--accent)"}),
  ];
  return strips(points, 0.2, 0.32, "ours less printed, in", widthPx, marks);
}

/** A row that shear limits at short spans: printed cells on our curve, and below it. */
export function shearCellsChart(cells: readonly DeckLoadComparison[], widthPx: number) {
  const points = cells.map(({row, safeLoad}) => ({spanFt: row.spanFt, ours: safeLoad.ours, printed: row.safeLoadPsf, limit: row.limit}));
  const of = (limit: string) => points.filter((point) => point.limit === limit);
  const [first] = points;
  const lastShear = of("shear").at(-1);
  return Plot.plot({
    width: Math.max(LEAST_PX, widthPx), height: Math.min(380, Math.max(300, widthPx * 0.6)), marginLeft: 44, marginRight: 10, marginTop: 26, marginBottom: 40,
    x: {label: "span, ft", ticks: widthPx < 480 ? 5 : 10, grid: true},
    y: {label: "safe superimposed load, psf", domain: [0, Math.ceil((first?.ours ?? 600) / 100) * 100], ticks: 6, grid: true},
    marks: [
      Plot.line(points, {x: "spanFt", y: "ours", stroke: "var(--ink)", strokeWidth: 2}),
      Plot.dot(of("strength"), {x: "spanFt", y: "printed", r: 3.6, fill: "var(--accent)"}),
      Plot.dot(of("shear"), {x: "spanFt", y: "printed", r: 4, symbol: "square", fill: "var(--paper)", stroke: "var(--near)", strokeWidth: 1.8}),
      ...(first ? [Plot.text([first], {x: "spanFt", y: "ours", text: () => "ours", dx: 14, dy: 4, textAnchor: "start", fill: "var(--ink)", ...HALO})] : []),
      ...(first && lastShear ? [Plot.text([lastShear], {x: first.spanFt, y: (cell) => cell.printed / 2, text: () => "printed, limited by shear", dx: 4, textAnchor: "start", fill: "var(--near)", ...HALO})] : []),
      Plot.text(of("strength").slice(4, 5), {x: "spanFt", y: "printed", text: () => "printed, limited by strength", dx: 10, dy: -9, textAnchor: "start", fill: "var(--accent)", ...HALO}),
    ],
  });
}

/** The strand's curve about its knee: ours, the printed piece below it, and the power formula. */
export function strandCurveChart(points: readonly StrandCurvePoint[], widthPx: number) {
  const last = points.at(-1);
  const printed = points.filter((point) => point.printedKsi !== undefined);
  return Plot.plot({
    width: Math.max(LEAST_PX, widthPx), height: Math.min(340, Math.max(280, widthPx * 0.55)), marginLeft: 44, marginRight: 24, marginTop: 26, marginBottom: 40,
    x: {label: "strain", ticks: widthPx < 480 ? 4 : 7, grid: true},
    y: {label: "stress, ksi", ticks: 6, grid: true},
    marks: [
      Plot.line(points, {x: "strain", y: "powerKsi", stroke: "var(--pinned)", strokeWidth: 1.6, strokeDasharray: "6 4"}),
      Plot.line(points, {x: "strain", y: "oursKsi", stroke: "var(--steel)", strokeWidth: 2.4}),
      Plot.line(printed, {x: "strain", y: "printedKsi", stroke: "var(--near)", strokeWidth: 2.4}),
      ...(last ? [
        Plot.text([last], {x: "strain", y: "oursKsi", text: () => "the kit's curve", textAnchor: "end", dy: -10, fill: "var(--steel)", ...HALO}),
        Plot.text([last], {x: "strain", y: "powerKsi", text: () => "power formula", textAnchor: "end", dy: 24, fill: "var(--pinned)", ...HALO}),
      ] : []),
      Plot.text(printed.slice(0, 1), {x: "strain", y: "printedKsi", text: () => "as printed", textAnchor: "start", dx: 9, dy: 8, fill: "var(--near)", ...HALO}),
    ],
  });
}
