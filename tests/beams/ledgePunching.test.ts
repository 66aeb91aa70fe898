import fc from "fast-check";
import {describe, expect, test} from "vitest";
import type {Ledge} from "../../lib/beams/ledge.js";
import {globalStressFactor, ledgeLineStrengthPlf, ledgePunching, ledgePunchingCheck, type BeamStress, type PunchingView} from "../../lib/beams/ledgePunching.js";
import {concrete} from "../../lib/materials/concrete.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";
import {LEDGE} from "./ledgeSample.js";

const view = (id: PunchingView["id"], changes: Partial<Ledge> = {}, beam: BeamStress = {use: 0}) =>
  ledgePunching({...LEDGE, ...changes}, beam).views.find((one) => one.id === id) as PunchingView;
/** phi sqrt(5,000) over 1,000, by which all forms are multiplied. */
const ROOT = 0.0530330;

describe("the handbook's view", () => {
  test("of a stem away from the end", () => {
    // 3 * 10 (16 + 4.75 + 10) = 922.5 in2; times 0.053033 = 48.923 kip.
    expect(view("handbook")).toMatchObject({designKip: expect.closeTo(922.5 * ROOT, 3), atEnd: false});
  });

  test("of a stem near the end", () => {
    // de = 12: 10 (30.75 + 24) = 547.5 in2. The two meet where 2 de = 2 * 30.75.
    expect(view("handbook", {endDistanceIn: 12})).toMatchObject({designKip: expect.closeTo(547.5 * ROOT, 3), atEnd: true});
    expect(view("handbook", {endDistanceIn: 30.7}).atEnd).toBe(true);
    expect(view("handbook", {endDistanceIn: 30.8})).toMatchObject({designKip: view("handbook").designKip, atEnd: false});
  });

  test("of stems so close that they share", () => {
    // s at most 14.75: 1.5 * 10 (30.75 + 14.75) = 682.5 in2; just beyond, 922.5: the printed equations jump.
    expect(view("handbook", {spacingIn: 14.75}).designKip).toBeCloseTo(682.5 * ROOT, 3);
    expect(view("handbook", {spacingIn: 14.76}).designKip).toBeCloseTo(922.5 * ROOT, 3);
    // At the end: 10 (8 + 7.375 + 6 + 12) = 333.75 in2.
    expect(view("handbook", {spacingIn: 12, endDistanceIn: 6}).designKip).toBeCloseTo(333.75 * ROOT, 3);
  });
});

describe("the caution after published tests", () => {
  test("spreads by twice the depth and falls with the beam's stress", () => {
    // 2 * 10 (4.75 + 40) = 895 in2 without stress; at 0.4 of the strength 0.75 of that, at 0.6 half.
    expect(view("caution").designKip).toBeCloseTo(895 * ROOT, 3);
    expect(view("caution", {}, {use: 0.4}).designKip).toBeCloseTo(0.75 * 895 * ROOT, 3);
    expect(view("caution", {}, {use: 0.6}).designKip).toBeCloseTo(0.5 * 895 * ROOT, 3);
    // At the end, de = 12: 2 * 10 (22.375 + 12) = 687.5 in2.
    expect(view("caution", {endDistanceIn: 12})).toMatchObject({designKip: expect.closeTo(687.5 * ROOT, 3), atEnd: true});
    // Stems 3 ft apart share: 2 * 10 * 36.
    expect(view("caution", {spacingIn: 36})).toMatchObject({designKip: expect.closeTo(720 * ROOT, 3), atEnd: false});
  });

  test("rises with prestress", () => {
    // sqrt(1 + 10 * 0.3 / 5) = 1.264911.
    expect(view("caution", {}, {use: 0, centroidStressKsi: 0.3}).designKip).toBeCloseTo(1.264911 * 895 * ROOT, 3);
  });

  test("a beam used to a fifth keeps its ledge's strength, one used to three fifths or more half of it", () => {
    expect([0, 0.2, 0.3, 0.4, 0.6, 1, 1.4].map(globalStressFactor)).toEqual([1, 1, expect.closeTo(0.875, 12), expect.closeTo(0.75, 12), 0.5, 0.5, 0.5]);
  });
});

describe("the code's two-way shear", () => {
  test("on three sides of the bearing, on two at the end", () => {
    // d = 8.75: 4.75 + 8 + 2 * 8.75 = 30.25 in; factor 4 (2 + 4 / 1.1875 = 5.4; 2 + 30 * 8.75 / 30.25 = 10.7); size sqrt(2 / 1.875) > 1.
    expect(view("two-way")).toMatchObject({designKip: expect.closeTo(4 * 30.25 * 8.75 * ROOT, 3), atEnd: false});
    // de = 6: 6.75 + 6 + 4 + 4.375 = 21.125 in.
    expect(view("two-way", {endDistanceIn: 6})).toMatchObject({designKip: expect.closeTo(4 * 21.125 * 8.75 * ROOT, 3), atEnd: true});
    // Stems 1 ft apart: a strip of 12 in each.
    expect(view("two-way", {spacingIn: 12}).designKip).toBeCloseTo(4 * 12 * 8.75 * ROOT, 3);
    // Perimeters that just touch, 4.75 + 8.75 in apart, have no sides between them any more.
    expect(view("two-way", {spacingIn: 13.5})).toMatchObject({designKip: expect.closeTo(4 * 13.5 * 8.75 * ROOT, 3), atEnd: false});
    // The last of them, 3 in from the beam's end, has 3 in and half a strip, and no side either.
    expect(view("two-way", {spacingIn: 12, endDistanceIn: 3})).toMatchObject({designKip: expect.closeTo(4 * 9 * 8.75 * ROOT, 3), atEnd: true});
    expect(view("two-way", {spacingIn: 13.5, endDistanceIn: 3}).designKip).toBeCloseTo(4 * 9.75 * 8.75 * ROOT, 3);
  });

  test("falls for long bearings and deep ledges", () => {
    // 16 x 4: 2 + 4 / 4 = 3; perimeter 16 + 8 + 17.5 = 41.5 in.
    expect(view("two-way", {bearingWidthIn: 16}).designKip).toBeCloseTo(3 * 41.5 * 8.75 * ROOT, 3);
    // hl = 20: d = 18.75; sqrt(2 / 2.875) = 0.834058; perimeter 4.75 + 8 + 37.5 = 50.25 in.
    expect(view("two-way", {ledgeDepthIn: 20}).designKip).toBeCloseTo(4 * 0.834058 * 50.25 * 18.75 * ROOT, 2);
  });
});

describe("ledgePunching", () => {
  test("uses the least of its views", () => {
    const stressed = ledgePunching(LEDGE, {use: 0.4});
    expect(stressed.governing.id).toBe("caution");
    expect(stressed.designKip).toBe(Math.min(...stressed.views.map(({designKip}) => designKip)));
    expect(ledgePunching({...LEDGE, endDistanceIn: 3}, {use: 0.2}).governing.id).toBe("handbook");
    expect(stressed.globalStressFactor).toBeCloseTo(0.75, 12);
  });

  test("names its own caution as such, and says of each view where it comes from", () => {
    const {views} = ledgePunching(LEDGE, {use: 0.4});
    expect(views.map(({source}) => source)).toEqual(["PCI Design Handbook, 7th ed., 5.5.1", expect.stringContaining("our own"), "ACI 318-19 22.6.5.2"]);
    for (const {confidence} of views) expect(confidence).toContain("from memory");
  });

  test("checks a load from both sides", () => {
    const punching = ledgePunching(LEDGE, {use: 0.4});
    // 0.75 * 895 * 0.053033 = 35.598 kip.
    expect(ledgePunchingCheck(30, punching).verdict).toBe("ok");
    expect(ledgePunchingCheck(35.5, punching).verdict).toBe("near");
    expect(ledgePunchingCheck(35.7, punching)).toMatchObject({verdict: "fails", unit: "kip"});
  });

  test("never gains by a nearer end, a nearer stem or a more stressed beam, and always gains by a deeper ledge", () => {
    hold(600, fc.property(within(6, 20), within(20, 90), within(3, 100), within(0, 1.2), within(1, 1.5), (ledgeDepthIn, spacingIn, endDistanceIn, use, times) => {
      const at = (changes: Partial<Ledge>, stress = use) => ledgePunching({...LEDGE, ledgeDepthIn, spacingIn, endDistanceIn, ...changes}, {use: stress}).designKip;
      const own = at({});
      const most = own * (1 + 1e-12);
      expect(own).toBeGreaterThan(0);
      expect(at({endDistanceIn: Math.max(2.375, endDistanceIn / times)})).toBeLessThanOrEqual(most);
      expect(at({}, use * times)).toBeLessThanOrEqual(most);
      // Beyond where the handbook jumps.
      if (spacingIn / times > 4.75 + ledgeDepthIn) expect(at({spacingIn: spacingIn / times})).toBeLessThanOrEqual(most);
      if (spacingIn > 4.75 + 20 * times) expect(at({ledgeDepthIn: ledgeDepthIn * times})).toBeGreaterThanOrEqual(own * (1 - 1e-12));
    }));
  });

  test("refuses what cannot be", () => {
    refused(() => ledgePunching({...LEDGE, ledgeDepthIn: 2}, {use: 0}), {path: "ledgeDepthIn"});
    refused(() => ledgePunching(LEDGE, {use: -0.1}), {path: "use"});
    refused(() => ledgePunching(LEDGE, {use: 0, centroidStressKsi: -1}), {path: "centroidStressKsi"});
  });
});

test("ledgeLineStrengthPlf is phi 2 sqrt(f'c) hl over a foot", () => {
  // 0.75 * 2 * 70.7107 * 10 * 12 = 12,727.9 plf.
  expect(ledgeLineStrengthPlf(concrete("normalweight", 5000), 10)).toBeCloseTo(12727.9, 1);
  refused(() => ledgeLineStrengthPlf(concrete("normalweight", 5000), 0), {path: "ledgeDepthIn"});
});
