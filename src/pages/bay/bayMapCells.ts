import type {BayCell} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {measureOf} from "../../lib/schemes/schemeRow.js";
import {decimals} from "../../lib/units.js";
import {cellWords} from "./bayWords.js";

/** Tint of the best and of the worst cell, %. */
const TINT = {best: 46, worst: 5} as const;
const STATES = ["is-waiting", "is-none", "is-good", "is-failing"] as const;

/** Paints the cells of the map: the better the darker, hatched where nothing holds, dashed where nothing can be made. */
export function paintCells(list: readonly {readonly place: HTMLElement; readonly cell: BayCell | undefined}[], entry: MeasureEntry): void {
  let [least, most] = [Infinity, -Infinity];
  for (const {cell} of list) {
    const value = cell?.holds && cell.best ? measureOf(cell.best, entry) : undefined;
    if (value !== undefined) [least, most] = [Math.min(least, value), Math.max(most, value)];
  }
  for (const {place, cell} of list) paint(place, cell, entry, [least, most]);
}

function paint(place: HTMLElement, cell: BayCell | undefined, entry: MeasureEntry, [least, most]: readonly [number, number]): void {
  const value = cell?.best && measureOf(cell.best, entry);
  const state: (typeof STATES)[number] = !cell ? "is-waiting" : !cell.best ? "is-none" : cell.holds ? "is-good" : "is-failing";
  for (const one of STATES) place.classList.toggle(one, one === state);
  const text = !cell ? "" : value === undefined ? "\u2013" : decimals(value, placesOf(value, entry.decimals));
  if (place.textContent !== text) place.textContent = text;
  const share = value === undefined || most === least ? 1 : (entry.better === "more" ? value - least : most - value) / (most - least);
  place.style.setProperty("--tint", cell?.holds ? `${(TINT.worst + (TINT.best - TINT.worst) * share).toFixed(0)}%` : "0%");
  place.classList.toggle("is-best", cell?.holds === true && value !== undefined && share === 1);
  const title = cell ? cellWords(cell, entry) : "";
  if (place.title !== title) place.title = title;
}

/** A cell has room for four digits. */
function placesOf(value: number, wanted: number): number {
  const size = Math.abs(value);
  return Math.min(wanted, size >= 100 ? 0 : size >= 10 ? 1 : 2);
}
