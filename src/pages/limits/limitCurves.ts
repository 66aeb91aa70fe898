import * as Plot from "@observablehq/plot";
import {governingRuns} from "../../lib/deck/reach.js";
import {LOAD_LIMITS, type LimitName} from "../../lib/deck/limits.js";
import type {EnvelopePoint, GateStretch, LimitCell, LimitCurves} from "../../lib/deck/limitCurves.js";
import {decimals, feetText} from "../../lib/units.js";
import {svgElement, uniqueId} from "../../components/dom.js";
import {limitPart} from "../../components/drawings/parts.js";
import {textWidth} from "../../components/drawings/placement.js";
import {lights} from "../../components/charts/lights.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {LEAST_WIDTH_PX, beyondCurve, ledLabels, overlap, place, takenByLed, type ChartPoint, type FrameMark, type LedLabel, type Taken} from "../../components/charts/marks.js";

/** What {@link limitCurvesChart} draws. */
export interface LimitPicture {
  readonly curves: LimitCurves;
  /** The limits that are switched on. */
  readonly chosen: readonly LimitName[];
  /** The least of them at each span. */
  readonly envelope: readonly EnvelopePoint[];
  readonly spanFt: number;
  readonly demandPsf: number;
  readonly spansFt: readonly [number, number];
  readonly mostPsf: number;
}

/** Height of the strip of a gate, as a share of the highest load of the chart. */
const STRIP_SHARE = 0.065;
/** Higher than this times the picture no curve is drawn: a limit that hardly binds may allow more than a drawing can hold. */
const FAR_ABOVE = 100;

/** The curve of every limit, the least of those that are switched on, and where gates are not passed. */
export function limitCurvesChart(picture: LimitPicture, widthPx: number): SVGSVGElement | HTMLElement {
  const {curves, chosen, envelope, spanFt, demandPsf, spansFt, mostPsf} = picture;
  const narrow = widthPx < 480;
  const on = (name: LimitName) => chosen.includes(name);
  const strips = curves.gates.filter(({name}) => on(name));
  const rows = [...new Set(strips.map(({name}) => name))];
  const belowPsf = -rows.length * STRIP_SHARE * mostPsf;
  const bounding = LOAD_LIMITS.filter((name) => curves.cells.some(({limitsPsf}) => limitsPsf[name] !== undefined));
  const reaches = bounding.filter(on).flatMap((name) => {
    const reachFt = passes(above(curves.cells, name), demandPsf);
    return reachFt === undefined || reachFt > spansFt[1] - 2 || reachFt <= spansFt[0] ? [] : [{name, reachFt}];
  });
  const names = reaches.map(({name, reachFt}): LedLabel => ({
    at: [reachFt, demandPsf], text: `${LIMIT_LOOKS[name].letter} ${name}${narrow ? "" : `, to ${decimals(reachFt)} ft`}`, own: name === envelope.find((point) => point.spanFt >= reachFt)?.governs,
  }));
  const widthOf = (text: string) => textWidth(text, 12.5) * 1.02;
  const needed = `this floor needs ${decimals(demandPsf)} psf`;
  const points = envelope.map((point): ChartPoint => [point.spanFt, point.safeLoadPsf]);
  const stepPsf = mostPsf > 400 ? 100 : mostPsf > 150 ? 50 : 20;
  const at = (x: number, y: number, text: string, options: Plot.TextOptions) =>
    Plot.text([[x, y]], {x: "0", y: "1", text: () => text, fill: "var(--ink)", stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5, ...options});
  return Plot.plot({
    width: Math.max(LEAST_WIDTH_PX, widthPx), height: Math.min(480, Math.max(380, widthPx * 0.66)) + rows.length * 20,
    marginLeft: 44, marginTop: 26, marginRight: 8, marginBottom: 40,
    x: {label: "span, ft", domain: spansFt, ticks: narrow ? 5 : 10, grid: true},
    y: {label: "superimposed load that each limit allows, psf", domain: [belowPsf, mostPsf], ticks: Array.from({length: Math.floor(mostPsf / stepPsf) + 1}, (_, i) => i * stepPsf), grid: true},
    marks: [
      Plot.ruleY([0], {stroke: "var(--ink)", strokeWidth: 1}),
      beyondCurve(points, "var(--edge)"),
      Plot.line(points, {x: "0", y: "1", stroke: "var(--accent)", strokeOpacity: 0.22, strokeWidth: 10, clip: true}),
      ...bounding.map((name) => Plot.line(above(curves.cells, name), {
        x: "spanFt", y: ({psf}: Point) => Math.min(psf, FAR_ABOVE * mostPsf), stroke: LIMIT_LOOKS[name].color, strokeDasharray: LIMIT_LOOKS[name].dash, strokeWidth: 1.5, strokeOpacity: on(name) ? 0.9 : 0.25, clip: true, ...lights(limitPart(name)),
      })),
      ...governingRuns(envelope).map(({governs, cells}) => Plot.line(cells, {
        x: "spanFt", y: "safeLoadPsf", stroke: LIMIT_LOOKS[governs].color, strokeDasharray: LIMIT_LOOKS[governs].dash, strokeWidth: 3.2, clip: true, ...lights(limitPart(governs)),
      })),
      Plot.ruleY([demandPsf], {stroke: "var(--load)", strokeWidth: 1.6}),
      at(spansFt[0], demandPsf, needed, {textAnchor: "start", dx: 5, dy: 10, fill: "var(--load)"}),
      Plot.ruleX([spanFt], {y1: 0, y2: demandPsf, stroke: "var(--accent)", strokeWidth: 1.4}),
      Plot.dot([[spanFt, demandPsf]], {x: "0", y: "1", r: 6, fill: "var(--accent)", stroke: "var(--paper)", strokeWidth: 1.5}),
      at(spanFt, 0, feetText(spanFt), {dy: -9, dx: -5, textAnchor: "end", fill: "var(--accent)", fontWeight: 600}),
      gateStrips(strips, rows, -STRIP_SHARE * mostPsf),
      ledLabels(names, widthOf),
      letters(curves.cells, bounding.filter(on), spansFt, (_index, scales, _channels, dimensions) => {
        const [left, line] = place(scales, [spansFt[0], demandPsf]);
        return [...takenByLed(names, widthOf, scales, dimensions), {left, right: left + 5 + widthOf(needed), top: line, bottom: line + 20}];
      }),
    ],
  });
}

interface Point {
  readonly spanFt: number;
  readonly psf: number;
}

/** A limit's curve down to where it allows nothing. */
function above(cells: readonly LimitCell[], name: LimitName): Point[] {
  const all = cells.flatMap(({spanFt, limitsPsf}): Point[] => {
    const psf = limitsPsf[name];
    return psf === undefined ? [] : [{spanFt, psf}];
  });
  const end = all.findIndex(({psf}) => psf < 0);
  if (end <= 0) return end === 0 ? [] : all;
  const [from, to] = [all[end - 1] as Point, all[end] as Point];
  return [...all.slice(0, end), {spanFt: from.spanFt + ((to.spanFt - from.spanFt) * from.psf) / (from.psf - to.psf), psf: 0}];
}

/** The last span at which a falling curve passes a load, by straight lines; undefined where it does not. */
function passes(points: readonly Point[], loadPsf: number): number | undefined {
  for (let i = points.length - 1; i > 0; i--) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    if (a.psf >= loadPsf && b.psf < loadPsf) return a.spanFt + ((b.spanFt - a.spanFt) * (a.psf - loadPsf)) / (a.psf - b.psf);
  }
  return undefined;
}

/** Half the room that a letter takes on its curve, px, and how far down its curve it moves at a time to find it free. */
const LETTER_PX = {across: 8, up: 9, step: 4} as const;

/**
 * The letter of each curve as high as it comes into the picture without standing on another letter or on words, found on
 * the paper: the first free place down the curve.
 */
function letters(cells: readonly LimitCell[], names: readonly LimitName[], [fromFt, toFt]: readonly [number, number], takenBy: (...paper: Parameters<FrameMark>) => Taken[]): FrameMark {
  return (...paper) => {
    const [, scales, , {marginTop}] = paper;
    const x = scales.x as (value: number) => number;
    const y = scales.y as (value: number) => number;
    const [floorPx, psfPerPx] = [y(0), 1 / (y(0) - y(1))];
    const {across, up, step} = LETTER_PX;
    const taken = takenBy(...paper);
    const group = svgElement("g", {"font-size": 13.5, "font-weight": 600, "text-anchor": "middle"});
    const placesOf = (name: LimitName) => {
      const points = above(cells, name);
      const places: Taken[] = [];
      for (let at = marginTop + up; at < floorPx - up; at += step) {
        const spanFt = passes(points, (floorPx - at) * psfPerPx);
        if (spanFt === undefined || spanFt < fromFt || spanFt > toFt) continue;
        places.push({left: x(spanFt) - across, right: x(spanFt) + across, top: at - up, bottom: at + up});
      }
      return places;
    };
    const all = names.map((name) => ({name, places: placesOf(name)})).sort((a, b) => (a.places[0]?.left ?? 0) - (b.places[0]?.left ?? 0));
    for (const {name, places} of all) {
      const free = places.find((place) => !taken.some((other) => overlap(place, other))) ?? places[0];
      if (!free) continue;
      taken.push(free);
      group.append(svgElement("text", {
        x: (free.left + free.right) / 2, y: (free.top + free.bottom) / 2, dy: "0.35em", class: "limit-letter", fill: LIMIT_LOOKS[name].color,
        stroke: "var(--paper)", "stroke-width": 5, "paint-order": "stroke", "stroke-linejoin": "round",
      }, LIMIT_LOOKS[name].letter));
    }
    return group;
  };
}

/** Hatched strips below the level of no load, one row for each gate, over the spans at which it is not passed. */
function gateStrips(stretches: readonly GateStretch[], rows: readonly LimitName[], rowPsf: number): FrameMark {
  return (_index, scales, _channels, {width, marginLeft, marginRight}) => {
    if (stretches.length === 0) return null;
    const x = scales.x as (value: number) => number;
    const y = scales.y as (value: number) => number;
    const hatch = uniqueId("gate");
    const group = svgElement("g", {"font-size": 12.5}, svgElement("pattern", {id: hatch, width: 6, height: 6, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)"},
      svgElement("path", {d: "M0 0V6", stroke: "var(--fails)", "stroke-width": 2.2})));
    for (const {name, fromFt, toFt} of stretches) {
      const row = rows.indexOf(name);
      const [top, bottom] = [y(row * rowPsf) + 3, y((row + 1) * rowPsf) - 1];
      const [left, right] = [Math.max(marginLeft, x(fromFt)), Math.min(x(toFt), width - marginRight)];
      if (right <= left) continue;
      const words = `${LIMIT_LOOKS[name].letter} ${name}: not passed`;
      const room = textWidth(words, 12.5) * 1.1 + 12;
      const from = Math.max(marginLeft, Math.min(left, width - marginRight - room));
      group.append(
        svgElement("rect", {x: left, y: top, width: Math.max(1, right - left), height: bottom - top, fill: `url(#${hatch})`, stroke: "var(--fails)", "stroke-width": 1}),
        svgElement("text", {
          x: from + 6, y: (top + bottom) / 2, dy: "0.35em", "text-anchor": "start", fill: "var(--ink)", "font-weight": 600, stroke: "var(--paper)", "stroke-width": 5, "paint-order": "stroke", "stroke-linejoin": "round",
        }, words),
      );
    }
    return group;
  };
}
