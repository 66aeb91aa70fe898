import {describe, expect, test} from "vitest";
import {seededRandom} from "../../lib/topping/random.js";

describe("seededRandom", () => {
  test("has the generator's known first numbers", () => {
    expect(seededRandom(1).uniform()).toBeCloseTo(0.6270739405881613, 15);
    expect(seededRandom(0).uniform()).toBeCloseTo(0.26642920868471265, 15);
  });

  test("gives the same for the same seed, and other numbers for another", () => {
    const draw = (seed: number) => {
      const random = seededRandom(seed);
      return Array.from({length: 20}, () => [random.uniform(), random.normal()]).flat();
    };
    expect(draw(42)).toEqual(draw(42));
    expect(draw(42)).not.toEqual(draw(43));
  });

  test("makes two normal deviates of two even numbers, as Box and Muller do", () => {
    const [even, normal] = [seededRandom(7), seededRandom(7)];
    for (let pair = 0; pair < 3; pair++) {
      const [first, second] = [even.uniform(), even.uniform()];
      const radius = Math.sqrt(-2 * Math.log(1 - first));
      expect(normal.normal()).toBeCloseTo(radius * Math.cos(2 * Math.PI * second), 14);
      expect(normal.normal()).toBeCloseTo(radius * Math.sin(2 * Math.PI * second), 14);
    }
  });

  test("spreads evenly over twenty boxes, pair by pair too", () => {
    const random = seededRandom(2024);
    const boxes = new Array<number>(20).fill(0);
    const pairs = new Array<number>(100).fill(0);
    const count = 40_000;
    for (let i = 0; i < count; i++) {
      const [a, b] = [random.uniform(), random.uniform()];
      boxes[Math.floor(20 * a)]! += 1;
      pairs[10 * Math.floor(10 * a) + Math.floor(10 * b)]! += 1;
    }
    const chiSquare = (counts: readonly number[]) => counts.reduce((sum, n) => sum + (n - count / counts.length) ** 2 / (count / counts.length), 0);
    // 19 and 99 degrees of freedom: one chance in a thousand beyond 43.8 and 148.2.
    expect(chiSquare(boxes)).toBeLessThan(43.8);
    expect(chiSquare(pairs)).toBeLessThan(148.2);
  });

  test("has normal deviates with the normal's moments and tails", () => {
    const random = seededRandom(5);
    const count = 100_000;
    const draws = Float64Array.from({length: count}, () => random.normal());
    const moment = (power: number) => draws.reduce((sum, x) => sum + x ** power, 0) / count;
    expect(Math.abs(moment(1))).toBeLessThan(4 / Math.sqrt(count));
    expect(Math.abs(moment(2) - 1)).toBeLessThan(4 * Math.sqrt(2 / count));
    expect(Math.abs(moment(3))).toBeLessThan(4 * Math.sqrt(15 / count));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(4 * Math.sqrt(96 / count));
    const beyond = draws.filter((x) => Math.abs(x) > 1.959964).length / count;
    expect(Math.abs(beyond - 0.05)).toBeLessThan(4 * Math.sqrt(0.0475 / count));
    // Neighbors in the series have nothing to do with each other.
    let together = 0;
    for (let i = 1; i < count; i++) together += ((draws[i] as number) * (draws[i - 1] as number)) / count;
    expect(Math.abs(together)).toBeLessThan(4 / Math.sqrt(count));
  });
});
