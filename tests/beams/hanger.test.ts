import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {hanger, type HangerInput} from "../../lib/beams/hanger.js";
import type {Ledge} from "../../lib/beams/ledge.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";
import {LEDGE} from "./ledgeSample.js";

const of = (changes: Partial<HangerInput> = {}, ledge: Partial<Ledge> = {}) =>
  hanger({ledge: {...LEDGE, ...ledge}, loadKip: 40, hangerInsetIn: 1.75, ...changes});

describe("hanger", () => {
  test("multiplies the load by the factor of its lever", () => {
    // d = 12.25; d + a = 19; hl/h = 0.135135: (3 - 0.27027) 0.0182615 * 22 / 2 = 0.548339 in; (19 - 0.548339) / 12.25 = 1.506258.
    const steel = of();
    expect(steel.straightIn2).toBeCloseTo(40 / 45, 9);
    expect(steel.leverFactor).toBeCloseTo(1.506258, 5);
    expect(steel.hangerIn2).toBeCloseTo(1.338896, 5);
    // A strut to the other face's leg: 1 + 6.75 / 10.5.
    expect(steel.strutFactor).toBeCloseTo(1.642857, 6);
    expect(steel.strutIn2).toBeCloseTo(1.460317, 6);
  });

  test("lets a tied ledge take its share of the twist", () => {
    // 8^2 * 10 = 640; 14^2 * 74 = 14,504; share 0.0422610 of 12 in: 0.507132 in; (18.451661 - 0.507132) / 12.25 = 1.464860.
    expect(of({tiesInLedge: true}).leverFactor).toBeCloseTo(1.46486, 5);
  });

  test("is not taken below the load itself", () => {
    // A stocky beam: hl/h = 0.8: (3 - 1.6) 0.64 * 11 = 9.856 in; (12.25 + 3.75 - 9.856) / 12.25 = 0.50155.
    const stocky = of({}, {depthIn: 12.5, shearSpanIn: 2});
    expect(stocky.leverFactor).toBeCloseTo(0.50155, 5);
    expect(stocky.hangerIn2).toBe(stocky.straightIn2);
  });

  test("spreads by 45 degrees through the ledge", () => {
    // 4.75 + 2 * 10 = 24.75 in; 1.338896 * 12 / 24.75.
    expect(of()).toMatchObject({spreadIn: 24.75, hangerIn2PerFt: expect.closeTo(0.649162, 5), greatestSpacingIn: 10});
    expect(of({}, {endDistanceIn: 5}).spreadIn).toBe(17.375);
    expect(of({}, {ledgeDepthIn: 24}).greatestSpacingIn).toBe(18);
  });

  test("stays between the load alone and the strut's upper bound, and grows with the lever", () => {
    hold(500, fc.property(within(20, 90), within(6, 16), within(2, 6), within(0.5, 3), fc.boolean(), (depthIn, ledgeDepthIn, shearSpanIn, hangerInsetIn, tiesInLedge) => {
      const at = (spanIn: number) => of({hangerInsetIn, tiesInLedge}, {depthIn, ledgeDepthIn, shearSpanIn: spanIn});
      const steel = at(shearSpanIn);
      expect(steel.hangerIn2).toBeGreaterThanOrEqual(steel.straightIn2);
      expect(steel.hangerIn2).toBeLessThanOrEqual(steel.strutIn2);
      expect(at((shearSpanIn + 6) / 2).hangerIn2).toBeGreaterThanOrEqual(steel.hangerIn2 * (1 - 1e-12));
    }));
  });

  test("refuses what cannot be", () => {
    refused(() => of({loadKip: NaN}), {path: "loadKip"});
    refused(() => of({hangerInsetIn: 5}), {path: "hangerInsetIn"});
    refused(() => of({}, {shearSpanIn: 8.1}), {path: "shearSpanIn"});
  });
});
