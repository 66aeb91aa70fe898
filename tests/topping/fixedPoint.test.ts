import {describe, expect, test} from "vitest";
import {camber, camberCurve, sag, type Camber} from "../../lib/member/camber.js";
import {fillRatio} from "../../lib/member/fillRatio.js";
import type {Member} from "../../lib/member/member.js";
import {onGrid, settleTopping, withTopping, type Finish, type SettledTopping} from "../../lib/topping/fixedPoint.js";
import {refused} from "../support/errors.js";
import {memberWith} from "../support/members.js";

const bayOf = (spanFt: number) => ({spanFt, beamSpanFt: 30, baysAlong: 4, baysAcross: 2});
const settle = (member: Member, spanFt: number, finish: Finish = {}, from?: Camber) =>
  settleTopping(member, from ?? camber(member, spanFt, 100), bayOf(spanFt), finish) as SettledTopping;

const UP = memberWith("10DT32", "128-S", {toppingIn: 2});
const DOWN = memberWith("10DT24", "48-S", {toppingIn: 3});
/** A camber of one parabola, and a member that nothing bends. */
const parabola = (riseIn: number): Camber => {
  const from = camber(UP, 60, 0);
  return {...from, prestressIn: riseIn, selfIn: 0, toppingIn: 0, superimposedIn: 0, erectionIn: riseIn, toppedIn: riseIn,
    multipliers: {...from.multipliers, erectionPrestress: 1, erectionSelf: 1}};
};
const STIFF: Member = {...UP, modulusKsi: 1e15};

/** Sag at midspan by integrating shear, moment, slope and deflection in small steps: nothing of the influence lines. */
function sagByIntegration(thicknessIn: readonly number[], member: Member, spanIn: number): number {
  const steps = 8000;
  const topping = member.topping as NonNullable<Member["topping"]>;
  const load = (x: number) => {
    const place = Math.min(79.999999, x * 80);
    const i = Math.floor(place);
    const depth = (thicknessIn[i] as number) + (place - i) * ((thicknessIn[i + 1] as number) - (thicknessIn[i] as number));
    return (depth * topping.widthIn * topping.concrete.unitWeightPcf) / 1728000;
  };
  const h = spanIn / steps;
  let reaction = 0;
  for (let i = 0; i < steps; i++) reaction += load((i + 0.5) / steps) * (1 - (i + 0.5) / steps) * h;
  let [shear, moment, slope, deflection] = [reaction, 0, 0, 0];
  let middle = 0;
  for (let i = 0; i < steps; i++) {
    const before = shear;
    shear -= load((i + 0.5) / steps) * h;
    const curvature = (moment + ((before + shear) / 2) * (h / 2)) / (member.modulusKsi * member.section.inertiaIn4);
    moment += ((before + shear) / 2) * h;
    deflection += slope * h + (curvature * h * h) / 2;
    slope += curvature * h;
    if (i === steps / 2 - 1) middle = deflection;
  }
  // The chord from end to end is taken off, since the slope at the start was set to nothing.
  return deflection / 2 - middle;
}

describe("settleTopping", () => {
  test("is nothing without topping", () => {
    const bare = memberWith("10DT24", "68-S");
    expect(settleTopping(bare, camber(bare, 40, 100), bayOf(40))).toBeUndefined();
  });

  test("fills a parabola as exact integrals give", () => {
    // t = 2 + 1.5 (1 - 2 x)^2: mean 2 + 1.5/3; midspan moment 1/48 against 1/8 of a uniform load, so a sixth of the end's.
    const {averageIn, greatestIn, extra, memberYd3, bayYd3, floorYd3, surfaceEndIn, surfaceMidspanIn} = settle(STIFF, 60, {}, parabola(1.5));
    expect(averageIn).toBeCloseTo(2.5, 9);
    expect(greatestIn).toBeCloseTo(3.5, 9);
    expect(extra.averagePsf).toBeCloseTo(0.5 * 12.5, 9);
    expect(extra.endPsf).toBeCloseTo(1.5 * 12.5, 9);
    expect(extra.midspanPsf).toBeCloseTo(0, 9);
    expect(extra.momentPsf).toBeCloseTo((1.5 * 12.5) / 6, 6);
    // 6.25 psf on 10 ft by 30 ft; 3.125 psf on 10 ft: 31.25 plf x 60^2/8 = 14.0625 kip-ft.
    expect(extra.reactionKip).toBeCloseTo(1.875, 9);
    expect(extra.momentKipIn).toBeCloseTo(14.0625 * 12, 4);
    expect([memberYd3, bayYd3, floorYd3]).toEqual([600, 1800, 14400].map((ft2) => expect.closeTo((ft2 * 2.5) / 12 / 27, 9)));
    expect(surfaceEndIn).toBeCloseTo(surfaceMidspanIn, 9);
  });

  test("is told place by place from end to end", () => {
    const {points} = settle(STIFF, 60, {}, parabola(1.5));
    expect(points.map(({share}) => share)).toEqual(Array.from({length: 81}, (_, i) => i / 80));
    // A quarter in, the parabola has three quarters of its rise: 2 + 1.5/4 lie on it.
    expect(points[20]).toEqual({share: 0.25, riseIn: expect.closeTo(1.125, 6), thicknessIn: expect.closeTo(2.375, 6)});
  });

  test("fills a hollow from the ends up", () => {
    const {averageIn, extra} = settle(STIFF, 60, {}, parabola(-1.5));
    expect(averageIn).toBeCloseTo(2 + 1, 9);
    expect(extra.endPsf).toBeCloseTo(0, 9);
    expect(extra.midspanPsf).toBeCloseTo(1.5 * 12.5, 9);
    // 1/8 less 1/48 is 5/48: five sixths.
    expect(extra.momentPsf).toBeCloseTo((1.5 * 12.5 * 5) / 6, 6);
  });

  test("follows a part of the camber with its surface", () => {
    const half = settle(STIFF, 60, {followShare: 0.5}, parabola(1.5));
    expect(half.averageIn).toBeCloseTo(2.25, 9);
    expect(half.surfaceMidspanIn - half.surfaceEndIn).toBeCloseTo(0.75, 9);
    const all = settle(UP, 60, {followShare: 1});
    expect(all.greatestIn).toBeCloseTo(2, 12);
    expect(all.extra.averagePsf).toBeCloseTo(0, 9);
    // A layer of one thickness is what the camber itself reckons with.
    const plain = camber(UP, 60, 100);
    expect(all.camber.toppingIn / plain.toppingIn).toBeCloseTo(1, 6);
    expect(all.camber.longTermIn).toBeCloseTo(plain.longTermIn, 6);
  });

  test("takes another least thickness than the member's", () => {
    expect(settle(STIFF, 60, {leastIn: 3}, parabola(1.5)).averageIn).toBeCloseTo(3.5, 9);
    const thick = settle(UP, 60, {leastIn: 4, followShare: 1});
    expect(thick.camber.toppingIn / -sag(2 * UP.toppingWeightPlf, 720, UP.modulusKsi, UP.section.inertiaIn4)).toBeCloseTo(1, 6);
  });

  test.each([["that stands up", UP, 60], ["that sags", DOWN, 60], ["of planks", memberWith("4HC8", "76-S", {toppingIn: 2}), 32]] as const)(
    "agrees with itself to a thousandth, over a deck %s", (_, member, spanFt) => {
      const result = settle(member, spanFt);
      expect(result.settled).toBe(true);
      expect(result.passes).toBeGreaterThan(1);
      const thicknessIn = result.points.map((point) => point.thicknessIn);
      // The bare camber less the sag of this very topping, reckoned afresh, is where the member's top lies.
      const bareIn = camber(member, spanFt, 100).erectionIn;
      const riseIn = bareIn - sagByIntegration(thicknessIn, member, spanFt * 12);
      expect(Math.abs((result.points[40]?.riseIn as number) - riseIn)).toBeLessThan(0.001 * result.greatestIn);
      expect(result.camber.toppedIn).toBeCloseTo(result.points[40]?.riseIn as number, 9);
      expect(result.leastIn).toBeCloseTo(member.topping?.thicknessIn as number, 9);
      for (const point of result.points) expect(point.riseIn + point.thicknessIn).toBeCloseTo(result.surfaceEndIn, 9);
    });

  test.each([
    ["straight", "10DT32", "128-S"], ["depressed at one point", "12DT32", "128-D1"],
  ])("begins, with strands %s, from what exact integrals give under the least thickness", (_, designation, pattern) => {
    const member = memberWith(designation, pattern, {toppingIn: 2});
    const c = camber(member, 60, 100);
    // A parabola's mean is 2/3 of its rise; what rises straight to midspan bends a curve with mean 5/96 of midspan value
    // 1/12; the shape of a uniform load's sag has 16/25 of its own.
    const endIn = member.section.ybIn - member.layout.centroidEndIn;
    const riseIn = member.layout.centroidEndIn - member.layout.centroidCenterIn;
    const share = (endIn / 12 + riseIn * (5 / 96)) / (endIn / 8 + riseIn / 12);
    const mean = 1.8 * c.prestressIn * share + (1.85 * c.selfIn + c.toppingIn) * (16 / 25);
    const first = settle(member, 60).rounds[0];
    expect(first?.averageIn).toBeCloseTo(2 + c.toppedIn - mean, 6);
    expect(first?.midspanRiseIn).toBeCloseTo(c.toppedIn, 6);
  });

  test("tells each round, the last as it came to lie", () => {
    const {rounds, passes, averageIn, greatestIn, points} = settle(DOWN, 60, {toleranceShare: 1e-6});
    expect(rounds).toHaveLength(Math.min(9, passes + 1));
    expect(settle(UP, 60).rounds.at(-1)).toEqual({averageIn: settle(UP, 60).averageIn, greatestIn: settle(UP, 60).greatestIn, midspanRiseIn: settle(UP, 60).points[40]?.riseIn});
    const averages = [...rounds.map((round) => round.averageIn), averageIn];
    for (let i = 1; i + 1 < rounds.length; i++) {
      expect(Math.abs((averages[i + 1] as number) - (averages[i] as number))).toBeLessThan(Math.abs((averages[i] as number) - (averages[i - 1] as number)));
    }
    expect([greatestIn, points.length]).toEqual([expect.any(Number), 81]);
  });

  test("takes a little camber away where the extra lies at the ends, and much where the member sags", () => {
    // The first round counts the least thickness alone as weight.
    const plain = (member: Member) => settle(member, 60).rounds[0]?.averageIn as number;
    const up = settle(UP, 60);
    expect(up.averageIn).toBeLessThan(plain(UP));
    expect(up.averageIn).toBeGreaterThan(0.99 * plain(UP));
    expect(up.extra.momentPsf).toBeLessThan(0.5 * up.extra.averagePsf);
    expect(settle(DOWN, 60).averageIn).toBeGreaterThan(1.05 * plain(DOWN));
  });

  test("hands its true weight on to the years", () => {
    const plain = camber(UP, 60, 100);
    const {camber: settled, extra} = settle(UP, 60, {toleranceShare: 1e-9});
    expect(settled.toppingIn).toBeCloseTo(plain.toppingIn - extra.sagIn, 6);
    expect(settled.longTermIn).toBeCloseTo(plain.longTermIn - 2.3 * extra.sagIn, 5);
    expect(withTopping(plain, plain.toppingIn)).toEqual({...plain, longTermIn: expect.closeTo(plain.longTermIn, 12)});
  });

  test("says so where a slender member has no end to it", () => {
    const soft = memberWith("4HC6", "66-S", {toppingIn: 2});
    const result = settle(soft, 45);
    // Only the first round is told of: further ones lead nowhere.
    expect(result).toMatchObject({settled: false, passes: 0});
    expect(result.rounds).toHaveLength(1);
    expect(result.checks[0]?.verdict).toBe("fails");
    for (const point of result.points) expect(Number.isFinite(point.thicknessIn)).toBe(true);
    expect(settle(UP, 60).checks[0]?.verdict).toBe("ok");
    expect(settle(soft, 20).checks[0]?.verdict).toBe("ok");
  });

  test("refuses a finish that is none", () => {
    refused(() => settle(UP, 60, {leastIn: 0}), {path: "leastIn"});
    refused(() => settle(UP, 60, {followShare: 1.2}), {path: "followShare", allowed: "0 to 1"});
    refused(() => settle(UP, 60, {toleranceShare: 0}), {path: "toleranceShare"});
  });

  test("lies on the same curve as the camber before it was cast", () => {
    const result = settle(STIFF, 60, {}, camber(UP, 60, 100));
    const curve = camberCurve(UP, camber(UP, 60, 100), 81);
    for (const [i, point] of result.points.entries()) expect(point.riseIn).toBeCloseTo(curve[i]?.erectionIn as number, 9);
  });
});

describe("a deck near the end of what wet topping may weigh", () => {
  const flexible = () => memberWith("8DT18", "68-S", {toppingIn: 3});
  const ratioAt = (spanFt: number) => {
    const {topping, modulusKsi, section, topping: {widthIn} = {widthIn: 0}} = flexible();
    return fillRatio(topping?.concrete.unitWeightPcf as number, widthIn, spanFt, modulusKsi, section.inertiaIn4);
  };

  test("is settled only when all that is still to come is less than the agreement asked", () => {
    // The sag that is left after a round is that of the round, times C / (1 - C): from the span of C = 0.8 on more than four times.
    let spanFt = 40;
    while (ratioAt(spanFt) < 0.8) spanFt += 0.1;
    const [rough, fine] = [settle(flexible(), spanFt, {toleranceShare: 0.001}), settle(flexible(), spanFt, {toleranceShare: 1e-10})];
    expect([rough.settled, fine.settled]).toEqual([true, true]);
    expect(Math.abs(rough.greatestIn / fine.greatestIn - 1)).toBeLessThan(0.001);
    expect(rough.greatestIn).not.toBe(fine.greatestIn);
  });

  test("goes on for as many rounds as that takes, and for no more", () => {
    // Of a deck that sags the middle changes most from round to round, and has the greatest thickness.
    for (const [spanFt, toleranceShare] of [[56, 0.013], [56, 0.02], [56, 0.01], [56, 0.001], [52, 0.001]] as const) {
      const {rounds, passes, greatestIn} = settle(flexible(), spanFt, {toleranceShare});
      expect(rounds).toHaveLength(passes + 1);
      const change = (at: number) => Math.abs((rounds[at]?.greatestIn as number) - (rounds[at - 1]?.greatestIn as number));
      const enough = (at: number) => toleranceShare * (1 - ratioAt(spanFt)) * (rounds[at]?.greatestIn as number);
      expect(greatestIn).toBe(rounds[passes]?.greatestIn);
      expect(change(passes)).toBeLessThanOrEqual(enough(passes));
      expect(change(passes - 1)).toBeGreaterThan(enough(passes - 1));
    }
  });

  test("settles at once under a surface that follows its camber, however soft it is", () => {
    let spanFt = 40;
    while (ratioAt(spanFt) < 1.05) spanFt += 0.5;
    expect(settle(flexible(), spanFt).settled).toBe(false);
    expect(settle(flexible(), spanFt, {followShare: 1})).toMatchObject({settled: true, greatestIn: expect.closeTo(3, 9)});
    // Half of it followed, half of the sag is filled.
    expect(settle(flexible(), spanFt, {followShare: 0.5}).settled).toBe(true);
  });
});

test("a topping on another grid with the same span is the one that settles there", () => {
  const other = {spanFt: 60, beamSpanFt: 24.5, baysAlong: 7, baysAcross: 1};
  expect(onGrid(settle(UP, 60), other)).toEqual(settleTopping(UP, camber(UP, 60, 100), other));
  expect(onGrid(settle(UP, 60), other)).not.toEqual(settle(UP, 60));
});
