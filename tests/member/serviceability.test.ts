import {describe, expect, it} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {patternMember} from "../../lib/deck/table.js";
import {crackedInertiaIn4, liveDeflection} from "../../lib/member/deflection.js";
import {fireRating, type FireRow} from "../../lib/member/fire.js";
import {handling, topSteelIn2} from "../../lib/member/handling.js";
import {horizontalShearKip} from "../../lib/member/horizontalShear.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {vibration} from "../../lib/member/vibration.js";
import {catalogue} from "../support/designs.js";

function member(designation: string, pattern: string, toppingIn = 0) {
  return patternMember(catalogue, deckRow(catalogue, designation), pattern, {
    concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn, toppingStrengthPsi: 3000, humidityPercent: 70,
  });
}
const tee = member("10DT24", "88-S");
const topped = member("10DT24", "88-S", 2);
const plank = member("4HC8", "66-S");

describe("live load sag", () => {
  const state = prestressState(tee, 40, 0.5, 100);
  it("is that of the whole section where the soffit stays uncracked", () => {
    const {deflectionIn, uncrackedShare} = liveDeflection(tee, 40, state, 100, 100);
    expect(uncrackedShare).toBe(1);
    // 5 w L^4 / 384 E I = 5 (0.1/12) 480^4 / (384 x 4286.8 x 22468.9).
    expect(deflectionIn).toBeCloseTo((5 * (0.1 / 12) * 480 ** 4) / (384 * tee.modulusKsi * tee.section.inertiaIn4), 9);
  });
  it("grows faster than the load once the soffit cracks", () => {
    const at = (plf: number) => liveDeflection(tee, 40, state, 100, plf);
    expect(at(2400).uncrackedShare).toBeLessThan(1);
    expect(at(2400).deflectionIn).toBeGreaterThan(2 * at(1200).deflectionIn);
    expect(at(2400).crackedInertiaIn4).toBeLessThan(tee.section.inertiaIn4);
  });
  it("takes a cracked section of n Aps dp2 (1 - 1.6 sqrt(n rho))", () => {
    // n = 28800/4286.8 = 6.718; Aps = 1.224; dp = 19; rho = 1.224/(120 x 19) = 0.000537; sqrt(n rho) = 0.0601.
    expect(crackedInertiaIn4(tee, state)).toBeCloseTo(6.718 * 1.224 * 361 * (1 - 1.6 * 0.0601), -1);
  });
  it("is nothing without live load", () => expect(liveDeflection(tee, 40, state, 100, 0).deflectionIn).toBe(0));
});

describe("contact of topping and member", () => {
  it("passes on phi 80 bv d", () => expect(horizontalShearKip(topped, 21)).toBeCloseTo((0.75 * 80 * 120 * 21) / 1000, 9));
  it("is no question without topping", () => expect(horizontalShearKip(tee, 19)).toBeUndefined());
});

describe("liveliness", () => {
  it("gives the frequency of a simple beam to half a percent", () => {
    const {frequencyHz, massSagIn} = vibration(tee, 40, 100);
    // Exact: (pi/2) sqrt(E I g / (w L^4)); with the sag 5 w L^4 / 384 E I it is 0.1794 sqrt(g / sag).
    const exact = (Math.PI / 2) * Math.sqrt((5 * 386.1) / (384 * massSagIn));
    expect(Math.abs(frequencyHz / exact - 1)).toBeLessThan(0.005);
  });
  it("calms down with weight and span of the strip, and stirs with less damping", () => {
    expect(vibration(topped, 40, 300).movingWeightLb).toBeGreaterThan(vibration(topped, 40, 100).movingWeightLb);
    expect(vibration(topped, 40, 100, 0.02).acceleration).toBeCloseTo(1.5 * vibration(topped, 40, 100, 0.03).acceleration, 12);
  });
});

describe("fire rating", () => {
  const table: FireRow[] = [1, 1.5, 2, 3, 4].map((hours, i) => ({
    hours,
    thicknessIn: {siliceous: [3.5, 4.3, 5, 6.2, 7][i] as number, carbonate: [3.2, 4, 4.6, 5.7, 6.6][i] as number, "sand-lightweight": [2.7, 3.3, 3.8, 4.6, 5.4][i] as number},
    coverIn: {siliceous: [1.125, 1.5, 1.75, 2.375, 2.75][i] as number, carbonate: [1, 1.375, 1.625, 2.125, 2.25][i] as number, "sand-lightweight": [1, 1.375, 1.5, 2, 2.25][i] as number},
  }));
  it("of a bare 2 in flange is below an hour", () => expect(fireRating(tee, table, "siliceous").byThicknessHours).toBe(0));
  it("adds the topping to the flange", () => {
    const rating = fireRating(topped, table, "carbonate");
    expect(rating.thicknessIn).toBe(4);
    expect(rating.byThicknessHours).toBe(1.5);
  });
  it("spreads a plank's concrete over its width", () => {
    const rating = fireRating(plank, table, "carbonate");
    // 214.35 in2 / 48 in = 4.466 in: between 1.5 h (4.0) and 2 h (4.6).
    expect(rating.thicknessIn).toBeCloseTo(4.466, 3);
    expect(rating.byThicknessHours).toBeCloseTo(1.5 + (0.5 * 0.466) / 0.6, 2);
  });
  it("judges a plank's strands by their cover and leaves stems to a table that is not held", () => {
    // 1.5 in to the strand's centre less 3/16 in.
    expect(fireRating(plank, table, "carbonate").coverIn).toBeCloseTo(1.3125, 9);
    expect(fireRating(plank, table, "carbonate").byCoverHours).toBeCloseTo(1 + (0.5 * 0.3125) / 0.375, 9);
    expect(fireRating(topped, table, "carbonate").byCoverHours).toBeUndefined();
  });
});

describe("hauling", () => {
  it("weighs the piece and sorts it by width", () => {
    expect(handling(tee, 60).weightKip).toBeCloseTo((449 * 150 * 60) / 144 / 1000, 2);
    expect(handling(tee, 60).widthClass).toBe("permit");
    expect(handling(plank, 30).widthClass).toBe("legal");
    expect(handling(member("15DT34", "188-S"), 60).widthClass).toBe("escort");
  });
  it("says what makes a haul hard", () => {
    expect(handling(plank, 30).notes).toEqual([]);
    expect(handling(member("15DT34", "188-S"), 80).notes).toHaveLength(3);
  });
});

describe("top steel at transfer", () => {
  it("takes the tension of a rectangle's triangle of stress at 30 ksi", () => {
    // 48 x 8 in slab, top -0.3 ksi, bottom 0.9 ksi: tension over the upper 2 in; 0.3 x 2 / 2 x 48 = 14.4 kip.
    const slab = member("4FS8", "88-S");
    expect(topSteelIn2(slab, {topKsi: -0.3, bottomKsi: 0.9})).toBeCloseTo(14.4 / 30, 9);
  });
  it("is none where the top is pressed", () => expect(topSteelIn2(tee, {topKsi: 0.1, bottomKsi: 1})).toBe(0));
});
