import {describe, expect, test} from "vitest";
import {concrete, elasticModulusKsi, ruptureModulusKsi, stressBlockFactor} from "../../lib/materials/concrete.js";
import {shearRootPsi} from "../../lib/materials/shearRoot.js";

describe("concrete", () => {
  test("takes weight and lightweight factor from its kind", () => {
    expect(concrete("normalweight", 5000)).toEqual({kind: "normalweight", strengthPsi: 5000, unitWeightPcf: 150, lambda: 1});
    expect(concrete("sand-lightweight", 4000)).toEqual({kind: "sand-lightweight", strengthPsi: 4000, unitWeightPcf: 115, lambda: 0.85});
  });
});

describe("elasticModulusKsi", () => {
  test("follows wc^1.5 33 sqrt(f'c)", () => {
    // 150^1.5 = 1,837.12; times 33 = 60,624.9; times sqrt(5,000) = 70.7107 gives 4,286,826 psi.
    expect(elasticModulusKsi(150, 5000)).toBeCloseTo(4286.83, 1);
    // 115^1.5 = 1,233.24; times 33 = 40,696.9; times sqrt(3,600) = 60 gives 2,441,811 psi.
    expect(elasticModulusKsi(115, 3600)).toBeCloseTo(2441.81, 1);
  });
});

describe("ruptureModulusKsi", () => {
  test("is 7.5 lambda sqrt(f'c)", () => {
    // 7.5 * 70.7107 = 530.33 psi; 0.85 of it in sand-lightweight concrete.
    expect(ruptureModulusKsi(concrete("normalweight", 5000))).toBeCloseTo(0.53033, 5);
    expect(ruptureModulusKsi(concrete("sand-lightweight", 5000))).toBeCloseTo(0.45078, 5);
  });
});

describe("stressBlockFactor", () => {
  test("is 0.85 up to 4,000 psi, falls by 0.05 per 1,000 psi, and stays at 0.65 from 8,000 psi", () => {
    for (const [strengthPsi, beta1] of [[2500, 0.85], [4000, 0.85], [5000, 0.8], [6500, 0.725], [8000, 0.65], [12000, 0.65]] as const) {
      expect(stressBlockFactor(strengthPsi), String(strengthPsi)).toBeCloseTo(beta1, 12);
    }
  });
});

describe("shearRootPsi", () => {
  test("is lambda sqrt(f'c), the root no more than 100 psi", () => {
    expect(shearRootPsi(concrete("normalweight", 6400))).toBe(80);
    expect(shearRootPsi(concrete("sand-lightweight", 6400))).toBeCloseTo(0.85 * 80, 12);
    expect(shearRootPsi(concrete("sand-lightweight", 12000))).toBeCloseTo(0.85 * 100, 12);
  });
});
