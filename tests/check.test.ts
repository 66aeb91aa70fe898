import {describe, expect, test} from "vitest";
import {requireChoice, requireNumber} from "../lib/check.js";
import {refused} from "./support/errors.js";

const span = {path: "bay.spanFt", label: "span", unit: "ft", min: 10, max: 150};
const bays = {path: "bay.baysAlong", label: "bays along the edge", unit: "", min: 1, max: 30, integer: true};

describe("requireNumber", () => {
  test("returns a number in its range, both ends included", () => {
    for (const value of [10, 41.5, 150]) expect(requireNumber(value, span)).toBe(value);
  });

  test("refuses a number just outside either end", () => {
    refused(() => requireNumber(9.999, span), {path: "bay.spanFt", value: 9.999, allowed: "10 to 150 ft", message: "span: 9.999 ft is not possible (10 to 150 ft)"});
    refused(() => requireNumber(150.001, span), {value: 150.001});
  });

  test("refuses what is not a finite number", () => {
    for (const value of [NaN, Infinity, -Infinity]) refused(() => requireNumber(value, span), {path: "bay.spanFt", value, allowed: "10 to 150 ft"});
  });

  test("says that a number is wanted where a text or another thing was given, or none at all", () => {
    for (const value of ["40", null, undefined, true, [40], {}]) {
      refused(() => requireNumber(value, span), {path: "bay.spanFt", value, allowed: "a number, 10 to 150 ft"});
    }
    expect(refused(() => requireNumber(undefined, span)).message).toBe("span: missing (a number, 10 to 150 ft)");
  });

  test("names a unit only beside a number", () => {
    expect(refused(() => requireNumber("40", span)).message).toBe(`span: "40" is not possible (a number, 10 to 150 ft)`);
  });

  test("refuses a fraction where a whole number is asked for, and says so", () => {
    expect(requireNumber(4, bays)).toBe(4);
    refused(() => requireNumber(4.5, bays), {message: "bays along the edge: 4.5 is not possible (whole number, 1 to 30)"});
  });
});

describe("requireChoice", () => {
  const rule = {path: "deck.concrete", label: "concrete", choices: ["normalweight", "sand-lightweight"]} as const;

  test("returns one of the choices", () => {
    expect(requireChoice("sand-lightweight", rule)).toBe("sand-lightweight");
  });

  test("refuses any other text or thing, and lists the choices", () => {
    for (const value of ["Normalweight", "", 1, null, undefined, ["normalweight"]]) {
      refused(() => requireChoice(value, rule), {path: "deck.concrete", value, allowed: "normalweight, sand-lightweight"});
    }
    expect(refused(() => requireChoice("light", rule)).message).toBe(`concrete: "light" is not possible (normalweight, sand-lightweight)`);
  });
});
