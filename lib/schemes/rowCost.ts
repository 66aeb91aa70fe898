import {costOf, type PricedAmounts} from "./measures/cost.js";
import {PRICE_LIST, type PriceName, type Prices} from "./measures/prices.js";
import {measureNamed, type SchemeRow} from "./schemeRow.js";

/** Amounts in a row, one column for each price: so a price can change without any scheme being made anew. */
const COLUMNS = (Object.keys(PRICE_LIST) as PriceName[]).map((name) => [name, `amount_${name}`] as const);

/** The columns of a row that say what its cost goes by, per square foot of floor; none where that is not known. */
export function amountColumns(amounts: PricedAmounts | undefined): Record<string, number> {
  return amounts ? Object.fromEntries(COLUMNS.map(([name, column]) => [column, amounts[name]])) : {};
}

/** What a row's cost goes by; undefined where it does not say. */
export function amountsIn(row: SchemeRow): PricedAmounts | undefined {
  const found = COLUMNS.map(([name, column]) => [name, row[column]] as const);
  return found.every(([, amount]) => typeof amount === "number") ? Object.fromEntries(found) as PricedAmounts : undefined;
}

/** A row with its cost at these prices, and without one where a price is blank that it needs. */
export function withCost(row: SchemeRow, prices: Prices, columns: boolean): SchemeRow {
  const amounts = amountsIn(row);
  const {column} = measureNamed(columns ? "costPerFt2" : "costWithoutColumnsPerFt2");
  return {...row, [column]: amounts && costOf(amounts, prices)};
}

/** Prices that are blank and that some of the rows needs, in the order of the list. */
export function pricesLacking(rows: readonly SchemeRow[], prices: Prices): PriceName[] {
  return COLUMNS.flatMap(([name, column]) => (prices[name] === undefined && rows.some((row) => typeof row[column] === "number" && row[column] !== 0) ? [name] : []));
}
