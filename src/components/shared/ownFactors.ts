import type {Catalog} from "../../lib/catalog.js";
import {InputError} from "../../lib/errors.js";
import {withOwnFactors, type CarbonFactor} from "../../lib/materials/carbon.js";
import {recall} from "../store/kept.js";

/** Where the reader's own carbon factors are kept in the browser. */
export const OWN_FACTORS_KEY = "carbon-factors";

/** The reader's own carbon factors by id, as far as they can still be used. */
export function keptFactors(catalog: Catalog): Record<string, number> {
  const kept = recall(OWN_FACTORS_KEY);
  if (typeof kept !== "object" || kept === null) return {};
  const known = new Set(catalog.carbonFactors.map(({id}) => id));
  return Object.fromEntries(Object.entries(kept as Record<string, number>).filter(([id, value]) => {
    if (!known.has(id)) return false;
    try {
      withOwnFactors(catalog.carbonFactors, {[id]: value});
      return true;
    } catch (problem) {
      if (problem instanceof InputError) return false;
      throw problem;
    }
  }));
}

/** The table's carbon factors with the reader's own in their place. */
export function countedFactors(catalog: Catalog): readonly CarbonFactor[] {
  return withOwnFactors(catalog.carbonFactors, keptFactors(catalog));
}
