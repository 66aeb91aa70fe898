import * as Plot from "@observablehq/plot";
import type {DaylightCurvePoint, DaylightParameter, DeskCurvePoint} from "../../lib/daylight/curves.js";
import type {DaylightResult} from "../../lib/daylight/daylight.js";
import {GREATEST_UPSTAND_IN} from "../../lib/daylight/desk.js";
import {THRESHOLDS} from "../../lib/daylight/shares.js";
import {DAYLIGHT_CLASSES, classOf} from "./daylightClasses.js";
import {lights} from "./lights.js";
import {LEAST_WIDTH_PX} from "./marks.js";

/** Beyond this the axis ends: the first feet at the window would flatten all the rest, %. */
const HIGHEST_PERCENT = 12;

const PARTS = [
  {key: "internalPercent", words: "reflected within the room", fill: "var(--concrete-site)"},
  {key: "externalPercent", words: "reflected from outside", fill: "var(--concrete-plant)"},
  {key: "skyPercent", words: "from the sky", fill: "var(--daylight)"},
] as const;

/** Daylight factor over the depth of the floor, its parts upon one another, with the classes of light as a strip below. */
export function factorChart({points, noSkyFt, oppositeNoSkyFt}: DaylightResult, depthFt: number, two: boolean, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const top = Math.min(HIGHEST_PERCENT, Math.max(6, ...points.map((point) => point.factorPercent)));
  const stacked = points.flatMap((point) => {
    let from = 0;
    return PARTS.map(({key, fill, words}) => ({x: point.distanceFt, from: Math.min(top, from), to: Math.min(top, (from += point[key])), fill, words}));
  });
  const runs: {from: number; to: number; kind: (typeof DAYLIGHT_CLASSES)[number]}[] = [];
  const half = depthFt / points.length / 2;
  for (const {distanceFt, factorPercent} of points) {
    const kind = classOf(factorPercent);
    const last = runs.at(-1);
    if (last?.kind === kind) last.to = distanceFt + half;
    else runs.push({from: distanceFt - half, to: distanceFt + half, kind});
  }
  const pxPerFt = (width - 60) / depthFt;
  const middlePercent = points[Math.floor(points.length / 2)]?.factorPercent ?? 0;
  const strip = [-top * 0.14, -top * 0.04] as const;
  const lines = [{y: THRESHOLDS.goodPercent, words: "5: good from here up"}, {y: THRESHOLDS.partialPercent, words: "2: partial"}, {y: THRESHOLDS.littlePercent, words: "1: little"}];
  // From there on no sky is seen, up to the place from which the opposite window shows some, or to the back wall.
  const [skyEnds, skyBegins] = [noSkyFt ?? depthFt, two ? depthFt - (oppositeNoSkyFt ?? depthFt) : depthFt];
  const noSky = skyEnds < skyBegins - 0.01 ? [skyEnds, ...(two ? [skyBegins] : [])] : [];
  return Plot.plot({
    width, height: Math.min(360, Math.max(280, width * 0.5)), marginLeft: 40, marginRight: 14, marginTop: 28, marginBottom: 38,
    x: {label: "from the window wall, ft", domain: [0, depthFt], ticks: Math.max(4, Math.round(width / 90))},
    y: {label: "daylight factor, % of the light outdoors", domain: [strip[0], top], ticks: [0, 1, 2, 5, 10].filter((tick) => tick <= top), grid: true},
    marks: [
      ...PARTS.map(({fill, words}) => Plot.areaY(stacked.filter((one) => one.words === words), {x: "x", y1: "from", y2: "to", fill, fillOpacity: words === "from the sky" ? 0.55 : 1, ...(words === "from the sky" ? lights("sky") : {})})),
      Plot.line(points, {x: "distanceFt", y: (point: {factorPercent: number}) => Math.min(top, point.factorPercent), stroke: "var(--ink)", strokeWidth: 1.6}),
      Plot.ruleY(lines, {y: "y", stroke: "var(--ink-soft)", strokeDasharray: "4 3"}),
      // Between the lowest lines and the curve there is room for one name only.
      Plot.text(lines.slice(0, 2), {x: () => depthFt / 2, y: "y", text: "words", dy: -8, fill: "var(--ink)", stroke: "var(--paper)", strokeWidth: 4}),
      Plot.text(lines.slice(2), {x: () => depthFt / 2, y: "y", text: "words", dy: middlePercent > THRESHOLDS.littlePercent ? 9 : -8, fill: "var(--ink)", stroke: "var(--paper)", strokeWidth: 4}),
      Plot.rect(runs, {x1: "from", x2: "to", y1: () => strip[0], y2: () => strip[1], fill: "var(--daylight)", fillOpacity: (run: {kind: {opacity: number}}) => run.kind.opacity, stroke: "var(--edge)", strokeWidth: 0.8}),
      Plot.text(runs.filter(({from, to}) => (to - from) * pxPerFt > 11), {
        x: (run: {from: number; to: number}) => (run.from + run.to) / 2, y: () => (strip[0] + strip[1]) / 2, fill: "var(--ink)", fontSize: 12,
        text: ({from, to, kind}: {from: number; to: number; kind: {words: string; letter: string}}) => ((to - from) * pxPerFt > 48 ? kind.words : kind.letter),
      }),
      Plot.ruleX(noSky, {stroke: "var(--accent)", strokeWidth: 1.6, strokeDasharray: "7 3", y1: 0, y2: top}),
      Plot.text(noSky.slice(0, 1), {x: () => (skyEnds + skyBegins) / 2, y: () => top * 0.92, text: () => "no sky seen", fill: "var(--accent)", stroke: "var(--paper)", strokeWidth: 4}),
    ],
  });
}

/** The chart's key, as words beside their tints. */
export const FACTOR_PARTS: readonly {readonly words: string; readonly fill: string}[] = PARTS.map(({words, fill}) => ({words, fill: words === "from the sky" ? `color-mix(in srgb, ${fill} 55%, var(--paper))` : fill})).reverse();

const AXES: Readonly<Record<DaylightParameter, {label: string; read: (value: number) => number}>> = {
  depth: {label: "depth of the room, ft", read: (value) => value},
  head: {label: "head of the glass above the floor, ft", read: (value) => value / 12},
  sill: {label: "sill of the glass above the floor, in", read: (value) => value},
};

/** Shares of the floor by class of daylight over one parameter, with the design's own value and the one looked at. */
export function sharesChart(curve: readonly DaylightCurvePoint[], parameter: DaylightParameter, own: number, at: number, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const {label, read} = AXES[parameter];
  const bands = curve.flatMap((point) => {
    let from = 0;
    return DAYLIGHT_CLASSES.map(({key, opacity, words}) => ({x: read(point.value), from, to: (from += 100 * point.shares[key]), opacity, words}));
  });
  const last = curve.at(-1);
  let foot = 0;
  const names = last ? DAYLIGHT_CLASSES.flatMap(({key, words}) => {
    const share = 100 * last.shares[key];
    const y = foot + share / 2;
    foot += share;
    return share > 7 ? [{y, words}] : [];
  }) : [];
  return Plot.plot({
    width, height: Math.min(340, Math.max(270, width * 0.5)), marginLeft: 40, marginRight: 56, marginTop: 30, marginBottom: 38,
    x: {label, domain: [read(curve[0]?.value ?? 0), read(last?.value ?? 1)], ticks: Math.max(4, Math.round(width / 90))},
    y: {label: "share of the floor's depth, %", domain: [0, 100], ticks: 5},
    marks: [
      ...DAYLIGHT_CLASSES.map(({words, opacity}) => Plot.areaY(bands.filter((band) => band.words === words), {x: "x", y1: "from", y2: "to", fill: "var(--daylight)", fillOpacity: opacity})),
      ...DAYLIGHT_CLASSES.slice(0, 3).map(({words}) => Plot.line(bands.filter((band) => band.words === words), {x: "x", y: "to", stroke: "var(--ink)", strokeWidth: 1})),
      Plot.frame({stroke: "var(--edge)", ariaHidden: "true"}),
      Plot.text(names, {x: () => read(last?.value ?? 1), y: "y", text: "words", textAnchor: "start", dx: 5, fill: "var(--ink)"}),
      Plot.ruleX([read(own)], {stroke: "var(--accent)", strokeWidth: 2}),
      Plot.text([read(own)], {x: (x: number) => x, frameAnchor: "top", text: () => "now", dy: -15, fill: "var(--accent)", fontWeight: 600}),
      Plot.ruleX([read(at)], {stroke: "var(--ink)", strokeWidth: 1.6, strokeDasharray: "5 3"}),
    ],
  });
}

/** Direct light on a desk at the window over the height of the sill. */
export function deskChart(curve: readonly DeskCurvePoint[], ownSillIn: number, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const most = Math.max(1, ...curve.map((point) => point.openPercent));
  const [low, high] = [curve[0]?.sillIn ?? 0, curve.at(-1)?.sillIn ?? 60];
  // Before a point that stands near the left edge there is no room for words.
  const before = ownSillIn < GREATEST_UPSTAND_IN && ((ownSillIn - low) / (high - low)) * (width - 58) > 50;
  return Plot.plot({
    width, height: Math.min(320, Math.max(260, width * 0.46)), marginLeft: 40, marginRight: 18, marginTop: 28, marginBottom: 38,
    x: {label: "sill of the glass above the floor, in", domain: [low, high], ticks: 8},
    y: {label: "direct light on the desk, % of that outdoors", domain: [0, most * 1.08], grid: true, ticks: 6},
    marks: [
      Plot.line(curve, {x: "sillIn", y: "openPercent", stroke: "var(--ink-soft)", strokeDasharray: "5 3"}),
      Plot.line(curve, {x: "sillIn", y: "directPercent", stroke: "var(--daylight)", strokeWidth: 3}),
      Plot.ruleX([GREATEST_UPSTAND_IN], {stroke: "var(--ink)", strokeDasharray: "3 2.5"}),
      Plot.text([GREATEST_UPSTAND_IN], {x: (x: number) => x, y: () => most * 0.1, text: () => (width < 480 ? "3 ft: as high\nas practice goes" : "3 ft: as high as practice goes"), textAnchor: "end", dx: -6, dy: width < 480 ? -8 : 0, fill: "var(--ink)", stroke: "var(--paper)", strokeWidth: 4}),
      Plot.dot(curve.filter((point) => point.sillIn === ownSillIn), {x: "sillIn", y: "directPercent", r: 5, fill: "var(--accent)", stroke: "var(--paper)"}),
      Plot.text(curve.filter((point) => point.sillIn === ownSillIn), {x: "sillIn", y: "directPercent", text: () => "this design", dy: ownSillIn < GREATEST_UPSTAND_IN ? 18 : -10, dx: before ? -8 : 8, textAnchor: before ? "end" : "start", fill: "var(--accent)", fontWeight: 600, stroke: "var(--paper)", strokeWidth: 4}),
    ],
  });
}
