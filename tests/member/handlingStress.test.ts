import {describe, expect, test} from "vitest";
import {handledChecks} from "../../lib/member/handledChecks.js";
import {bearingStrengthKip, bearingWidthIn} from "../../lib/member/endBearing.js";
import {holdDown} from "../../lib/member/holdDown.js";
import {LIFT_SHARE, forceOnRoadKip, handled} from "../../lib/member/stripping.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberWith} from "../support/members.js";

describe("lifting and hauling", () => {
  test("hang the jolted weight near the ends: a cantilever there, a shorter span between", () => {
    const member = memberWith("10DT24", "88-S");
    const {atLift, atMidspan} = handled(member, 50, "stripping");
    const [lift, middle] = [prestressState(member, 50, LIFT_SHARE, 0), prestressState(member, 50, 0.5, 0)];
    const wKipIn = (1.3 * member.selfWeightPlf) / 12000;
    const reachIn = LIFT_SHARE * 600;
    const {areaIn2, stIn3, sbIn3} = member.section;
    const topLift = lift.initialForceKip / areaIn2 - (lift.initialForceKip * lift.eccentricityIn + (wKipIn * reachIn ** 2) / 2) / stIn3;
    const between = (wKipIn * 600 * (600 - 4 * reachIn)) / 8;
    const bottomMiddle = middle.initialForceKip / areaIn2 + (middle.initialForceKip * middle.eccentricityIn - between) / sbIn3;
    expect(atLift.topKsi).toBeCloseTo(topLift, 9);
    expect(atMidspan.bottomKsi).toBeCloseTo(bottomMiddle, 9);
  });
  test("weigh more on the road, on older concrete and strands that have let go", () => {
    const member = memberWith("10DT24", "88-S");
    const [form, road] = [handled(member, 50, "stripping"), handled(member, 50, "hauling")];
    expect(road.allowedCompressionKsi).toBeGreaterThan(form.allowedCompressionKsi);
    expect(road.compressionKsi).toBeLessThan(form.compressionKsi);
  });
});

describe("what the concrete of the day bears", () => {
  test("is 6 sqrt(f'ci) of pull in the form and 5 lambda sqrt(f'c) on the road, the greater pull of the two faces counting", () => {
    const light = memberWith("10DT24", "148-S", {concreteKind: "sand-lightweight"});
    const [form, road] = [handled(light, 30, "stripping"), handled(light, 30, "hauling")];
    expect(form.allowedTensionKsi).toBeCloseTo((6 * Math.sqrt(3500)) / 1000, 12);
    expect(road.allowedTensionKsi).toBeCloseTo((5 * 0.85 * Math.sqrt(5000)) / 1000, 12);
    expect([form.allowedCompressionKsi, road.allowedCompressionKsi]).toEqual([expect.closeTo(0.7 * 3.5, 12), expect.closeTo(3, 12)]);
    expect(form.tensionKsi).toBe(form.topTensionKsi);
    const long = handled(memberWith("10DT34", "208-S"), 89, "hauling");
    expect(long.tensionKsi).toBe(long.soffitTensionKsi);
    expect(long.topTensionKsi).toBeLessThan(long.tensionKsi);
  });
});

describe("hold-downs", () => {
  test("of straight strands there are none", () => expect(holdDown(memberWith("10DT24", "88-S"), 50)).toBeUndefined());
  test("pull both sides of a single point down, and one side of each of two", () => {
    const one = memberWith("12DT32", "128-D1", {endIn: 18, centerIn: 4});
    const two = memberWith("12DT32", "128-D2", {endIn: 18, centerIn: 4});
    // 12 strands at 202.5 ksi: 371.8 kip; slope 14 in 360 in; both sides, shared by two stems.
    const forceKip = 12 * 0.153 * 202.5;
    expect(holdDown(one, 60)).toMatchObject({points: 1});
    expect(holdDown(one, 60)?.forcePerStemKip).toBeCloseTo((2 * forceKip * Math.sin(Math.atan(14 / 360))) / 2, 9);
    expect(holdDown(two, 60)?.forcePerStemKip).toBeCloseTo((forceKip * Math.sin(Math.atan(14 / 288))) / 2, 9);
  });
});

describe("end bearing", () => {
  test("counts the stems at the soffit, or the whole width of a slab", () => {
    expect(bearingWidthIn(memberWith("10DT24", "88-S"))).toBe(7.5);
    expect(bearingWidthIn(memberWith("4HC8", "66-S"))).toBe(48);
  });
  test("is 0.65 of 0.85 f'c on the area", () => {
    expect(bearingStrengthKip(memberWith("10DT24", "88-S"), 6)).toBeCloseTo(0.65 * 0.85 * 5 * 7.5 * 6, 9);
  });
});

describe("the faces of a piece that hangs or rides", () => {
  test("are judged apart: a soffit pulled too far fails, though the top asks for bars that would not help it", () => {
    // 89 ft on twenty strands: too few for so long a piece.
    const state = handled(memberWith("10DT34", "208-S"), 89, "hauling");
    expect(state.soffitTensionKsi).toBeGreaterThan(1.4 * state.allowedTensionKsi);
    expect(state.topTensionKsi).toBeLessThan(state.allowedTensionKsi);
    const [top, soffit] = handledChecks(state);
    expect([top?.verdict, soffit?.verdict]).toEqual(["ok", "fails"]);
  });

  test("a top pulled too far asks for bars that take its pull, and its soffit is well", () => {
    const state = handled(memberWith("10DT24", "148-S", {endIn: 4, centerIn: 4}), 30, "stripping");
    const [top, soffit] = handledChecks(state);
    expect(top?.word).toBe("needs top steel");
    expect(top?.message).toContain(`${state.topSteelIn2.toFixed(2)} in²`);
    expect([top?.demand, soffit?.demand]).toEqual([state.topTensionKsi, 0]);
  });

  test("on the road the top is pulled by what the strands still have at 45 days, about half of the losses gone", () => {
    const member = memberWith("10DT24", "148-S");
    const state = prestressState(member, 30, LIFT_SHARE, 0);
    // 45^0.6 = 9.815, over 19.815.
    expect(forceOnRoadKip(state)).toBeCloseTo(state.initialForceKip - 0.49533 * (state.initialForceKip - state.effectiveForceKip), 2);
    const wKipIn = (1.5 * member.selfWeightPlf) / 12000;
    const {areaIn2, stIn3} = member.section;
    const forceKip = forceOnRoadKip(state);
    const topKsi = forceKip / areaIn2 - (forceKip * state.eccentricityIn + (wKipIn * (LIFT_SHARE * 360) ** 2) / 2) / stIn3;
    const road = handled(member, 30, "hauling");
    expect(road.topTensionKsi).toBeCloseTo(-topKsi, 9);
    // With all losses gone it would look a tenth better.
    const lateKsi = state.effectiveForceKip / areaIn2 - (state.effectiveForceKip * state.eccentricityIn + (wKipIn * (LIFT_SHARE * 360) ** 2) / 2) / stIn3;
    expect(topKsi / lateKsi).toBeGreaterThan(1.05);
  });

  test("its soffit is pulled, on the road, as if all losses had happened", () => {
    const member = memberWith("10DT34", "208-S");
    const state = prestressState(member, 89, 0.5, 0);
    const spanIn = 89 * 12;
    const momentKipIn = (1.5 * member.selfWeightPlf * spanIn ** 2 * (1 - 4 * LIFT_SHARE)) / 8 / 12000;
    const {areaIn2, sbIn3} = member.section;
    const bottomKsi = state.effectiveForceKip / areaIn2 + (state.effectiveForceKip * state.eccentricityIn - momentKipIn) / sbIn3;
    expect(handled(member, 89, "hauling").soffitTensionKsi).toBeCloseTo(-bottomKsi, 9);
  });

  test("strands held down at two points pull the top most there, not at the lifting points", () => {
    const member = memberWith("12DT32", "208-D2", {endIn: 22, centerIn: 4});
    const state = prestressState(member, 40, 0.4, 0);
    const spanIn = 480;
    const w = (1.3 * member.selfWeightPlf) / 12000;
    // w l/2 (x - a) - w x^2/2 at x = 0.4 l.
    const momentKipIn = (w * spanIn ** 2 * (0.4 - LIFT_SHARE)) / 2 - (w * (0.4 * spanIn) ** 2) / 2;
    const topKsi = state.initialForceKip / member.section.areaIn2 - (state.initialForceKip * state.eccentricityIn - momentKipIn) / member.section.stIn3;
    const {topTensionKsi, atLift} = handled(member, 40, "stripping");
    expect(atLift.topKsi).toBeGreaterThan(0);
    expect(topTensionKsi).toBeCloseTo(-topKsi, 9);
  });
});
