import type {BayCell} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {measureOf} from "../../lib/schemes/schemeRow.js";
import {decimals} from "../../lib/units.js";
import {cellWords} from "./bayWords.js";

/** Tint of the best and of the worst cell, %. */
const TINT = {best: 46, worst: 5} as const;
const STATES = ["is-waiting", "is-none", "is-good", "is-failing"] as const;

/** What a place of the map shows, and how dark it is. */
interface Shown {
  readonly cell: BayCell | undefined;
  readonly entry: MeasureEntry;
  readonly tint: string;
  readonly isBest: boolean;
}

/**
 * Paints the cells of the map: the better the darker, hatched where nothing holds, dashed where nothing can be made. What
 * a place shows already is left as it is: a map has a thousand of them, and few change from one drawing to the next.
 */
export function cellPainter(): (list: readonly {readonly place: HTMLElement; readonly cell: BayCell | undefined}[], entry: MeasureEntry) => void {
  const known = new WeakMap<HTMLElement, Shown>();
  return (list, entry) => {
    let [least, most] = [Infinity, -Infinity];
    for (const {cell} of list) {
      const value = cell?.holds && cell.best ? measureOf(cell.best, entry) : undefined;
      if (value !== undefined) [least, most] = [Math.min(least, value), Math.max(most, value)];
    }
    for (const {place, cell} of list) {
      const value = cell?.best && measureOf(cell.best, entry);
      const share = value === undefined || most === least ? 1 : (entry.better === "more" ? value - least : most - value) / (most - least);
      const next: Shown = {
        cell, entry, tint: cell?.holds ? `${(TINT.worst + (TINT.best - TINT.worst) * share).toFixed(0)}%` : "0%",
        isBest: cell?.holds === true && value !== undefined && share === 1,
      };
      const before = known.get(place);
      known.set(place, next);
      if (before?.tint !== next.tint) place.style.setProperty("--tint", next.tint);
      if (before?.isBest !== next.isBest) place.classList.toggle("is-best", next.isBest);
      if (!before || before.cell !== cell || before.entry !== entry) write(place, cell, value, entry);
    }
  };
}

function write(place: HTMLElement, cell: BayCell | undefined, value: number | undefined, entry: MeasureEntry): void {
  const state: (typeof STATES)[number] = !cell ? "is-waiting" : !cell.best ? "is-none" : cell.holds ? "is-good" : "is-failing";
  for (const one of STATES) place.classList.toggle(one, one === state);
  const text = !cell ? "" : value === undefined ? "\u2013" : decimals(value, placesOf(value, entry.decimals));
  if (place.textContent !== text) place.textContent = text;
  const title = cell ? cellWords(cell, entry) : "";
  if (place.title !== title) place.title = title;
}

/** A cell has room for four digits. */
function placesOf(value: number, wanted: number): number {
  const size = Math.abs(value);
  return Math.min(wanted, size >= 100 ? 0 : size >= 10 ? 1 : 2);
}
