import {describe, expect, test} from "vitest";
import {developedStressKsi, developmentOf, developmentShares, partlyDevelopedStrength} from "../../lib/member/development.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength} from "../../lib/member/strength.js";
import {memberWith} from "../support/members.js";

describe("development", () => {
  test("of half-inch strand with 150 ksi left and 270 at the strength takes 25 in and then 60", () => {
    expect(developmentOf(150, 270, 0.5)).toEqual({transferIn: 25, developmentIn: 85});
  });

  test("lets the stress rise straight to the effective prestress, and then by 1 ksi for each diameter", () => {
    expect(developedStressKsi(0, 150, 0.5)).toBe(0);
    expect(developedStressKsi(12.5, 150, 0.5)).toBe(75);
    expect(developedStressKsi(25, 150, 0.5)).toBe(150);
    expect(developedStressKsi(85, 150, 0.5)).toBe(270);
  });
});

describe("partly developed strength", () => {
  const member = memberWith("10DT24", "88-S");
  const spanFt = 40;
  const at = (share: number) => {
    const state = prestressState(member, spanFt, share, 100);
    const developed = memberStrength(member, 0.5, prestressState(member, spanFt, 0.5, 100).losses.effectiveStressKsi);
    return {state, developed, partly: partlyDevelopedStrength(member, spanFt, state, developed)};
  };

  test("is the whole strength beyond the development length", () => {
    const {state, partly} = at(0.4);
    expect(partly.designMomentKipIn).toBeCloseTo(memberStrength(member, 0.4, state.losses.effectiveStressKsi).designMomentKipIn, 9);
  });

  test("at the end of the transfer length is the effective force times its lever, with 0.75 of it counted", () => {
    const fse = prestressState(member, spanFt, 0.5, 100).losses.effectiveStressKsi;
    const distanceIn = developmentOf(fse, 260, 0.5).transferIn;
    const {state, partly} = at(distanceIn / (spanFt * 12));
    const forceKip = member.layout.areaIn2 * developedStressKsi(distanceIn, state.losses.effectiveStressKsi, 0.5);
    // All strands at the stress that bond gives; the block stays within the 2 in flange.
    const blockIn = forceKip / (0.85 * 5 * 120);
    // The losses there differ a little from those of midspan, which set the two lengths.
    expect(partly.phi).toBeCloseTo(0.75, 1);
    expect(partly.phi).toBeGreaterThanOrEqual(0.75);
    expect(partly.nominalMomentKipIn / (forceKip * (24 - 5 - blockIn / 2))).toBeCloseTo(1, 2);
  });

  test("never falls from the end inwards", () => {
    const shares = Array.from({length: 40}, (_, i) => 0.01 + i * 0.01);
    const strengths = shares.map((share) => at(share).partly.designMomentKipIn);
    for (let i = 1; i < strengths.length; i++) expect(strengths[i]).toBeGreaterThanOrEqual((strengths[i - 1] as number) - 1e-9);
  });

  test("is looked at from the transfer to the development length, and at midspan where a span is too short for that", () => {
    const {developed} = at(0.5);
    const shares = developmentShares(member, spanFt, 150, developed);
    expect(shares).toHaveLength(4);
    expect(shares[0]).toBeCloseTo(25 / 480, 9);
    expect(developmentShares(member, 10, 150, developed).at(-1)).toBe(0.5);
  });
});
