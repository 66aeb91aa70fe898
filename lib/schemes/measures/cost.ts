import {FT3_PER_YD3} from "../../materials/carbon.js";
import {PRICE_LIST, type PriceName, type Prices} from "./prices.js";

/** What a reader's prices are for, by the price that it goes by: yd3, lb, pieces, truckloads, ft2. */
export type PricedAmounts = Readonly<Record<PriceName, number>>;

const NAMES = Object.keys(PRICE_LIST) as PriceName[];

/** Cubic feet as concrete is priced. */
export const yd3 = (ft3: number): number => ft3 / FT3_PER_YD3;

/** All amounts at their prices; undefined where a price is blank that some amount needs. */
export function costOf(amounts: PricedAmounts, prices: Prices): number | undefined {
  let cost = 0;
  for (const name of NAMES) {
    const amount = amounts[name];
    if (amount === 0) continue;
    const price = prices[name];
    if (price === undefined) return undefined;
    cost += amount * price;
  }
  return cost;
}

/** Prices that are blank and that some amount needs, in the order of {@link PRICE_LIST}. */
export function blankPrices(amounts: PricedAmounts, prices: Prices): PriceName[] {
  return NAMES.filter((name) => amounts[name] !== 0 && prices[name] === undefined);
}
