import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {ductFriction, equivalentDiameterIn, frictionFactor, roundForFrictionIn} from "../../lib/air/friction.js";
import {MAIN_NOISE_FPM, NOISE_WORDS, noiseClass} from "../../lib/air/noise.js";
import {sizedDuct} from "../../lib/air/sizing.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";
import {widthForRoundIn} from "./widthForRound.js";

const round = (diameterIn: number) => ({kind: "round", diameterIn} as const);
const rect = (widthIn: number, depthIn: number) => ({kind: "rectangular", widthIn, depthIn} as const);

describe("the round duct of the same friction", () => {
  test("is that of the table in the ASHVE Guide 1956, ch. 32, to its 0.1 in", () => {
    const table = [[8, 6, 7.5], [8, 7, 8.2], [8, 8, 8.8], [12, 6, 9.1], [12, 8, 10.7], [12, 12, 13.1], [16, 12, 15.1], [24, 12, 18.3]] as const;
    for (const [a, b, deIn] of table) {
      expect(Math.abs(equivalentDiameterIn(rect(a, b)) - deIn)).toBeLessThanOrEqual(0.1);
      expect(equivalentDiameterIn(rect(b, a))).toBe(equivalentDiameterIn(rect(a, b)));
    }
    // A table of rectangular sizes prints 12.9 in for 10 x 14 in; in mm, 300 by 500 are printed as 420.
    expect(equivalentDiameterIn(rect(10, 14))).toBeCloseTo(12.9, 1);
    expect(equivalentDiameterIn(rect(300, 500)) / 420).toBeCloseTo(1, 2);
    expect(equivalentDiameterIn(round(17))).toBe(17);
  });

  test("is found again from its width", () => {
    for (const [a, b] of [[12, 8], [40, 10], [8, 24]] as const) expect(widthForRoundIn(equivalentDiameterIn(rect(a, b)), b)).toBeCloseTo(a, 6);
  });
});

describe("friction", () => {
  test("of 4,000 cfm in a 20 in duct by hand", () => {
    // Area pi 20^2/4/144 = 2.1817 ft2, v = 1,833.5 ft/min, Re = 8.56 x 20 x 1,833.5 = 313,892.
    // Altshul and Tsal: f' = 0.11 (12 x 0.0003/20 + 68/313,892)^0.25 = 0.11 (0.00018 + 0.00021664)^0.25 = 0.015523;
    // below 0.018, so f = 0.85 x 0.015523 + 0.0028 = 0.015995. Velocity pressure 0.075 (1,833.5/1,097)^2 = 0.20951 in.
    // Loss 0.015995 x 1,200/20 x 0.20951 = 0.2011 in in 100 ft.
    const {equivalentFpm, reynolds, factor, inPer100Ft} = ductFriction(4000, round(20));
    expect(equivalentFpm).toBeCloseTo(1833.5, 1);
    expect(reynolds).toBeCloseTo(313_890, -2);
    expect(factor / 0.015995).toBeCloseTo(1, 1);
    expect(inPer100Ft / 0.2011).toBeCloseTo(1, 1);
    // The friction chart's example reads 0.23 in and 1,850 ft/min off its lines.
    expect(Math.abs(inPer100Ft / 0.23 - 1)).toBeLessThan(0.15);
    expect(Math.abs(equivalentFpm / 1850 - 1)).toBeLessThan(0.015);
  });

  test("follows the closed form of Altshul and Tsal within 3 % over the range of ducts", () => {
    for (const diameterIn of [6, 10, 16, 24, 40, 60]) {
      for (const fpm of [400, 900, 1300, 2500]) {
        const reynolds = 8.56 * diameterIn * fpm;
        const first = 0.11 * ((12 * 0.0003) / diameterIn + 68 / reynolds) ** 0.25;
        const closed = first >= 0.018 ? first : 0.85 * first + 0.0028;
        expect(Math.abs(frictionFactor(reynolds, diameterIn) / closed - 1)).toBeLessThan(0.03);
      }
    }
    // Put into Colebrook's own formula the factor comes back.
    const f = frictionFactor(200_000, 16);
    expect(1 / Math.sqrt(f)).toBeCloseTo(-2 * Math.log10(0.0036 / (3.7 * 16) + 2.51 / (200_000 * Math.sqrt(f))), 9);
    expect(frictionFactor(1999, 16)).toBeCloseTo(64 / 1999, 12);
    expect(frictionFactor(2000, 16)).toBeLessThan(0.06);
    expect(frictionFactor(2000, 16)).toBeGreaterThan(0.045);
  });

  test("of 1,000 cfm in a duct of 10 by 14 in is near the printed 0.15 in and 1,104 ft/min", () => {
    const {inPer100Ft, equivalentFpm} = ductFriction(1000, rect(10, 14));
    expect(Math.abs(inPer100Ft / 0.15 - 1)).toBeLessThan(0.13);
    expect(Math.abs(equivalentFpm / 1104 - 1)).toBeLessThan(0.005);
  });

  test("lets velocity govern from the flows on that a table of duct sizing prints", () => {
    // Bell: above 6,000 cfm at 0.10 in it is 1,500 ft/min that governs, above 3,200 cfm at 0.05 in 1,000 ft/min; to 8 %.
    for (const [cfm, rate, fpm] of [[6000, 0.1, 1500], [3200, 0.05, 1000]] as const) {
      const d = roundForFrictionIn(cfm, rate);
      expect(Math.abs(cfm / ((Math.PI * d * d) / 576) / fpm - 1)).toBeLessThan(0.08);
    }
  });

  test("of a round duct sized for a rate is that rate, and refuses what is none", () => {
    for (const cfm of [50, 400, 5000, 40_000]) for (const rate of [0.05, 0.1, 0.3]) expect(ductFriction(cfm, round(roundForFrictionIn(cfm, rate))).inPer100Ft).toBeCloseTo(rate, 8);
    refused(() => ductFriction(0, round(10)), {path: "flowCfm"});
    refused(() => roundForFrictionIn(100, 0), {path: "inPer100Ft"});
  });
});

describe("a duct sized for a rate", () => {
  test("is the narrowest in steps of 2 in that keeps rate and velocity", () => {
    for (const [cfm, depthIn, use] of [[1600, 8, "main"], [400, 8, "branch"], [4800, 14, "main"], [12_000, 22, "main"]] as const) {
      const {size, friction, velocityFpm} = sizedDuct(cfm, depthIn, 0.1, use);
      const most = use === "main" ? 1300 : 900;
      expect(size.widthIn % 2).toBe(0);
      expect(friction.inPer100Ft).toBeLessThanOrEqual(0.1);
      expect(velocityFpm).toBeLessThanOrEqual(most);
      const less = rect(size.widthIn - 2, depthIn);
      expect(ductFriction(cfm, less).inPer100Ft > 0.1 || cfm / ((less.widthIn * depthIn) / 144) > most).toBe(true);
    }
  });

  test("is as wide as the rectangle that is equivalent to the round duct for the rate", () => {
    hold(200, fc.property(within(20, 40_000), within(4, 40), within(0.02, 0.5), fc.constantFrom("main", "branch"), (cfm, depthIn, rate, use) => {
      const {size, governs} = sizedDuct(cfm, depthIn, rate, use);
      const byFriction = 2 * Math.ceil(widthForRoundIn(roundForFrictionIn(cfm, rate), depthIn) / 2 - 1e-9);
      if (governs === "friction") expect(size.widthIn).toBe(byFriction);
      else if (governs !== "widest") expect(size.widthIn).toBeGreaterThan(byFriction);
      else expect([byFriction > 120 || (cfm * 144) / depthIn / {main: 1300, branch: 900}[use] > 120, size.widthIn]).toEqual([true, 120]);
    }));
    refused(() => sizedDuct(1000, 10, 20, "main"), {path: "inPer100Ft"});
  });

  test("says what decides its width", () => {
    expect(sizedDuct(1600, 8, 0.1, "main")).toMatchObject({size: {widthIn: 32}, governs: "friction"});
    expect(sizedDuct(12_000, 40, 0.3, "main").governs).toBe("velocity");
    expect(sizedDuct(100, 40, 0.1, "branch")).toMatchObject({size: {widthIn: 10}, governs: "shape"});
    expect(sizedDuct(60_000, 8, 0.1, "main")).toMatchObject({size: {widthIn: 120}, governs: "widest"});
    // One that is 120 in wide by its friction is as wide as that asks; only one that would be wider is not.
    const widths = Array.from({length: 60}, (_, i) => sizedDuct(6000 + 50 * i, 8, 0.1, "main"));
    expect([...new Set(widths.filter(({size}) => size.widthIn === 120).map(({governs}) => governs))]).toEqual(["friction", "widest"]);
  });
});

test("each class of noise says what it means for a room", () => {
  const classes = [0, 1300, 1800, 3000].map((fpm) => noiseClass(fpm, "main", "ceiling"));
  expect(new Set(classes.map((of) => NOISE_WORDS[of])).size).toBe(4);
  for (const of of classes) expect(NOISE_WORDS[of]).toMatch(/[a-z]/);
});

test("noise keeps to the greatest velocities of the handbook, branches to 80 % of them", () => {
  expect(MAIN_NOISE_FPM.ceiling).toEqual([1200, 1750, 2500]);
  for (const cover of ["box", "ceiling", "nothing"] as const) {
    const [quiet, usual, loud] = MAIN_NOISE_FPM[cover];
    expect([quiet, quiet + 1, usual, usual + 1, loud, loud + 1].map((fpm) => noiseClass(fpm, "main", cover))).toEqual(["RC 25", "RC 35", "RC 35", "RC 45", "RC 45", "louder than RC 45"]);
    expect([0.8 * quiet, 0.8 * quiet + 1].map((fpm) => noiseClass(fpm, "branch", cover))).toEqual(["RC 25", "RC 35"]);
  }
});
