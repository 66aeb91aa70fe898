import * as Plot from "@observablehq/plot";
import {LIMITS, type LimitName} from "../../lib/deck/limits.js";
import {feetText} from "../../lib/units.js";
import type {GovernCount} from "./data.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";

/** Share of a column below which its letter has no room. */
const LEAST_LETTER_SHARE = 0.07;

/** A limit's part of the column of a span, as shares of it from the bottom up. */
interface Part {
  readonly spanFt: number;
  readonly governs: LimitName | undefined;
  readonly from: number;
  readonly to: number;
}

/** What governs at each span, as shares of the decks that show; the letter of each limit stands in its part. */
export function governsChart(counts: readonly GovernCount[], widthPx: number): SVGSVGElement | HTMLElement {
  const columns = new Map<number, GovernCount[]>();
  for (const count of counts) columns.set(count.spanFt, [...(columns.get(count.spanFt) ?? []), count]);
  const order = (governs: GovernCount["governs"]) => (governs === undefined ? LIMITS.length : LIMITS.indexOf(governs));
  const parts = [...columns].flatMap(([spanFt, column]) => {
    const all = column.reduce((sum, {count}) => sum + count, 0);
    let from = 0;
    return [...column].sort((a, b) => order(a.governs) - order(b.governs)).map(({governs, count}): Part => {
      const part = {spanFt, governs, from, to: from + count / all};
      from = part.to;
      return part;
    });
  });
  const spans = [...columns.keys()];
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const roomPx = (width - 50) / Math.max(1, spans.length);
  const nth = Math.max(1, Math.ceil(30 / roomPx));
  return Plot.plot({
    width, height: 268, marginLeft: 44, marginTop: 28, marginBottom: 40, marginRight: 4,
    x: {type: "band", domain: spans, label: "span, ft", padding: 0.06, tickFormat: (spanFt: number, index: number) => (index % nth === 0 ? String(spanFt) : "")},
    y: {label: "decks, %", domain: [0, 100], ticks: 5, grid: true},
    marks: [
      Plot.barY(parts, {
        x: "spanFt", y1: ({from}: Part) => 100 * from, y2: ({to}: Part) => 100 * to, insetTop: 0.5,
        fill: ({governs}: Part) => (governs ? LIMIT_LOOKS[governs].color : "var(--sunken)"),
        fillOpacity: ({governs}: Part) => (governs ? 0.3 : 1), stroke: ({governs}: Part) => (governs ? LIMIT_LOOKS[governs].color : "var(--edge)"), strokeWidth: 0.75,
        title: ({governs, from, to, spanFt}: Part) => `${feetText(spanFt)}: ${governs ?? "carry nothing"}, ${Math.round(100 * (to - from))} %`,
      }),
      Plot.text(parts.filter(({from, to}) => to - from >= LEAST_LETTER_SHARE && roomPx >= 9), {
        x: "spanFt", y: ({from, to}: Part) => 50 * (from + to), text: ({governs}: Part) => (governs ? LIMIT_LOOKS[governs].letter : "\u2013"), fontSize: 12.5, fontWeight: 600, fill: "var(--ink)",
      }),
    ],
  });
}
