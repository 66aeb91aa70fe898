import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import type {Member} from "../../lib/member/member.js";
import {placesFt, strengthAlong, stressesAlong} from "../../lib/report/alongSpan.js";
import {memberWith} from "../support/members.js";

describe("the places along a span", () => {
  test("are its twentieths from end to end, and where the transfer length ends on either side", () => {
    expect(placesFt(40, 0)).toEqual(Array.from({length: 21}, (_, i) => 2 * i));
    expect(placesFt(40, 30)).toEqual([0, 2, 2.5, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 34, 36, 37.5, 38, 40]);
  });

  test("are no more than the twentieths where the strands take hold at one of them, or not before midspan", () => {
    expect(placesFt(40, 24)).toHaveLength(21);
    expect(placesFt(10, 60)).toHaveLength(21);
    expect(placesFt(10, 61)).toHaveLength(21);
    expect(placesFt(10, 59)).toHaveLength(23);
  });
});

const criteria = {...handbookCriteria(true), superimposedDeadPsf: 10, sustainedLiveShare: 0.5};
const along = (member: Member) => {
  const state = deckState(member, 40, criteria, 60);
  return {state, stresses: stressesAlong(member, 40, state), strength: strengthAlong(member, 40, state)};
};
const bare = () => ({member: memberWith("10DT24", "88-S"), ...along(memberWith("10DT24", "88-S"))});

describe("stresses along a tee of straight strands, 40 ft long", () => {
  test("at midspan as the strands are cut are force, eccentricity and own weight over the section", () => {
    const {member: {section, selfWeightPlf, layout}, stresses} = bare();
    const middle = stresses.find(({xFt}) => xFt === 20);
    // Eight half-inch strands and w L^2/8 of the tee alone.
    const forceKip = middle?.forceAtTransferKip ?? NaN;
    const momentKipIn = ((selfWeightPlf * 40 ** 2) / 8) * (12 / 1000);
    const eccentricKipIn = forceKip * (section.ybIn - layout.centroidCenterIn);
    expect(middle?.bottomAtTransferKsi).toBeCloseTo(forceKip / section.areaIn2 + (eccentricKipIn - momentKipIn) / section.sbIn3, 6);
    expect(middle?.topAtTransferKsi).toBeCloseTo(forceKip / section.areaIn2 - (eccentricKipIn - momentKipIn) / section.stIn3, 6);
  });

  test("in service fall at the soffit by the moment of what is added: half of the live load takes half of it", () => {
    const {member: {section, widthFt}, stresses} = bare();
    const middle = stresses.find(({xFt}) => xFt === 20);
    const liveKipIn = ((60 * widthFt * 40 ** 2) / 8) * (12 / 1000);
    const [dead, sustained, service] = [middle?.bottomDeadKsi ?? NaN, middle?.bottomSustainedKsi ?? NaN, middle?.bottomServiceKsi ?? NaN];
    expect(dead - service).toBeCloseTo(liveKipIn / section.sbIn3, 6);
    expect(dead - sustained).toBeCloseTo(liveKipIn / section.sbIn3 / 2, 6);
    expect((middle?.topServiceKsi ?? NaN) - (middle?.topDeadKsi ?? NaN)).toBeCloseTo(liveKipIn / section.stIn3, 6);
  });

  test("have as much of the force as of the transfer length lies behind: f_se d_b/3 of it", () => {
    const {stresses} = bare();
    const [first, held] = [stresses.find(({xFt}) => xFt === 2), stresses.find(({xFt}) => xFt === 4)];
    // Eight strands of 0.153 in2 and half an inch; the first twentieth of the span is 24 in.
    const transferIn = ((held?.effectiveForceKip ?? NaN) / (8 * 0.153)) * (0.5 / 3);
    expect(transferIn).toBeGreaterThan(24);
    const share = (first?.effectiveForceKip ?? NaN) / (held?.effectiveForceKip ?? NaN);
    expect(Math.abs(share - 24 / transferIn)).toBeLessThan(0.02);
  });

  test("are reported a topping's top where one is cast, and only there", () => {
    const topped = along(memberWith("10DT24", "88-S", {toppingIn: 2})).stresses;
    expect(topped.find(({xFt}) => xFt === 20)?.toppingTopServiceKsi).toBeGreaterThan(0);
    expect(bare().stresses.every((one) => !("toppingTopServiceKsi" in one))).toBe(true);
  });
});

describe("strength along a tee", () => {
  test("leaves out the very ends, where no strand is held", () => {
    const {strength} = bare();
    expect(strength[0]?.xFt).toBeGreaterThan(0);
    expect(strength.at(-1)?.xFt).toBeLessThan(40);
  });

  test("asks for w L/2 less the load up to each place in shear, and for w x (L - x)/2 in bending", () => {
    const {strength, state, member} = bare();
    const plf = state.factoredPsf * member.widthFt;
    for (const {xFt, factoredShearKip, factoredMomentKipIn} of strength) {
      expect(factoredShearKip).toBeCloseTo((plf * Math.abs(20 - xFt)) / 1000, 9);
      expect(factoredMomentKipIn).toBeCloseTo(((plf * xFt * (40 - xFt)) / 2) * (12 / 1000), 6);
    }
  });

  test("carries of both kinds of shear strength the lesser", () => {
    for (const {flexureShearKip, webShearKip, concreteShearKip} of bare().strength) expect(concreteShearKip).toBeCloseTo(Math.min(flexureShearKip, webShearKip), 9);
  });
});
