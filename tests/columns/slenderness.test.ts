import {describe, expect, test} from "vitest";
import {leastMomentKipIn, magnified, stands, strut, type StrutInput, type StrutLoad} from "../../lib/columns/slenderness.js";
import {refused} from "../support/errors.js";
import {slendernessOf} from "./cases.js";
import {columnOf} from "./sections.js";

const input = (different: Partial<StrutInput & StrutLoad> = {}): StrutInput & StrutLoad => ({
  section: columnOf(), axialKip: 400, momentKipIn: [600, 0], curvature: "double", unbracedFt: 12, lengthFactor: 1, sways: false,
  sustainedShare: 0.6, ...different,
});
const of = (different: Partial<StrutInput & StrutLoad> = {}) => slendernessOf(input(different));
const verdicts = (result: ReturnType<typeof of>) => Object.fromEntries(result.checks.map((check) => [check.id, check.verdict]));

describe("the screen", () => {
  test("compares k lu / r with 34 + 12 M1/M2, 40 at most", () => {
    // 144 / (0.3 x 16) = 30.
    expect(of().ratio).toBeCloseTo(30, 12);
    expect(of({lengthFactor: 0.8}).ratio).toBeCloseTo(24, 12);
    expect(of().limit).toBe(34);
    expect(of({momentKipIn: [600, 300]}).limit).toBe(40);
    expect(of({momentKipIn: [600, 150]}).limit).toBe(37);
    expect(of({momentKipIn: [300, 600], curvature: "single"})).toMatchObject({limit: 28, slender: true});
    expect(of({momentKipIn: [0, 0]}).limit).toBe(22);
    expect(of().slender).toBe(false);
  });

  test("leaves a stocky column's moment as it is", () => {
    const stocky = of();
    expect(stocky).toMatchObject({magnifier: 1, momentKipIn: 600});
    expect(verdicts(stocky)).toEqual({"column buckling": "ok"});
  });

  test("is stricter in a story that may sway, and says nothing of slender columns there", () => {
    expect(of({sways: true, unbracedFt: 8})).toMatchObject({limit: 22, slender: false, magnifier: 1});
    const slender = of({sways: true});
    expect(slender).toMatchObject({slender: true, magnifier: undefined, momentKipIn: undefined});
    expect(verdicts(slender)).toEqual({"column slenderness": "out of range"});
  });

  test("says nothing beyond 100", () => {
    // 40 ft: 480 / 4.8 = 100 exactly.
    expect(verdicts(of({unbracedFt: 40, axialKip: 20}))).not.toHaveProperty("column slenderness");
    expect(verdicts(of({unbracedFt: 40.1, axialKip: 20}))).toEqual({"column slenderness": "out of range"});
    expect(of({unbracedFt: 40.1, axialKip: 20}).magnifier).toBeUndefined();
    // The check tells the limit that is passed: the method's 100, or 22 of a story that may sway.
    expect(of({unbracedFt: 40.1, axialKip: 20}).checks[0]).toMatchObject({demand: expect.closeTo(100.25, 9), capacity: 100, clause: "ACI 318-05 10.11.5 (from memory)"});
    expect(of({sways: true}).checks[0]).toMatchObject({demand: expect.closeTo(30, 9), capacity: 22, clause: "ACI 318-19 6.6.4.6"});
  });
});

describe("the magnifier", () => {
  test("by hand: 16 ft, evenly bent", () => {
    // k lu / r = 192 / 4.8 = 40 > 22. Ec = 150^1.5 33 sqrt(5,000) = 4,286.8 ksi; Ig = 5,461.33 in4; EI = 0.4 Ec Ig / 1.6.
    const ec = (150 ** 1.5 * 33 * Math.sqrt(5000)) / 1000;
    const ei = (0.4 * ec * 5461.3333) / 1.6;
    const pc = (Math.PI ** 2 * ei) / 192 ** 2;
    const result = of({unbracedFt: 16, momentKipIn: [600, 600], curvature: "single"});
    expect(result.stiffnessKipIn2).toBeCloseTo(ei, 0);
    expect(result.criticalKip).toBeCloseTo(pc, 3);
    expect(result.evenMomentFactor).toBe(1);
    expect(result.magnifier).toBeCloseTo(1 / (1 - 400 / (0.75 * pc)), 6);
    expect(result.momentKipIn).toBeCloseTo((result.magnifier ?? NaN) * 600, 9);
  });

  test("is 1 at least, where the moments bend the column to both sides", () => {
    // Cm = 0.6 - 0.4 x 1 = 0.2.
    const result = of({unbracedFt: 18, momentKipIn: [900, 900]});
    expect(result.evenMomentFactor).toBeCloseTo(0.2, 12);
    expect(result).toMatchObject({slender: true, magnifier: 1, momentKipIn: 900});
  });

  test("starts from the least moment Pu (0.6 + 0.03 h), taken as even", () => {
    // 400 (0.6 + 0.48) = 432 kip-in.
    expect(leastMomentKipIn(400, 16)).toBeCloseTo(432, 9);
    const result = of({unbracedFt: 16, momentKipIn: [100, 0]});
    expect(result).toMatchObject({slender: true, evenMomentFactor: 1});
    expect(result.momentKipIn).toBeCloseTo(432 * (result.magnifier ?? NaN), 9);
  });

  test("grows with load and length", () => {
    const magnifiers = [100, 200, 400, 600].map((axialKip) => of({unbracedFt: 17, axialKip, momentKipIn: [0, 0]}).magnifier ?? Infinity);
    expect(magnifiers).toEqual([...magnifiers].sort((a, b) => a - b));
    expect(of({unbracedFt: 20, momentKipIn: [0, 0]}).magnifier).toBeGreaterThan(of({unbracedFt: 17, momentKipIn: [0, 0]}).magnifier ?? Infinity);
  });

  test("beyond 1.4 fails, and a column that would buckle has none", () => {
    expect(verdicts(of({unbracedFt: 14, axialKip: 200, momentKipIn: [0, 0]}))).toEqual({"column buckling": "ok", "column magnifier": "ok"});
    expect(verdicts(of({unbracedFt: 20, axialKip: 500, momentKipIn: [0, 0]}))["column magnifier"]).toBe("fails");
    const buckling = of({unbracedFt: 30, axialKip: 600});
    expect(buckling).toMatchObject({magnifier: undefined, momentKipIn: undefined});
    expect(verdicts(buckling)).toEqual({"column buckling": "fails"});
  });
});

test("what cannot be is refused", () => {
  refused(() => of({axialKip: -1}), {path: "axialKip"});
  refused(() => of({momentKipIn: [100, -1]}), {path: "momentKipIn.1"});
  refused(() => of({unbracedFt: 0}), {path: "unbracedFt"});
  refused(() => of({lengthFactor: 0.4}), {path: "lengthFactor"});
  refused(() => of({sustainedShare: 1.1}), {path: "sustainedShare"});
});

test("stands where none of its checks fails or is out of range, told without writing them", () => {
  let [standing, falling] = [0, 0];
  for (const sways of [false, true]) for (const unbracedFt of [6, 15, 25, 45]) for (const axialKip of [50, 400, 900, 1500]) for (const kipIn of [0, 300, 900]) for (const countsLeast of [true, false]) {
    const one = input({sways, unbracedFt, axialKip, momentKipIn: [kipIn, 600], countsLeast});
    const slender = strut(one);
    const holds = slendernessOf(one).checks.every(({verdict}) => verdict === "ok" || verdict === "near");
    expect(stands(slender, axialKip, magnified(slender, one)), `${unbracedFt} ft, ${axialKip} kip`).toBe(holds);
    if (holds) standing += 1;
    else falling += 1;
  }
  expect(standing).toBeGreaterThan(20);
  expect(falling).toBeGreaterThan(20);
});
