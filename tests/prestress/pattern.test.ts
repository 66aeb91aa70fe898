import {describe, expect, test} from "vitest";
import {parsePattern, patternText} from "../../lib/prestress/pattern.js";
import {refused} from "../support/errors.js";

describe("parsePattern", () => {
  test("reads strands, sixteenths and profile", () => {
    expect(parsePattern("108-S")).toEqual({text: "108-S", count: 10, sixteenths: 8, profile: "straight"});
    expect(parsePattern("128-D1")).toEqual({text: "128-D1", count: 12, sixteenths: 8, profile: "one-point"});
    expect(parsePattern("148-D2")).toEqual({text: "148-D2", count: 14, sixteenths: 8, profile: "two-point"});
    expect(parsePattern("68-S")).toMatchObject({count: 6, sixteenths: 8});
    expect(parsePattern("76-S")).toMatchObject({count: 7, sixteenths: 6});
  });

  test("takes ten sixteenths for the 0.6 in strand", () => {
    expect(parsePattern("1010-S")).toMatchObject({count: 10, sixteenths: 10});
    expect(parsePattern("610-S")).toMatchObject({count: 6, sixteenths: 10});
    expect(parsePattern("110-S")).toMatchObject({count: 1, sixteenths: 10});
    expect(parsePattern("9910-D1")).toMatchObject({count: 99, sixteenths: 10});
  });

  test("refuses what does not parse, and shows how a pattern is written", () => {
    for (const text of ["", "108", "108S", "108-s", "108-D", "108-D3", "108-D0", "18-", "8-S", "-S", "108-S ", " 108-S", "105-S", "1011-S", "10/8-S", "108-S1", "1008-S", "10.8-S", "-68-S"]) {
      refused(() => parsePattern(text), {path: "pattern", value: text, allowed: /108-S or 128-D1/});
    }
  });

  test("refuses no strands, and a number written with a leading naught", () => {
    refused(() => parsePattern("08-S"));
    refused(() => parsePattern("010-S"));
    refused(() => parsePattern("068-S"), {message: /^strand pattern: "068-S" is not possible/});
  });

  test("names the field it was given", () => {
    refused(() => parsePattern("x", "deck.pattern"), {path: "deck.pattern"});
  });
});

describe("patternText", () => {
  test("is the inverse of parsing", () => {
    for (const text of ["68-S", "108-S", "128-D1", "1010-D2", "19-S", "110-S", "9910-D1"]) {
      const {count, sixteenths, profile} = parsePattern(text);
      expect(patternText(count, sixteenths, profile)).toBe(text);
    }
  });

  test("gives every count and size a text of its own", () => {
    const texts = new Set<string>();
    for (let count = 1; count <= 99; count++) for (const size of [6, 7, 8, 9, 10]) {
      const text = patternText(count, size, "straight");
      expect(parsePattern(text)).toMatchObject({count, sixteenths: size});
      texts.add(text);
    }
    expect(texts.size).toBe(99 * 5);
  });
});
