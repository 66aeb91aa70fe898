import {expect, test} from "vitest";
import {concreteBearingKip} from "../../lib/materials/bearing.js";
import {refused} from "../support/errors.js";

test("bearing on concrete is 0.65 * 0.85 f'c A1, up to twice that on a larger support", () => {
  // 0.5525 * 5 * 20 = 55.25 kip.
  expect(concreteBearingKip(5000, 20, 20)).toBeCloseTo(55.25, 9);
  // A2 = 45: sqrt(2.25) = 1.5.
  expect(concreteBearingKip(5000, 20, 45)).toBeCloseTo(82.875, 9);
  // From 4 A1 on no more.
  expect(concreteBearingKip(5000, 20, 80)).toBeCloseTo(110.5, 9);
  expect(concreteBearingKip(5000, 20, 500)).toBeCloseTo(110.5, 9);
  // Alone without a support of its own.
  expect(concreteBearingKip(5000, 20)).toBe(concreteBearingKip(5000, 20, 20));
  refused(() => concreteBearingKip(5000, 20, 19), {path: "supportIn2", allowed: "20 to 1000000000 in2"});
  refused(() => concreteBearingKip(5000, 0, 19), {path: "loadedIn2"});
  refused(() => concreteBearingKip(2400, 20), {path: "strengthPsi", allowed: "2500 to 12000 psi"});
});
