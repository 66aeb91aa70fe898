import {describe, expect, test} from "vitest";
import {camber} from "../../lib/member/camber.js";
import type {Member} from "../../lib/member/member.js";
import {settleTopping, type SettledTopping} from "../../lib/topping/fixedPoint.js";
import {SCATTER, type Scatter} from "../../lib/topping/scatter.js";
import {spread, type SpreadInput, type ToppingSpread} from "../../lib/topping/spread.js";
import {spreadBasis} from "../../lib/topping/spreadBasis.js";
import {memberTopping, type ToppingBasis} from "../../lib/topping/spreadTopping.js";
import {firstOrderDeviationIn, spreadCauses} from "../../lib/topping/spreadCauses.js";
import {refused} from "../support/errors.js";
import {memberWith} from "../support/members.js";
import {NO_SCATTER, spreadNow} from "../support/spread.js";

/** Members whose topping settles, each with a span in feet. */
const MEMBERS: readonly (readonly [string, () => Member, number])[] = [
  ["straight strands", () => memberWith("10DT32", "128-S", {toppingIn: 2}), 60],
  ["strands depressed at two points", () => memberWith("12DT32", "148-D2", {toppingIn: 2}), 70],
  ["a nearly level deck", () => memberWith("10DT24", "48-S", {toppingIn: 3}), 50],
  ["planks that sag", () => memberWith("4HC8", "76-S", {toppingIn: 2}), 32],
];
const [, member, SPAN] = MEMBERS[0] as (typeof MEMBERS)[number];
const basisOf = () => spreadBasis(member(), camber(member(), SPAN, 100), SPAN);
const run = (changes: Partial<Omit<SpreadInput, "scatter">> & {scatter?: Partial<Scatter>} = {}) =>
  spreadNow({seed: 11, count: 5000, ...changes, basis: changes.basis ?? basisOf(), scatter: {...NO_SCATTER, ...(changes.scatter ?? SCATTER)}});

describe("spread", () => {
  test.each(MEMBERS)("without scatter is the design's own piece, with %s", (_, made, spanFt) => {
    const member = made();
    const result = camber(member, spanFt, 100);
    const basis = spreadBasis(member, result, spanFt);
    const none = spreadNow({basis, scatter: NO_SCATTER, seed: 3, count: 300, piecesPerOrder: 3});
    expect(none.erection).toMatchObject({mean: result.erectionIn, deviation: 0, least: result.erectionIn, greatest: result.erectionIn});
    expect(none.difference.greatest).toBe(0);
    expect([none.offDesignShare, none.neighborsApartShare, none.topping?.tooThinShare]).toEqual([0, 0, 0]);
    // The waves and the rounds of the settled topping are two ways to one answer.
    const settled = settleTopping(member, result, {spanFt, beamSpanFt: 30, baysAlong: 1, baysAcross: 1}, {toleranceShare: 1e-9});
    expect(none.topping?.thinnest.mean).toBeCloseTo(settled?.leastIn as number, 9);
    expect(basis.topping?.levelIn).toBeCloseTo(settled?.surfaceEndIn as number, 5);
    expect((none.topping?.orderYd3.mean as number) / (3 * (settled?.memberYd3 as number))).toBeCloseTo(1, 5);
  });

  test.each(MEMBERS)("without scatter is the design's own piece under a surface that follows the camber, with %s", (_, made, spanFt) => {
    const member = made();
    const result = camber(member, spanFt, 100);
    for (const followShare of [0.4, 1]) {
      const settled = settleTopping(member, result, {spanFt, beamSpanFt: 30, baysAlong: 1, baysAcross: 1}, {followShare, toleranceShare: 1e-9}) as SettledTopping;
      const none = spreadNow({basis: spreadBasis(member, result, spanFt, settled), scatter: NO_SCATTER, seed: 3, count: 10});
      expect(none.topping?.thinnest.mean).toBeCloseTo(settled.leastIn, 9);
      // The surface is counted from its ends, which stand where the rounds put them; level in, it stands as high as the camber is followed.
      const {topping} = spreadBasis(member, result, spanFt, settled);
      expect(topping?.levelIn).toBeCloseTo(settled.surfaceEndIn, 3);
      expect(topping?.surfaceShape).toHaveLength(21);
      expect(topping?.surfaceShape[0]).toBe(0);
      expect(topping?.surfaceShape[20]).toBeCloseTo(settled.surfaceMidspanIn - settled.surfaceEndIn, 12);
      expect(topping?.surfaceShape[10]).toBeCloseTo((settled.points[20]?.riseIn as number) + (settled.points[20]?.thicknessIn as number) - settled.surfaceEndIn, 12);
      expect(Math.abs((none.topping?.orderYd3.mean as number) / settled.memberYd3 - 1)).toBeLessThan(2e-4);
    }
  });

  test("lets pieces stray about the design's age", () => {
    const young = camber(member(), SPAN, 100, 14);
    const basis = spreadBasis(member(), young, SPAN);
    expect(spreadNow({basis, scatter: NO_SCATTER, seed: 1, count: 10}).erection.mean).toBe(young.erectionIn);
    const {erection} = spreadNow({basis, scatter: {...NO_SCATTER, age: 0.05}, seed: 1, count: 20_000});
    expect(Math.abs(erection.deviation / firstOrderDeviationIn(basis, {...NO_SCATTER, age: 0.05}) - 1)).toBeLessThan(0.025);
  });

  test("is the same for the same seed and another for another", () => {
    expect(run()).toEqual(run());
    expect(run().erection.mean).not.toBe(run({seed: 12}).erection.mean);
  });

  test("has the exact mean of lognormal causes within sampling error", () => {
    // The mean of 1/x is 1 + cv^2, of x^(-1/2) (1 + cv^2)^(3/8); of a normal length's square and fourth power 1 + v^2 and 1 + 6 v^2 + 3 v^4.
    const {prestressIn: P, selfIn: W, spanIn} = basisOf();
    const v = SCATTER.lengthIn / spanIn;
    const early = (1 + SCATTER.stiffness ** 2) * (1 + SCATTER.releaseStrength ** 2) ** 0.375;
    const mean = early * (1.8 * P * (1 + v ** 2) + 1.85 * W * (1 + 6 * v ** 2 + 3 * v ** 4));
    for (const seed of [1, 2, 3]) {
      const {erection} = run({seed, scatter: {...SCATTER, age: 0}});
      expect(Math.abs(erection.mean - mean)).toBeLessThan((3.5 * erection.deviation) / Math.sqrt(5000));
    }
  });

  test("has, by one cause that strays widely, the mean that the cause's law gives", () => {
    const {prestressIn: P, selfIn: W, erectionPrestress, erectionSelf, ageDays} = basisOf();
    const near = (scatter: Partial<Scatter>, mean: number) => {
      const {erection} = run({scatter, count: 20_000});
      expect(Math.abs(erection.mean - mean)).toBeLessThan((3.5 * erection.deviation) / Math.sqrt(20_000));
      // The law's mean is far from the design's own by more than chance explains, so that the one is not taken for the other.
      expect(Math.abs(mean - (1.8 * P + 1.85 * W))).toBeGreaterThan((7 * erection.deviation) / Math.sqrt(20_000));
    };
    near({releaseStrength: 0.3}, (1.8 * P + 1.85 * W) * 1.09 ** 0.375);
    near({stiffness: 0.25}, (1.8 * P + 1.85 * W) * (1 + 0.25 ** 2));
    // Creep grows as t^0.6/(10 + t^0.6); the age is lognormal with mean 1 and a deviation of 1, so the square of sigma is ln 2.
    const creep = (days: number) => days ** 0.6 / (10 + days ** 0.6);
    near({age: 1}, meanOf(Math.sqrt(Math.log(2)), (factor) => {
      const growth = creep(ageDays * factor) / creep(ageDays);
      return (1 + (erectionPrestress - 1) * growth) * P + (1 + (erectionSelf - 1) * growth) * W;
    }));
  });

  test.each(MEMBERS)("has the topping that softer and longer pieces hold, with %s", (_, made, spanFt) => {
    const member = made();
    const basis = spreadBasis(member, camber(member, spanFt, 100), spanFt);
    const {prestressIn: P, selfIn: W, erectionPrestress: p, erectionSelf: w} = basis;
    const filling = basis.topping as ToppingBasis;
    // Lift and sag go with 1/E, and so does what wet topping sags: its mean is taken by its own law, not at the mean stiffness.
    const soft = run({basis, scatter: {stiffness: 0.25}, count: 20_000}).topping as ToppingSpread;
    const at = (factor: number) => memberTopping(filling, (p * P) / factor, (w * W) / factor, 1 / factor, 0);
    const sigma = Math.sqrt(Math.log(1 + 0.25 ** 2));
    // Where a piece stands high its thinnest topping lies at midspan; a level one's may lie anywhere, and a sagging one's always has the least, at its ends.
    const high = p * P + w * W > 0.5;
    if (high) expect(Math.abs(soft.thinnest.mean - meanOf(sigma, (factor) => at(factor).thinnestIn))).toBeLessThan((3.5 * soft.thinnest.deviation) / Math.sqrt(20_000));
    if (high) expect(soft.thinnest.deviation / deviationOf(sigma, (factor) => at(factor).thinnestIn)).toBeCloseTo(1, 1.5);
    expect(soft.orderYd3.deviation / deviationOf(sigma, (factor) => at(factor).meanIn * filling.yd3PerIn)).toBeCloseTo(1, 1.5);
    // Strands lift with the square of the length, weight and wet topping sag with its fourth power, and there is more to cover.
    const long = run({basis, scatter: {lengthIn: 3}, count: 20_000}).topping as ToppingSpread;
    const of = (longer: number) => memberTopping(filling, p * P * longer ** 2, w * W * longer ** 4, longer ** 4, 0);
    const slope = (value: (longer: number) => number) => Math.abs(value(1 + 1e-4) - value(1 - 1e-4)) / 2e-4;
    const share = 3 / basis.spanIn;
    if (high) expect(long.thinnest.deviation / (share * slope((longer) => of(longer).thinnestIn))).toBeCloseTo(1, 1.3);
    expect(long.orderYd3.deviation / (share * slope((longer) => of(longer).meanIn * longer * filling.yd3PerIn))).toBeCloseTo(1, 1.5);
  });

  test("has the first-order deviation for small scatter, within sampling error", () => {
    const basis = basisOf();
    const scatter = {...NO_SCATTER, ...Object.fromEntries(Object.entries(SCATTER).map(([key, value]) => [key, value / 3]))} as Scatter;
    const theory = firstOrderDeviationIn(basis, scatter);
    for (const seed of [1, 2, 3]) {
      const {erection} = run({basis, seed, count: 20_000, scatter});
      // One standard error of a deviation is 1/sqrt(2 n) of it: 0.5 %; second order adds some 0.3 %.
      expect(Math.abs(erection.deviation / theory - 1)).toBeLessThan(0.02);
      expect(Math.abs(erection.mean - (1.8 * basis.prestressIn + 1.85 * basis.selfIn))).toBeLessThan(0.02 * theory + 4 * (theory / Math.sqrt(20_000)) + 0.002 * erection.mean);
    }
  });

  test.each([
    ["stiffness", {stiffness: 0.04}], ["release strength", {releaseStrength: 0.04}], ["force", {force: 0.03}],
    ["age", {age: 0.05}], ["weight", {weight: 0.02}], ["length", {lengthIn: 1}],
  ] as const)("by %s alone has that cause's first-order deviation", (cause, scatter) => {
    const causes = spreadCauses(basisOf(), {...NO_SCATTER, ...scatter});
    expect(causes[0]).toMatchObject({cause, varianceShare: 1});
    const {erection} = run({count: 20_000, scatter});
    expect(erection.deviation / (causes[0]?.deviationIn as number)).toBeCloseTo(1, 1.5);
    expect(Math.abs(erection.deviation / (causes[0]?.deviationIn as number) - 1)).toBeLessThan(0.025);
  });

  test.each([0, 0.5, 0.9])("lets neighbors of likeness %d differ as normal deviates do", (likeness) => {
    // |d| of two normals with correlation r has the mean 2 s sqrt((1 - r)/pi).
    const {erection, difference} = run({count: 40_000, scatter: {force: 0.05, likeness}});
    expect(difference.mean / (2 * erection.deviation * Math.sqrt((1 - likeness) / Math.PI))).toBeCloseTo(1, 1.4);
    expect(difference.count).toBe(39_999);
    // Alike or not, all of them together differ as much.
    expect(Math.abs(erection.deviation / firstOrderDeviationIn(basisOf(), {...NO_SCATTER, force: 0.05}) - 1)).toBeLessThan(0.05);
  });

  test("holds cambers and neighbors against the trade's tolerance", () => {
    const result = run({scatter: {force: 0.15}});
    expect(result.toleranceIn).toBe(0.75);
    // Normal to first order: beyond z = 0.75/s from the design, and z/sqrt 2 between two.
    const s = result.erection.deviation;
    const beyond = (z: number) => 2 * (1 - normal(z));
    expect(Math.abs(result.offDesignShare - beyond(0.75 / s))).toBeLessThan(0.025);
    expect(Math.abs(result.neighborsApartShare - beyond(0.75 / s / Math.SQRT2))).toBeLessThan(0.025);
    expect(result.neighborsApartShare).toBeGreaterThan(result.offDesignShare);
  });

  test("finds about every other piece too thin under the design's level, and one in twenty under a raised one", () => {
    const plain = run();
    expect(plain.topping?.tooThinShare).toBeGreaterThan(0.4);
    expect(plain.topping?.tooThinShare).toBeLessThan(0.6);
    const raised = run({raisedIn: plain.topping?.raiseForTwentiethIn});
    expect(raised.topping?.tooThinShare).toBeLessThan(0.051);
    expect(raised.topping?.tooThinShare).toBeGreaterThan(0.02);
    expect(run({raisedIn: 4}).topping?.raiseForTwentiethIn).toBe(0);
    expect(raised.topping?.orderYd3.mean).toBeGreaterThan(plain.topping?.orderYd3.mean as number);
  });

  test("orders for three pieces three times as much, with less than three times the scatter", () => {
    const [one, three] = [run(), run({piecesPerOrder: 3})];
    expect((three.topping?.orderYd3.mean as number) / (one.topping?.orderYd3.mean as number)).toBeCloseTo(3, 2);
    expect((three.topping?.orderYd3.deviation as number) / (one.topping?.orderYd3.deviation as number)).toBeCloseTo(Math.sqrt(3), 0.8);
    expect(three.topping?.orderYd3.count).toBe(1666);
    // Two and a half pieces to a bay: what a column line cuts is shared by its two bays, and nothing is lost.
    const half = run({piecesPerOrder: 2.5});
    expect(half.topping?.orderYd3.count).toBe(2000);
    expect((half.topping?.orderYd3.mean as number) / (one.topping?.orderYd3.mean as number)).toBeCloseTo(2.5, 9);
  });

  test("has no topping to tell of where there is none, or where wet topping has no end", () => {
    const bare = memberWith("10DT34", "128-S");
    expect(spreadNow({basis: spreadBasis(bare, camber(bare, 60, 100), 60), scatter: SCATTER, seed: 1, count: 100}).topping).toBeUndefined();
    const soft = memberWith("4HC6", "66-S", {toppingIn: 2});
    expect(spreadBasis(soft, camber(soft, 45, 100), 45).topping).toBeUndefined();
  });

  test("tells how far it is, takes plain data and gives plain data", () => {
    const input = {basis: basisOf(), scatter: SCATTER, seed: 9, count: 3500};
    const work = spread(structuredClone(input));
    const seen: number[] = [];
    let step = work.next();
    for (; !step.done; step = work.next()) seen.push(step.value.doneShare);
    expect(seen).toEqual([1000, 2000, 3000].map((n) => n / 3500));
    // The last piece is not told of: the row is done.
    expect([...spread({...input, count: 2000})]).toEqual([{doneShare: 0.5}]);
    expect(JSON.parse(JSON.stringify(step.value))).toEqual(structuredClone(spreadNow(input)));
  });

  test("stays finite at the widest scatter", () => {
    const widest = {stiffness: 0.25, releaseStrength: 0.3, force: 0.2, age: 1, weight: 0.2, lengthIn: 3, likeness: 0.95};
    const result = run({scatter: widest, count: 20_000});
    for (const part of [result.erection, result.difference, result.topping?.thinnest, result.topping?.orderYd3]) {
      for (const value of [part?.mean, part?.deviation, part?.least, part?.greatest]) expect(Number.isFinite(value)).toBe(true);
    }
  });

  test("lets the first piece of a row stray as much as any: rows of pieces that are much alike differ from each other", () => {
    // The mean of ten normals whose neighbors are correlated by r has the variance s2 (10 + 2 sum of (10 - k) r^k) / 100.
    const r = 0.95;
    let sum = 10;
    for (let k = 1; k < 10; k++) sum += 2 * (10 - k) * r ** k;
    const basis = basisOf();
    const theory = firstOrderDeviationIn(basis, {...NO_SCATTER, force: 0.02}) * Math.sqrt(sum / 100);
    const means = Array.from({length: 1000}, (_, seed) => run({basis, seed, count: 10, scatter: {force: 0.02, likeness: r}}).erection.mean - (1.8 * basis.prestressIn + 1.85 * basis.selfIn));
    // One standard error of a deviation of 1,000 is 2.2 % of it.
    expect(Math.abs(Math.sqrt(means.reduce((all, mean) => all + mean * mean, 0) / 1000) / theory - 1)).toBeLessThan(0.08);
  });

  test("tells of as many pieces as were tried, and of one pair less", () => {
    const {erection, difference, topping} = run({count: 12});
    expect([erection.count, difference.count, topping?.thinnest.count]).toEqual([12, 11, 12]);
    expect(erection.least).toBeGreaterThan(0);
    // No two of them are just alike.
    expect(difference.least).toBeGreaterThan(0);
  });

  test("refuses what it cannot try", () => {
    refused(() => run({count: 5}), {path: "count"});
    refused(() => run({count: 12.5}), {path: "count"});
    refused(() => run({seed: 1.5}), {path: "seed"});
    // A seed has 32 bits.
    refused(() => run({seed: 2 ** 32}), {path: "seed"});
    expect(run({seed: 2 ** 32 - 1, count: 10}).count).toBe(10);
    refused(() => run({scatter: {force: -0.1}}), {path: "scatter.force"});
    refused(() => run({scatter: {likeness: 1}}), {path: "scatter.likeness"});
    refused(() => run({raisedIn: Number.NaN}), {path: "raisedIn"});
    refused(() => run({piecesPerOrder: 501}), {path: "piecesPerOrder"});
    // Two orders at least: five pieces each of ten.
    refused(() => run({count: 10, piecesPerOrder: 5.1}), {path: "piecesPerOrder"});
    expect(run({count: 10, piecesPerOrder: 5}).topping?.orderYd3.count).toBe(2);
  });
});

describe("spreadCauses", () => {
  test("come largest first and their variances add up", () => {
    const basis = basisOf();
    const causes = spreadCauses(basis, SCATTER);
    expect(causes).toHaveLength(6);
    expect(causes.reduce((sum, {varianceShare}) => sum + varianceShare, 0)).toBeCloseTo(1, 12);
    for (let i = 1; i < 6; i++) expect(causes[i]?.deviationIn).toBeLessThanOrEqual(causes[i - 1]?.deviationIn as number);
    expect(causes.find(({cause}) => cause === "force")?.deviationIn).toBeCloseTo(0.03 * 1.8 * basis.prestressIn, 12);
    expect(spreadCauses(basis, NO_SCATTER).every(({deviationIn, varianceShare}) => deviationIn === 0 && varianceShare === 0)).toBe(true);
  });
});

/** Mean of a function of a lognormal factor with mean 1, by the midpoint rule over eight deviations either way. */
function meanOf(sigma: number, value: (factor: number) => number): number {
  let sum = 0;
  for (let z = -8 + 0.005; z < 8; z += 0.01) sum += (value(Math.exp(sigma * z - (sigma * sigma) / 2)) * Math.exp((-z * z) / 2) * 0.01) / Math.sqrt(2 * Math.PI);
  return sum;
}

function deviationOf(sigma: number, value: (factor: number) => number): number {
  const mean = meanOf(sigma, value);
  return Math.sqrt(meanOf(sigma, (factor) => (value(factor) - mean) ** 2));
}

/** Normal distribution function (Abramowitz and Stegun 26.2.17). */
function normal(z: number): number {
  const t = 1 / (1 + 0.2316419 * z);
  const tail = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return 1 - tail * t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
}
