import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {dominates, nonDominated} from "../../lib/deck/dominance.js";
import {hold} from "../properties/arbitrary.js";

describe("dominance", () => {
  test.each([
    [[1, 2], [1, 3], true], [[1, 2], [2, 3], true], [[1, 2], [1, 2], false], [[1, 3], [2, 2], false], [[2, 2], [1, 2], false], [[1], [2], true],
  ])("of %j over %j is %s", (one, other, expected) => expect(dominates(one, other)).toBe(expected));
});

/** Small whole numbers, so that ties and repeats are frequent. */
const things = fc.integer({min: 1, max: 4}).chain((size) =>
  fc.array(fc.array(fc.integer({min: 0, max: 5}), {minLength: size, maxLength: size}), {maxLength: 40})
    .map((list) => list.map((values, id) => ({id, values}))));
const kept = (list: readonly {id: number; values: number[]}[]) => nonDominated(list, ({values}) => values, (a, b) => a.id - b.id);
const same = (a: readonly number[], b: readonly number[]) => a.every((value, i) => value === b[i]);

describe("the things that none dominates", () => {
  test("are none of none, and the only one", () => {
    expect(kept([])).toEqual([]);
    expect(kept([{id: 7, values: [3]}])).toEqual([{id: 7, values: [3]}]);
  });

  test("are dominated by no thing of the whole list", () => {
    hold(400, fc.property(things, (list) => {
      for (const one of kept(list)) expect(list.some((other) => dominates(other.values, one.values))).toBe(false);
    }));
  });

  test("leave out only what one of them dominates or equals, the first of equals being kept", () => {
    hold(400, fc.property(things, (list) => {
      const front = kept(list);
      for (const one of list.filter((entry) => !front.includes(entry))) {
        expect(front.some((other) => dominates(other.values, one.values) || (same(other.values, one.values) && other.id < one.id))).toBe(true);
      }
      for (const [i, one] of front.entries()) expect(front.findIndex((other) => same(other.values, one.values))).toBe(i);
    }));
  });

  test("do not hang on the order of the list", () => {
    hold(300, fc.property(things.chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, {minLength: list.length}))), ([list, shuffled]) => {
      expect(kept(shuffled)).toEqual(kept(list));
    }));
  });
});
