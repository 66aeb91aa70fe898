import {describe, expect, test} from "vitest";
import fc from "fast-check";
import {evaluate} from "../../lib/evaluate.js";
import {SI, decimals, feetAndInches} from "../../lib/units.js";
import {TEXT_UNITS, textUnit} from "../../lib/reader/siUnit.js";
import {changed, changesOf, inSystem} from "../../lib/reader/turned.js";
import {within} from "../properties/arbitrary.js";
import {ODD} from "../remedies/odd.js";
import {catalog, seeds} from "../support/designs.js";

/** What no text may hold once it is in SI. */
const US_LEFT = /\d ?'|\d"|\b(?:psf|psi|ksi|plf|klf|pcf|cfm|kips?|kip-ft|kip-in|ft|feet|inch(?:es)?|pounds?|lbs?|yards?)\b|ft\u00b2|in\u00b2|\d[ \u00a0]in\b(?! all)/;

describe("a text in SI", () => {
  // Worked by hand: 1 ft = 0.3048 m, 1 in = 25.4 mm, 1 psf = 0.04788 kPa, 1 psi = 0.0068948 MPa, 1 kip = 4.4482 kN, 1 plf = 0.014594 kN/m.
  test.each([
    ["60 ft", "18.3 m"],
    ["11'-2 1/2\"", "3.42 m"],
    ["2'-10\" deep", "0.86 m deep"],
    ["8\" and 8 1/2\" and 1/2\"", "203 mm and 216 mm and 13 mm"],
    ["34 in", "864 mm"],
    ["0.18 in of camber", "4.6 mm of camber"],
    ["80 psf", "3.83 kPa"],
    ["80, 100 and 120 psf", "3.83, 4.79 and 5.75 kPa"],
    ["5,000 psi", "34.5 MPa"],
    ["1,234 kip-ft", "1,673 kN\u00b7m"],
    ["4 to 5 in", "102 to 127 mm"],
    ["between 28.5 and 30.0 in", "between 724 and 762 mm"],
    ["60 by 180 ft", "18.3 by 54.9 m"],
    ["59 of the 160 psf required", "2.82 of the 7.66 kPa required"],
    ["a 60-ft span", "a 18.3 m span"],
    ["\u22123 ft", "\u22120.91 m"],
    ["150 lb per cubic foot", "2,400 kg/m\u00b3"],
    ["150 pounds on every square foot", "7.18 kPa"],
    ["0.31 lb of strand per square foot", "1.51 kg of strand per square meter"],
    ["24.1 kgCO\u2082e/ft\u00b2", "259 kg CO\u2082e/m\u00b2"],
    ["0.54 in\u00b2 per foot", "1,140 mm\u00b2/m"],
    ["1,200 ft/min", "6.10 m/s"],
    ["1 cfm/ft2", "5.08 L/s per m\u00b2"],
    ["0.08 in/100 ft", "0.7 Pa/m"],
    ["12.8 tons", "11.6 t"],
    ["half an inch", "13 mm"],
    ["a thousand square feet", "92.9 m\u00b2"],
    ["each inch of depth", "each 25 mm of depth"],
    ["an inch or two", "25 or 51 mm"],
    ["span, ft \u2192", "span, m \u2192"],
    ["duct width, in: slider", "duct width, mm: slider"],
    ["per foot of beam", "per meter of beam"],
    ["$25 a square foot", "$269/m\u00b2"],
    ["?'-?? ?/?\" to the ceiling", "? m to the ceiling"],
    ["??'-?\" and ?\" of topping", "?? m and ? mm of topping"],
  ])("%s is %s", (us, si) => {
    expect(inSystem(us, "SI").replace(/\u00a0/g, " ")).toBe(si);
  });

  test.each([
    "Grade 60 in as many rows as needed", "12DT28 + 2", "108-S", "1/2 in strands", "half-inch strands", "2.4 in all: strand", "about 1 in offices", "1 in 15 where cars park", "bends under floor 2, at its foot 3",
    "the feet of all columns", "\"Library 5\" from a file", "ACI 318-19 22.5.6.3", "a sloping school yard", "the short ton of 2,000 lb", "",
  ])("%s stays", (text) => {
    expect(inSystem(text, "SI")).toBe(text);
  });

  test("is the text itself for a reader of US units", () => {
    expect(changesOf("60 ft", "US")).toEqual([]);
    expect(inSystem("60 ft", "US")).toBe("60 ft");
  });
});

describe("a text in both systems", () => {
  test.each([
    ["60 ft wide", "60 ft (18.3 m) wide"],
    ["deep (10 to 150 ft)", "deep (10 to 150 ft [3.05 to 45.7 m])"],
    ["4 to 5 in", "4 to 5 in (102 to 127 mm)"],
    ["every inch", "every inch (25 mm)"],
    ["span, ft", "span, ft [m]"],
  ])("%s is %s", (us, both) => {
    expect(inSystem(us, "both").replace(/\u00a0/g, " ")).toBe(both);
    expect(inSystem(inSystem(us, "both"), "both")).toBe(inSystem(us, "both"));
  });
});

test("every unit of the table keeps its value to half a percent or the last digit, whatever the number", () => {
  const units = Object.keys(TEXT_UNITS).filter((unit) => /^[a-z]/.test(unit));
  fc.assert(fc.property(fc.constantFrom(...units), within(100, 9999), (unit, value) => {
    const text = `${decimals(value)} ${unit.replace("kgco2e", "kgCO2e").replace("100ft", "100 ft").replace(/([a-z])2(?!e)/g, "$1\u00b2").replace(/([a-z])3/g, "$1\u00b3").replace(/([a-z])4/g, "$1\u2074")}`;
    const {si, factor} = textUnit(unit) as {si: string; factor: number};
    const turned = inSystem(text, "SI");
    expect(turned.endsWith(`\u00a0${si}`), turned).toBe(true);
    const read = Number(turned.slice(0, -si.length).replace(/[,\u00a0]/g, ""));
    expect(Math.abs(read - Math.round(value) * factor)).toBeLessThanOrEqual(Math.max(0.006 * Math.round(value) * factor, 0.5));
  }), {numRuns: 400});
});

test("factors are those of the table that worked steps go by", () => {
  for (const unit of ["in", "ft", "in2", "ft2", "in3", "yd3", "in4", "kip", "psf", "plf", "psi", "ksi", "kip-in", "kip-ft", "pcf"]) expect(textUnit(unit)?.factor, unit).toBeCloseTo(SI[unit]?.factor as number, 9);
});

test("a length on a grid of 10 mm is read again as it was set, though the text between has quarter inches", () => {
  fc.assert(fc.property(fc.integer({min: 31, max: 5000}), (hundredths) => {
    const text = feetAndInches((hundredths * 10) / 25.4, 4, true);
    expect(inSystem(text, "SI")).toBe(`${(hundredths / 100).toFixed(2)}\u00a0m`);
  }));
});

test("changes do not overlap, stand in order, and leave all else as it is", () => {
  fc.assert(fc.property(fc.array(fc.constantFrom("60 ft", "8\"", " and ", "80 psf", ", ", "12DT28", "(", ")", "an inch", " of ", "7", " in "), {maxLength: 14}), (parts) => {
    const text = parts.join("");
    const changes = changesOf(text, "SI");
    changes.forEach(({from, to}, i) => {
      expect(to).toBeGreaterThan(from);
      expect(from).toBeGreaterThanOrEqual(changes[i - 1]?.to ?? 0);
    });
    expect(changed(text, changes.map(({from, to}) => ({from, to, words: text.slice(from, to)})))).toBe(text);
  }));
});

test("what any check says has no US unit left, of starters and of designs at odds", () => {
  const said = [...seeds.map(({design}) => design), ...ODD.map(({design}) => design)].flatMap((design) => evaluate(design, catalog).checks.flatMap(({label, message}) => [label, message]));
  expect(said.filter((words) => inSystem(words, "SI") !== words).length).toBeGreaterThan(20);
  for (const words of new Set(said)) expect(inSystem(words, "SI"), words).not.toMatch(US_LEFT);
});
