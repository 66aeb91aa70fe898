import type {BayCell} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {measureOf} from "../../lib/schemes/schemeRow.js";
import {decimals} from "../../lib/units.js";
import {element} from "../../components/dom.js";

/** The map of bays: a table in which the arrow keys go from cell to cell. */
export interface BayMap {
  readonly node: HTMLElement;
  show(cells: readonly BayCell[], entry: MeasureEntry, spansFt: readonly number[], beamSpansFt: readonly number[]): void;
  /** Marks the cell that is chosen, and the one nearest to the open design. */
  mark(chosen: readonly [number, number] | undefined, own: readonly [number, number] | undefined): void;
}

/** Tint of the best and of the worst cell, %. */
const TINT = {best: 46, worst: 5} as const;

const keyOf = (spanFt: number, beamSpanFt: number) => `${spanFt} ${beamSpanFt}`;

/** @param choose - called with a cell that the reader points at, and whether it is to stay */
export function bayMap(choose: (cell: BayCell, stay: boolean) => void): BayMap {
  const table = element("table", {class: "bay-map", role: "grid", "aria-label": "Deck span by beam span"});
  const node = element("div", {class: "scrolls bay-map-place"}, table);
  let shape = "";
  let places = new Map<string, HTMLTableCellElement>();
  let known = new Map<string, BayCell>();
  let at: readonly [number, number] = [0, 0];
  let [spans, beams]: [readonly number[], readonly number[]] = [[], []];

  const cellAt = ([i, j]: readonly [number, number]) => places.get(keyOf(spans[i] as number, beams[j] as number));
  const build = () => {
    places = new Map();
    const head = element("tr", {}, element("th", {scope: "col", class: "bay-corner"}, "beam \\ deck, ft"), ...spans.map((span) => element("th", {scope: "col"}, String(span))));
    const rows = beams.map((beam, j) => element("tr", {}, element("th", {scope: "row"}, String(beam)), ...spans.map((span, i) => {
      const cell = element("td", {tabindex: i === 0 && j === 0 ? 0 : -1, role: "gridcell"});
      const tell = (stay: boolean) => {
        const found = known.get(keyOf(span, beam));
        if (found) choose(found, stay);
      };
      cell.addEventListener("focus", () => {
        cellAt(at)?.setAttribute("tabindex", "-1");
        at = [i, j];
        cell.tabIndex = 0;
        tell(false);
      });
      cell.addEventListener("pointerenter", () => tell(false));
      cell.addEventListener("click", () => tell(true));
      places.set(keyOf(span, beam), cell);
      return cell;
    })));
    table.replaceChildren(element("thead", {}, head), element("tbody", {}, ...rows));
    at = [0, 0];
  };
  table.addEventListener("keydown", (event) => {
    const [i, j] = at;
    const to = ({ArrowRight: [i + 1, j], ArrowLeft: [i - 1, j], ArrowDown: [i, j + 1], ArrowUp: [i, j - 1], Home: [0, j], End: [spans.length - 1, j]} as Record<string, [number, number]>)[event.key];
    if (to) cellAt([Math.min(spans.length - 1, Math.max(0, to[0])), Math.min(beams.length - 1, Math.max(0, to[1]))])?.focus();
    else if (event.key === "Enter" || event.key === " ") cellAt(at)?.click();
    else return;
    event.preventDefault();
  });
  return {
    node,
    show(cells, entry, spansFt, beamSpansFt) {
      // From the longest beam span down, as a chart has it.
      [spans, beams] = [spansFt, [...beamSpansFt].reverse()];
      if (shape !== JSON.stringify([spans, beams])) {
        shape = JSON.stringify([spans, beams]);
        build();
      }
      known = new Map(cells.map((cell) => [keyOf(cell.spanFt, cell.beamSpanFt), cell]));
      const values = cells.filter((cell) => cell.holds).flatMap((cell) => (cell.best && measureOf(cell.best, entry)) ?? []);
      const [least, most] = [Math.min(...values), Math.max(...values)];
      for (const [key, place] of places) paint(place, known.get(key), entry, [least, most]);
    },
    mark(chosen, own) {
      for (const [key, place] of places) {
        place.classList.toggle("is-chosen", chosen !== undefined && key === keyOf(...chosen));
        if (chosen !== undefined) place.setAttribute("aria-selected", String(key === keyOf(...chosen)));
        place.classList.toggle("is-own", own !== undefined && key === keyOf(...own));
      }
    },
  };
}

function paint(place: HTMLElement, cell: BayCell | undefined, entry: MeasureEntry, [least, most]: readonly [number, number]): void {
  const value = cell?.best && measureOf(cell.best, entry);
  const state = !cell ? "is-waiting" : !cell.best ? "is-none" : cell.holds ? "is-good" : "is-failing";
  place.classList.remove("is-waiting", "is-none", "is-good", "is-failing", "is-best");
  place.classList.add(state);
  const text = !cell ? "" : value === undefined ? "\u2013" : decimals(value, Math.abs(value) >= 100 ? 0 : Math.min(1, entry.decimals) || (Math.abs(value) < 10 ? Math.min(2, entry.decimals) : 0));
  if (place.textContent !== text) place.textContent = text;
  const share = value === undefined || most === least ? 1 : (entry.better === "more" ? value - least : most - value) / (most - least);
  place.style.setProperty("--tint", cell?.holds ? `${(TINT.worst + (TINT.best - TINT.worst) * share).toFixed(0)}%` : "0%");
  if (cell?.holds && share === 1) place.classList.add("is-best");
  place.title = cell ? cellWords(cell, entry) : "";
}

/** A cell in words. */
export function cellWords({spanFt, beamSpanFt, best, holds, fails, tried, holding}: BayCell, entry: MeasureEntry): string {
  const where = `Deck ${spanFt} ft, beams ${beamSpanFt} ft`;
  if (!best) return `${where}: none of ${tried} schemes can be made. ${fails}`;
  const value = measureOf(best, entry);
  const measure = value === undefined ? `${entry.name} not known` : `${entry.name} ${decimals(value, entry.decimals)} ${entry.unit}`.trim();
  return holds ? `${where}: ${best.deck}, ${measure}; all checks hold in ${holding} of ${tried} schemes.` : `${where}: no scheme of ${tried} holds. The best, ${best.deck}, ${measure}, fails: ${fails}.`;
}
