import {requireNumber, type NumberRule} from "../../check.js";
import {InputError} from "../../errors.js";

/** A unit price that a reader may enter: in words, and for which unit. */
export interface PriceEntry {
  readonly name: string;
  readonly unit: string;
}

/**
 * The unit prices that a cost is made of. None is known before the reader enters it, and none is invented: prices differ
 * by place, year and plant. Concrete is priced cast and finished, without the steel in it; a piece by what its setting
 * takes, a truckload by its way.
 */
export const PRICE_LIST = {
  deckPerYd3: {name: "precast concrete of the deck", unit: "yd3"},
  beamPerYd3: {name: "precast concrete of edge beams and girders", unit: "yd3"},
  columnPerYd3: {name: "precast concrete of the columns", unit: "yd3"},
  wallPerYd3: {name: "precast concrete of walls and parapet", unit: "yd3"},
  toppingPerYd3: {name: "topping, placed and finished", unit: "yd3"},
  footingPerYd3: {name: "concrete of the footings, with excavation", unit: "yd3"},
  strandPerLb: {name: "strand", unit: "lb"},
  barsPerLb: {name: "bars and mesh", unit: "lb"},
  settingPerPiece: {name: "setting a piece", unit: "piece"},
  haulingPerTruckload: {name: "hauling a truckload", unit: "truckload"},
  envelopePerFt2: {name: "walls, windows and roofing besides their precast concrete", unit: "ft2"},
} as const satisfies Readonly<Record<string, PriceEntry>>;

export type PriceName = keyof typeof PRICE_LIST;

/** A reader's unit prices, in a currency of their own; what is left out is blank. */
export type Prices = Readonly<Partial<Record<PriceName, number>>>;

/** Greatest price that may be entered. */
const MOST_PRICE = 1e6;

/** What a price may be. */
export function priceRule(name: PriceName): NumberRule {
  return {path: `prices.${name}`, label: PRICE_LIST[name].name, unit: `per ${PRICE_LIST[name].unit}`, min: 0, max: MOST_PRICE};
}

/**
 * Prices as a file or a page has them; blank ones may be missing, undefined or null.
 *
 * @throws InputError if they are no such table, a name is unknown, or a price is no number from 0 to a million
 */
export function readPrices(plain: unknown): Prices {
  const names = Object.keys(PRICE_LIST) as PriceName[];
  if (typeof plain !== "object" || plain === null || Array.isArray(plain)) throw new InputError({path: "prices", label: "prices", value: plain, allowed: "a table of unit prices by name"});
  const given = Object.entries(plain as Record<string, unknown>).filter(([, value]) => value !== undefined && value !== null);
  return Object.fromEntries(given.map(([name, value]) => {
    if (!Object.hasOwn(PRICE_LIST, name)) throw new InputError({path: `prices.${name}`, label: "price", value: name, allowed: names.join(", ")});
    return [name, requireNumber(value, priceRule(name as PriceName))];
  }));
}
