import {describe, expect, test} from "vitest";
import {fillRatio} from "../../lib/member/fillRatio.js";
import {sagInfluence, sagUnder} from "../../lib/member/sagInfluence.js";

describe("fillRatio", () => {
  test("is the steel roof's 32 S L^4/(10^7 I) with steel's modulus and water", () => {
    // 6 ft apart, 40 ft long, 300 in4: 32 x 6 x 40^4/(10^7 x 300) = 0.16384; 32 is 31.8 rounded.
    expect((32 * fillRatio(62.4, 72, 40, 29000, 300)) / 0.16384).toBeCloseTo(31.81, 2);
  });

  test("is what one filling of a half wave sags by", () => {
    const ratio = fillRatio(62.4, 120, 60, 4000, 30000);
    const sag = sagUnder(sagInfluence(80), Array.from({length: 81}, (_, i) => (62.4 / 1728000) * 120 * Math.sin((Math.PI * i) / 80)), 720, 4000, 30000);
    expect((sag[40] as number) / ratio).toBeCloseTo(1, 4);
  });
});
