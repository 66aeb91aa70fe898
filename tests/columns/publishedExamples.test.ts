// Two textbooks: M. N. Hassoun and A. Al-Manaseer, Structural Concrete, 6th ed. (2015), examples 11.19 and 11.20 and table
// 11.3, at the end; first J. C. McCormac and R. H. Brown, Design of Reinforced Concrete, 9th ed. (to ACI 318-11): example 10.2 with the values
// beside it, 11.3 and 12.2. Seen in text; every step was worked out again.
import {describe, expect, it} from "vitest";
import {pureTensionKip, squashLoadKip} from "../../lib/columns/axialLimits.js";
import {biaxialCapacity} from "../../lib/columns/biaxial.js";
import {footing} from "../../lib/columns/footing.js";
import {kipFt} from "../../lib/units.js";
import {slendernessOf} from "./cases.js";
import {balancedState, capacityAlong, capacityAt, stateAt} from "./oneAxis.js";
import {bar, columnOf} from "./sections.js";

/** Expects a value within a share of what is printed. */
const printed = (ours: number | undefined, value: number, share = 0.002) => {
  expect(Math.abs((ours ?? NaN) / value - 1), `ours ${ours}, printed ${value}`).toBeLessThan(share);
};

describe("example 10.2: 14 x 24 in, three #9 in each of two faces, 4,000 psi, 2.5 in to the bars' centers", () => {
  const column = () => columnOf({
    widthIn: 14, depthIn: 24, strengthPsi: 4000, bar: bar("#9"), count: 6, faces: "two", coverIn: 2.5 - 0.375 - 1.128 / 2,
  });

  it("comes out for a neutral axis at 14.4 in", () => {
    const state = stateAt(column(), 14.4);
    printed(state.axialKip, 623.7);
    printed(state.depthMomentKipIn, 6261.3);
    expect(state.phi).toBe(0.65);
  });

  it("comes out at the balanced point", () => {
    const balanced = balancedState(column());
    printed(balanced.axialKip, 504.4);
    printed(kipFt(balanced.depthMomentKipIn), 559.7);
  });

  it("comes out at the ends: squash load, pure bending, pure tension", () => {
    printed(squashLoadKip(column()), 1482);
    printed(pureTensionKip(column()), 360);
    // Printed as 297 ft-k without its working.
    printed(kipFt(capacityAlong(column(), {axialKip: 0, momentKipIn: 1}).state.depthMomentKipIn), 297, 0.005);
  });
});

describe("example 11.3: a braced column of 12 x 15 in, 16 ft long, bent to one side", () => {
  // The example's modulus is 57,000 sqrt(f'c), which is 33 w^1.5 sqrt(f'c) for 143.96 pcf.
  const result = () => {
    const section = columnOf({widthIn: 12, depthIn: 15, strengthPsi: 4000, count: 4});
    return slendernessOf({
      section: {...section, concrete: {...section.concrete, unitWeightPcf: (57000 / 33) ** (2 / 3)}},
      axialKip: 110, momentKipIn: [12 * 82, 12 * 86], curvature: "single", unbracedFt: 16, lengthFactor: 0.83, sways: false,
      sustainedShare: (1.2 * 30) / 110,
    });
  };

  it("is slender", () => {
    const {ratio, limit, slender} = result();
    printed(ratio, 35.41);
    printed(limit, 22.56);
    expect(slender).toBe(true);
  });

  it("buckles at the printed load, and enlarges the moment as printed", () => {
    const slender = result();
    printed(slender.stiffnessKipIn2, 3.67e6);
    printed(slender.criticalKip, 1426);
    printed(slender.evenMomentFactor, 0.981);
    printed(slender.leastMomentKipIn, 115.5);
    // Printed as 1.09 after rounding, and 93.7 ft-k with that.
    printed(slender.magnifier, 1.09, 0.005);
    printed(kipFt(slender.momentKipIn ?? NaN), 93.7, 0.005);
  });
});

describe("example 12.2: a footing of 9 ft under a 16 in column with 360 kip", () => {
  // The example rounds 81.82 ft2 down to 81; we round up, so it is given the pressure that asks for 81 ft2.
  const result = () => footing({
    serviceKip: 360, factoredKip: 1.2 * 200 + 1.6 * 160, columnSideIn: 16, columnStrengthPsi: 3000, footingStrengthPsi: 3000, allowablePsf: 360000 / 81,
  });

  it("has the printed side, pressure and moment", () => {
    const {sideIn, factoredPsf, momentKipIn} = result();
    expect(sideIn).toBe(108);
    printed(factoredPsf, 6120);
    printed(kipFt(momentKipIn), 404, 0.003);
  });

  it("punches as printed for the printed depth, and is thicker because one-way shear of ACI 318-19 is stricter", () => {
    // 442.09 kip on a square of 35.5 in: the example's 19.5 in to the upper layer of bars.
    const square = 16 + 19.5;
    const {factoredPsf, thicknessIn} = result();
    printed((factoredPsf / 144000) * (108 ** 2 - square ** 2), 442.09, 0.005);
    // 24 in by 2 sqrt(f'c); 8 rho^(1/3) sqrt(f'c) with the least steel gives half of that.
    expect(thicknessIn).toBeGreaterThan(24);
    expect(thicknessIn).toBeLessThanOrEqual(30);
  });
});

describe("Hassoun and Al-Manaseer, examples 11.19 and 11.20: 16 x 24 in, eight #10, 5,000 psi, loads 12 and 8 in off the middle", () => {
  const to = (inIn: number) => ({coverIn: inIn - 0.375 - 1.27 / 2, strengthPsi: 5000, bar: bar("#10")});
  const faced = () => columnOf({widthIn: 16, depthIn: 24, count: 6, faces: "two", ...to(2.5)});
  const whole = () => columnOf({widthIn: 16, depthIn: 24, count: 8, faces: "all", ...to(2.5)});

  it("balances as printed with three bars in each short face", () => {
    const balanced = balancedState(faced());
    // Printed by 87 / (87 + fy), which is the same strain.
    printed(balanced.neutralAxisIn, 12.72);
    printed(balanced.axialKip, 676.1);
  });

  it("carries the printed nominal loads about each axis", () => {
    printed(capacityAt(faced(), 12).state.axialKip, 732.6);
    // About the other axis the example takes the three bars of each long face.
    const other = columnOf({widthIn: 24, depthIn: 16, count: 6, faces: "two", ...to(2.5)});
    printed(capacityAt(other, 8).state.axialKip, 683.8);
  });

  it("carries, by strain compatibility with all eight bars, 398 kip, where the reciprocal load gives 421.5", () => {
    // 398: worked out apart by another integration of the same column; 421.5 seen in text.
    const {state} = biaxialCapacity(whole(), {axialKip: 1, depthMomentKipIn: 12, widthMomentKipIn: 8});
    printed(state.axialKip, 398);
    expect(state.axialKip / 421.5).toBeGreaterThan(0.9);
    expect(state.axialKip / 421.5).toBeLessThan(1);
    expect(1 / (1 / 732.6 + 1 / 683.8 - 1 / squashLoadKip(whole()))).toBeCloseTo(421.5, 0);
  });
});

describe("Hassoun and Al-Manaseer, table 11.3: bars in two faces at 2.5 in, nominal strength", () => {
  // f'c, b, h, bars in a face, size; printed: balanced load and eccentricity, loads at 6 and 24 in.
  const rows = [
    [4, 20, 20, 6, "#10", 572, 17.4, 1193, 395], [4, 14, 14, 4, "#8", 249, 10.9, 407, 93], [4, 24, 24, 8, "#10", 848, 20.1, 1860, 696],
    [4, 18, 26, 6, "#10", 698, 20.6, 1528, 591], [4, 12, 18, 4, "#9", 305, 15.2, 592, 176], [4, 14, 18, 4, "#10", 354, 16.2, 715, 221],
    [5, 16, 16, 5, "#10", 406, 15.3, 807, 228],
  ] as const;

  it.each(rows)("%s ksi, %s x %s in, %s %s", (ksi, widthIn, depthIn, inFace, size, balancedKip, eccentricityIn, at6Kip, at24Kip) => {
    const one = bar(size);
    const column = columnOf({
      widthIn, depthIn, strengthPsi: 1000 * ksi, bar: one, count: 2 * inFace, faces: "two", coverIn: 2.5 - 0.375 - one.diameterIn / 2,
    });
    const balanced = balancedState(column);
    printed(balanced.axialKip, balancedKip, 0.006);
    // Within 0.2 in, but for the last row: 15.07, where 15.3 is printed beside loads that all come out.
    expect(Math.abs(balanced.depthMomentKipIn / balanced.axialKip - eccentricityIn)).toBeLessThan(ksi === 5 ? 0.24 : 0.2);
    printed(capacityAt(column, 6).state.axialKip, at6Kip, 0.006);
    printed(capacityAt(column, 24).state.axialKip, at24Kip, 0.006);
  });
});
