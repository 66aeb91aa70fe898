import fc from "fast-check";
import {describe, expect, test} from "vitest";
import type {Ledge} from "../../lib/beams/ledge.js";
import {ledgeSteel, type LedgeSteelInput} from "../../lib/beams/ledgeSteel.js";
import {concrete} from "../../lib/materials/concrete.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";
import {LEDGE} from "./ledgeSample.js";

const of = (changes: Partial<LedgeSteelInput> = {}, ledge: Partial<Ledge> = {}) =>
  ledgeSteel({ledge: {...LEDGE, ...ledge}, loadKip: 40, hangerInsetIn: 1.75, ...changes});
const verdict = (steel: ReturnType<typeof ledgeSteel>, id: string) => steel.checks.find((check) => check.id === id)?.verdict;

describe("ledgeSteel", () => {
  const made = () => of();

  test("takes moment about the hanger, with a fifth of the load as pull", () => {
    // d = 8.75; 4.75 + 4 * 5 = 24.75 in of ledge; 40 (5 + 1.75) + 8 (10 - 8.75) = 280 kip-in.
    expect(made()).toMatchObject({effectiveDepthIn: 8.75, workingLengthIn: 24.75, pullKip: 8, momentKipIn: 280});
    expect(of({pullKip: 3}).pullKip).toBe(8);
    expect(of({pullKip: 12}).momentKipIn).toBe(285);
  });

  test("finds the steel for bending, pull and friction, and the least", () => {
    // a: 0.75 * 0.85 * 5 * 24.75 a (8.75 - a/2) = 280 gives a = 0.41542: T = 43.704 kip, 0.72841 in2.
    expect(made().bendingIn2).toBeCloseTo(0.728405, 5);
    expect(0.75 * 60 * made().bendingIn2 * (8.75 - (60 * made().bendingIn2) / (2 * 0.85 * 5 * 24.75))).toBeCloseTo(280, 9);
    // 8 / 45 = 0.17778; 40 / (45 * 1.4) = 0.63492; 0.04 * 5 / 60 * 24.75 * 8.75 = 0.721875.
    expect(made()).toMatchObject({pullIn2: expect.closeTo(0.177778, 6), frictionIn2: expect.closeTo(0.634921, 6), leastIn2: expect.closeTo(0.721875, 9)});
  });

  test("gives the bars: top, ties and lengthwise", () => {
    // 0.728405 + 0.177778 = 0.906183 in2, above 2/3 * 0.63492 + 0.17778 = 0.60106; 12 / 24.75 of it per foot.
    expect(made().topIn2).toBeCloseTo(0.906183, 5);
    expect(made().topIn2PerFt).toBeCloseTo(0.439361, 5);
    expect(made().tiesIn2).toBeCloseTo(0.364203, 5);
    // 200 * 8 * 8.75 / 60,000.
    expect(made().lengthwiseIn2).toBeCloseTo(0.233333, 6);
    // (40 * 6.75 / 8.75 + 8 * 10 / 8.75) / 45 = 40 / 45.
    expect(made().handbookIn2).toBeCloseTo(0.888889, 6);
    expect(made().greatestSpacingIn).toBe(10);
  });

  test("takes friction where the lever is short, and the least where the load is small", () => {
    // A bearing 2.2 in long close to the web, the hanger 0.5 in inside, a ledge of 12 in.
    const short = of({hangerInsetIn: 0.5}, {ledgeDepthIn: 12, bearingLengthIn: 2.2, shearSpanIn: 1.1});
    expect(short.topIn2).toBeCloseTo((2 / 3) * short.frictionIn2 + short.pullIn2, 12);
    expect(of({loadKip: 1}).topIn2).toBeCloseTo(0.721875, 9);
  });

  test("limits shear by the section, lighter concrete to less", () => {
    // min(0.2 * 5,000, 480 + 400, 1,600) = 880 psi: 0.75 * 0.88 * 24.75 * 8.75 = 142.931 kip.
    expect(made().greatestShearKip).toBeCloseTo(142.93125, 6);
    expect(verdict(of({loadKip: 142}), "ledge shear")).toBe("near");
    expect(verdict(of({loadKip: 144}), "ledge shear")).toBe("fails");
    // Slope 5 / 8.75 = 0.571429: min((0.2 - 0.04) 5,000, 800 - 160) = 640 psi: 103.95 kip; friction 1.4 * 0.85.
    const light = of({}, {concrete: concrete("sand-lightweight", 5000)});
    expect([light, of()].map(({checks}) => checks[0]?.clause)).toEqual(["ACI 318-19 16.5.2.5", "ACI 318-19 16.5.2.4"]);
    expect(light.greatestShearKip).toBeCloseTo(103.95, 6);
    expect(light.frictionIn2).toBeCloseTo(0.634921 / 0.85, 5);
    // Of 3,000 psi its share of the strength decides: (0.2 - 0.04) 3,000 = 480 psi.
    expect(of({}, {concrete: concrete("sand-lightweight", 3000)}).greatestShearKip).toBeCloseTo(0.75 * 0.48 * 24.75 * 8.75, 6);
  });

  test("stays finite far beyond any strength", () => {
    const beyond = of({loadKip: 2000});
    expect(Number.isFinite(beyond.topIn2)).toBe(true);
    expect(verdict(beyond, "ledge shear")).toBe("fails");
  });

  test("says where the rules for corbels end", () => {
    // d = 5 in on a 6.25 in ledge: 5 / 5 is the limit.
    expect(verdict(of({}, {ledgeDepthIn: 6.25}), "ledge lever")).toBe("ok");
    expect(verdict(of({}, {ledgeDepthIn: 6.2}), "ledge lever")).toBe("out of range");
    expect(verdict(of({pullKip: 40}), "ledge lever")).toBe("ok");
    expect(verdict(of({pullKip: 41}), "ledge lever")).toBe("out of range");
    const words = (steel: ReturnType<typeof ledgeSteel>) => steel.checks.find(({id}) => id === "ledge lever")?.message;
    expect(words(of({}, {ledgeDepthIn: 6.2}))).toMatch(/farther out than the ledge is deep/);
    expect(words(of({pullKip: 41}))).toMatch(/force is larger than the load/);
    expect(words(of({pullKip: 41}, {ledgeDepthIn: 6.25}))).toMatch(/force is larger than the load/);
  });

  test("is in balance: the steel's moment is the load's", () => {
    hold(400, fc.property(within(1, 100), within(8, 24), within(0.5, 3), (loadKip, ledgeDepthIn, hangerInsetIn) => {
      const {bendingIn2, workingLengthIn, effectiveDepthIn, momentKipIn, checks} = of({loadKip, hangerInsetIn}, {ledgeDepthIn});
      fc.pre(checks[0]?.verdict !== "fails");
      const blockIn = (60 * bendingIn2) / (0.85 * 5 * workingLengthIn);
      expect(0.75 * 60 * bendingIn2 * (effectiveDepthIn - blockIn / 2)).toBeCloseTo(momentKipIn, 6);
    }));
  });

  test("refuses what cannot be", () => {
    refused(() => of({loadKip: -1}), {path: "loadKip"});
    refused(() => of({pullKip: -1}), {path: "pullKip"});
    refused(() => of({hangerInsetIn: 8}), {path: "hangerInsetIn", allowed: "0.5 to 7 in"});
    refused(() => of({}, {ledgeDepthIn: 2.5}), {path: "ledgeDepthIn"});
  });
});
