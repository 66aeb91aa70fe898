import {describe, expect, test} from "vitest";
import {decompressionStrain, memberStrength, strandLayers} from "../../lib/member/strength.js";
import {memberWith} from "../support/members.js";

describe("strandLayers", () => {
  test("measure depth from the top of the topping", () => {
    const layers = strandLayers(memberWith("10DT24", "68-S", {toppingIn: 2}), 0.5, 150);
    expect(layers.map((layer) => layer.depthIn)).toEqual([24, 22, 20]);
    expect(layers.map((layer) => layer.areaIn2)).toEqual([0.306, 0.306, 0.306]);
  });

  test("bring along the effective prestress and the decompression of the concrete", () => {
    // fse = 150: 150 / 28,800 = 0.0052083; P = 0.918 * 150 = 137.7 kip at e = 13.7736:
    // 137.7 (1 / 449 + 189.71 / 22,469) / 4,286.8 = 0.00034275.
    const member = memberWith("10DT24", "68-S");
    expect(decompressionStrain(member, 0.5, 150)).toBeCloseTo(0.00034275, 6);
    expect(strandLayers(member, 0.5, 150)[0]?.strainBefore).toBeCloseTo(0.0052083 + 0.00034275, 6);
  });

  test("follow depressed strands to the ends", () => {
    const member = memberWith("12DT32", "128-D1");
    expect(strandLayers(member, 0, 150).at(-1)?.depthIn).toBeCloseTo(3, 12);
    expect(strandLayers(member, 0.5, 150).at(-1)?.depthIn).toBeCloseTo(32 - 4.5, 12);
  });
});

describe("memberStrength", () => {
  test("of a thin-flanged tee agrees with a hand calculation", () => {
    // 10DT24 68-S: c near 0.6 in, so strands at 20 in on average stretch by 0.003 * 19.4 / 0.6 + 0.0056 = 0.10, where the
    // curve gives 269.6 ksi: T = 0.918 * 269.6 = 247.5 kip, a = 247.5 / (4.25 * 120) = 0.4853 in,
    // Mn = 247.5 (20 - 0.2426) = 4,890 kip-in.
    const strength = memberStrength(memberWith("10DT24", "68-S"), 0.5, 150);
    expect(strength.nominalMomentKipIn / 4890).toBeCloseTo(1, 3);
    expect(strength.phi).toBe(0.9);
  });
});
