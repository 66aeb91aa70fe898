import * as Plot from "@observablehq/plot";
import type {Distribution} from "../../lib/topping/distribution.js";
import type {CauseOfSpread, SpreadCause} from "../../lib/topping/spreadCauses.js";
import {decimals, percent} from "../../lib/units.js";
import {svgElement} from "../../components/dom.js";
import {textWidth} from "../../components/drawings/placement.js";
import {LEAST_WIDTH_PX, place, type FrameMark} from "../../components/charts/marks.js";

/** A value to which the pieces are held. */
export interface SpreadMark {
  readonly at: number;
  readonly words: string;
  /** The design's own value, or a limit. */
  readonly kind: "design" | "limit";
}

export interface SpreadChart {
  readonly of: Distribution;
  /** What the values are, with their unit. */
  readonly label: string;
  /** What is counted: pieces, pairs, orders. */
  readonly counted: string;
  readonly marks: readonly SpreadMark[];
  /** Whether a value misses its limit. */
  readonly misses?: (value: number) => boolean;
}

const ROW_PX = 17;

/** How many pieces have which value, with the design's own and the limits. Bars that miss a limit are hollow. */
export function spreadChart({of, label, counted, marks, misses = () => false}: SpreadChart, widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const ends = [of.least, of.greatest, ...marks.map(({at}) => at)];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const room = Math.max(1e-3, (most - least) * 0.04);
  // Pieces that are all alike make one bar, which is given a breadth to be seen.
  const bars = of.histogram.map((bar) => ({...bar, ...(of.histogram.length === 1 ? {from: bar.from - room / 2, to: bar.to + room / 2} : {})}));
  const missing = (bar: {from: number; to: number}) => misses((bar.from + bar.to) / 2);
  return Plot.plot({
    width, height: 194 + ROW_PX * marks.length, marginLeft: 50, marginRight: 12, marginTop: 8 + ROW_PX * marks.length, marginBottom: 44,
    x: {label, domain: [least - room, most + room], ticks: Math.min(8, width / 60)},
    y: {label: counted, ticks: 4, grid: true, labelAnchor: "top", labelArrow: "none", labelOffset: 46},
    marks: [
      Plot.rectY(bars, {
        x1: "from", x2: "to", y: "count", insetLeft: 0.5, insetRight: 0.5,
        fill: (bar) => (missing(bar) ? "var(--paper)" : "var(--concrete-plant-edge)"), fillOpacity: 0.75,
        stroke: (bar) => (missing(bar) ? "var(--fails)" : "var(--concrete-plant-edge)"), strokeWidth: 1,
      }),
      Plot.ruleY([0], {stroke: "var(--ink)"}),
      markLines(marks),
    ],
  });
}

const COLORS: Readonly<Record<SpreadMark["kind"], string>> = {design: "var(--accent)", limit: "var(--fails)"};

/**
 * A line at each value, with its name in a row of its own above the bars. Names stand to the right of their lines, the
 * leftmost on top, so that none is crossed; if one has no room there, all stand to the left and the rightmost is on top.
 */
function markLines(marks: readonly SpreadMark[]): FrameMark {
  return (_index, scales, _channels, {width, height, marginTop, marginBottom, marginLeft, marginRight}) => {
    const group = svgElement("g", {"font-size": 12.5});
    const spots = marks.map((mark) => ({...mark, x: place(scales, [mark.at, 0])[0], long: textWidth(mark.words, 12.5) + 8}));
    const fitsRight = spots.every(({x, long}) => x + long < width - marginRight);
    const fitsLeft = spots.every(({x, long}) => x - long > marginLeft);
    spots.sort((a, b) => (fitsLeft && !fitsRight ? b.x - a.x : a.x - b.x)).forEach(({x, long, words, kind}, row) => {
      const y = marginTop - ROW_PX * (marks.length - row) + 6;
      const right = fitsLeft && !fitsRight ? false : x + long < width - marginRight;
      const start = right ? x + 5 : Math.max(marginLeft + long, x - 5);
      group.append(
        svgElement("path", {
          d: `M${x} ${y - 4}V${height - marginBottom}`, fill: "none", stroke: COLORS[kind], "stroke-width": kind === "design" ? 2.2 : 1.6,
          "stroke-dasharray": kind === "design" ? "none" : "6 3",
        }),
        svgElement("text", {x: start, y, dy: "0.35em", "text-anchor": right ? "start" : "end", fill: kind === "design" ? COLORS.design : "var(--ink)", stroke: "var(--paper)", "stroke-width": 4, "paint-order": "stroke", "stroke-linejoin": "round"}, words),
      );
    });
    return group;
  };
}

/** What each cause is called on the page. */
export const CAUSE_WORDS: Readonly<Record<SpreadCause, string>> = {
  "stiffness": "stiffness", "release strength": "strength at release", "force": "force in the strands", "age": "age when set", "weight": "weight", "length": "length",
};

/** Room for the names and the numbers beside the bars, px. */
const LEAST_CAUSES_PX = 300;

/** Each cause's share of the variance, largest first, with the deviation that it makes alone. */
export function causesChart(causes: readonly CauseOfSpread[], widthPx: number): SVGSVGElement | HTMLElement {
  const width = Math.max(LEAST_CAUSES_PX, widthPx);
  const names = causes.map(({cause}) => CAUSE_WORDS[cause]);
  const most = Math.max(0.05, ...causes.map(({varianceShare}) => varianceShare));
  return Plot.plot({
    width, height: 46 + 30 * causes.length, marginLeft: 132, marginRight: 118, marginTop: 4, marginBottom: 42,
    x: {label: "share of the variance, %", domain: [0, 100 * most], ticks: 4, grid: true},
    y: {domain: names, label: null, tickSize: 0},
    marks: [
      Plot.barX(causes, {x: ({varianceShare}: CauseOfSpread) => 100 * varianceShare, y: ({cause}: CauseOfSpread) => CAUSE_WORDS[cause], fill: "var(--concrete-plant-edge)", fillOpacity: 0.75, insetTop: 4, insetBottom: 4}),
      Plot.ruleX([0], {stroke: "var(--ink)"}),
      Plot.text(causes, {
        x: ({varianceShare}: CauseOfSpread) => 100 * varianceShare, y: ({cause}: CauseOfSpread) => CAUSE_WORDS[cause],
        text: ({varianceShare, deviationIn}: CauseOfSpread) => `${percent(varianceShare)}, ${decimals(deviationIn, 3)} in`,
        textAnchor: "start", dx: 6, fill: "var(--ink)", fontSize: 12.5,
      }),
    ],
  });
}
