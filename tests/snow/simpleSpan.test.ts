import {describe, expect, test} from "vitest";
import {simpleSpan} from "../../lib/snow/simpleSpan.js";

const at = (...points: readonly (readonly [xFt: number, load: number])[]) => points.map(([xFt, load]) => ({xFt, load}));

describe("a simple span under a load that is straight between places", () => {
  test("bends by w L2 / 8 in its middle under an even load, wherever it begins", () => {
    expect(simpleSpan(at([30, 100], [50, 100]))).toMatchObject({lengthFt: 20, firstReaction: 1000, secondReaction: 1000, moment: 5000, momentAtFt: 10});
  });

  test("bends most at 0.577 L under a load that grows from nothing, by w L2 / (9 root 3)", () => {
    const {moment, momentAtFt, firstReaction, secondReaction} = simpleSpan(at([0, 0], [20, 90]));
    expect([firstReaction, secondReaction]).toEqual([expect.closeTo(300, 9), expect.closeTo(600, 9)]);
    expect(momentAtFt).toBeCloseTo(20 / Math.sqrt(3), 9);
    expect(moment).toBeCloseTo((90 * 20 ** 2) / (9 * Math.sqrt(3)), 8);
  });

  test("bends by a load that steps: 100 on one half, 300 on the other", () => {
    // 500 at 2.5 ft and 1,500 at 7.5 ft of 10: reactions 750 and 1,250. Of 750 the first half spends 500, and 300 a foot the
    // rest in 0.8333 ft. There 750 x 5.8333 - 500 x 3.3333 - 300 x 0.8333^2 / 2 = 2,604.2.
    const span = simpleSpan(at([0, 100], [5, 100], [5, 300], [10, 300]));
    expect([span.firstReaction, span.secondReaction]).toEqual([expect.closeTo(750, 9), expect.closeTo(1250, 9)]);
    expect(span.momentAtFt).toBeCloseTo(5 + 5 / 6, 9);
    expect(span.moment).toBeCloseTo(2604.1667, 3);
  });

  test("bends by a load that begins beyond its middle and grows: 0 on 10 ft, then up to 90 at 20 ft", () => {
    // 450 at 16.667 ft of 20: reactions 75 and 375. Beyond 10 ft 75 = 4.5 x^2 at x = 4.0825; there 75 x 14.0825 - 1.5 x 4.0825^3 = 954.12.
    const span = simpleSpan(at([0, 0], [10, 0], [20, 90]));
    expect([span.firstReaction, span.momentAtFt, span.moment]).toEqual([expect.closeTo(75, 9), expect.closeTo(10 + Math.sqrt(75 / 4.5), 9), expect.closeTo(954.124, 2)]);
  });

  test("is the same where a place is given twice, before its middle or beyond", () => {
    const once = simpleSpan(at([0, 100], [4, 140], [10, 200]));
    for (const twice of [at([0, 100], [4, 140], [4, 140], [10, 200]), at([0, 100], [0, 100], [4, 140], [10, 200]), at([0, 100], [4, 140], [10, 200], [10, 200])]) {
      const {moment, momentAtFt} = simpleSpan(twice);
      expect([moment, momentAtFt]).toEqual([once.moment, once.momentAtFt]);
    }
  });
});
