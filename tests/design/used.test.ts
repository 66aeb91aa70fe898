import {describe, expect, test} from "vitest";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {withValue, withValues} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import {FIELDS} from "../../lib/design/fields.js";
import {fieldUsed} from "../../lib/design/used.js";
import {catalog, seed} from "../support/designs.js";

/** Another value that the field takes. */
function other(path: string, value: unknown): unknown {
  const field = FIELDS[path];
  if (field?.kind === "number") return value === field.min ? field.max : field.min;
  if (field?.kind === "choice") return Object.keys(field.choices).find((choice) => choice !== value);
  if (field?.kind === "text") return `${String(value).slice(1)}x`;
  throw new Error(path);
}

const DESIGNS = {
  "one bay, no topping, no ducts": withValues(seed("branch-library"), {"bay.baysAcross": 1, "deck.toppingIn": 0, "services.airCfmPerFt2": 0}),
  "a beam below the deck and a rectangular girder": withValues(seed("branch-library"), {"edgeBeam.kind": "below", "girder.kind": "rectangle"}),
  "a starter as it is": seed("branch-library"),
};

describe.each(Object.entries(DESIGNS))("%s", (_, design) => {
  const unused = Object.keys(FIELDS).filter((path) => !path.includes("*") && valueAt(design, path) !== undefined && !fieldUsed(design, path));

  test("has parts that it does not use", () => expect(unused.length).toBeGreaterThan(2));

  test.each(unused)("does not hang on %s: no check of the floor changes with it", (path) => {
    const changed = evaluate(withValue(design, path, other(path, valueAt(design, path))), catalog);
    const before = evaluate(design, catalog);
    expect(changed.checks).toEqual(before.checks);
    expect(columnsOf(changed, catalog).checks).toEqual(columnsOf(before, catalog).checks);
  });
});
