import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {formatPlain, readLength, readTyped, typedText} from "../lib/typed.js";
import {feetAndInches, feetText} from "../lib/units.js";
import {refused} from "./support/errors.js";

const SPAN = {path: "bay.spanFt", label: "span", unit: "ft", min: 10, max: 150};
const WEB = {path: "edgeBeam.webWidthIn", label: "web width", unit: "in", min: 8, max: 24};
const SUCH = "such as 14'-8\", 14-8, 14.667 or 176in";

describe("a length in feet", () => {
  test.each([
    "14'-8\"", "14' 8", "14'8", "14'8\"", "14-8", "14 - 8", "14-8\"", "176in", "176 in", "176\"", "176 inches", "14 ft 8 in", "14ft 8in", "14 feet 8 inches", "14ft. 8in.",
    "14\u2019-8\u201d", "14\u2032 8\u2033", "14'-8''", "14\u2018 8\u201c", "14'\u20118\"", "14\u20138", " 14\u00a0ft\u00a08\u00a0in ", "14 FT 8 IN", "14'-8.0\"",
  ])("%s is 14 ft and 8 in", (text) => {
    expect(readLength(text, "ft")).toBe(176 / 12);
    // Without a mark, two numbers are feet and inches in a foot's box alone.
    if (!/^14 ?[-\u2013] ?8$/.test(text)) expect(readLength(text, "in")).toBe(176);
  });

  test.each<[string, number]>([
    ["14.667", 14.667], ["14", 14], ["14ft", 14], ["14'", 14], ["14'-0\"", 14], ["14 1/2 ft", 14.5], ["14.5'", 14.5], [".5 ft", 0.5], ["1,000", 1000],
    ["14'-8 1/2\"", 176.5 / 12], ["14'-8-1/2\"", 176.5 / 12], ["14-8 1/2", 176.5 / 12], ["14' 8\u00bd\"", 176.5 / 12], ["14'-0 1/2\"", 168.5 / 12], ["14' 1/2\"", 168.5 / 12],
    ["8-1/2\"", 8.5 / 12], ["\u00be in", 0.75 / 12], ["-3", -3], ["\u22123'-6\"", -3.5],
  ])("%s is %d ft", (text, ft) => {
    expect(readLength(text, "ft")).toBe(ft);
  });

  test.each([
    // Feet or inches?
    "14 1/2", "14-1/2", "1/2", "14 8",
    // More than a foot of inches, a part of a foot beside inches, a mark too many, half a length.
    "14-12", "14'-12\"", "14.5-8", "14.5'-8\"", "14''8'", "14'8'", "14\"8", "14'-", "14'-\"", "'", "\"", "ft", "-", "--3", "14'--8\"", "14'-8 3/2\"", "14' 8/0",
    // A comma that may be a point, and what is no length.
    "14,5", "1,00", "14.6.7", "1e2", "0x10", "Infinity", "NaN", "14 m", "14 ft 8 m", "", " ",
  ])("%j is not read", (text) => {
    expect(readLength(text, "ft")).toBeUndefined();
  });

  test("comes back from what is written, to a sixteenth of an inch", () => {
    fc.assert(fc.property(fc.integer({min: -3000, max: 150 * 192}), (sixteenths) => {
      expect(readLength(typedText(sixteenths / 192, "ft"), "ft")).toBeCloseTo(sixteenths / 192, 12);
    }));
    fc.assert(fc.property(fc.integer({min: 0, max: 150_000}).map((thousandths) => thousandths / 1000), (ft) => {
      expect(Math.abs((readLength(typedText(ft, "ft"), "ft") ?? NaN) - ft)).toBeLessThanOrEqual(1 / 32 / 12 + 1e-9);
    }));
  });

  test("means the same however it is spelled", () => {
    const parts = fc.record({ft: fc.nat(150), inch: fc.nat(11), eighths: fc.nat(7)});
    const spelled = (f: number, i: string) => [`${f}'-${i}"`, `${f}'${i}"`, `${f}' ${i}`, `${f}-${i}`, `${f}-${i}"`, `${f} ft ${i} in`, `${f}ft ${i}in`, `${f} feet ${i} inches`, `${f}\u2019-${i}\u201d`, `${f}\u2032${i}\u2033`];
    fc.assert(fc.property(parts, ({ft, inch, eighths}) => {
      const inches = `${inch}${eighths ? ` ${eighths}/8` : ""}`;
      const wanted = ft * 12 + inch + eighths / 8;
      for (const text of spelled(ft, inches)) {
        expect(readLength(text, "ft"), text).toBeCloseTo(wanted / 12, 12);
        expect(readLength(feetAndInches(wanted, 8), "in"), text).toBe(wanted);
      }
    }));
  });

  test("is a number or nothing, whatever is typed", () => {
    const sign = fc.constantFrom(..."0123456789 .,-/'\"ftin\u2019\u201d\u00bd");
    fc.assert(fc.property(fc.array(sign, {maxLength: 12}), fc.constantFrom("ft" as const, "in" as const), (signs, unit) => {
      const value = readLength(signs.join(""), unit);
      expect(value === undefined || Number.isFinite(value)).toBe(true);
    }), {numRuns: 3000});
  });
});

describe("a length in inches", () => {
  test.each<[string, number]>([["8", 8], ["8 1/2", 8.5], ["8-1/2", 8.5], ["8\u00bd", 8.5], ["1/2", 0.5], ["0'-8\"", 8], ["8\"", 8], ["8.25in", 8.25], ["2'", 24], ["1 ft 2", 14]])("%s is %d in", (text, inch) => {
    expect(readLength(text, "in")).toBe(inch);
  });

  test("without marks is not read as feet and inches", () => {
    expect(readLength("14-8", "in")).toBeUndefined();
  });
});

describe("a typed number", () => {
  test("of another unit may have commas between thousands, and a sign", () => {
    const strength = {path: "", label: "strength", unit: "psi", min: -9000, max: 9000};
    expect([readTyped(" 5,000 ", strength), readTyped("5000", strength), readTyped("\u2212250.5", strength)]).toEqual([5000, 5000, -250.5]);
    refused(() => readTyped("5,00", strength), {message: "strength: 5,00 is not possible (a number, -9000 to 9000 psi)"});
    refused(() => readTyped("5'", strength), {message: "strength: 5' is not possible (a number, -9000 to 9000 psi)"});
  });

  test("that cannot be read is refused as it was typed, with the range and how a length is written", () => {
    refused(() => readTyped("14'-8\"x", SPAN), {path: "bay.spanFt", message: `span: 14'-8"x is not possible (a length, 10 to 150 ft, ${SUCH})`});
    refused(() => readTyped(" 14 1/2 ", SPAN), {value: "14 1/2", message: `span: 14 1/2 is not possible (a length, 10 to 150 ft, ${SUCH})`});
    refused(() => readTyped("wide", WEB), {message: "web width: wide is not possible (a length, 8 to 24 in, such as 8 1/2 or 0'-8\")"});
    refused(() => readTyped("", SPAN), {value: undefined, message: `span: missing (a length, 10 to 150 ft, ${SUCH})`});
  });

  test("out of its range is refused as it was typed", () => {
    refused(() => readTyped("9'-6\"", SPAN), {message: "span: 9'-6\" is not possible (10 to 150 ft)"});
    refused(() => readTyped("-3", SPAN), {message: "span: -3 ft is not possible (10 to 150 ft)"});
    refused(() => readTyped("2.5", {path: "", label: "floors", unit: "", min: 1, max: 12, integer: true}), {message: "floors: 2.5 is not possible (whole number, 1 to 12)"});
  });
});

describe("written", () => {
  test("feet stand as drawings have them, other numbers with the digits that they have", () => {
    expect([typedText(176 / 12, "ft"), typedText(60, "ft"), typedText(14.667, "ft"), typedText(14 + 8.5 / 12, "ft"), typedText(0.5, "ft")]).toEqual(["14'-8\"", "60'-0\"", "14'-8\"", "14'-8 1/2\"", "0'-6\""]);
    expect([typedText(8.5, "in"), typedText(5000, "psi"), typedText(0.1 + 0.2, "")]).toEqual(["8.5", "5000", "0.3"]);
  });

  test("a sentence has whole feet in feet, others in feet and inches", () => {
    expect([feetText(60), feetText(57.5), feetText(176 / 12)]).toEqual(["60 ft", "57'-6\"", "14'-8\""]);
  });
});

describe("SI in a box", () => {
  const span = {path: "span", label: "span", unit: "ft", min: 10, max: 150};
  const load = {path: "load", label: "load", unit: "psf", min: 0, max: 500};

  test("a number with its unit is read whatever the box shows", () => {
    // 18.288 m is 60 ft; 4 kPa is 4 / 0.0478803 = 83.54 psf; 80 in beside a foot's box are 6.67 ft.
    expect(readTyped("18.288 m", span)).toBeCloseTo(60, 9);
    expect(readTyped("18288mm", span)).toBeCloseTo(60, 9);
    expect(readTyped("4 kPa", load)).toBeCloseTo(83.5417, 3);
    expect(readTyped("80 psf", load)).toBe(80);
    expect(readTyped("60 ft", span, 0.3048)).toBe(60);
    expect(readTyped("720 in", span, 0.3048)).toBe(60);
    expect(readTyped("80 psf", load, 0.0478803)).toBe(80);
  });

  test("a number without one is in the unit that the box shows", () => {
    expect(readTyped("18.288", span, 0.3048)).toBeCloseTo(60, 9);
    expect(readTyped("18.288", span)).toBeCloseTo(18.288, 9);
  });

  test("a unit of another kind is refused with the text as it was typed", () => {
    expect(() => readTyped("4 kPa", span)).toThrow("4 kPa");
    expect(() => readTyped("4 m", load)).toThrow("4 m");
  });

  test("what is typed in SI is shown again as typed", () => {
    for (let tenths = 31; tenths < 450; tenths++) {
      const ft = readTyped(String(tenths / 10), span, 0.3048);
      expect(formatPlain(Number((ft * 0.3048).toFixed(3)))).toBe(String(tenths / 10));
    }
  });
});

test("a number that was typed in SI is refused in the rule's own unit", () => {
  // 99 m / 0.3048 = 324.8 ft.
  expect(() => readTyped("99", {path: "bay.spanFt", label: "span", unit: "ft", min: 10, max: 150}, 0.3048)).toThrow("span: 324.8 ft is not possible (");
  expect(() => readTyped("99 m", {path: "bay.spanFt", label: "span", unit: "ft", min: 10, max: 150}, 0.3048)).toThrow("span: 99 m is not possible (");
});
