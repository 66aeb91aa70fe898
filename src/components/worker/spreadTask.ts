import type {Catalog} from "../../lib/catalog.js";
import {spread, type SpreadInput} from "../../lib/topping/spread.js";

/** Pieces of one design that differ at random; no table is asked. */
export function* spreadTask(_catalog: Catalog, input: SpreadInput) {
  return yield* spread(input);
}
