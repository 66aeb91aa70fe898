import type {Catalog} from "../../lib/catalog.js";
import type {MeasuredBy} from "../../lib/schemes/measures.js";
import {BLANK_PRICES} from "../../lib/schemes/measures/prices.js";
import {countedFactors} from "../shared/ownFactors.js";

/** By what the reader measures designs: the table's carbon factors, or their own in its place. No price is known. */
export function measuredBy(catalog: Catalog): MeasuredBy {
  return {factors: countedFactors(catalog), prices: BLANK_PRICES};
}
