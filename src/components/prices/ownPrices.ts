import {InputError} from "../../lib/errors.js";
import {readPrices, type PriceName, type Prices} from "../../lib/schemes/measures/prices.js";
import type {Observe} from "../shared/deckSearch.js";
import {keep, recall} from "../store/kept.js";

/** Where this browser keeps the reader's unit prices. */
const KEY = "unit-prices";

/** The reader's own unit prices, kept in this browser and shared by all pages and tabs. */
export interface OwnPrices {
  readonly get: () => Prices;
  /** Whether any is entered. */
  readonly any: () => boolean;
  /** Sets one, or makes it blank. Throws InputError for a price that is not possible. */
  readonly set: (name: PriceName, value: number | undefined) => void;
  readonly clear: () => void;
  readonly observe: Observe<Prices>;
}

/** What this browser keeps of them, as far as it can still be used. */
function keptPrices(): Prices {
  const kept = recall(KEY);
  if (typeof kept !== "object" || kept === null) return {};
  return Object.assign({}, ...Object.entries(kept).map(([name, value]) => {
    try {
      return readPrices({[name]: value});
    } catch (problem) {
      if (problem instanceof InputError) return {};
      throw problem;
    }
  })) as Prices;
}

let ours: OwnPrices | undefined;

/** The prices of this reader; the same ones for all who ask on a page. */
export function ownPrices(): OwnPrices {
  return (ours ??= openPrices());
}

function openPrices(): OwnPrices {
  const listeners = new Set<(prices: Prices) => void>();
  let prices = keptPrices();
  const show = (next: Prices) => {
    prices = next;
    for (const listener of listeners) listener(prices);
  };
  const take = (next: Prices) => {
    keep(KEY, next);
    show(next);
  };
  // What another tab enters counts here too.
  window.addEventListener("storage", ({key}) => {
    if (key === null || key.endsWith(`/${KEY}`)) show(keptPrices());
  });
  window.addEventListener("pageshow", ({persisted}) => {
    if (persisted) show(keptPrices());
  });
  return {
    get: () => prices,
    any: () => Object.keys(prices).length > 0,
    set(name, value) {
      const {[name]: _, ...others} = prices;
      take(value === undefined ? others : {...prices, ...readPrices({[name]: value})});
    },
    clear: () => take({}),
    observe(change) {
      listeners.add(change);
      change(prices);
      return () => void listeners.delete(change);
    },
  };
}
