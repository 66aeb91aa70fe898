import {describe, expect, test} from "vitest";
import {camber} from "../../lib/member/camber.js";
import type {Member} from "../../lib/member/member.js";
import {toppingProfile, type ToppingResult} from "../../lib/topping/profile.js";
import {memberWith} from "../support/members.js";

const BAY = {spanFt: 60, beamSpanFt: 30, baysAlong: 4, baysAcross: 2};
const profileOf = (member: Member, spanFt = 60) => {
  const result = camber(member, spanFt, 100);
  return {camber: result, topping: toppingProfile(member, result, {...BAY, spanFt}) as ToppingResult};
};

describe("toppingProfile", () => {
  test("is nothing without topping", () => {
    const bare = memberWith("10DT24", "68-S");
    expect(toppingProfile(bare, camber(bare, 40, 100), BAY)).toBeUndefined();
  });

  test("averages what exact integrals give for straight strands", () => {
    // A parabola's mean is 2/3 of its rise; the shape of a uniform load's sag has 16/25 of its.
    const member = memberWith("10DT32", "128-S", {toppingIn: 2});
    const {camber: c, topping} = profileOf(member);
    const rise = 1.8 * c.prestressIn * (2 / 3) + (1.85 * c.selfIn + c.toppingIn) * (16 / 25);
    expect(topping.averageIn).toBeCloseTo(2 + c.toppedIn - rise, 6);
  });

  test("averages what exact integrals give for strands depressed at one point", () => {
    // The eccentricity at the ends bends a parabola, mean 1/12 of midspan value 1/8. The rest rises straight to midspan:
    // the deflection is x/8 - x^3/3 ... with mean 5/96 of midspan value 1/12, so 5/8 of it.
    const member = memberWith("12DT32", "128-D1", {toppingIn: 2});
    const {camber: c, topping} = profileOf(member);
    const endIn = member.section.ybIn - member.layout.centroidEndIn;
    const riseIn = member.layout.centroidEndIn - member.layout.centroidCentreIn;
    const share = (endIn / 12 + riseIn * (5 / 96)) / (endIn / 8 + riseIn / 12);
    const mean = 1.8 * c.prestressIn * share + (1.85 * c.selfIn + c.toppingIn) * (16 / 25);
    expect(topping.averageIn).toBeCloseTo(2 + c.toppedIn - mean, 6);
  });

  test("is thinnest where the member stands highest and flat on top everywhere", () => {
    const {topping} = profileOf(memberWith("10DT32", "128-S", {toppingIn: 2}));
    expect(Math.min(...topping.points.map((point) => point.thicknessIn))).toBeCloseTo(2, 12);
    const tops = topping.points.map((point) => point.thicknessIn + point.riseIn);
    for (const top of tops) expect(top).toBeCloseTo(tops[0] as number, 12);
    expect(topping.greatestIn).toBeGreaterThan(topping.averageIn);
    expect(topping.averageIn).toBeGreaterThan(topping.leastIn);
  });

  test("is thinnest at the ends where the member sags", () => {
    const {camber: c, topping} = profileOf(memberWith("10DT24", "48-S", {toppingIn: 3}), 70);
    expect(c.toppedIn).toBeLessThan(0);
    expect(topping.points[0]?.thicknessIn).toBeCloseTo(3, 12);
    expect(topping.greatestIn).toBeCloseTo(3 - c.toppedIn, 9);
  });

  test("counts the concrete of a member, a bay and the floor", () => {
    const {topping} = profileOf(memberWith("10DT32", "128-S", {toppingIn: 2}));
    // Average thickness in feet on 10 by 60, 30 by 60 and eight bays, over 27.
    expect(topping.memberYd3).toBeCloseTo(((topping.averageIn / 12) * 600) / 27, 9);
    expect(topping.bayYd3).toBeCloseTo(((topping.averageIn / 12) * 1800) / 27, 9);
    expect(topping.floorYd3).toBeCloseTo(8 * topping.bayYd3, 9);
    expect(topping.extraWeightPsf).toBeCloseTo((topping.averageIn - 2) * 12.5, 9);
  });
});
