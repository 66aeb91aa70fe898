import * as Plot from "@observablehq/plot";
import {governingRuns} from "../../lib/deck/reach.js";
import {LOAD_LIMITS, type LimitName} from "../../lib/deck/limits.js";
import type {EnvelopePoint, GateStretch, LimitCell, LimitCurves} from "../../lib/deck/limitCurves.js";
import {decimals, feetText} from "../../lib/units.js";
import {svgElement, uniqueId} from "../../components/dom.js";
import {textWidth} from "../../components/drawings/placement.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {LEAST_WIDTH_PX, beyondCurve, ledLabels, type ChartPoint, type FrameMark, type LedLabel} from "../../components/charts/marks.js";

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
/** Of two rows in which letters stand on their curves, as shares of the highest load: neighbors would touch in one. */
const LETTER_ROWS = [0.93, 0.84] as const;

/** Height of one limit's name in the list at the top, as a share of the highest load: letters stand below the list. */
const NAME_SHARE = 0.05;

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
    const reachFt = lastSpanFt(curves.cells, name, demandPsf);
    return reachFt === undefined || reachFt > spansFt[1] - 2 || reachFt <= spansFt[0] ? [] : [{name, reachFt}];
  });
  const points = envelope.map((point): ChartPoint => [point.spanFt, point.safeLoadPsf]);
  const stepPsf = mostPsf > 400 ? 100 : mostPsf > 150 ? 50 : 20;
  const at = (x: number, y: number, text: string, options: Plot.TextOptions) =>
    Plot.text([[x, y]], {x: "0", y: "1", text: () => text, stroke: "var(--paper)", strokeWidth: 4, fontSize: 12.5, ...options});
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
        x: "spanFt", y: ({psf}: Point) => Math.min(psf, FAR_ABOVE * mostPsf), stroke: LIMIT_LOOKS[name].color, strokeDasharray: LIMIT_LOOKS[name].dash, strokeWidth: 1.5, strokeOpacity: on(name) ? 0.9 : 0.25, clip: true,
      })),
      ...governingRuns(envelope).map(({governs, cells}) => Plot.line(cells, {
        x: "spanFt", y: "safeLoadPsf", stroke: LIMIT_LOOKS[governs].color, strokeDasharray: LIMIT_LOOKS[governs].dash, strokeWidth: 3.2, clip: true,
      })),
      letters(curves.cells, bounding.filter(on), mostPsf, {fromFt: Math.min(...reaches.map(({reachFt}) => reachFt)), share: NAME_SHARE * reaches.length, toFt: spansFt[1]}),
      Plot.ruleY([demandPsf], {stroke: "var(--load)", strokeWidth: 1.6}),
      at(spansFt[0], demandPsf, `this floor needs ${decimals(demandPsf)} psf`, {textAnchor: "start", dx: 5, dy: 10, fill: "var(--load)"}),
      Plot.ruleX([spanFt], {y1: 0, y2: demandPsf, stroke: "var(--accent)", strokeWidth: 1.4}),
      Plot.dot([[spanFt, demandPsf]], {x: "0", y: "1", r: 6, fill: "var(--accent)", stroke: "var(--paper)", strokeWidth: 1.5}),
      at(spanFt, 0, feetText(spanFt), {dy: -9, dx: -5, textAnchor: "end", fill: "var(--accent)", fontWeight: 600}),
      gateStrips(strips, rows, -STRIP_SHARE * mostPsf),
      ledLabels(reaches.map(({name, reachFt}): LedLabel => ({
        at: [reachFt, demandPsf], text: `${LIMIT_LOOKS[name].letter} ${name}${narrow ? "" : `, to ${decimals(reachFt)} ft`}`, own: name === envelope.find((point) => point.spanFt >= reachFt)?.governs,
      })), (text) => textWidth(text, 12.5) * 1.02),
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

/** The span at which a falling curve passes a load, by straight lines; undefined where it does not. */
function lastSpanFt(cells: readonly LimitCell[], name: LimitName, loadPsf: number): number | undefined {
  const points = above(cells, name);
  for (let i = points.length - 1; i > 0; i--) {
    const [a, b] = [points[i - 1] as Point, points[i] as Point];
    if (a.psf >= loadPsf && b.psf < loadPsf) return a.spanFt + ((b.spanFt - a.spanFt) * (a.psf - loadPsf)) / (a.psf - b.psf);
  }
  return undefined;
}

interface Letter extends Point {
  readonly name: LimitName;
}

/** The letter of each curve where it comes into the picture, or below the list of names where it comes in behind that. */
function letters(cells: readonly LimitCell[], names: readonly LimitName[], mostPsf: number, list: {readonly fromFt: number; readonly share: number; readonly toFt: number}): Plot.Markish {
  const crossing = (name: LimitName, share: number): Letter | undefined => {
    const spanFt = lastSpanFt(cells, name, share * mostPsf);
    return spanFt === undefined ? undefined : {name, spanFt, psf: share * mostPsf};
  };
  const entering = (name: LimitName, share: number): Letter | undefined => {
    const there = crossing(name, share);
    const below = there && there.spanFt > list.fromFt ? crossing(name, share - list.share) : undefined;
    return below && below.spanFt < list.toFt ? below : there;
  };
  const [upper, lower] = LETTER_ROWS;
  const high = names.flatMap((name) => entering(name, upper) ?? []).sort((a, b) => a.spanFt - b.spanFt);
  // A curve that never is so high begins at its left end.
  const low = names.filter((name) => !high.some((letter) => letter.name === name)).flatMap((name): Letter[] => {
    const [start] = above(cells, name);
    return start && start.psf < mostPsf ? [{name, spanFt: start.spanFt, psf: start.psf}] : [];
  });
  const placed = [...high.map((letter, i) => (i % 2 ? (entering(letter.name, lower) ?? letter) : letter)), ...low];
  const look = ({name}: Letter) => LIMIT_LOOKS[name];
  return Plot.text(placed, {
    x: "spanFt", y: "psf", text: (letter: Letter) => look(letter).letter, fill: (letter: Letter) => look(letter).color, stroke: "var(--paper)", strokeWidth: 5, fontSize: 13.5, fontWeight: 600,
  });
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
      const room = textWidth(words, 12.5) + 12;
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
