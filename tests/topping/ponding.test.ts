import {describe, expect, test} from "vitest";
import {camber} from "../../lib/member/camber.js";
import {fillRatio, ponding} from "../../lib/topping/ponding.js";
import {sagInfluence, sagUnder} from "../../lib/topping/sag.js";
import {memberWith} from "../support/members.js";

const ROOF = memberWith("10DT24", "108-S");
const roof = (spanFt: number, fall = 0.25, deadPlf = 100, member = ROOF) => ponding(member, camber(member, spanFt, deadPlf), spanFt, fall);
const verdicts = (result: ReturnType<typeof roof>) => Object.fromEntries(result.checks.map((check) => [check.id, check.verdict]));

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

describe("ponding", () => {
  test("amplifies as one filling after the other adds up", () => {
    const {ratio, amplification} = roof(70);
    let sum = 0;
    for (let n = 0; n < 400; n++) sum += ratio ** n;
    expect(ratio).toBeGreaterThan(0.01);
    expect(amplification).toBeCloseTo(sum, 9);
  });

  test("passes a stiff roof that keeps its camber and falls a quarter inch per foot", () => {
    const result = roof(40);
    expect(result.sagIn).toBe(0);
    expect(result.filledSagIn).toBe(0);
    expect(verdicts(result)).toEqual({"ponding sag": "ok", "ponding stiffness": "ok", "ponding fall": "ok"});
    expect(verdicts(roof(40, 0.2))["ponding fall"]).toBe("fails");
  });

  test("fails a roof that sags, and asks for the fall that empties its hollow", () => {
    const result = roof(80, 0.25, 300);
    expect(result.sagIn).toBeGreaterThan(0);
    expect(verdicts(result)["ponding sag"]).toBe("fails");
    // Along x the top lies at -fall x - sag (16/5)(x - 2 x^3 + x^4): level at the far end where the fall is 3.2 sag/L.
    expect(result.fallToDrainInPerFt).toBeCloseTo((3.2 * result.sagIn) / 80, 12);
    const top = (x: number, fall: number) => -fall * 80 * x - result.sagIn * (16 / 5) * (x - 2 * x ** 3 + x ** 4);
    const drains = (fall: number) => Array.from({length: 400}, (_, i) => top((i + 1) / 400, fall) - top(i / 400, fall)).every((rise) => rise < 0);
    expect(drains(1.001 * result.fallToDrainInPerFt)).toBe(true);
    expect(drains(0.98 * result.fallToDrainInPerFt)).toBe(false);
    expect(verdicts(roof(80, 3, 300))["ponding fall"]).toBe("ok");
    expect(result.filledSagIn).toBeCloseTo(result.sagIn * (result.amplification as number), 12);
  });

  test("has no end in a roof that is too soft", () => {
    const plank = memberWith("4FS4", "46-S");
    const result = roof(60, 0.25, 0, plank);
    expect(result.ratio).toBeGreaterThan(1);
    expect(result.amplification).toBeUndefined();
    expect(result.filledSagIn).toBeUndefined();
    expect(verdicts(result)["ponding stiffness"]).toBe("fails");
  });
});
