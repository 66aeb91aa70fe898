import {expect, test} from "vitest";
import {crackedStateAt} from "../../lib/member/crackedSection.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {decompressionStrain} from "../../lib/member/strength.js";
import {widthAt} from "../../lib/sections/polygon.js";
import {memberWith} from "../support/members.js";

test("a cracked rectangle balances the strands' force with its triangle of stress, by hand", () => {
  const slab = memberWith("4FS8", "88-S");
  const state = prestressState(slab, 25, 0.5, 0);
  const {neutralAxisIn: c, topKsi, stressChangeKsi, momentKipIn} = crackedStateAt(slab, state, 20);
  const fse = state.losses.effectiveStressKsi;
  const steelKip = slab.layout.areaIn2 * (fse + 28800 * decompressionStrain(slab, 0.5, fse) + 20);
  expect(stressChangeKsi).toBe(20);
  expect((topKsi * 48 * c) / 2).toBeCloseTo(steelKip, 6);
  // Plane sections: 20 ksi / n at the strands, 6.5 in down.
  expect((topKsi * (6.5 - c)) / c).toBeCloseTo((20 * slab.modulusKsi) / 28800, 6);
  expect(momentKipIn).toBeCloseTo(steelKip * (6.5 - c / 3), 5);
});

test("a cracked section carries more the more its strands are stretched, and its neutral axis rises", () => {
  const tee = memberWith("10DT24", "88-S", {toppingIn: 2});
  const state = prestressState(tee, 60, 0.5, 150);
  const states = [1, 5, 10, 20, 36].map((ksi) => crackedStateAt(tee, state, ksi));
  for (let i = 1; i < states.length; i++) {
    expect(states[i]!.momentKipIn).toBeGreaterThan(states[i - 1]!.momentKipIn);
    expect(states[i]!.neutralAxisIn).toBeLessThan(states[i - 1]!.neutralAxisIn);
  }
});

test("a topping of weaker concrete presses less than the member beside it: by the ratio of their moduli, by hand", () => {
  // A flat slab of 48 by 8 in under 3 in of topping: two rectangles, the upper one softer.
  const slab = memberWith("4FS8", "88-S", {toppingIn: 3, toppingStrengthPsi: 3000});
  const state = prestressState(slab, 25, 0.5, 0);
  const {neutralAxisIn: c, topKsi, momentKipIn} = crackedStateAt(slab, state, 5);
  expect(c).toBeGreaterThan(3);
  const n = Math.sqrt(3000 / slab.concrete.strengthPsi);
  const fse = state.losses.effectiveStressKsi;
  const steelKip = slab.layout.areaIn2 * (fse + 28800 * decompressionStrain(slab, 0.5, fse) + 5);
  // Stress falls evenly from topKsi to 0 at c; the topping's slice from 0 to 3 in counts n, the member's from 3 in to c whole.
  const at3 = topKsi * (1 - 3 / c);
  const toppingKip = n * 48 * 3 * ((topKsi + at3) / 2);
  const memberKip = (48 * (c - 3) * at3) / 2;
  expect(toppingKip + memberKip).toBeCloseTo(steelKip, 5);
  // A trapezoid's middle lies h / 3 (a + 2 b) / (a + b) below its top; here h / 3 is 1 in.
  const toppingIn = (topKsi + 2 * at3) / (topKsi + at3);
  const strandIn = 11 - (slab.section.ybIn - state.eccentricityIn);
  expect(momentKipIn).toBeCloseTo(toppingKip * (strandIn - toppingIn) + memberKip * (strandIn - 3 - (c - 3) / 3), 3);
});

test.each([
  ["in the flange", 24, 250, [0, 2]],
  ["in the tapering stems", 24, 1.5, [6, 20]],
] as const)("a cracked tee with its neutral axis %s balances strip by strip", (_, spanFt, stressKsi, [from, to]) => {
  const tee = memberWith("10DT24", "88-S");
  const state = prestressState(tee, spanFt, 0.5, 150);
  const {neutralAxisIn: c, topKsi, momentKipIn} = crackedStateAt(tee, state, stressKsi);
  expect(c).toBeGreaterThan(from);
  expect(c).toBeLessThan(to);
  const fse = state.losses.effectiveStressKsi;
  const steelKip = tee.layout.areaIn2 * (fse + 28800 * decompressionStrain(tee, 0.5, fse) + stressKsi);
  const strips = Array.from({length: 2000}, (_, i) => ((i + 0.5) * c) / 2000).map((y) => ({y, kip: (widthAt(tee.shape.rings, 24 - y) * topKsi * (1 - y / c) * c) / 2000}));
  expect(strips.reduce((sum, {kip}) => sum + kip, 0) / steelKip).toBeCloseTo(1, 2);
  // Four strands in each stem at 2, 4, 6 and 8 in: 19 in down.
  expect(strips.reduce((sum, {y, kip}) => sum + kip * (19 - y), 0) / momentKipIn).toBeCloseTo(1, 2);
});
