import {describe, expect, test} from "vitest";
import {sagInfluence, sagUnder} from "../../lib/member/sagInfluence.js";

const INFLUENCE = sagInfluence(80);
const SPAN = 480;
const under = (load: (share: number) => number) => sagUnder(INFLUENCE, Array.from({length: 81}, (_, i) => load(i / 80)), SPAN, 4000, 25000);
const scale = SPAN ** 4 / (4000 * 25000);

describe("sagUnder", () => {
  test("of a uniform load is x - 2 x^3 + x^4 over 24", () => {
    const sag = under(() => 0.1);
    for (const [i, value] of sag.entries()) {
      const x = i / 80;
      expect(value).toBeCloseTo((0.1 * scale * (x - 2 * x ** 3 + x ** 4)) / 24, 6);
    }
    expect((sag[40] as number) / ((5 * 0.1 * scale) / 384)).toBeCloseTo(1, 6);
  });

  test("of a load that rises from end to end is half a uniform one's at midspan", () => {
    expect((under((x) => 0.2 * x)[40] as number) / ((5 * 0.1 * scale) / 384)).toBeCloseTo(1, 6);
  });

  test.each([1, 2, 3])("of %d half waves is the load over (n pi)^4", (n) => {
    const sag = under((x) => Math.sin(n * Math.PI * x));
    for (const i of [7, 20, 33, 40, 61]) {
      expect(sag[i]).toBeCloseTo((scale * Math.sin((n * Math.PI * i) / 80)) / (n * Math.PI) ** 4, 2);
    }
    expect((sag[Math.round(40 / n)] as number) / (scale * Math.sin((n * Math.PI * Math.round(40 / n)) / 80) / (n * Math.PI) ** 4)).toBeCloseTo(1, 3);
  });
});
