import {bestCell, failCounts, type BayCell} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {holds, isMade, measureOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {nothingHolds} from "../../lib/schemes/stops.js";
import {decimals} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {dataTable} from "../../components/figure.js";
import {unitText} from "../../components/symbols.js";
import {measureUnit} from "../../components/compare/words.js";

/** A value with its unit, as a sentence has it. */
export function amountText({decimals: places, unit}: MeasureEntry, value: number): string {
  return `${decimals(value, places)} ${measureUnit(unit)}`.trim();
}

/** What the map shows, as its title. */
export function mapFinding(cells: readonly BayCell[], entry: MeasureEntry): string {
  if (cells.length === 0) return "Deck span by beam span";
  const first = bestCell(cells, entry);
  const value = first?.best && measureOf(first.best, entry);
  if (!first || value === undefined) return "No cell has a scheme of which all checks hold";
  return `The ${entry.better === "more" ? "most" : "least"} ${unitText(entry.name)}: ${amountText(entry, value)} at a deck span of ${first.spanFt} ft on beams of ${first.beamSpanFt} ft`;
}

/** A cell in words. */
export function cellWords({spanFt, beamSpanFt, best, holds: good, fails, tried, holding}: BayCell, entry: MeasureEntry): string {
  const where = `Deck ${spanFt} ft, beams ${beamSpanFt} ft`;
  const schemes = (count: number) => `${count} ${count === 1 ? "scheme" : "schemes"}`;
  if (!best) return `${where}: none of ${schemes(tried)} can be made. ${fails}`;
  const value = measureOf(best, entry);
  const measure = value === undefined ? `${unitText(entry.name)} not known` : `${unitText(entry.name)} ${amountText(entry, value)}`;
  return good ? `${where}: ${best.deck}, ${measure}; all checks hold in ${holding} of ${schemes(tried)}.` : `${where}: ${tried === 1 ? "the one scheme does not hold" : `none of ${schemes(tried)} holds`}. The best, ${best.deck}, ${measure}, fails: ${fails}.`;
}

/** Lines of the table of what fails. */
const MOST_CHECKS = 14;

/** What fails, by how many schemes each check stops. */
export function failTable(rows: readonly SchemeRow[]): HTMLElement {
  const made = rows.filter(isMade);
  const failing = made.filter((row) => !holds(row));
  const none = rows.length - made.length;
  const counts = failCounts(rows);
  const head = element("p", {}, `${decimals(made.length - failing.length)} of ${decimals(rows.length)} schemes hold; ${decimals(failing.length)} fail a check, and ${decimals(none)} cannot be made, because no deck of the kind carries the span.`);
  const gives = nothingHolds(rows);
  const lines = counts.slice(0, MOST_CHECKS).map(([id, count]) => [id, count]);
  const rest = counts.length - lines.length;
  return element("div", {}, gives !== undefined && rows.length > 0 ? element("p", {}, gives) : null, head,
    element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "What fails, by check"}, dataTable({columns: ["Check that fails", "Schemes"], rows: lines.length > 0 ? lines : [["none", 0]]})),
    rest > 0 && element("p", {class: "note"}, `${rest} more ${rest === 1 ? "check fails" : "checks fail"} in fewer.`));
}
