import {expect, test} from "vitest";
import fc from "fast-check";
import {niceTicks, tickTexts} from "../../lib/reader/ticks.js";
import {within} from "../properties/arbitrary.js";

test("ticks of 20 to 100 ft in meters are round", () => {
  expect(niceTicks(6.096, 30.48, 8)).toEqual([7.5, 10, 12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30]);
  expect(niceTicks(0, 14.4, 6)).toEqual([0, 2.5, 5, 7.5, 10, 12.5]);
  expect(niceTicks(1, 1, 5)).toEqual([]);
});

test("a tick says the number at which it stands", () => {
  expect(tickTexts([7.5, 10, 12.5])).toEqual(["7.5", "10.0", "12.5"]);
  expect(tickTexts([0, 0.25, 0.5])).toEqual(["0.00", "0.25", "0.50"]);
  expect(tickTexts([0, 1000, 2000])).toEqual(["0", "1,000", "2,000"]);
  fc.assert(fc.property(within(-500, 500), within(0.01, 5000), fc.integer({min: 2, max: 12}), (low, span, count) => {
    const ticks = niceTicks(low, low + span, count);
    tickTexts(ticks).forEach((text, i) => expect(Number(text.replace(/,/g, "").replace("\u2212", "-"))).toBeCloseTo(ticks[i] as number, 8));
  }));
});

test("ticks lie within the range, evenly, and are about as many as wanted", () => {
  fc.assert(fc.property(within(-500, 500), within(0.01, 2000), fc.integer({min: 2, max: 12}), (low, span, count) => {
    const ticks = niceTicks(low, low + span, count);
    expect(ticks.length).toBeGreaterThanOrEqual(Math.floor(count / 2));
    expect(ticks.length).toBeLessThanOrEqual(2 * count + 1);
    const step = (ticks[1] as number) - (ticks[0] as number);
    ticks.forEach((tick, i) => {
      expect(tick).toBeGreaterThanOrEqual(low - 1e-6 * span);
      expect(tick).toBeLessThanOrEqual(low + span + 1e-6 * span);
      if (i > 0) expect(tick - (ticks[i - 1] as number)).toBeCloseTo(step, 6);
    });
  }));
});
