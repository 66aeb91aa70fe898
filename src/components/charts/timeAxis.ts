import type {TimeMoment} from "../../lib/prestress/schedule.js";
import {decimals} from "../../lib/units.js";
import {svgElement} from "../dom.js";
import {spread, textWidth} from "../drawings/placement.js";
import {place, type FrameMark} from "./marks.js";

/** Something that happens to the member, on its day. */
export interface TimeEvent {
  readonly moment: TimeMoment;
  readonly day: number;
}

const WORDS: Readonly<Record<TimeMoment, string>> = {release: "cut", erection: "set", topping: "topping", loading: "dead load", end: ""};

/** Options of the axis of time, which counts in tenfolds: most happens in the first weeks. */
export function timeAxis(events: readonly TimeEvent[]) {
  const [first, last] = [events[0]?.day ?? 1, events.at(-1)?.day ?? 10];
  return {
    type: "log" as const, label: "days after casting", labelAnchor: "center" as const, domain: [first, last],
    ticks: [1, 10, 100, 1000, 10000].filter((day) => day >= first && day <= last), tickFormat: (day: number) => decimals(day), tickSize: 4,
  };
}

const SIZE_PX = 12.5;
const GAP_PX = 9;

/** A thin line at the day of each event, and its name above the frame, none over another. */
export function eventLines(events: readonly TimeEvent[]): FrameMark {
  return (_index, scales, _channels, {width, height, marginTop, marginBottom}) => {
    const named = events.filter(({moment}) => WORDS[moment] !== "");
    const xs = named.map(({day}) => (scales.x as (day: number) => number)(day));
    const at = spread(xs, named.map(({moment}) => textWidth(WORDS[moment], SIZE_PX)), 2, width - 2, GAP_PX);
    const group = svgElement("g", {"font-size": SIZE_PX, "text-anchor": "middle"});
    named.forEach(({moment}, i) => {
      const [x, to] = [xs[i] as number, at[i] as number];
      group.append(
        svgElement("path", {d: `M${to} ${marginTop - 15}L${x} ${marginTop - 3}V${height - marginBottom}`, fill: "none", stroke: "var(--ink-soft)", "stroke-width": 0.8, "stroke-dasharray": "3 3"}),
        svgElement("text", {x: to, y: marginTop - 19, fill: "var(--ink)"}, WORDS[moment]),
      );
    });
    return group;
  };
}

/** A name beside the right edge of a chart, led to its height there. */
export interface EdgeName {
  readonly text: string;
  readonly at: number;
  readonly color: string;
  readonly bold?: boolean;
}

/** Names to the right of the frame, each led to its height, none over another. */
export function edgeNames(names: readonly EdgeName[], unit: string): FrameMark {
  return (_index, scales, _channels, {width, height, marginRight, marginTop, marginBottom}) => {
    const spots = names.map((name) => ({...name, y: place(scales, [1, name.at])[1]})).sort((a, b) => a.y - b.y);
    const rows = spread(spots.map(({y}) => y), spots.map(() => 16), marginTop - 8, height - marginBottom + 10, 1);
    const edge = width - marginRight;
    const group = svgElement("g", {"font-size": SIZE_PX, "text-anchor": "start"});
    spots.forEach(({text, y, color, bold}, i) => {
      const to = rows[i] as number;
      group.append(
        svgElement("path", {d: `M${edge + 2} ${y}L${edge + 11} ${to}`, stroke: "var(--edge)", fill: "none"}),
        svgElement("text", {x: edge + 14, y: to, dy: "0.35em", fill: color, "font-weight": bold ? 600 : 400, "data-unit": unit}, text),
      );
    });
    return group;
  };
}
