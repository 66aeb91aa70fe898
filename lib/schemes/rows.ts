import type {Catalog} from "../catalog.js";
import {withOwnFactors} from "../materials/carbon.js";
import type {Design} from "../design/design.js";
import {columnsOf, evaluate} from "../evaluate.js";
import type {Brief} from "./brief.js";
import {amountsOf} from "./measures.js";
import {MEASURE_LIST} from "./measures/measureList.js";
import type {Prices} from "./measures/prices.js";
import {rowOf, rowOfDesign, type Wanted} from "./row.js";
import {amountColumns} from "./rowCost.js";
import {roofAsLoads} from "./roofRule.js";
import {schemesOf, type Schemes} from "./scheme.js";
import type {SchemeRow} from "./schemeRow.js";

/** By what schemes are measured, as plain data. */
export interface RowsAsked {
  /** Whether columns and footings are sized and counted. */
  readonly columns: boolean;
  /** The reader's own carbon factors by id, in place of the table's. */
  readonly ownFactors: Readonly<Record<string, number>>;
  readonly prices: Prices;
  /** Columns of the measures that are wanted; all if left out. */
  readonly measures?: readonly string[];
  /** Whether rows say what their cost goes by, so that prices may change later. */
  readonly amounts?: boolean;
}

/** Which of a brief's schemes become rows, and in which order. */
export interface RowsInput extends RowsAsked {
  readonly brief: Brief;
  /** Numbers of the schemes in the order in which they are made. */
  readonly order: readonly number[];
}

/** A scheme's design, or why there is none. */
export type PlainScheme = {readonly index: number; readonly design: Design} | {readonly index: number; readonly none: string};

/** Rows of a brief's schemes, one after the other; plain data. */
export function* schemeRows(catalog: Catalog, input: RowsInput, schemes: Schemes = schemesOf(input.brief, catalog, input)): Generator<SchemeRow, number> {
  const by = {factors: withOwnFactors(catalog.carbonFactors, input.ownFactors), prices: input.prices};
  const wanted = wantedOf(input);
  for (const index of input.order) {
    const scheme = schemes.at(index);
    const row = rowOf(scheme, by, wanted);
    yield input.amounts && !("none" in scheme) ? {...row, ...amountColumns(amountsOf(scheme.floor, scheme.columns))} : row;
  }
  return input.order.length;
}

/** A design as it is, as one row beside those of schemes: with its roof as loads, as they have theirs. */
export function designRow(catalog: Catalog, design: Design, asked: RowsAsked): SchemeRow {
  const floor = evaluate(roofAsLoads(design, catalog), catalog);
  const by = {factors: withOwnFactors(catalog.carbonFactors, asked.ownFactors), prices: asked.prices};
  const columns = asked.columns ? columnsOf(floor, catalog) : undefined;
  const row = rowOfDesign(floor, columns, catalog, by, wantedOf(asked));
  return asked.amounts ? {...row, ...amountColumns(amountsOf(floor, columns))} : row;
}

/** The design of one scheme, to be drawn. */
export function schemeDesign(schemes: Schemes, index: number): PlainScheme {
  const scheme = schemes.at(index);
  return "none" in scheme ? {index, none: scheme.none} : {index, design: scheme.design};
}

function wantedOf({measures}: RowsAsked): Wanted {
  return measures ? MEASURE_LIST.filter(({column}) => measures.includes(column)) : MEASURE_LIST;
}
