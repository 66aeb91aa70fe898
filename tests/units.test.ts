import {describe, expect, test} from "vitest";
import {SI, decimals, feet, feetAndInches, inches, kipFt, kipPerIn, percent, roundedParts, toSi} from "../lib/units.js";

describe("feetAndInches", () => {
  test("writes a length of less than a foot in inches alone, unless feet are asked for", () => {
    expect(feetAndInches(8)).toBe(`8"`);
    expect(feetAndInches(8, 4, true)).toBe(`0'-8"`);
  });

  test("writes nothing at all as no inches", () => {
    expect(feetAndInches(0)).toBe(`0"`);
    expect(feetAndInches(0, 4, true)).toBe(`0'-0"`);
  });

  test("writes feet and inches as architects do", () => {
    expect(feetAndInches(34)).toBe(`2'-10"`);
    expect(feetAndInches(134)).toBe(`11'-2"`);
    expect(feetAndInches(134.5)).toBe(`11'-2 1/2"`);
    expect(feetAndInches(72)).toBe(`6'-0"`);
  });

  test("keeps the naught of the inches where a fraction follows the feet", () => {
    expect(feetAndInches(12.25)).toBe(`1'-0 1/4"`);
    expect(feetAndInches(0.25)).toBe(`1/4"`);
  });

  test("reduces a fraction to its lowest terms", () => {
    expect(feetAndInches(5.5, 16)).toBe(`5 1/2"`);
    expect(feetAndInches(5.375, 8)).toBe(`5 3/8"`);
    expect(feetAndInches(5.6875, 16)).toBe(`5 11/16"`);
  });

  test("carries a rounding over into the inches and the feet", () => {
    expect(feetAndInches(11.9)).toBe(`1'-0"`);
    expect(feetAndInches(23.99, 8)).toBe(`2'-0"`);
    expect(feetAndInches(2.6, 1)).toBe(`3"`);
  });

  test("sets a minus before a negative length, but not before one that rounds to nothing", () => {
    expect(feetAndInches(-34.5)).toBe(`-2'-10 1/2"`);
    expect(feetAndInches(-0.05)).toBe(`0"`);
  });
});

describe("decimals", () => {
  test("separates thousands and keeps the decimals asked for", () => {
    expect(decimals(22469.4)).toBe("22,469");
    expect(decimals(1234.5, 2)).toBe("1,234.50");
  });

  test("writes a true minus sign, and none before what rounds to nothing", () => {
    expect(decimals(-1234.5, 1)).toBe("\u22121,234.5");
    expect(decimals(-0.4)).toBe("0");
    expect(decimals(-0.04, 1)).toBe("0.0");
  });
});

describe("percent", () => {
  test("writes a ratio as whole hundredths with a narrow bond to its sign", () => {
    expect(percent(0.482)).toBe("48\u00a0%");
    expect(percent(1)).toBe("100\u00a0%");
  });
});

describe("conversion", () => {
  test("between feet and inches, and of loads and moments, is as defined", () => {
    expect(inches(2.5)).toBe(30);
    expect(feet(30)).toBe(2.5);
    // 1,200 lb on 12 in is 100 lb, or a tenth of a kip, on each inch.
    expect(kipPerIn(1200)).toBeCloseTo(0.1, 15);
    expect(kipFt(144)).toBe(12);
  });

  test("to SI agrees with the published factors", () => {
    // NIST SP 811: 1 lbf/ft2 = 47.880 26 Pa, 1 psi = 6 894.757 Pa, 1 lbf/ft = 14.593 90 N/m, 1 lb/ft3 = 16.018 46 kg/m3,
    // 1 kip = 4.448 222 kN, 1 yd3 = 0.764 554 9 m3, 1 lbf in = 0.112 984 8 N m.
    expect(toSi(1000, "psf").value).toBeCloseTo(47.88026, 4);
    expect(toSi(1000, "psi")).toEqual({value: expect.closeTo(6.894757, 5), unit: "MPa"});
    expect(toSi(1, "ksi").value).toBeCloseTo(6.894757, 5);
    expect(toSi(1000, "plf").value).toBeCloseTo(14.5939, 4);
    expect(toSi(1, "pcf").value).toBeCloseTo(16.01846, 4);
    expect(toSi(1, "kip").value).toBeCloseTo(4.448222, 5);
    expect(toSi(1000, "lb").value).toBeCloseTo(4.448222, 5);
    expect(toSi(1, "yd3").value).toBeCloseTo(0.7645549, 6);
    expect(toSi(1, "kip-in").value).toBeCloseTo(0.1129848, 6);
    expect(toSi(1, "kip-ft").value).toBeCloseTo(1.355818, 5);
    expect(toSi(2, "in")).toEqual({value: 50.8, unit: "mm"});
    expect(toSi(1, "in4").value).toBeCloseTo(416231.4256, 4);
  });

  test("leaves a unit alone that the table does not have, whatever its name", () => {
    for (const unit of ["", "%", "ft per second", "constructor", "toString"]) {
      expect(toSi(3, unit)).toEqual({value: 3, unit});
    }
  });

  test("has a positive factor for every unit", () => {
    for (const [unit, {factor}] of Object.entries(SI)) expect(factor, unit).toBeGreaterThan(0);
  });
});

describe("roundedParts", () => {
  test("parts of a whole add up to it: what is rounded off is given back to those that lost most", () => {
    expect(roundedParts([26.5, 26.6, 46.9, 0])).toEqual([26, 27, 47, 0]);
    expect(roundedParts([100 / 3, 100 / 3, 100 / 3])).toEqual([34, 33, 33]);
    expect(roundedParts([0.125, 0.125, 0.75], 2)).toEqual([0.13, 0.12, 0.75]);
    expect(roundedParts([2, 3])).toEqual([2, 3]);
  });

  test("add up to 100 % whatever the parts, and none moves by a whole last digit", () => {
    for (let i = 1; i < 400; i++) {
      const raw = [i % 7, (i * 13) % 11, (i * 29) % 17, 1].map((part) => part + 0.1);
      const sum = raw.reduce((a, b) => a + b, 0);
      const shares = raw.map((part) => (100 * part) / sum);
      const told = roundedParts(shares);
      expect(told.reduce((a, b) => a + b, 0)).toBe(100);
      told.forEach((part, j) => expect(Math.abs(part - (shares[j] as number))).toBeLessThan(1));
    }
  });
});
