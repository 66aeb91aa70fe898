import {describe, expect, test} from "vitest";
import {readAnswer} from "../../lib/practice/typedAnswer.js";
import {converted, unitNamed, unitOf} from "../../lib/practice/units.js";
import {SI} from "../../lib/units.js";

const value = (text: string, unit: string, system: "US" | "SI" = "US") => {
  const read = readAnswer(text, unit, system);
  return read.state === "read" ? read.value : read.state;
};

describe("a typed answer", () => {
  test.each([
    ["15 ft", "ft", 15], ["180 in", "ft", 15], ["4.572 m", "ft", 15], ["4572mm", "ft", 15], ["457.2 cm", "ft", 15], ["15'-6\"", "ft", 15.5], ["15' 6", "ft", 15.5], ["15 ft 6 in", "ft", 15.5], ["15", "ft", 15],
    ["15 ft", "in", 180], ["8 1/2", "in", 8.5], ["1,200 plf", "plf", 1200], ["1.2 kip/ft", "plf", 1200], ["1.2 klf", "plf", 1200], ["1200 lb/ft", "plf", 1200], ["17.51 kN/m", "plf", 1199.8],
    ["62 psf", "psf", 62], ["62 lb/ft\u00b2", "psf", 62], ["62 lbs/sq ft", "psf", 62], ["2.9685 kPa", "psf", 62], ["2.9685 kN/m2", "psf", 62], ["12 kips", "kip", 12], ["12000 lb", "kip", 12], ["12000 lbs", "kip", 12], ["6 tons", "kip", 12], ["53.38 kN", "kip", 12],
    ["100 kip-ft", "kip-ft", 100], ["100 ft-kips", "kip-ft", 100], ["1200 kip-in", "kip-ft", 100], ["135.6 kN m", "kip-ft", 100], ["135.6 kN\u00b7m", "kip-ft", 100], ["4.2 sq. in.", "in2", 4.2], ["1 ft^2", "in2", 144], ["-0.35 ksi", "ksi", -0.35], ["\u22120.35", "ksi", -0.35], ["350 psi", "ksi", 0.35],
    ["80 %", "", 0.8], ["80", "%", 80], ["27 ft3", "yd3", 1], ["1,040 fpm", "ft/min", 1040], ["5.283 m/s", "ft/min", 1040], ["1e3", "lb", 1000], [".5 in", "in", 0.5],
  ])("%s for %s is %d", (text, unit, wanted) => {
    const read = value(text, unit);
    expect(typeof read).toBe("number");
    expect((read as number) / wanted).toBeCloseTo(1, 3);
  });

  test("without a unit is in the part's, or its SI equivalent for who works in SI", () => {
    expect(value("4.572", "ft", "SI")).toBeCloseTo(15, 9);
    expect(value("300", "in", "SI")).toBeCloseTo(300 / 25.4, 9);
    expect(value("3", "psf", "SI")).toBeCloseTo(62.66, 2);
    expect(value("3", "Hz", "SI")).toBe(3);
    expect(value("3 psf", "psf", "SI")).toBe(3);
    expect(readAnswer("15", "ft")).toMatchObject({stated: false});
    expect(readAnswer("15 ft", "ft")).toMatchObject({stated: true});
    expect(readAnswer("15'-6\"", "ft")).toMatchObject({stated: true});
  });

  test.each([["60 plf", "psf", /plf is the unit of a load per foot of length.*psf/], ["60 psf", "plf", /a load per square foot/], ["12 kip", "kip-ft", /kip is the unit of a force.*a moment/], ["12 ft2", "ft", /an area.*a length/], ["3 psf", "", /a pure number, in no unit/]])(
    "%s where %s is asked is another kind of unit", (text, unit, says) => {
      const read = readAnswer(text, unit);
      expect(read.state).toBe("other dimension");
      expect("says" in read && read.says).toMatch(says);
    });

  test("that is empty, no number, or in no known unit says so", () => {
    expect(value("  ", "ft")).toBe("missing");
    for (const text of ["about ten", "12 parsecs", "1/2", "--3", "ft", "NaN", "Infinity"]) expect(value(text, text === "1/2" ? "psf" : "ft"), text).toBe("unreadable");
    expect(readAnswer("12 parsecs", "ft")).toMatchObject({says: "\u201cparsecs\u201d is no unit that is known here."});
    expect(readAnswer("about ten", "psf")).toMatchObject({says: "\u201cabout ten\u201d is no number."});
  });
});

test("units agree with the table of SI equivalents, and know their SI unit by name", () => {
  for (const [unit, {unit: si, factor}] of Object.entries(SI)) {
    if (!["lb", "kip", "in", "ft", "in2", "ft2", "in3", "yd3", "in4", "psf", "plf", "psi", "ksi", "kip-in", "kip-ft", "pcf"].includes(unit)) continue;
    const other = unitNamed(si);
    if (!other) throw new Error(`no unit ${si}`);
    expect(converted(1, unitOf(unit), other) / factor, unit).toBeCloseTo(1, 9);
  }
  expect(() => unitOf("cubit")).toThrow("no unit cubit");
});
