import type {PriceName, Prices} from "../../lib/schemes/measures/prices.js";
import {pricesLacking, withCost} from "../../lib/schemes/rowCost.js";
import type {SchemeRow} from "../../lib/schemes/schemeRow.js";
import type {OwnPrices} from "./ownPrices.js";

/** Rows at the prices of the moment. */
export interface PricedRows {
  /** In their order; with their cost where every price that any of them needs is there. */
  readonly rows: readonly SchemeRow[];
  /** Whether cost is known. */
  readonly known: boolean;
  /** Prices that are blank and needed; undefined while there is no row that could say. */
  readonly lacking: readonly PriceName[] | undefined;
}

/** Puts cost into rows; a row that was priced before is the very same again, so that what is drawn of it still holds. */
export function pricedRows(prices: OwnPrices): (rows: readonly SchemeRow[], columns: boolean) => PricedRows {
  let known = new WeakMap<SchemeRow, SchemeRow>();
  let of: Prices | undefined;
  return (rows, columns) => {
    if (of !== prices.get()) [known, of] = [new WeakMap(), prices.get()];
    const lacking = pricesLacking(rows, prices.get());
    const some = rows.some(({deck}) => deck !== "");
    if (!prices.any() || lacking.length > 0 || !some) return {rows, known: false, lacking: some ? lacking : undefined};
    const costed = rows.map((row) => {
      const found = known.get(row) ?? withCost(row, prices.get(), columns);
      known.set(row, found).set(found, found);
      return found;
    });
    return {rows: costed, known: true, lacking};
  };
}
