import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {designRow, schemeDesign, schemeRows, type PlainScheme, type RowsAsked, type RowsInput} from "../../lib/schemes/rows.js";
import type {SchemeRow} from "../../lib/schemes/schemeRow.js";
import {schemesFor, type SchemeAsked} from "./keptSchemes.js";

/** How long rows are gathered before they are sent, ms: a page draws no faster, and each sending costs it time. */
const GATHER_MS = 100;
/** How soon it hears that the page needs the processors, ms. */
const STEP_MS = 4;

/** Rows of a brief's schemes in small batches, and steps without any between them; returns how many were made. */
export function* schemeBatches(catalog: Catalog, input: RowsInput): Generator<readonly SchemeRow[] | undefined, number> {
  let batch: SchemeRow[] = [];
  let sent = -Infinity;
  let begun = performance.now();
  for (const row of schemeRows(catalog, input, schemesFor(catalog, input))) {
    batch.push(row);
    const now = performance.now();
    if (now - sent >= GATHER_MS) {
      yield batch;
      sent = performance.now();
      batch = [];
    } else if (now - begun >= STEP_MS) yield undefined;
    else continue;
    begun = performance.now();
  }
  if (batch.length > 0) yield batch;
  return input.order.length;
}

/** The design of one scheme. */
export function* oneScheme(catalog: Catalog, input: SchemeAsked): Generator<never, PlainScheme> {
  return schemeDesign(schemesFor(catalog, input), input.index);
}

/** The row of a design as it is. */
export function* rowOfOpen(catalog: Catalog, {design, ...asked}: RowsAsked & {readonly design: Design}): Generator<never, SchemeRow> {
  return designRow(catalog, design, asked);
}
