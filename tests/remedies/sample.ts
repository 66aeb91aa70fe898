import fc from "fast-check";
import type {Check} from "../../lib/checks.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import type {Field} from "../../lib/design/entries.js";
import {FIELDS} from "../../lib/design/fields.js";
import {InputError} from "../../lib/errors.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {SEED} from "../properties/arbitrary.js";
import {catalog, seeds} from "../support/designs.js";

/** Fields of one value that bear on a check: no words, no likings of the search. */
const PATHS = Object.entries(FIELDS)
  .filter(([path, {kind}]) => kind !== "text" && !path.includes("*") && !path.startsWith("preferences") && !path.startsWith("consider"))
  .map(([path]) => path);

/** Farthest that a number moves from its starter's value toward an end of its range, as a share of the way. */
const FARTHEST = 0.3;

/** An odd but not absurd value of a field: a number within half of the way to either end, any choice. */
function oddValue(path: string, field: Field, from: unknown): fc.Arbitrary<unknown> {
  switch (field.kind) {
    case "number": {
      const at = typeof from === "number" ? from : (field.min + field.max) / 2;
      return fc.tuple(fc.constantFrom(field.min, field.max), fc.integer({min: 1, max: 20})).map(([end, part]) => {
        const value = at + (FARTHEST * part * (end - at)) / 20;
        return field.integer ? Math.round(value) : value;
      });
    }
    case "choice": return fc.constantFrom(...Object.keys(field.choices));
    case "switch": return fc.boolean();
    case "text": throw new Error(`${path} holds words`);
  }
}

/** A starter with one to four fields at odd values. */
const oddDesign: fc.Arbitrary<Design> = fc.tuple(fc.constantFrom(...seeds), fc.uniqueArray(fc.constantFrom(...PATHS), {minLength: 1, maxLength: 4})).chain(
  ([{design}, paths]) => fc.tuple(...paths.map((path) => oddValue(path, FIELDS[path] as Field, valueAt(design, path)).map((value) => [path, value] as const)))
    .map((changes) => withValues(design, Object.fromEntries(changes))),
);

/** Odd designs, the same in every run. */
export const oddDesigns = (count: number): Design[] => fc.sample(oddDesign, {numRuns: count, seed: SEED});

/** Every check of a design, those of its columns if asked for; undefined where its parts do not fit each other. */
export function checksOf(design: Design, columns: boolean): readonly Check[] | undefined {
  try {
    const evaluation = evaluate(design, catalog);
    return columns ? [...evaluation.checks, ...columnsOf(evaluation, catalog).checks] : evaluation.checks;
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}
