import {describe, expect, test} from "vitest";
import {developedStressKsi, developmentOf, developmentShares, partlyDevelopedStrength} from "../../lib/member/development.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength} from "../../lib/member/strength.js";
import {memberWith} from "../support/members.js";

describe("development", () => {
  test("of half-inch strand with 150 ksi left and 270 at the strength takes 25 in and then 60", () => {
    expect(developmentOf(150, 270, 0.5)).toEqual({transferIn: 25, developmentIn: 85});
  });

  test("of strand that the strength asks for less than it has is its transfer", () => {
    expect(developmentOf(150, 140, 0.5)).toEqual({transferIn: 25, developmentIn: 25});
  });

  test("lets the stress rise straight to the effective prestress, and then by 1 ksi for each diameter", () => {
    expect(developedStressKsi(0, 150, 0.5)).toBe(0);
    expect(developedStressKsi(-3, 150, 0.5)).toBe(0);
    expect(developedStressKsi(12.5, 150, 0.5)).toBe(75);
    expect(developedStressKsi(25, 150, 0.5)).toBe(150);
    expect(developedStressKsi(85, 150, 0.5)).toBe(270);
  });
});

describe("partly developed strength", () => {
  const member = () => memberWith("10DT24", "88-S");
  const spanFt = 40;
  const at = (share: number) => {
    const state = prestressState(member(), spanFt, share, 100);
    const developed = memberStrength(member(), 0.5, prestressState(member(), spanFt, 0.5, 100).losses.effectiveStressKsi);
    return {state, developed, partly: partlyDevelopedStrength(member(), spanFt, state, developed)};
  };

  test("is the whole strength beyond the development length", () => {
    const {state, partly} = at(0.4);
    expect(partly.designMomentKipIn).toBeCloseTo(memberStrength(member(), 0.4, state.losses.effectiveStressKsi).designMomentKipIn, 9);
  });

  test("at the end of the transfer length is the effective force times its lever, with 0.75 of it counted", () => {
    const fse = prestressState(member(), spanFt, 0.5, 100).losses.effectiveStressKsi;
    const distanceIn = developmentOf(fse, 260, 0.5).transferIn;
    const {state, partly} = at(distanceIn / (spanFt * 12));
    const forceKip = member().layout.areaIn2 * developedStressKsi(distanceIn, state.losses.effectiveStressKsi, 0.5);
    // All strands at the stress that bond gives; the block stays within the 2 in flange.
    const blockIn = forceKip / (0.85 * 5 * 120);
    // The losses there differ a little from those of midspan, which set the two lengths.
    expect(partly.phi).toBeCloseTo(0.75, 1);
    expect(partly.phi).toBeGreaterThanOrEqual(0.75);
    expect(partly.nominalMomentKipIn / (forceKip * (24 - 5 - blockIn / 2))).toBeCloseTo(1, 2);
  });

  test("is the same at places as far from either end", () => {
    expect(at(0.93).partly.designMomentKipIn).toBeCloseTo(at(0.07).partly.designMomentKipIn, 8);
  });

  test("counts 0.75 of it to the end of the transfer length, 0.90 from the development length on, and a mean halfway", () => {
    const {state, developed} = at(0.1);
    const fse = state.losses.effectiveStressKsi;
    const {transferIn} = developmentOf(fse, 260, 0.5);
    // The place, 48 in from the end, is put where it should be between the two lengths by the strand's stress at the strength.
    const phiAt = (part: number, phi = 0.9) => {
      const stressKsi = fse + (48 - transferIn) / (part * 0.5);
      return partlyDevelopedStrength(member(), spanFt, state, {...developed, phi, compressionKip: stressKsi * member().layout.areaIn2}).phi;
    };
    expect(phiAt(0.5)).toBeCloseTo(0.825, 9);
    expect(phiAt(0.2)).toBeCloseTo(0.78, 9);
    expect(phiAt(1)).toBeCloseTo(0.9, 9);
    expect(phiAt(1.5)).toBeCloseTo(0.9, 9);
    // A developed section that is not ductile counts 0.75 at the least on the way.
    expect(phiAt(0.5, 0.65)).toBeCloseTo(0.75, 9);
    // Strands that are developed as soon as they have transferred have no way to go.
    expect(partlyDevelopedStrength(member(), spanFt, state, {...developed, compressionKip: 0}).phi).toBeCloseTo(0.9, 9);
    // An inch from the end only a part of the prestress is there.
    const near = prestressState(member(), spanFt, 1 / 480, 100);
    expect(partlyDevelopedStrength(member(), spanFt, near, developed).phi).toBe(0.75);
    // So it is where the strength asks for no more than the effective prestress, and the transfer is all the development.
    expect(partlyDevelopedStrength(member(), spanFt, near, {...developed, compressionKip: 0}).phi).toBe(0.75);
  });

  test("never falls from the end inwards", () => {
    const shares = Array.from({length: 40}, (_, i) => 0.01 + i * 0.01);
    const strengths = shares.map((share) => at(share).partly.designMomentKipIn);
    for (let i = 1; i < strengths.length; i++) expect(strengths[i]).toBeGreaterThanOrEqual((strengths[i - 1] as number) - 1e-9);
  });

  test("is looked at from the transfer to the development length, and at midspan where a span is too short for that", () => {
    const {developed} = at(0.5);
    const shares = developmentShares(member(), spanFt, 150, developed);
    expect(shares).toHaveLength(4);
    // From 25 in on, by thirds, to the development length.
    const developmentIn = 25 + (developed.compressionKip / member().layout.areaIn2 - 150) * 0.5;
    expect(shares).toEqual([0, 1 / 3, 2 / 3, 1].map((part) => expect.closeTo((25 + part * (developmentIn - 25)) / 480, 9)));
    const short = developmentShares(member(), 10, 150, developed);
    expect(short.at(-1)).toBe(0.5);
    expect(short.filter((share) => share === 0.5)).toHaveLength(1);
    expect(short.length).toBeLessThan(5);
    for (const share of short.slice(0, -1)) expect(share).toBeLessThan(0.5);
    // Half of it and no more: a development length that ends at midspan is met there.
    const {transferIn} = developmentOf(150, 270, 0.5);
    expect(developmentShares(member(), (2 * transferIn) / 12, 150, developed)).toEqual([0.5]);
    // Strands that keep nothing are looked at inside the span only.
    for (const share of developmentShares(member(), spanFt, 0, developed)) expect(share).toBeGreaterThan(0);
  });
});
