import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {valueAt, withValue, withValues} from "../../lib/design/edit.js";
import {FIELDS, type Field} from "../../lib/design/fields.js";
import {inPart} from "../../lib/design/refusal.js";
import {InputError} from "../../lib/errors.js";
import {evaluate} from "../../lib/evaluate.js";
import {hold, valueOf} from "../properties/arbitrary.js";
import {catalogue, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");
const CHANGEABLE = Object.entries(FIELDS).filter(([path, field]) => !path.includes("*") && field.kind !== "text");

/** What a design is refused for, or undefined. */
function refusalOf(design: typeof LIBRARY): InputError | undefined {
  try {
    evaluate(design, catalogue);
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

function expectField(problem: InputError, design: typeof LIBRARY, what: string): void {
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

  test("where a thin slab on a thin ledge without upstand leaves no beam", () => {
    const slab = {"deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 4, "edgeBeam.upstandIn": 0};
    refused(() => evaluate(withValues(LIBRARY, slab), catalogue), {
      path: "edgeBeam.ledgeDepthIn", value: 4, message: "ledge depth: 4 in is not possible (more: it makes the depth 8 in, where 10 to 144 in are possible)",
    });
    expect(refusalOf(withValues(LIBRARY, {...slab, "edgeBeam.ledgeDepthIn": 6}))).toBeUndefined();
  });

  test("where the cover leaves the bars too high in the beam", () => {
    const shallow = {"deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 4, "edgeBeam.upstandIn": 2, "edgeBeam.coverIn": 4};
    refused(() => evaluate(withValues(LIBRARY, shallow), catalogue), {path: "edgeBeam.coverIn", value: 4, message: /^clear cover: 4 in is not possible \(less: it makes the effective depth 4\.\d+ in, where 5 to 10 in are possible\)$/});
    expect(refusalOf(withValues(LIBRARY, {...shallow, "edgeBeam.coverIn": 3}))).toBeUndefined();
  });

  test("and of two heights of the strands the one that was given", () => {
    refused(() => evaluate(withValue(LIBRARY, "deck.strandHeightCentreIn", 53), catalogue), {path: "deck.strandHeightCentreIn", value: 53, message: /^strand height at midspan: 53 in/});
    refused(() => evaluate(withValue(LIBRARY, "deck.strandHeightEndIn", 53), catalogue), {path: "deck.strandHeightEndIn", value: 53, message: /^strand height at the ends: 53 in/});
  });
});

describe("inPart", () => {
  const about = (path: string) => () => inPart(LIBRARY, "edge beam", () => {
    throw new InputError({path, label: "load of the deck", value: 107150.7720992558, unit: "plf", allowed: "0 to 100000 plf"});
  });

  test("tells what follows from a field as a refusal of that field", () => {
    refused(about("deckPlf"), {path: "bay.beamSpanFt", value: 30, message: "beam span: 30 ft is not possible (less: it makes the load of the deck 107200 plf, where 0 to 100000 plf are possible)"});
  });

  test("leaves a refusal that names a field of the design, and any other error, as it is", () => {
    refused(about("bay.spanFt"), {path: "bay.spanFt", value: 107150.7720992558});
    refused(about("deck.dimensions.depthIn"), {path: "deck.dimensions.depthIn"});
    const fault = new TypeError("fault");
    expect(() => inPart(LIBRARY, "deck", () => {
      throw fault;
    })).toThrow(fault);
  });
});
