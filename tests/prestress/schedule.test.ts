import {describe, expect, it} from "vitest";
import {USUAL_SCHEDULE, checkSchedule, timeMoments, timeStops} from "../../lib/prestress/schedule.js";
import {refused} from "../support/errors.js";

describe("a schedule", () => {
  it.each([
    [{releaseDay: 0.2}, "releaseDay", /0\.5 to 28 days/],
    [{erectionDay: 0.5}, "erectionDay", /0\.75 to/],
    [{toppingDay: 30}, "toppingDay", /42 to/],
    [{loadingDay: 60}, "loadingDay", /61 to/],
    [{endDay: 95}, "endDay", /100 to 36500 days/],
    [{loadingDay: Number.NaN}, "loadingDay", /61 to/],
  ] as const)("with %o is refused by name", (change, path, allowed) => {
    refused(() => checkSchedule({...USUAL_SCHEDULE, ...change}, true), {path, allowed});
  });

  it("may bring the topping on the day of the crane, and needs no topping's day where there is none", () => {
    expect(checkSchedule({...USUAL_SCHEDULE, toppingDay: 42}, true).toppingDay).toBe(42);
    expect(checkSchedule({...USUAL_SCHEDULE, toppingDay: 5000}, false).loadingDay).toBe(90);
  });

  it("names its moments in order, erection apart from topping", () => {
    expect(timeMoments(USUAL_SCHEDULE, true).map(({moment}) => moment)).toEqual(["release", "erection", "topping", "loading", "end"]);
    expect(timeMoments(USUAL_SCHEDULE, false).map(({moment}) => moment)).toEqual(["release", "erection", "loading", "end"]);
  });

  it("is cut into steps that rise and hold every moment; two on one day are one stop", () => {
    const stops = timeStops({...USUAL_SCHEDULE, toppingDay: 42}, true, 12);
    expect(stops.every(({day}, i) => i === 0 || day > (stops[i - 1]?.day ?? 0))).toBe(true);
    expect(stops.flatMap(({moments}) => moments)).toEqual(["release", "erection", "topping", "loading", "end"]);
    expect(stops.find(({day}) => day === 42)?.moments).toEqual(["erection", "topping"]);
    expect(stops).toHaveLength(3 * 12 + 1);
  });

  it("steps closer together at first: two steps over fifteen days part after three", () => {
    // (1 + 15)^(1/2) - 1.
    const stops = timeStops({...USUAL_SCHEDULE, releaseDay: 1, erectionDay: 16}, false, 2);
    expect(stops.slice(0, 3).map(({day}) => day)).toEqual([1, expect.closeTo(4, 12), 16]);
  });
});
