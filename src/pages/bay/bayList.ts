import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {measureOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {decimals} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {measureName} from "../../components/compare/words.js";
import {element} from "../../components/dom.js";
import {dataTable} from "../../components/figure.js";

/** Schemes that the list shows. */
const MOST_LISTED = 40;

/** The schemes that no other beats, best by a measure first, each to be chosen by a press. */
export function bayList(best: readonly SchemeRow[], ticked: readonly MeasureEntry[], entry: MeasureEntry, choose: (row: SchemeRow) => void): HTMLElement[] {
  if (best.length === 0) return [element("p", {}, "There is none to list.")];
  const sorted = [...best].sort((a, b) => ((measureOf(a, entry) ?? 0) - (measureOf(b, entry) ?? 0)) * (entry.better === "more" ? -1 : 1));
  const table = dataTable({
    columns: ["Scheme", "Deck, ft", "Beams, ft", "Edge", "Girder", ...ticked.map(measureName)],
    rows: sorted.slice(0, MOST_LISTED).map((row) => [
      button(row.deck, () => choose(row), {quiet: true, name: `Choose ${row.deck}, deck ${row.span_ft} ft, beams ${row.beam_span_ft} ft`}), String(row.span_ft), String(row.beam_span_ft), row.edge, row.girder || "none",
      ...ticked.map((one) => decimals(measureOf(row, one) ?? 0, one.decimals)),
    ]),
  });
  const rest = sorted.length - MOST_LISTED;
  return [element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "Schemes that no other beats"}, table),
    ...(rest > 0 ? [element("p", {class: "note"}, `${decimals(rest)} more are not listed: narrow the ranges, or tick fewer measures.`)] : [])];
}
