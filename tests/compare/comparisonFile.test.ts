import {describe, expect, test} from "vitest";
import {comparisonText, isComparison, readComparison, type ComparisonFile} from "../../lib/compare/comparisonFile.js";
import {PIN_LETTERS} from "../../lib/compare/pinLetters.js";
import {withValue} from "../../lib/design/edit.js";
import {validateDesign} from "../../lib/design/validate.js";
import {seed} from "../support/designs.js";
import {refused} from "../support/errors.js";

const library = () => validateDesign(seed("branch-library"));
const comparison = (): ComparisonFile => ({
  open: library(),
  pins: [
    {name: "As it was", note: "It holds.", from: "an earlier moment", design: withValue(library(), "bay.spanFt", 36)},
    {name: "The wing", note: "", from: "a starter", design: validateDesign(seed("classroom-wing"))},
  ],
});
/** The file's content with something else in a place. */
const changed = (change: (content: {open: Record<string, unknown>; pins: Record<string, unknown>[]} & Record<string, unknown>) => void): string => {
  const content = JSON.parse(comparisonText(comparison())) as Parameters<typeof change>[0];
  change(content);
  return JSON.stringify(content);
};

describe("a comparison's file", () => {
  test("is read as it was written: the open design, the pins in their order, their names and notes", () => {
    expect(readComparison(comparisonText(comparison()))).toEqual(comparison());
    expect(readComparison(comparisonText({open: library(), pins: []})).pins).toEqual([]);
  });

  test("is told from a design's file, and from what is neither", () => {
    expect(isComparison(comparisonText(comparison()))).toBe(true);
    expect(isComparison(changed((content) => (content["version"] = 9)))).toBe(true);
    for (const text of [JSON.stringify(library()), "{", "", "[]", "null"]) expect(isComparison(text), text.slice(0, 20)).toBe(false);
  });

  test("holds designs of older versions of the kit, which are brought up", () => {
    const old = seed("records-store");
    const text = JSON.stringify({format: "plank-and-tee-comparison", version: 1, open: old, pins: [{name: "Old", design: old}]});
    expect(readComparison(text)).toEqual({open: validateDesign(old), pins: [{name: "Old", note: "", from: "", design: validateDesign(old)}]});
  });

  test("is refused by the design and the field that is wrong, with the value and what is allowed", () => {
    refused(() => readComparison(changed(({pins}) => ((pins[1]?.["design"] as {bay: Record<string, unknown>}).bay["spanFt"] = 400))), {
      path: "pins.1.design.bay.spanFt", value: 400, message: /^pinned design 2, \u201cThe wing\u201d, span: 400 ft is not possible \(10 to 150 ft\)$/,
    });
    refused(() => readComparison(changed(({open}) => ((open["bay"] as Record<string, unknown>)["spanFt"] = "wide"))), {path: "open.bay.spanFt", message: /^the open design, span: "wide" is not possible/});
    refused(() => readComparison(changed(({pins}) => (pins[0] as Record<string, unknown>)["design"] = undefined)), {path: "pins.0.design", message: /^pinned design 1, \u201cAs it was\u201d, design file: missing/});
    refused(() => readComparison(changed(({pins}) => (pins[0] as Record<string, unknown>)["name"] = "n".repeat(PIN_LETTERS.name + 1))), {path: "pins.0.name", allowed: "text of at most 80 characters"});
    expect(readComparison(changed(({pins}) => (pins[0] as Record<string, unknown>)["note"] = "n".repeat(PIN_LETTERS.note))).pins[0]?.note).toHaveLength(2000);
    refused(() => readComparison(changed(({pins}) => (pins[0] as Record<string, unknown>)["note"] = "n".repeat(PIN_LETTERS.note + 1))), {path: "pins.0.note"});
    refused(() => readComparison(changed(({pins}) => (pins[1] as Record<string, unknown>)["nmae"] = "x")), {path: "pins.1.nmae", allowed: /no field of this name/});
    refused(() => readComparison(changed(({pins}) => (pins[1] as Record<string, unknown>)["name"] = 7)), {path: "pins.1.name", value: 7});
    // A pinned design is counted from 1, as a reader counts them.
    refused(() => readComparison(changed(({pins}) => (pins[1] as Record<string, unknown>)["name"] = "n".repeat(PIN_LETTERS.name + 1))), {path: "pins.1.name", message: /^pinned design 2, name: /});
    refused(() => readComparison(changed((content) => (content.pins as unknown[])[1] = "no design")), {path: "pins.1", message: /^pinned design 2: /});
  });

  test("is refused where it is of another version, holds no list, too long a one, or something else besides", () => {
    refused(() => readComparison(changed((content) => (content["version"] = 2))), {path: "version", value: 2, allowed: "1"});
    refused(() => readComparison(JSON.stringify(library())), {path: "format", allowed: "plank-and-tee-comparison"});
    refused(() => readComparison(changed((content) => (content.pins = {} as never))), {path: "pins", allowed: "a list of up to 100 designs"});
    refused(() => readComparison(changed((content) => (content.pins = Array.from({length: 101}, () => content.pins[0] as Record<string, unknown>)))), {path: "pins", value: 101});
    expect(readComparison(changed((content) => (content.pins = Array.from({length: 100}, () => content.pins[0] as Record<string, unknown>)))).pins).toHaveLength(100);
    refused(() => readComparison(changed((content) => (content["pinns"] = []))), {path: "pinns"});
    refused(() => readComparison("["), {path: "", message: /^comparison file: /});
    refused(() => readComparison("[]"), {path: ""});
  });
});
