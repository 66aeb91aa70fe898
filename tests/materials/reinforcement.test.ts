import {describe, expect, test} from "vitest";
import {barStressKsi} from "../../lib/materials/reinforcement.js";

describe("barStressKsi", () => {
  test("is elastic up to 60 ksi at a strain of 60/29,000, and level beyond it", () => {
    expect(barStressKsi(0)).toBe(0);
    expect(barStressKsi(0.001)).toBeCloseTo(29, 12);
    expect(barStressKsi(60 / 29000)).toBeCloseTo(60, 12);
    expect(barStressKsi(0.05)).toBe(60);
  });

  test("is the same in compression", () => {
    expect(barStressKsi(-0.001)).toBeCloseTo(-29, 12);
    expect(barStressKsi(-0.003)).toBe(-60);
  });
});
