import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {withValue} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import type {Field} from "../../lib/design/entries.js";
import {FIELDS} from "../../lib/design/fields.js";
import type {Design} from "../../lib/design/design.js";
import {InputError} from "../../lib/errors.js";
import {evaluate} from "../../lib/evaluate.js";
import {hold, valueOf} from "../properties/arbitrary.js";
import {catalog, seeds} from "../support/designs.js";

const CHANGEABLE = Object.entries(FIELDS).filter(([path, field]) => !path.includes("*") && field.kind !== "text");

/** What a design is refused for, or undefined. */
function refusalOf(design: Design): InputError | undefined {
  try {
    evaluate(design, catalog);
    return undefined;
  } catch (problem) {
    if (problem instanceof InputError) return problem;
    throw problem;
  }
}

/** The ends of what a field allows. */
function extremes(field: Field): unknown[] {
  if (field.kind === "number") return [field.min, field.max];
  return field.kind === "choice" ? Object.keys(field.choices) : [true, false];
}

function expectField(problem: InputError, design: Design, what: string): void {
  const field = FIELDS[problem.path];
  expect(field, `${what}: ${problem.message}`).toBeDefined();
  expect(problem.message.startsWith(`${field?.label}: `), `${what}: ${problem.message}`).toBe(true);
  expect(problem.value, what).toEqual(valueAt(design, problem.path));
  expect(problem.allowed, what).not.toBe("");
}

describe("a refused design names a field that the reader can change, by the words on the page and with its value,", () => {
  // A quarter of the fields with each starter: the fuzz command tries them all with all.
  test.each(seeds.map((one, index) => ({...one, index})))("at either end of fields of $id", ({design, index}) => {
    for (const [path, field] of CHANGEABLE.filter((_, i) => i % seeds.length === index)) {
      for (const value of extremes(field)) {
        const changed = withValue(design, path, value);
        const problem = refusalOf(changed);
        if (problem) expectField(problem, changed, `${path} = ${String(value)}`);
      }
    }
  });

  test("where several fields are far from what is usual", () => {
    const change = fc.constantFrom(...CHANGEABLE).chain(([path, field]) => fc.record({path: fc.constant(path), value: fc.oneof(fc.constantFrom(...extremes(field)), valueOf(field))}));
    hold(80, fc.property(fc.constantFrom(...seeds), fc.array(change, {minLength: 2, maxLength: 6}), ({design}, changes) => {
      const changed = changes.reduce((one, {path, value}) => withValue(one, path, value), design);
      const problem = refusalOf(changed);
      if (problem) expectField(problem, changed, JSON.stringify(changes));
    }));
  });
});
