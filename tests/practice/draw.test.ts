import {describe, expect, test} from "vitest";
import {dealt} from "../../lib/practice/draw.js";

/** Three draws of a made-up kind. */
const three = (seed: number, turn = 1, name = "made up") => {
  const draw = dealt(name, seed, turn);
  return [draw.from(20, 60, 2), draw.one(["a", "b", "c", "d", "e"]), draw.from(0, 1, 0.1)] as const;
};

describe("numbers dealt from a seed", () => {
  test("meet every variant once before one comes again, whatever seed they begin at", () => {
    // 21 spans, 5 letters and 11 tenths make 1,155.
    for (const first of [0, 7, 123_456, 2 ** 32 - 1156]) {
      const seen = new Set(Array.from({length: 1155}, (_, i) => three(first + i).join(" ")));
      expect(seen.size).toBe(1155);
    }
    expect(three(1155)).toEqual(three(0));
  });

  test("stay within their range, in its steps, without what binary fractions leave", () => {
    for (let seed = 0; seed < 300; seed++) {
      const [span, letter, tenth] = three(seed);
      expect(span % 2).toBe(0);
      expect(span).toBeGreaterThanOrEqual(20);
      expect(span).toBeLessThanOrEqual(60);
      expect("abcde").toContain(letter);
      expect(String(tenth).length).toBeLessThanOrEqual(3);
    }
  });

  test("differ in their first and in their second draw from one seed to the next, and from turn to turn", () => {
    const spans = Array.from({length: 8}, (_, i) => three(i)[0]);
    expect(new Set(spans).size).toBe(8);
    expect(new Set(Array.from({length: 10}, (_, i) => three(i)[1])).size).toBeGreaterThan(3);
    expect(new Set(Array.from({length: 50}, (_, turn) => three(7, turn + 1).join(" "))).size).toBe(50);
  });

  test("are the same for the same seed, and other for another kind", () => {
    expect(three(7)).toEqual(three(7));
    const same = Array.from({length: 100}, (_, seed) => three(seed).join() === three(seed, 1, "another").join()).filter(Boolean);
    expect(same.length).toBeLessThan(10);
  });

  test("put a list in any of its orders, none more often than the others by far", () => {
    const orders = new Map<string, number>();
    for (let seed = 0; seed < 600; seed++) {
      const order = dealt("order", seed).shuffled(["x", "y", "z"]).join("");
      orders.set(order, (orders.get(order) ?? 0) + 1);
    }
    expect(orders.size).toBe(6);
    for (const count of orders.values()) expect(count).toBe(100);
  });

  test("cannot be drawn from nothing", () => {
    expect(() => dealt("none", 1).one([])).toThrow("draw: 0 is not possible (at least one to draw from)");
  });
});
