import {describe, expect, test} from "vitest";
import {InputError, under} from "../lib/errors.js";
import {refused} from "./support/errors.js";

const problem = {path: "bay.spanFt", label: "span", value: -3, unit: "ft", allowed: "10 to 150 ft"};

describe("InputError", () => {
  test("reads as a sentence with the value, its unit and what is allowed", () => {
    expect(new InputError(problem).message).toBe("span: -3 ft is not possible (10 to 150 ft)");
  });

  test("writes a number that has no end with nine digits", () => {
    expect(new InputError({...problem, value: 176 / 12}).message).toBe("span: 14.6666667 ft is not possible (10 to 150 ft)");
  });

  test("carries path, value and what is allowed", () => {
    const error = new InputError(problem);
    expect(error).toMatchObject({name: "InputError", path: "bay.spanFt", value: -3, allowed: "10 to 150 ft"});
    expect(error).toBeInstanceOf(Error);
  });

  test("adds advice as a sentence of its own", () => {
    expect(new InputError({...problem, advice: "Measure again."}).message).toBe("span: -3 ft is not possible (10 to 150 ft). Measure again.");
  });

  test("shows a value that is no number as JSON, and says of one that is missing that it is", () => {
    const shown = (value: unknown) => new InputError({path: "", label: "span", value, allowed: "a number"}).message;
    expect(shown("40")).toBe(`span: "40" is not possible (a number)`);
    expect(shown(null)).toBe("span: null is not possible (a number)");
    expect(shown([1, 2])).toBe("span: [1,2] is not possible (a number)");
    expect(shown(undefined)).toBe("span: missing (a number)");
    expect(shown(NaN)).toBe("span: NaN is not possible (a number)");
    expect(shown(Symbol("x"))).toBe("span: Symbol(x) is not possible (a number)");
  });

  test("shows a typed text as it was typed, quoted by nobody", () => {
    expect(new InputError({path: "", label: "span", value: "14'-8\"x", reads: "14'-8\"x", allowed: "a length"}).message).toBe("span: 14'-8\"x is not possible (a length)");
    expect(new InputError({path: "", label: "span", value: "x".repeat(99), reads: "x".repeat(99), allowed: "a length"}).message).toBe(`span: ${"x".repeat(57)}... is not possible (a length)`);
  });

  test("stays on one short line however long the value is", () => {
    const {message} = new InputError({path: "", label: "name", value: `${"x".repeat(500)}\n`, allowed: "a name"});
    expect(message).not.toContain("\n");
    expect(message.length).toBeLessThan(100);
    expect(message).toContain("...");
  });

  test("shows a value of sixty signs whole, and of a longer one the beginning", () => {
    const shown = (length: number) => new InputError({path: "", label: "name", value: "x".repeat(length), allowed: "a name"}).message;
    // Two of the sixty are the marks around it.
    expect(shown(58)).toContain(`"${"x".repeat(58)}" is not`);
    expect(shown(59)).toContain(`"${"x".repeat(56)}... is not`);
  });

  test("of what was worked out is notified of the value behind it, to four digits", () => {
    const depth = new InputError({path: "depthIn", label: "effective depth", value: 4.93761, unit: "in", allowed: "5 to 10 in"});
    const cover = depth.behind({path: "edgeBeam.coverIn", label: "clear cover", value: 4, unit: "in"}, "less");
    expect(cover).toMatchObject({path: "edgeBeam.coverIn", value: 4});
    expect(cover.message).toBe("clear cover: 4 in is not possible (less: it makes the effective depth 4.938 in, where 5 to 10 in are possible)");
    const rule = new InputError({path: "rule", label: "rule", value: "in part", allowed: "yes, no"}).behind({path: "room", label: "room", value: "Hall"}, "another");
    expect(rule.message).toBe("room: \"Hall\" is not possible (another: it makes the rule \"in part\", where yes, no are possible)");
  });

  test("can tell of a value that is nested deeper than it can be written out", () => {
    let deep: unknown = [];
    for (let i = 0; i < 100_000; i++) deep = [deep];
    expect(new InputError({path: "", label: "name", value: deep, allowed: "a name"}).message).toBe("name: a list nested too deep is not possible (a name)");
    expect(new InputError({path: "", label: "name", value: {deep}, allowed: "a name"}).message).toBe("name: an object nested too deep is not possible (a name)");
  });
});

describe("under", () => {
  test("returns what the work returns", () => {
    expect(under("deck", () => 7)).toBe(7);
  });

  test("puts the branch before the path of an input error and leaves the rest as it was", () => {
    const work = () => under("bay", () => {
      throw new InputError({...problem, path: "spanFt", advice: "Measure again."});
    });
    refused(work, {path: "bay.spanFt", value: -3, allowed: "10 to 150 ft", message: "span: -3 ft is not possible (10 to 150 ft). Measure again."});
    refused(() => under("bay", () => {
      throw new InputError({...problem, path: ""});
    }), {path: "bay"});
  });

  test("lets any other error through as it is", () => {
    const fault = new TypeError("fault");
    expect(() => under("deck", () => {
      throw fault;
    })).toThrow(fault);
  });
});
