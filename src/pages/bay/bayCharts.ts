import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import type {Ranges} from "../../lib/schemes/cells.js";
import type {SchemeRow} from "../../lib/schemes/schemeRow.js";
import {decimals} from "../../lib/units.js";
import {unitText} from "../../components/symbols.js";
import {element} from "../../components/dom.js";
import {rangeWords, type BayFilters} from "./bayFilters.js";

/** The charts of two measures each, beside each other, and the sentence above them. */
export interface BayCharts {
  readonly node: HTMLElement;
  draw(now: ChartsNow, widthPx: number): void;
}

/** What the charts show. */
export interface ChartsNow {
  readonly made: boolean;
  readonly ticked: readonly MeasureEntry[];
  readonly ranges: Ranges;
  /** Schemes whose checks hold, those of them within the ranges, and those that no other beats. */
  readonly holding: readonly SchemeRow[];
  readonly within: readonly SchemeRow[];
  readonly best: readonly SchemeRow[];
  readonly own: SchemeRow | undefined;
  readonly chosen: number | undefined;
}

const MOST_CHARTS = 3;
const TWO_FROM_PX = 560;
const GAP_PX = 24;

/** Charts of which the library is fetched once the reader comes near them. */
export function bayCharts(filters: BayFilters, choose: (index: number) => void): BayCharts {
  const finding = element("p", {class: "bay-finding"});
  const charts = element("div", {class: "bay-charts"});
  let scatter: typeof import("./bayScatter.js").bayScatter | undefined;
  let last: readonly [ChartsNow, number] | undefined;
  const draw = (now: ChartsNow, widthPx: number) => {
    last = [now, widthPx];
    finding.textContent = chartsFinding(now);
    const bayScatter = scatter;
    const [first, ...others] = now.ticked;
    if (!bayScatter) return;
    const each = widthPx >= TWO_FROM_PX ? Math.floor((widthPx - GAP_PX) / 2) : widthPx;
    charts.replaceChildren(...(first ? (others.length > 0 ? others.slice(0, MOST_CHARTS) : [first]).map((other) => {
      const chart = bayScatter({x: first, y: other, ...now}, each, {
        brush: (x, y) => filters.brush(other === first ? [[first, x]] : [[first, x], [other, y]]),
        pick: choose,
      });
      chart.setAttribute("role", "img");
      chart.setAttribute("aria-label", `${unitText(other.name)} against ${unitText(first.name)} of ${now.within.length} schemes; the list below has those that no other beats`);
      for (const group of chart.querySelectorAll("g[aria-label]")) group.removeAttribute("aria-label");
      return element("div", {class: "bay-chart"}, chart);
    }) : []));
  };
  const near = new IntersectionObserver((entries) => {
    if (!entries.some(({isIntersecting}) => isIntersecting)) return;
    near.disconnect();
    void import("./bayScatter.js").then((found) => {
      scatter = found.bayScatter;
      if (last) draw(...last);
    });
  }, {rootMargin: "300px"});
  near.observe(charts);
  return {node: element("div", {}, finding, charts), draw};
}

function chartsFinding({made, within, ticked, ranges, best}: ChartsNow): string {
  const good = within.length;
  if (!made) return "No scheme is made yet.";
  if (good === 0) return "No scheme that was made holds within these ranges: the table beside the map says what fails.";
  const where = ranges.size > 0 ? ` with ${rangeWords(ticked, ranges)}` : "";
  return `Of ${decimals(good)} ${good === 1 ? "scheme that holds" : "schemes that hold"}${where}, ${decimals(best.length)} ${best.length === 1 ? "is" : "are"} beaten by none in ${ticked.map(({name}) => unitText(name)).join(", ") || "nothing: tick what counts"}.`;
}
