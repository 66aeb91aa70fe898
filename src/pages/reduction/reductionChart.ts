import * as Plot from "@observablehq/plot";
import type {FloorLoads, RoomLoad} from "../../lib/loads/floorLoads.js";
import {LEAST_FACTOR, LEAST_INFLUENCE_FT2, SEVERAL_FLOORS_FACTOR} from "../../lib/loads/reduction.js";
import {influenceOf, reductionCurve} from "../../lib/loads/reductionCurve.js";
import {textWidth} from "../../components/drawings/placement.js";
import {elementPart} from "./reductionFinding.js";
import {lights, lightsEach} from "../../components/charts/lights.js";
import {placeLabels} from "./placeLabels.js";

const FROM_FT2 = 100;
const MARGIN = {left: 46, right: 16, top: 44, bottom: 40} as const;

interface Dot {
  readonly influenceFt2: number;
  readonly factor: number;
  readonly label: string;
  /** The name under which it lights. */
  readonly part: string;
}

/** The factor against influence area, with this design's elements where the chosen room's load puts them. */
export function reductionChart(loads: FloorLoads, room: RoomLoad, widthPx: number): Element {
  const {elements} = loads;
  const to = Math.max(12000, 1.3 * Math.max(...elements.map(influenceOf)));
  const heightPx = Math.max(330, Math.min(420, widthPx * 0.6));
  const dots = dotsOf(loads, room);
  const limited = room.rule === "heavy" || room.rule === "garage";
  const x = (area: number) => MARGIN.left + ((widthPx - MARGIN.left - MARGIN.right) * Math.log(area / FROM_FT2)) / Math.log(to / FROM_FT2);
  const y = (factor: number) => MARGIN.top + ((heightPx - MARGIN.top - MARGIN.bottom) * (1.05 - factor)) / (1.05 - 0.3);
  const floors = [{factor: LEAST_FACTOR.oneFloor, words: "least, one floor"}, {factor: LEAST_FACTOR.moreFloors, words: "least, two floors or more"}];
  const places = placeLabels(dots.map((dot) => ({x: x(dot.influenceFt2), y: y(dot.factor), label: dot.label})), 13, [MARGIN.left + 2, widthPx],
    [
      ...floors.map(({factor, words}) => ({left: x(LEAST_INFLUENCE_FT2), right: x(LEAST_INFLUENCE_FT2) + 5 + textWidth(words, 12), top: y(factor) - 14, bottom: y(factor)})),
      // The level lines, which run through to the right.
      {left: x(LEAST_INFLUENCE_FT2), right: widthPx, top: y(LEAST_FACTOR.oneFloor) - 1, bottom: y(LEAST_FACTOR.oneFloor) + 1},
      ...(limited ? [{left: MARGIN.left, right: widthPx, top: y(SEVERAL_FLOORS_FACTOR) - 1, bottom: y(SEVERAL_FLOORS_FACTOR) + 1}] : []),
    ]);
  const curve = (floors: 1 | 2) => reductionCurve(floors, FROM_FT2, to);
  const soft = "var(--ink-soft)";
  const paper = "var(--paper)";
  return Plot.plot({
    width: widthPx, height: heightPx, marginLeft: MARGIN.left, marginRight: MARGIN.right, marginTop: MARGIN.top, marginBottom: MARGIN.bottom,
    x: {type: "log", domain: [FROM_FT2, to], label: "influence area, ft²", ticks: (widthPx < 480 ? [100, 400, 1000, 4000, 10000] : [100, 200, 400, 1000, 2000, 4000, 10000]).filter((tick) => tick <= to), tickFormat: (d: number) => d.toLocaleString("en-US")},
    y: {domain: [0.3, 1.05], label: "live load that counts, as a share of the full load", ticks: [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1], tickFormat: (d: number) => d.toFixed(1)},
    marks: [
      Plot.rect([0], {x1: FROM_FT2, x2: LEAST_INFLUENCE_FT2, y1: 0.3, y2: 1.05, fill: "var(--sunken)"}),
      Plot.text([0], {x: FROM_FT2, y: 0.32, text: () => "too small", textAnchor: "start", dx: 5, dy: -4, fill: soft}),
      Plot.ruleX([LEAST_INFLUENCE_FT2], {stroke: "var(--ink)", strokeWidth: 1, y1: 0.3, y2: 1.05}),
      Plot.text([0], {x: LEAST_INFLUENCE_FT2, y: 0.32, text: () => `${LEAST_INFLUENCE_FT2} ft²`, textAnchor: "start", dx: 5, dy: -4, fill: soft}),
      Plot.ruleY([LEAST_FACTOR.oneFloor, LEAST_FACTOR.moreFloors], {x1: LEAST_INFLUENCE_FT2, x2: to, stroke: "var(--rule)", ...lights("least share")}),
      Plot.text(
        floors,
        {x: LEAST_INFLUENCE_FT2, y: "factor", text: "words", textAnchor: "start", dx: 5, dy: -7, fill: soft, stroke: paper, strokeWidth: 4},
      ),
      ...(limited
        ? [
            Plot.ruleY([SEVERAL_FLOORS_FACTOR], {x1: FROM_FT2, x2: to, stroke: "var(--load)", strokeDasharray: "5 4"}),
            Plot.text([0], {x: FROM_FT2, y: SEVERAL_FLOORS_FACTOR, text: () => "heavy loads,\ngarages: least", textAnchor: "start", dx: 5, dy: -17, fill: "var(--ink)", stroke: paper, strokeWidth: 4}),
          ]
        : []),
      // Where both curves are one, one line stands for both.
      Plot.line(curve(2).filter((point) => point.factor < LEAST_FACTOR.oneFloor), {x: "influenceFt2", y: "factor", stroke: soft, strokeWidth: 1.5, strokeDasharray: "2 3"}),
      Plot.line(curve(1), {x: "influenceFt2", y: "factor", stroke: "var(--ink)", strokeWidth: limited || room.rule === "no" || room.rule === "in full" ? 1 : 2, ...lights("reduction curve")}),
      Plot.dot(dots, {x: "influenceFt2", y: "factor", r: 5, fill: "var(--accent)", stroke: paper, strokeWidth: 1.5, ...lightsEach(dots, ({part}) => part)}),
      ...dots.map((dot, i) => {
        const place = places[i];
        return Plot.text([dot], {
          x: "influenceFt2", y: "factor", text: "label", dx: place?.dx, dy: place?.dy, textAnchor: place?.anchor,
          fontSize: 13, fontWeight: 600, fill: "var(--accent)", stroke: paper, strokeWidth: 4, ...lightsEach([dot], ({part}) => part),
        });
      }),
    ],
  });
}

/** Elements that fall on one point share a dot and its label. */
function dotsOf(loads: FloorLoads, room: RoomLoad): Dot[] {
  const byPlace = new Map<string, Dot>();
  for (const entry of loads.elements) {
    const found = entry.rooms.find((loaded) => loaded.room === room);
    if (!found) continue;
    const influenceFt2 = influenceOf(entry);
    const {factor} = found.reduction;
    const key = `${influenceFt2.toFixed(1)} ${factor.toFixed(4)}`;
    const before = byPlace.get(key);
    byPlace.set(key, {influenceFt2, factor, label: before ? `${before.label}, ${entry.element}` : entry.element, part: elementPart(loads, entry)});
  }
  return [...byPlace.values()].filter((dot) => dot.influenceFt2 >= FROM_FT2).sort((a, b) => a.influenceFt2 - b.influenceFt2);
}
