import * as Plot from "@observablehq/plot";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";
import {comparedOf, type CompareView} from "../../components/compare/view.js";
import {figure, type FigureTable} from "../../components/figure.js";
import {decimals} from "../../lib/units.js";

/** A curve of one design. */
interface Curve {
  readonly letter: string;
  readonly name: string;
  readonly own: boolean;
  readonly points: readonly (readonly [x: number, y: number])[];
  /** Where the design itself stands, if the chart marks it. */
  readonly at?: readonly [x: number, y: number];
}

/** Dashes of the pins' curves, so that neither color nor letter is the only thing that tells them apart. */
const DASHES = ["7 3", "2 3", "9 3 2 3", "14 4", "4 2 1 2"] as const;
/** Where along a curve its letter stands, as a share of what is seen of it; the next curve's stands further on. */
const LETTER_FROM = 0.3;
const LETTER_STEP = 0.13;
/** A load that is as good as none, psf. */
const HARDLY_ANY_PSF = 0.5;
/** The first feet at the window would flatten all the rest, %. */
const HIGHEST_PERCENT = 12;

function curvesOf({open, pinned}: CompareView, read: (curves: NonNullable<ReturnType<typeof comparedOf>>["curves"]) => Pick<Curve, "points" | "at">): Curve[] {
  return [open, ...pinned].flatMap((entry) => {
    const compared = comparedOf(entry);
    return compared ? [{letter: entry.letter, name: entry.name, own: entry.pin === undefined, ...read(compared.curves)}] : [];
  });
}

/** Safe load over the span, each design marked where it stands. */
export function loadFigure(view: CompareView, widthPx: number): HTMLElement {
  const curves = curvesOf(view, ({safeLoad, spanFt, demandPsf}) => ({points: safeLoad.map(({spanFt: x, psf}) => [x, psf] as const), at: [spanFt, demandPsf]}));
  const mostPsf = Math.max(100, Math.ceil((2.2 * Math.max(...curves.map(({at}) => at?.[1] ?? 0))) / 50) * 50);
  const starts = curves.map(({points}) => points[Math.max(0, points.findIndex(([, psf]) => psf <= mostPsf) - 1)]?.[0] ?? 10);
  const ends = curves.map(({points, at}) => Math.max(at?.[0] ?? 0, points.findLast(([, psf]) => psf >= HARDLY_ANY_PSF)?.[0] ?? 10));
  const domain = [10 * Math.floor(Math.min(...starts, ...curves.map(({at}) => at?.[0] ?? Infinity)) / 10), 10 * Math.ceil((Math.max(...ends) + 2) / 10)] as const;
  const seen = curves.map((curve) => ({...curve, points: ended(curve.points)}));
  return figure(chart(seen, {x: "span, ft", y: "safe superimposed load, psf", domain, most: mostPsf}, widthPx), {
    title: loadFinding(curves),
    caption: "Each curve is the load that the deck of one design carries at every span; its dot is that design\u2019s own span and required load. A dot below its curve works.",
    table: tableAt(curves, spansBetween(domain), "Span, ft", "psf", 0),
  });
}

/** A curve until its member no longer carries itself. */
function ended(points: Curve["points"]): Curve["points"] {
  return points.slice(0, points.findLastIndex(([, psf]) => psf > 0) + 2);
}

function loadFinding(curves: readonly Curve[]): string {
  const reach = curves.map((curve) => ({curve, ft: curve.at ? longest(curve.points, curve.at[1]) : undefined}));
  const open = reach.find(({curve}) => curve.own);
  const others = reach.filter(({curve}) => !curve.own);
  const told = ({curve, ft}: (typeof reach)[number]) => `${curve.own ? "the open design\u2019s deck" : curve.letter} ${ft === undefined ? "carries its load over no span" : `reaches ${decimals(ft)} ft`}`;
  if (!open) return "Safe load over the span";
  const words = [open, ...others.slice(0, 4)].map(told).join("; ");
  return `Under its own required load ${words}`;
}

/** The longest of the computed spans at which a load is carried, by straight lines between them, ft. */
function longest(points: Curve["points"], psf: number): number | undefined {
  for (let i = points.length - 1; i >= 0; i--) {
    const [x, y] = points[i] as readonly [number, number];
    if (y < psf) continue;
    const next = points[i + 1];
    return next ? x + ((next[0] - x) * (y - psf)) / (y - next[1]) : x;
  }
  return undefined;
}

/** Daylight over the depth of the floor; undefined where no design has any. */
export function lightFigure(view: CompareView, widthPx: number): HTMLElement | undefined {
  const curves = curvesOf(view, ({daylight}) => ({points: daylight.map(({distanceFt, percent}) => [distanceFt, percent] as const)})).filter(({points}) => points.length > 0);
  if (curves.length === 0) return undefined;
  const deepest = Math.max(...curves.map(({points}) => points.at(-1)?.[0] ?? 0));
  const domain = [0, Math.ceil(deepest / 5) * 5] as const;
  const most = Math.min(HIGHEST_PERCENT, Math.max(6, ...curves.flatMap(({points}) => points.map(([, percent]) => percent))));
  const dark = view.pinned.concat(view.open).filter((entry) => comparedOf(entry)?.curves.daylight.length === 0).map(({letter}) => letter || "the open design");
  return figure(chart(curves, {x: "from the window wall, ft", y: "daylight factor, %", domain, most, lines: [{y: 2, words: "2: partial"}, {y: 5, words: "5: good"}]}, widthPx), {
    title: lightFinding(curves),
    caption: `Along a line across the middle of each floor, at the height of a desk, under an evenly overcast sky; a floor with windows on both sides brightens again.${dark.length > 0 ? ` No glass: ${dark.join(", ")}.` : ""}`,
    table: tableAt(curves, Array.from({length: Math.floor(domain[1] / 5) + 1}, (_, i) => 5 * i).slice(1), "From the window, ft", "%", 1),
  });
}

function lightFinding(curves: readonly Curve[]): string {
  const deep = curves.map(({letter, own, points}) => {
    const first = points.find(([, percent]) => percent < 2);
    return `${own ? "the open design" : letter} ${first ? `${decimals(first[0])} ft` : "all of its depth"}`;
  });
  return `From one window, partial daylight reaches in ${deep.slice(0, 5).join("; ")}`;
}

interface Axes {
  readonly x: string;
  readonly y: string;
  readonly domain: readonly [number, number];
  readonly most: number;
  readonly lines?: readonly {readonly y: number; readonly words: string}[];
}

function chart(curves: readonly Curve[], {x, y, domain, most, lines = []}: Axes, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const pins = curves.filter(({own}) => !own);
  // The open design lies over the others.
  const inOrder = [...pins, ...curves.filter(({own}) => own)];
  const color = ({own}: Curve) => (own ? "var(--accent)" : "var(--pinned)");
  const letters = inOrder.flatMap((curve) => {
    const seen = curve.points.filter(([at, value]) => value < 0.97 * most && value > 0.02 * most && at >= domain[0] && at <= domain[1]);
    const place = curve.own ? LETTER_FROM - LETTER_STEP : LETTER_FROM + LETTER_STEP * (pins.indexOf(curve) % 5);
    const spot = seen[Math.floor(place * (seen.length - 1))];
    return spot ? [{x: spot[0], y: spot[1], curve}] : [];
  });
  const dots = inOrder.flatMap((curve) => (curve.at ? [{x: curve.at[0], y: Math.min(most, curve.at[1]), curve}] : []));
  return Plot.plot({
    width, height: Math.min(420, Math.max(300, width * 0.55)), marginLeft: 44, marginTop: 26, marginRight: 14, marginBottom: 40,
    x: {label: x, domain, ticks: Math.max(4, Math.round(width / 90)), grid: true},
    y: {label: y, domain: [0, most], ticks: 6, grid: true},
    marks: [
      ...lines.filter((line) => line.y < most).flatMap((line) => [
        Plot.ruleY([line], {y: "y", stroke: "var(--ink-soft)", strokeDasharray: "4 3"}),
        Plot.text([line], {x: () => domain[1], y: "y", text: "words", textAnchor: "end", dx: -4, dy: -8, fill: "var(--ink-soft)", stroke: "var(--paper)", strokeWidth: 4}),
      ]),
      ...inOrder.map((curve) => Plot.line(curve.points, {x: "0", y: "1", stroke: color(curve), strokeWidth: curve.own ? 2.6 : 1.6, strokeDasharray: curve.own ? undefined : DASHES[pins.indexOf(curve) % DASHES.length], clip: true})),
      Plot.dot(dots, {x: "x", y: "y", r: 5.5, fill: (dot: {curve: Curve}) => color(dot.curve), stroke: "var(--paper)", strokeWidth: 1.5}),
      Plot.text(dots.filter(({curve}) => !curve.own), {x: "x", y: "y", dy: -12, text: (dot: {curve: Curve}) => dot.curve.letter, fill: "var(--pinned)", stroke: "var(--paper)", strokeWidth: 4, fontWeight: 600}),
      Plot.text(letters, {x: "x", y: "y", text: ({curve}: {curve: Curve}) => curve.letter || "open", fill: ({curve}: {curve: Curve}) => color(curve), stroke: "var(--paper)", strokeWidth: 5, fontSize: 13, fontWeight: 600}),
    ],
  });
}

function spansBetween([from, to]: readonly [number, number]): number[] {
  return Array.from({length: Math.floor((to - from) / 10) + 1}, (_, i) => from + 10 * i);
}

/** The curves' numbers at some places, by straight lines between what was computed. */
function tableAt(curves: readonly Curve[], places: readonly number[], first: string, unit: string, digits: number): FigureTable {
  return {
    columns: [first, ...curves.map(({letter, own, name}) => `${own ? "Open" : letter}: ${name}, ${unit}`)],
    rows: places.map((at) => [String(at), ...curves.map(({points}) => valueAt(points, at, digits))]),
  };
}

function valueAt(points: Curve["points"], at: number, digits: number): string {
  const after = points.findIndex(([x]) => x >= at);
  const [right, left] = [points[after], points[after - 1]];
  if (!right) return "";
  if (right[0] === at || !left) return right[0] === at ? decimals(right[1], digits) : "";
  return decimals(left[1] + ((right[1] - left[1]) * (at - left[0])) / (right[0] - left[0]), digits);
}
