import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {atLeast, atMost, exceeds} from "../lib/checks.js";
import {pairText, usedPercent} from "../lib/pair.js";
import {checkNumbers} from "../src/components/checks.js";
import {formatForEquation} from "../src/components/worked/numbers.js";

/** The number that a reader reads. */
const read = (text: string) => Number(text.replace(/,/g, "").replace("\u2212", "-"));

/** Pairs as design yields them, many of them within a part in a thousand of each other. */
const size = fc.double({min: 1e-3, max: 1e6, noNaN: true});
const pairs = fc.tuple(size, fc.oneof(size, fc.double({min: -1e-3, max: 1e-3, noNaN: true}).map((off) => ({off})))).map(([asked, other]) =>
  [asked, typeof other === "number" ? other : asked * (1 + other.off)] as const);

describe("a demand beside its capacity", () => {
  test("reads as the greater wherever it fails, and never as the greater where it holds", () => {
    fc.assert(fc.property(pairs, fc.integer({min: 0, max: 3}), fc.boolean(), ([asked, given], digits, significant) => {
      const text = significant ? pairText(asked, given, digits + 1, formatForEquation) : pairText(asked, given, digits);
      if (exceeds(asked, given)) expect(read(text.asked)).toBeGreaterThan(read(text.given));
      else expect(read(text.asked)).toBeLessThanOrEqual(read(text.given) * (1 + 2e-9));
    }), {numRuns: 3000});
  });

  test("has no more digits than it takes", () => {
    expect(pairText(3554, 3500)).toEqual({asked: "3,554", given: "3,500"});
    expect(pairText(84.2, 83.9)).toEqual({asked: "84.2", given: "83.9"});
    expect(pairText(84.04, 84.01)).toEqual({asked: "84.04", given: "84.01"});
    expect(pairText(83.9, 84.2)).toEqual({asked: "84", given: "84"});
    expect(pairText(84, 84)).toEqual({asked: "84", given: "84"});
    expect(pairText(0.1 + 0.2, 0.3, 1)).toEqual({asked: "0.3", given: "0.3"});
  });

  test("reads apart in the lists of checks, from above and from below", () => {
    const text = {id: "x", label: "X", unit: "psf", clause: "geometry", holds: "", fails: ""};
    expect(checkNumbers(atMost(text, 84.04, 84.01))).toEqual({found: "84.04 psf", limit: "at most 84.01 psf"});
    expect(checkNumbers(atLeast({...text, unit: "in"}, 35.996, 36))).toEqual({found: "35.996 in", limit: "at least 36 in"});
    fc.assert(fc.property(pairs, ([asked, given]) => {
      const check = atMost(text, asked, given);
      const {found, limit} = checkNumbers(check);
      if (check.verdict === "fails") expect(found).not.toBe(limit.replace("at most ", ""));
    }));
  });
});

test("a use beyond its limit reads above 100 %", () => {
  expect(usedPercent(0.482)).toBe("48\u00a0%");
  expect(usedPercent(1)).toBe("100\u00a0%");
  expect(usedPercent(1.004)).toBe("100.4\u00a0%");
  expect(usedPercent(1.5)).toBe("150\u00a0%");
});
