import type {Catalog} from "../../lib/catalog.js";
import type {MeasuredBy} from "../../lib/schemes/measures.js";
import {ownPrices} from "../prices/ownPrices.js";
import {countedFactors} from "../shared/ownFactors.js";

/** By what the reader measures designs: the table's carbon factors, or their own in its place, and their own unit prices. */
export function measuredBy(catalog: Catalog): MeasuredBy {
  return {factors: countedFactors(catalog), prices: ownPrices().get()};
}
