import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {withValue} from "../../lib/design/edit.js";
import {valueAt} from "../../lib/design/plain.js";
import {FIELDS} from "../../lib/design/fields.js";
import {advance, amend, begin, redo, undo, type History} from "../../lib/design/history.js";
import {parseDesign, validateDesign, validateField} from "../../lib/design/validate.js";
import {InputError} from "../../lib/errors.js";
import {candidates, columnsOf, evaluate} from "../../lib/evaluate.js";
import {designRecord} from "../../lib/record/record.js";
import {WORKINGS} from "../../lib/steps/workings.js";
import {catalog} from "../support/designs.js";
import {LIBRARY, anyDesign, fittingDesign, hold, valueOf, within, wrongValueOf} from "./arbitrary.js";

/** Places at which a result holds a number that is not finite. */
function unfinished(value: unknown, path = "", seen = new Set<unknown>()): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  return Object.entries(value).flatMap(([key, entry]) => unfinished(entry, `${path}.${key}`, seen));
}

/** The result, or undefined for an {@link InputError}; any other error is a fault. */
function resultOrRefusal<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

const FIELD_CASES = Object.entries(FIELDS).map(([pattern, field]) => ({path: pattern.replace(/\*/g, "0"), field}));
const anyField = fc.constantFrom(...FIELD_CASES);

describe("whatever the fields allow", () => {
  test("a design gives finite results all through, or an InputError that says which parts do not fit", () => {
    hold(400, fc.property(anyDesign, (design) => {
      expect(unfinished(resultOrRefusal(() => evaluate(validateDesign(design), catalog)))).toEqual([]);
    }));
  });

  test("a design whose deck fits together gives finite results all through, however absurd its numbers are", () => {
    let [cases, results] = [0, 0];
    hold(400, fc.property(fittingDesign, (design) => {
      const evaluation = resultOrRefusal(() => evaluate(validateDesign(design), catalog));
      cases += 1;
      if (evaluation) results += 1;
      expect(unfinished(evaluation)).toEqual([]);
    }));
    // Most designs must reach the engine, or the law says little.
    expect(results / cases).toBeGreaterThan(0.8);
  });

  test("its record and its worked steps hold nothing but finite numbers", () => {
    hold(50, fc.property(fittingDesign, (design) => {
      const evaluation = resultOrRefusal(() => evaluate(design, catalog));
      if (!evaluation) return;
      for (const [name, working] of Object.entries(WORKINGS)) expect(unfinished(working(evaluation)), name).toEqual([]);
      const found = candidates(design, catalog);
      expect(unfinished(found)).toEqual([]);
      expect(JSON.stringify(designRecord(evaluation, {candidates: found, kinds: [], spans: []}, "", columnsOf(evaluation, catalog)))).not.toMatch(/\bNaN\b|\bInfinity\b|\bundefined\b/);
    }));
  });

  test("a design comes back from its file as it was written", () => {
    hold(300, fc.property(anyDesign, (design) => {
      expect(parseDesign(JSON.stringify(design))).toEqual(JSON.parse(JSON.stringify(design)));
    }));
  });
});

describe("a value that a field does not allow", () => {
  test("is refused by the field and by the design with an InputError of that path and value", () => {
    hold(1500, fc.property(anyField.chain(({path, field}) => fc.record({path: fc.constant(path), field: fc.constant(field), value: wrongValueOf(field)})), ({path, field, value}) => {
      for (const work of [() => validateField(field, path, value), () => withValue(LIBRARY, path, value)]) {
        let thrown: unknown;
        try {
          work();
        } catch (problem) {
          thrown = problem;
        }
        expect(thrown).toBeInstanceOf(InputError);
        expect(thrown).toMatchObject({path, value});
        expect((thrown as InputError).message).toMatch(/^[^\n]+ is not possible \([^\n]+\)$/);
      }
    }));
  });
});

describe("a value that a field allows", () => {
  const change = anyField.chain(({path, field}) => fc.record({path: fc.constant(path), value: valueOf(field)}));

  test("is set in a copy: the given design stays as it was, and all else is shared", () => {
    const before = JSON.stringify(LIBRARY);
    hold(1000, fc.property(change, ({path, value}) => {
      const changed = withValue(LIBRARY, path, value);
      expect(valueAt(changed, path)).toEqual(value);
      expect(JSON.stringify(LIBRARY)).toBe(before);
      expect(validateDesign(changed)).toBe(changed);
      const [top] = path.split(".");
      // A reason that is written is written for something.
      const alone = Object.keys(LIBRARY).filter((key) => key !== top && !(top === "reasons" && key === "writtenFor"));
      for (const key of alone) expect(valueAt(changed, key)).toBe(valueAt(LIBRARY, key));
    }));
  });

  test("is gone again when the old one is set back", () => {
    hold(300, fc.property(change, ({path, value}) => {
      const back = withValue(withValue(LIBRARY, path, value), path, valueAt(LIBRARY, path));
      // Words that are written again are the reader's, whoever wrote them first.
      expect({...back, writtenFor: LIBRARY.writtenFor}).toEqual(LIBRARY);
      if (!path.startsWith("reasons.")) expect(back.writtenFor).toBe(LIBRARY.writtenFor);
    }));
  });
});

describe("history", () => {
  const step = fc.oneof(
    within(10, 150).map((spanFt) => (history: History) => advance(history, withValue(LIBRARY, "bay.spanFt", spanFt))),
    within(10, 150).map((spanFt) => (history: History) => amend(history, withValue(LIBRARY, "bay.spanFt", spanFt))),
    fc.constant(undo), fc.constant(redo),
  );
  const anyHistory = fc.array(step, {maxLength: 30}).map((steps) => steps.reduce((history, make) => make(history), begin(LIBRARY)));

  test("undoes what was redone and redoes what was undone", () => {
    hold(500, fc.property(anyHistory, (history) => {
      if (history.past.length > 0) expect(redo(undo(history))).toEqual(history);
      if (history.future.length > 0) expect(undo(redo(history))).toEqual(history);
    }));
  });

  test("keeps past, present and future in order whichever way one goes", () => {
    hold(500, fc.property(anyHistory, (history) => {
      const line = (h: History) => [...h.past, h.present, ...h.future];
      expect(line(undo(history))).toEqual(line(history));
      expect(line(redo(history))).toEqual(line(history));
    }));
  });
});
