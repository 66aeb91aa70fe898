import fc from "fast-check";
import {expect, test} from "vitest";
import {jsonText} from "../../src/headless/jsonText.js";

test("the text of a value is that value's JSON", () => {
  fc.assert(fc.property(fc.jsonValue({maxDepth: 6}), (value) => {
    expect(JSON.parse(jsonText(value))).toEqual(JSON.parse(JSON.stringify(value)));
  }));
});

test("what JSON leaves out is left out", () => {
  expect(jsonText({a: 1, b: undefined, c: [undefined]})).toBe('{"a":1,"c":[null]}');
});

test("lists of long things have a line for each, and a list of numbers has one", () => {
  const numbers = Array.from({length: 200}, (_, i) => i);
  const words = "x".repeat(300);
  expect(jsonText(numbers)).not.toContain("\n");
  expect(jsonText({numbers, things: [{words}, {words}]}).split("\n")).toEqual([
    "{", ` "numbers": ${JSON.stringify(numbers)},`, ' "things": [', `  {"words":"${words}"},`, `  {"words":"${words}"}`, " ]", "}",
  ]);
});
