import {describe, expect, test} from "vitest";
import {difference, differenceWords, countStandings, type Comparable} from "../../lib/compare/difference.js";

const less: Comparable = {better: "less", decimals: 1};
const more: Comparable = {better: "more", decimals: 0};
const neither: Comparable = {better: "neither", decimals: 2};

describe("a difference", () => {
  test.each<[string, Comparable, number, number, string, number]>([
    ["less is better", less, 40, 34, "better", 6], ["less is better, and it is more", less, 34, 40, "worse", 6],
    ["more is better", more, 40, 52, "better", 12], ["more is better, and it is less", more, 52, 40, "worse", 12],
    ["neither is better, and it is more", neither, 1, 1.25, "more", 0.25], ["neither is better, and it is less", neither, 1.25, 1, "less", 0.25],
  ])("where %s", (_, measure, base, value, standing, by) => {
    expect(difference(measure, base, value)).toMatchObject({standing, by});
  });

  test("is of the numbers as they are shown: what reads alike is alike, and a last digit apart is not", () => {
    expect(difference(less, 10.04, 9.96)).toEqual({standing: "alike", by: 0, share: undefined});
    // 10.1 and 10.0 as shown, though they lie 0.02 apart.
    expect(difference(less, 10.06, 10.04)).toMatchObject({standing: "better", by: 0.1});
    // 0.3 less 0.1 as a computer subtracts is 0.19999999999999998.
    expect(difference(less, 0.3, 0.1).by).toBe(0.2);
  });

  test("is a share of what it is compared with, where that is not nothing", () => {
    expect(difference(more, 40, 52).share).toBeCloseTo(0.3, 12);
    expect(difference(more, 0, 5)).toMatchObject({standing: "better", share: undefined});
    expect(difference(more, -4, -2)).toMatchObject({standing: "better", by: 2, share: 0.5});
  });

  test.each([[undefined, 3], [3, undefined], [undefined, undefined]])("cannot be told of %s and %s", (base, value) => {
    expect(difference(more, base, value).standing).toBe("not comparable");
  });
});

describe("in words", () => {
  const words = (measure: Comparable, base: number | undefined, value: number | undefined) => differenceWords(difference(measure, base, value), measure.decimals);

  test("it says which way and by how much, with the share where that says more", () => {
    expect(words(less, 40, 34)).toBe("better by 6.0 (15\u00a0%)");
    expect(words(more, 40, 34)).toBe("worse by 6 (15\u00a0%)");
    expect(words(neither, 1, 1.25)).toBe("0.25 more (25\u00a0%)");
    expect(words(neither, 1.25, 1)).toBe("0.25 less (20\u00a0%)");
    expect(words(less, 5, 5)).toBe("alike");
    expect(words(less, undefined, 5)).toBe("");
  });

  test("leaves out shares of nothing, of next to nothing, and of several times as much", () => {
    expect(words(more, 0, 5)).toBe("better by 5");
    expect(words(more, 1000, 1004)).toBe("better by 4");
    expect(words(more, 1000, 1005)).toBe("better by 5 (1\u00a0%)");
    expect(words(more, 10, 20)).toBe("better by 10 (100\u00a0%)");
    expect(words(more, 10, 21)).toBe("better by 11");
  });
});

test("a tally counts each standing once, and what cannot be compared not at all", () => {
  expect(countStandings(["better", "better", "worse", "more", "less", "alike", "not comparable"])).toEqual({better: 2, worse: 1, different: 2, alike: 1});
});
