import {feederForRate, mainForRate, straightLossIn} from "../../lib/air/air.js";
import type {Catalog} from "../../lib/catalog.js";
import type {Check} from "../../lib/checks.js";
import type {ColumnResult} from "../../lib/columns/columnsResult.js";
import type {Design} from "../../lib/design/design.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";

/**
 * All results of a design with its columns and the deck's candidates, each said once: a list of checks that stand in
 * the list of all, or in that of the columns, is in no part as well; a candidate's member is told by its name, its
 * pattern and its topping; the shape of the member that the beams feel is that of `member`; ducts stand under
 * `services`, the roof's loads under `roofLoads`, what the roof takes of the design under `design`, how it is built up under `roof` and `walls`, and a column's loads
 * with its stories.
 */
export function wholeResults(design: Design, catalog: Catalog): Record<string, unknown> {
  const results = evaluate(design, catalog);
  const {checks, laid, roof, openTop, air, story, ...parts} = results;
  const {columns, ...ofColumns} = columnsOf(results, catalog);
  const said = new Set([...checks, ...ofColumns.checks].map(told));
  return {
    ...withoutChecks({
      ...parts,
      story: without(story, "roof"),
      laid: without(laid, "shape"),
      air: air && {...without(air, "ducts"), mainForRate: mainForRate(air), feederForRate: feederForRate(air), straightLossIn: straightLossIn(air)},
      roof: roof && without(roof, "design", "snow"),
      openTop: openTop && without(openTop, "snow"),
      candidates: candidates(design, catalog).map((candidate) => without(candidate, "member")),
    }, said) as object,
    checks,
    columns: {...ofColumns, columns: withoutChecks(columns.map(ofOneColumn), said)},
  };
}

/** A column by its stories: its foot is the lowest's load, and the worst is one of them. */
function ofOneColumn({column, ...result}: ColumnResult): object {
  return {...without(result, "foot"), column: {...without(column, "worst"), takedown: without(column.takedown, "stories")}};
}

/** An object without some of its fields. */
function without(whole: object, ...fields: readonly string[]): object {
  return Object.fromEntries(Object.entries(whole).filter(([field]) => !fields.includes(field)));
}

/** What a check says; a column's or the roof's says the same under its part's name. */
const told = ({clause, message, utilization}: Check): string => `${clause} ${message} ${utilization}`;

/** A result without the lists in it of checks that are all said elsewhere. */
function withoutChecks(value: unknown, said: ReadonlySet<string>): unknown {
  if (Array.isArray(value)) return value.map((entry) => withoutChecks(entry, said));
  if (typeof value !== "object" || value === null) return value;
  const again = (field: string, entry: unknown) => field === "checks" && Array.isArray(entry) && (entry as readonly Check[]).every((check) => said.has(told(check)));
  const kept = Object.entries(value).filter(([field, entry]) => !again(field, entry));
  return Object.fromEntries(kept.map(([field, entry]) => [field, withoutChecks(entry, said)]));
}
