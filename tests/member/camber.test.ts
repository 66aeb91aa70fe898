import {describe, expect, test} from "vitest";
import {CAMBER_MULTIPLIERS, USUAL_AGE_DAYS, camber, camberAt, camberCurve, sag} from "../../lib/member/camber.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {centroidAt} from "../../lib/prestress/layout.js";
import {memberWith} from "../support/members.js";

/** Members with each course of strands. */
const MEMBERS = {
  "straight": () => memberWith("10DT24", "68-S"),
  "one-point": () => memberWith("12DT32", "128-D1"),
  "two-point": () => memberWith("12DT32", "148-D2"),
  "two-point, topped": () => memberWith("12DT32", "148-D2", {toppingIn: 2}),
};

/**
 * Deflection at a place by virtual work: the integral of curvature times the moment of a unit load there. Simpson's
 * rule between the kinks is exact, because the product is cubic at most.
 */
function byVirtualWork(curvature: (share: number) => number, spanIn: number, at: number): number {
  const unit = (share: number) => spanIn * (share <= at ? share * (1 - at) : at * (1 - share));
  const kinks = [...new Set([0, 0.4, 0.5, 0.6, 1, at])].sort((a, b) => a - b);
  let sum = 0;
  for (let i = 0; i + 1 < kinks.length; i++) {
    const [from, to] = [kinks[i] as number, kinks[i + 1] as number];
    const f = (share: number) => curvature(share) * unit(share);
    sum += (spanIn * (to - from) * (f(from) + 4 * f((from + to) / 2) + f(to))) / 6;
  }
  return sum;
}

describe("sag", () => {
  test("is 5 w L^4 / (384 E I)", () => {
    // 1,200 plf = 0.1 kip/in on 400 in: 5 * 0.1 * 2.56e10 / (384 * 4,000 * 25,000) = 0.3333.
    expect(sag(1200, 400, 4000, 25000)).toBeCloseTo(1 / 3, 12);
  });
});

describe("camber", () => {
  test.each(Object.entries(MEMBERS))("lifts the member as the curvature P e / (E I) of %s strands does", (_, make) => {
    const member = make();
    const spanFt = 60;
    const force = member.layout.areaIn2 * prestressState(member, spanFt, 0.5, 100).losses.camberStressKsi;
    const curvature = (share: number) => (force * (member.section.ybIn - centroidAt(member.layout, share))) / (member.releaseModulusKsi * member.section.inertiaIn4);
    const result = camber(member, spanFt, 100);
    for (const at of [0.05, 0.2, 0.37, 0.4, 0.45, 0.5, 0.63, 0.9]) {
      const {releaseIn, share} = camberAt(member, {...result, selfIn: 0}, at);
      expect(share).toBe(at);
      expect(releaseIn, String(at)).toBeCloseTo(byVirtualWork(curvature, spanFt * 12, at), 10);
    }
    expect(result.prestressIn).toBeCloseTo(byVirtualWork(curvature, spanFt * 12, 0.5), 10);
  });

  test("sinks under a uniform load as w x (L - x) / 2 / (E I) does, all along the span", () => {
    const member = MEMBERS["straight"]();
    const result = camber(member, 40, 0);
    const loadKipIn = member.selfWeightPlf / 12000;
    const curvature = (share: number) => (-loadKipIn * 480 ** 2 * share * (1 - share)) / 2 / (member.releaseModulusKsi * member.section.inertiaIn4);
    expect(result.selfIn).toBeCloseTo(-sag(member.selfWeightPlf, 480, member.releaseModulusKsi, member.section.inertiaIn4), 12);
    for (const at of [0.1, 0.3, 0.5, 0.8]) {
      // The curvature is quadratic and the unit moment linear: cubic, so the rule is exact here too.
      expect(camberAt(member, {...result, prestressIn: 0}, at).releaseIn).toBeCloseTo(byVirtualWork(curvature, 480, at), 10);
    }
  });

  test("adds its parts with Martin's multipliers", () => {
    const topped = camber(MEMBERS["two-point, topped"](), 60, 120);
    expect(topped.multipliers).toEqual(CAMBER_MULTIPLIERS.topped);
    expect(topped.releaseIn).toBeCloseTo(topped.prestressIn + topped.selfIn, 12);
    expect(topped.erectionIn).toBeCloseTo(1.8 * topped.prestressIn + 1.85 * topped.selfIn, 12);
    expect(topped.toppedIn).toBeCloseTo(topped.erectionIn + topped.toppingIn, 12);
    expect(topped.longTermIn).toBeCloseTo(2.2 * topped.prestressIn + 2.4 * topped.selfIn + 2.3 * topped.toppingIn + 3 * topped.superimposedIn, 12);
    const bare = camber(MEMBERS["two-point"](), 60, 120);
    expect(bare.longTermIn).toBeCloseTo(2.45 * bare.prestressIn + 2.7 * bare.selfIn + 3 * bare.superimposedIn, 12);
    expect(bare.toppingIn).toBeCloseTo(0, 15);
  });

  test("bends the composite section under what comes after the topping", () => {
    const member = MEMBERS["two-point, topped"]();
    expect(camber(member, 60, 120).superimposedIn).toBeCloseTo(-sag(120, 720, member.modulusKsi, member.full.inertiaIn4), 12);
    expect(camber(member, 60, 120).toppingIn).toBeCloseTo(-sag(member.toppingWeightPlf, 720, member.modulusKsi, member.section.inertiaIn4), 12);
  });
});

describe("camberCurve", () => {
  test.each(Object.entries(MEMBERS))("of %s strands starts and ends at nothing, is symmetrical, and meets the midspan values", (_, make) => {
    const member = make();
    const result = camber(member, 55, 100);
    const curve = camberCurve(member, result);
    expect(curve).toHaveLength(41);
    for (const key of ["releaseIn", "erectionIn", "toppedIn", "longTermIn"] as const) {
      expect(curve[0]?.[key]).toBeCloseTo(0, 12);
      expect(curve.at(-1)?.[key]).toBeCloseTo(0, 12);
      expect(curve[20]?.[key]).toBeCloseTo(result[key], 12);
      for (let i = 0; i < 41; i++) expect(curve[i]?.[key]).toBeCloseTo(curve[40 - i]?.[key] as number, 12);
    }
  });

  test("stays finite where the strands follow the centroid and bend nothing", () => {
    const bare = MEMBERS["straight"]();
    const member = memberWith("10DT24", "68-S", {endIn: bare.section.ybIn, centerIn: bare.section.ybIn});
    for (const point of camberCurve(member, camber(member, 40, 0))) expect(Number.isFinite(point.longTermIn)).toBe(true);
  });
});

describe("camber at an age", () => {
  test("is the multipliers' own at the age that they mean", () => {
    const member = MEMBERS["straight"]();
    const usual = camber(member, 40, 100);
    expect(usual.ageDays).toBe(USUAL_AGE_DAYS);
    expect(usual.multipliers).toEqual(CAMBER_MULTIPLIERS.untopped);
    expect(camber(member, 40, 100, USUAL_AGE_DAYS)).toEqual(usual);
  });

  test("grows from the camber at release with ACI 209R's curve, and ends the same", () => {
    const member = MEMBERS["straight"]();
    // t^0.6/(10 + t^0.6) is 1/2 where t^0.6 is 10, and 1/3 where it is 5; at 45 days t^0.6 is 9.814.
    const usual = 45 ** 0.6 / (10 + 45 ** 0.6);
    for (const [power, share] of [[10, 1 / 2], [5, 1 / 3]] as const) {
      const {multipliers, erectionIn, longTermIn, prestressIn, selfIn} = camber(member, 40, 100, power ** (1 / 0.6));
      expect(multipliers.erectionPrestress).toBeCloseTo(1 + (0.8 * share) / usual, 12);
      expect(multipliers.erectionSelf).toBeCloseTo(1 + (0.85 * share) / usual, 12);
      expect(erectionIn).toBeCloseTo(multipliers.erectionPrestress * prestressIn + multipliers.erectionSelf * selfIn, 12);
      expect(longTermIn).toBe(camber(member, 40, 100).longTermIn);
    }
  });
});
