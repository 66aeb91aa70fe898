import type {Design} from "../../lib/design/design.js";
import {fieldAt} from "../../lib/design/fields.js";
import type {Check} from "../../lib/checks.js";
import type {ColumnsResult} from "../../lib/columns/columnsResult.js";
import {isOfDesign} from "../../lib/design/refusal.js";
import {InputError} from "../../lib/errors.js";
import {columnsOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import {catalog} from "../support/designs.js";

/** What the engine makes of a design: its results, the refusal of parts that do not fit, or a fault of its own. */
export type Outcome =
  | {readonly kind: "results"; readonly evaluation: Evaluation; readonly columns: ColumnsResult; readonly checks: readonly Check[]}
  | {readonly kind: "refusal"; readonly error: InputError}
  | {readonly kind: "fault"; readonly error: unknown};

export function outcomeOf(design: Design): Outcome {
  try {
    const evaluation = evaluate(design, catalog);
    const columns = columnsOf(evaluation, catalog);
    return {kind: "results", evaluation, columns, checks: [...evaluation.checks, ...columns.checks]};
  } catch (error) {
    return error instanceof InputError ? {kind: "refusal", error} : {kind: "fault", error};
  }
}

/** Whether a refusal names a field that the reader can change, by the words that stand beside its control. */
export function namesAField({path, message}: InputError): boolean {
  const field = fieldAt(path);
  return field === undefined ? isOfDesign(path) : message.startsWith(`${field.label}: `);
}

/** Visits every number of a result with its path, until the visitor returns true; whether it did. A loop over names makes nothing new, and results hold some ten thousand of them. */
export function someNumber(value: unknown, visit: (path: string, value: number) => boolean, path = "", seen = new Set<unknown>()): boolean {
  if (typeof value === "number") return visit(path, value);
  if (typeof value !== "object" || value === null || seen.has(value)) return false;
  seen.add(value);
  for (const key in value) if (someNumber((value as Record<string, unknown>)[key], visit, `${path}.${key}`, seen)) return true;
  return false;
}
