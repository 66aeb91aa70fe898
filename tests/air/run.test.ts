import {describe, expect, test} from "vitest";
import {straightLossIn} from "../../lib/air/air.js";
import {sizedDuct} from "../../lib/air/sizing.js";
import {ductFriction, roundForFrictionIn} from "../../lib/air/friction.js";
import {library} from "./model.js";
import {widthForRoundIn} from "./widthForRound.js";

/**
 * A whole run by hand, from first principles. Darcy and Weisbach in a round duct: loss in 100 ft = f (12 x 100 / D) pv, with
 * the velocity pressure pv = 0.075 (V / 1,097)^2 and V = q / (pi D^2 / 576). Put together, loss = 2.514 f q^2 / D^5: for
 * 0.1 in of water D = (25.14 f q^2)^(1/5). The factor by Altshul and Tsal's closed form, another than the code's: f' = 0.11
 * (0.0036 / D + 68 / Re)^0.25 with Re = 8.56 D V, and below 0.018 f = 0.85 f' + 0.0028. Two or three rounds settle f and D.
 */
describe("a run of four sections at equal friction, 0.1 in in 100 ft, by hand", () => {
  // A main of 14 in depth inside gives off 1,200 cfm every 30 ft.
  //   q       f        D        V      width at 14 in   made      friction as made
  // 4,800   0.01576  24.66 in  1,447   38.7 in          40 in     0.0930 in
  // 3,600   0.01626  22.12     1,349   30.3             32        0.0887
  // 2,400   0.01700  18.98     1,222   21.8             22        0.0978
  // 1,200   0.01835  14.60     1,032   12.8             14        0.0795
  const SECTIONS = [[4800, 24.66, 1447, 38.7, 40, 0.093], [3600, 22.12, 1349, 30.3, 32, 0.0887], [2400, 18.98, 1222, 21.8, 22, 0.0978], [1200, 14.6, 1032, 12.8, 14, 0.0795]] as const;

  test("has each section's round duct, its velocity and its rectangular width", () => {
    for (const [cfm, diameterIn, fpm, wideIn, madeIn, as] of SECTIONS) {
      const round = roundForFrictionIn(cfm, 0.1);
      expect(round / diameterIn).toBeCloseTo(1, 2);
      expect(Math.abs(ductFriction(cfm, {kind: "round", diameterIn: round}).equivalentFpm / fpm - 1)).toBeLessThan(0.005);
      expect(Math.abs(widthForRoundIn(round, 14) - wideIn)).toBeLessThan(0.15);
      const {size, governs, friction} = sizedDuct(cfm, 14, 0.1, "main");
      expect([size.widthIn, governs]).toEqual([madeIn, "friction"]);
      expect(Math.abs(friction.inPer100Ft / as - 1)).toBeLessThan(0.01);
    }
  });

  test("loses as much over its 120 ft as the sections one by one, and less than the rate", () => {
    // 30 ft each: 0.3 (0.0930 + 0.0887 + 0.0978 + 0.0795) = 0.1077 in, of 0.12 in at the rate.
    const lossIn = SECTIONS.reduce((sum, [cfm]) => sum + (sizedDuct(cfm, 14, 0.1, "main").friction.inPer100Ft * 30) / 100, 0);
    expect(Math.abs(lossIn / 0.1077 - 1)).toBeLessThan(0.01);
    expect(lossIn).toBeLessThan(0.12);
  });
});

test("a main of one size with its last feeder loses what its sections do, by hand", () => {
  // 24 by 8 in inside: D = 1.30 (192)^0.625 / 32^0.25 = 14.61 in. From the riser, half of 26.125 in from the wall, to the first
  // feeder at 60 in, and on by 120 in: 46.94 in with 1,600 cfm, then 120 in each with 1,200, 800 and 400.
  //  1,600 cfm: V = 1,374, f = 0.01768, 0.1708 in in 100 ft, over 46.94 in 0.00668 in
  //  1,200      1,030      0.01835      0.0997               120          0.00997
  //    800        687      0.01974      0.0477               120          0.00477
  //    400        343      0.02275      0.0137               120          0.00137: together 0.0228 in.
  // Feeder, 12 by 8 in inside: D = 10.66 in, 400 cfm, V = 646, f = 0.02162, 0.0633 in in 100 ft over 461 in: 0.0243 in.
  const {air} = library();
  expect(air.plan.risers[0]?.space.centerIn).toBeCloseTo(13.0625, 9);
  expect(air.plan.sides).toMatchObject([{flowCfm: 400, lengthIn: 461}]);
  expect(Math.abs(straightLossIn(air) / (0.0228 + 0.0243) - 1)).toBeLessThan(0.01);
});
