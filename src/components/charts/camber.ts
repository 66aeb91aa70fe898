import * as Plot from "@observablehq/plot";
import type {CamberCause, CamberPart, CamberStage} from "../../lib/member/camberParts.js";
import type {CamberPoint} from "../../lib/member/camber.js";
import {decimals} from "../../lib/units.js";
import {svgElement} from "../dom.js";
import {spread} from "../drawings/placement.js";
import {lights, lightsEach} from "./lights.js";
import {LEAST_WIDTH_PX, place, type FrameMark} from "./marks.js";

type Moment = "releaseIn" | "erectionIn" | "toppedIn" | "longTermIn";

/** The moments with their words and lines; the same lines as in the elevation. */
const MOMENTS: readonly {readonly key: Moment; readonly words: string; readonly color: string; readonly dash?: string; readonly width: number; readonly part: string}[] = [
  {key: "releaseIn", words: "strands cut", color: "var(--ink-soft)", dash: "2 3", width: 1.6, part: "camber-release"},
  {key: "erectionIn", words: "at erection", color: "var(--ink)", dash: "8 4", width: 1.8, part: "camber-erection"},
  {key: "toppedIn", words: "topping cast", color: "var(--concrete-site-edge)", width: 2.2, part: "camber-topped"},
  {key: "longTermIn", words: "long term", color: "var(--accent)", width: 2.4, part: "camber-long"},
];

/** Rise of the member above the line between its ends, along the span, at each moment of its life. */
export function camberChart(points: readonly CamberPoint[], spanFt: number, topped: boolean, widthPx: number): SVGSVGElement | HTMLElement {
  const moments = MOMENTS.filter(({key}) => topped || key !== "toppedIn");
  const values = moments.flatMap(({key}) => points.map((point) => point[key]));
  const [least, most] = [Math.min(0, ...values), Math.max(0.25, ...values)];
  const room = (most - least) * 0.12;
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const middle = points[Math.floor(points.length / 2)];
  const names = moments.map((moment) => ({...moment, at: spanFt / 2, valueIn: middle?.[moment.key] ?? 0})).sort((a, b) => b.valueIn - a.valueIn);
  const columns = width < 480 ? 1 : 2;
  const keyPx = Math.ceil(names.length / columns) * KEY_ROW_PX;
  return Plot.plot({
    width, height: Math.min(340, Math.max(280, width * 0.5)) + keyPx, marginLeft: 48, marginTop: 26 + keyPx, marginBottom: 40,
    x: {label: "along the span, ft", domain: [0, spanFt], ticks: 8},
    y: {label: "rise above level, in", domain: [least - room, most + room], grid: true, ticks: 6},
    marks: [
      Plot.ruleY([0], {stroke: "var(--ink)", strokeWidth: 1.2}),
      ...moments.map(({key, color, dash, width: strokeWidth, part}) =>
        Plot.line(points, {x: (point: CamberPoint) => point.share * spanFt, y: key, stroke: color, strokeDasharray: dash, strokeWidth, ...lights(part)})),
      momentKey(names, columns),
    ],
  });
}

const KEY_ROW_PX = 18;

/**
 * The curves' names and values above the chart, each with a piece of its line, from the highest at midspan down: near
 * midspan the curves lie too close for words between them.
 */
function momentKey(names: readonly (typeof MOMENTS[number] & {at: number; valueIn: number})[], columns: number): FrameMark {
  return (_index, scales, _channels, {width, marginLeft, marginRight, marginTop}) => {
    const group = svgElement("g", {"font-size": 13, "text-anchor": "start"});
    const rows = Math.ceil(names.length / columns);
    names.forEach(({words, color, dash, width: strokeWidth, at, valueIn, part}, i) => {
      const x = marginLeft + 4 + Math.floor(i / rows) * ((width - marginLeft - marginRight) / columns);
      const y = marginTop - rows * KEY_ROW_PX + (i % rows) * KEY_ROW_PX + 4;
      const [crownX, crownY] = place(scales, [at, valueIn]);
      group.append(
        svgElement("path", {d: `M${x} ${y}h30`, stroke: color, "stroke-width": strokeWidth, "stroke-dasharray": dash ?? "none", fill: "none"}),
        svgElement("text", {x: x + 38, y, dy: "0.35em", fill: "var(--ink)", "data-part": part}, `${words}, ${decimals(valueIn, 2)} in`),
        svgElement("circle", {cx: crownX, cy: crownY, r: 3, fill: color}),
      );
    });
    return group;
  };
}

const STAGES: Readonly<Record<CamberStage, string>> = {"release": "strands cut", "erection": "set", "topped": "topping cast", "long term": "long term"};
const CAUSES: Readonly<Record<CamberCause, {letter: string; color: string; part?: string}>> = {
  "strands": {letter: "strands", color: "var(--steel)", part: "strand"},
  "own weight": {letter: "own weight", color: "var(--concrete-plant-edge)", part: "precast"},
  "topping": {letter: "topping", color: "var(--concrete-site-edge)", part: "topping"},
  "superimposed dead load": {letter: "dead load", color: "var(--load)"},
};

/** What lifts and what pushes down at each moment, side by side about the level line; the tick is the sum. */
export function camberPartsChart(parts: readonly CamberPart[], sums: Readonly<Record<CamberStage, number>>, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const stages = [...new Set(parts.map((part) => part.stage))];
  // Sags lie end to end to the left of the line, the lift to its right.
  const bars = stages.flatMap((stage) => {
    let left = 0;
    return parts.filter((part) => part.stage === stage).map((part) => {
      const from = part.movementIn < 0 ? left : 0;
      const to = from + part.movementIn;
      if (part.movementIn < 0) left = to;
      return {...part, from, to, stageName: STAGES[stage]};
    });
  });
  const last = stages.at(-1);
  return Plot.plot({
    width, height: 54 + 46 * stages.length + 22, marginLeft: 84, marginTop: 34, marginRight: 16, marginBottom: 40,
    x: {label: "movement at midspan, in", grid: true, ticks: 6}, y: {domain: stages.map((stage) => STAGES[stage]), label: null, tickSize: 0},
    marks: [
      Plot.barX(bars, {x1: "from", x2: "to", y: "stageName", fill: (bar: CamberPart) => CAUSES[bar.cause].color, fillOpacity: 0.75, stroke: "var(--paper)", insetTop: 6, insetBottom: 6, ...lightsEach(bars, (bar) => CAUSES[bar.cause].part)}),
      Plot.ruleX([0], {stroke: "var(--ink)"}),
      Plot.tickX(stages, {x: (stage: CamberStage) => sums[stage], y: (stage: CamberStage) => STAGES[stage], stroke: "var(--accent)", strokeWidth: 3}),
      Plot.text(stages, {
        x: (stage: CamberStage) => sums[stage], y: (stage: CamberStage) => STAGES[stage], text: (stage: CamberStage) => `${decimals(sums[stage], 2)} in`,
        dx: 6, textAnchor: "start", fill: "var(--ink)", stroke: "var(--paper)", strokeWidth: 4, fontWeight: 600, fontSize: 13,
      }),
      causeNames(bars.filter((bar) => bar.stage === last).map((bar) => ({name: CAUSES[bar.cause].letter, color: CAUSES[bar.cause].color, middle: (bar.from + bar.to) / 2}))),
    ],
  });
}

/** The causes' names above the chart, in the order of the last row's bars, each with a swatch. */
function causeNames(names: readonly {name: string; color: string; middle: number}[]): FrameMark {
  return (_index, scales, _channels, {width}) => {
    const spots = names.map((name) => ({...name, x: place(scales, [name.middle, 0])[0]})).sort((a, b) => a.x - b.x);
    const at = spread(spots.map(({x}) => x), spots.map(({name}) => name.length * 7 + 20), 4, width - 4, 6);
    const group = svgElement("g", {"font-size": 12.5, "text-anchor": "middle"});
    spots.forEach(({name, color}, i) => {
      const x = at[i] as number;
      group.append(
        svgElement("rect", {x: x - name.length * 3.4 - 10, y: 7, width: 10, height: 10, fill: color, "fill-opacity": 0.75}),
        svgElement("text", {x: x + 5, y: 16, fill: "var(--ink)"}, name),
      );
    });
    return group;
  };
}
