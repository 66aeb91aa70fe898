import type {Catalog} from "../../lib/catalog.js";
import type {Brief} from "../../lib/schemes/brief.js";
import {schemesOf, type Schemes} from "../../lib/schemes/scheme.js";

/** One scheme that is looked at. */
export interface SchemeAsked {
  readonly brief: Brief;
  readonly columns: boolean;
  readonly index: number;
}

let last: {readonly key: string; readonly schemes: Schemes} | undefined;

/** Schemes of a brief; those of the last one are kept, with all that they share. */
export function schemesFor(catalog: Catalog, {brief, columns}: {readonly brief: Brief; readonly columns: boolean}): Schemes {
  const key = JSON.stringify([brief, columns]);
  if (last?.key !== key) last = {key, schemes: schemesOf(brief, catalog, {columns})};
  return last.schemes;
}
