import fc from "fast-check";
import {evaluate} from "mathjs";
import {describe, expect, test} from "vitest";
import {given} from "../../lib/step.js";
import {symbolTex, unitText} from "../../src/components/symbols.js";
import {mathMarkup, stepLines} from "../../src/components/worked.js";
import {parseExpression, substitute, writeExpression, type Tree} from "../../src/components/worked/expression.js";
import {formatForEquation} from "../../src/components/worked/numbers.js";
import {treeTex} from "../../src/components/worked/tex.js";

const tex = (text: string) => treeTex(parseExpression(text));

describe("symbols", () => {
  test.each([
    ["f_ci", "f_{ci}"],
    ["f_cprime", "f'_{c}"],
    ["f_ciprime", "f'_{ci}"],
    ["beta_1", "\\beta_{1}"],
    ["epsilon_ps", "\\varepsilon_{ps}"],
    ["phi", "\\phi"],
    ["Delta_f_pES", "\\Delta_{f,pES}"],
    ["A_ps", "A_{ps}"],
    ["gamma", "\\gamma"],
    ["w", "w"],
    ["KLL", "\\mathrm{KLL}"],
  ])("%s is %s", (name, expected) => expect(symbolTex(name)).toBe(expected));

  test("exponents of units are raised, hyphens are left alone", () => {
    expect(unitText("in2")).toBe("in²");
    expect(unitText("in^4")).toBe("in⁴");
    expect(unitText("kip-in")).toBe("kip-in");
  });
});

describe("equations", () => {
  test.each([
    ["a / b", "\\frac{a}{b}"],
    ["(a + b) / c", "\\frac{a + b}{c}"],
    ["a * (b + c)", "a\\,\\left(b + c\\right)"],
    ["a - (b - c)", "a - \\left(b - c\\right)"],
    ["a - (b + c) * d", "a - \\left(b + c\\right)\\,d"],
    ["(a + b)^2", "\\left(a + b\\right)^{2}"],
    ["-x^2", "-x^{2}"],
    ["(-x)^2", "\\left(-x\\right)^{2}"],
    ["a^b^c", "a^{b^{c}}"],
    ["x^(1/2)", "x^{1/2}"],
    ["sqrt(f_cprime)", "\\sqrt{f'_{c}}"],
    ["min(a, b / 2)", "\\min\\left(a,\\ \\frac{b}{2}\\right)"],
    ["abs(a - b)", "\\left|a - b\\right|"],
    ["5 * w * L^4", "5\\,w\\,L^{4}"],
    ["2 * 3", "2 \\times 3"],
    ["f_cprime^0.5", "{f'_{c}}^{0.5}"],
    ["1000 * a", "1{,}000\\,a"],
  ])("%s", (expression, expected) => expect(tex(expression)).toBe(expected));

  test("what is no arithmetic is refused, with the text quoted", () => {
    expect(() => parseExpression("a ? b : c")).toThrow('"a ? b : c"');
    expect(() => parseExpression("a +")).toThrow('"a +"');
  });
});

describe("lines of a step", () => {
  test("symbols, numbers, result with its unit", () => {
    const lines = stepLines({
      symbol: "f_b", label: "stress", expression: "-P / A - M / S_b", result: -1.2,
      values: {P: given(300, "kip", "force"), A: given(401, "in2", "area"), M: given(-1234.5, "kip-in", "moment"), S_b: given(1224, "in3", "modulus")},
      unit: "ksi", source: "definition",
    });
    expect(lines).toEqual([
      "-\\frac{P}{A} - \\frac{M}{S_{b}}",
      "-\\frac{300}{401} - \\left(-\\frac{1{,}234.5}{1{,}224}\\right)",
      "-1.2\\ \\text{ksi}",
    ]);
  });

  test("a line that says nothing new is left out", () => {
    const step = {symbol: "a", label: "a", expression: "b", values: {b: given(2, "", "b")}, result: 2, unit: "", source: "definition"};
    expect(stepLines(step)).toEqual(["b", "2"]);
  });

  test("the typesetter takes every line", () => {
    for (const line of ["\\frac{a}{b}", "\\min\\left(a,\\ b\\right)", "1.5 \\times 10^{-5}\\ \\text{in²}", "{f'_{c}}^{0.5}"]) {
      expect(mathMarkup(line)).not.toContain("temml-error");
    }
  });
});

describe("substitution keeps the value", () => {
  const names = ["a", "b_1", "f_cprime"];
  const leaf = fc.oneof(
    fc.constantFrom(...names).map((name): Tree => ({kind: "name", name})),
    fc.integer({min: 1, max: 99}).map((value): Tree => ({kind: "number", text: String(value), value})),
  );
  const {tree} = fc.letrec<{tree: Tree}>((tie) => ({
    tree: fc.oneof(
      {maxDepth: 5},
      leaf,
      fc.record({kind: fc.constant("minus" as const), of: tie("tree")}),
      fc.record({kind: fc.constant("operation" as const), operator: fc.constantFrom("+" as const, "-" as const, "*" as const, "/" as const), left: tie("tree"), right: tie("tree")}),
      fc.record({kind: fc.constant("operation" as const), operator: fc.constant("^" as const), left: tie("tree"), right: fc.constantFrom(2, 3).map((value): Tree => ({kind: "number", text: String(value), value}))}),
      fc.record({kind: fc.constant("call" as const), name: fc.constantFrom("min", "max"), args: fc.tuple(tie("tree"), tie("tree"))}),
    ),
  }));
  const number = fc.double({min: -500, max: 500, noNaN: true}).filter((value) => Math.abs(value) > 1e-3);
  const exact = (value: number) => String(value);
  const agree = (left: number, right: number) => Object.is(left, right) || Math.abs(left - right) <= 1e-9 * Math.max(Math.abs(left), Math.abs(right), 1e-300) || (Number.isNaN(left) && Number.isNaN(right));

  test("written out, read back, and evaluated by an independent library", () => {
    fc.assert(
      fc.property(tree, number, number, number, (expression, first, second, third) => {
        const values = {a: first, b_1: second, f_cprime: third};
        const given = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, {value}]));
        const text = writeExpression(expression);
        const wanted = Number(evaluate(text, {...values}));
        const numbers = writeExpression(substitute(parseExpression(text), given, exact));
        expect(agree(Number(evaluate(numbers)), wanted), `${text} became ${numbers}`).toBe(true);
      }),
      {numRuns: 2000},
    );
  });

  test("a sign before a power is kept as it is meant", () => {
    expect(evaluate(writeExpression(parseExpression("-3^2")))).toBe(-9);
    expect(evaluate(writeExpression(parseExpression("(-3)^2")))).toBe(9);
    expect(evaluate(writeExpression(substitute(parseExpression("x^2"), {x: {value: -3}}, exact)))).toBe(9);
    expect(evaluate(writeExpression(parseExpression("2 - -3^2")))).toBe(11);
  });

  test("the digits shown stay within five significant ones of the value", () => {
    fc.assert(
      fc.property(fc.double({min: 1e-8, max: 1e11, noNaN: true}), (value) => {
        const shown = Number(formatForEquation(value).replace(/,/g, ""));
        expect(Math.abs(shown - value)).toBeLessThanOrEqual(5.1e-5 * value);
      }),
    );
  });

  test.each([
    [0, "0"], [52, "52"], [1560, "1,560"], [0.530330086, "0.53033"], [12345.678, "12,346"], [3.5e-6, "3.5e-6"], [29000000, "29,000,000"], [0.0021, "0.0021"],
  ])("%d is written %s", (value, text) => expect(formatForEquation(value)).toBe(text));
});
