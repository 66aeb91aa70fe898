import {describe, expect, test} from "vitest";
import {ownPsf, withExtraTopping} from "../../lib/member/member.js";
import {memberWith} from "../support/members.js";
import {refused} from "../support/errors.js";

describe("makeMember", () => {
  test("weighs what its section weighs", () => {
    // 449 in2 * 150 / 144 = 467.7 plf; in 115 pcf concrete 358.6 plf.
    expect(memberWith("10DT24", "68-S").selfWeightPlf).toBeCloseTo(467.708, 3);
    expect(memberWith("10DT24", "68-S", {concreteKind: "sand-lightweight"}).selfWeightPlf).toBeCloseTo(358.576, 3);
    expect(memberWith("10DT24", "68-S").widthFt).toBe(10);
  });

  test("carries a topping over its whole width, in normalweight concrete", () => {
    // 2 * 120 * 150 / 144 = 250 plf.
    const topped = memberWith("10DT24", "68-S", {toppingIn: 2, concreteKind: "sand-lightweight"});
    expect(topped.toppingWeightPlf).toBeCloseTo(250, 9);
    expect(topped.topping).toMatchObject({thicknessIn: 2, widthIn: 120, concrete: {kind: "normalweight", strengthPsi: 3000}});
    expect(topped.full).toBe(topped.composite);
    expect(topped.compression.depthIn).toBe(26);
  });

  test("without topping is the precast section alone", () => {
    const bare = memberWith("10DT24", "68-S");
    expect(bare).toMatchObject({topping: undefined, composite: undefined, toppingWeightPlf: 0});
    expect(bare.full).toBe(bare.section);
    expect(bare.compression.depthIn).toBe(24);
  });

  test("has a modulus for each age", () => {
    // 60,624.9 sqrt(3,500) = 3,586.6 ksi at release.
    const member = memberWith("10DT24", "68-S");
    expect(member.modulusKsi).toBeCloseTo(4286.83, 1);
    expect(member.releaseModulusKsi).toBeCloseTo(3586.6, 1);
  });

  test("refuses strengths, thickness and humidity out of range", () => {
    refused(() => memberWith("10DT24", "68-S", {strengthPsi: 2999}), {path: "strengthPsi"});
    refused(() => memberWith("10DT24", "68-S", {strengthPsi: 12001}), {path: "strengthPsi"});
    refused(() => memberWith("10DT24", "68-S", {toppingIn: -0.5}), {path: "toppingIn"});
    refused(() => memberWith("10DT24", "68-S", {toppingIn: 6.5}), {path: "toppingIn"});
    refused(() => memberWith("10DT24", "68-S", {toppingStrengthPsi: 2000}), {path: "toppingStrengthPsi"});
    refused(() => memberWith("10DT24", "68-S", {humidityPercent: 29}), {path: "humidityPercent"});
    refused(() => memberWith("10DT24", "68-S", {humidityPercent: NaN}), {path: "humidityPercent"});
  });

  test("refuses a release strength above the specified one", () => {
    expect(memberWith("10DT24", "68-S", {releaseStrengthPsi: 5000}).releaseStrengthPsi).toBe(5000);
    refused(() => memberWith("10DT24", "68-S", {releaseStrengthPsi: 5100}), {path: "releaseStrengthPsi", allowed: "2500 to 5000 psi"});
  });
});

describe("withExtraTopping", () => {
  test("weighs more by what fills the camber, on the section as it was", () => {
    const member = memberWith("10DT24", "68-S", {toppingIn: 2});
    const heavier = withExtraTopping(member, 6);
    // 6 psf on 10 ft.
    expect(heavier.toppingWeightPlf).toBeCloseTo(250 + 60, 9);
    expect(ownPsf(heavier)).toBeCloseTo((467.708 + 310) / 10, 3);
    expect(heavier).toMatchObject({full: member.full, selfWeightPlf: member.selfWeightPlf});
  });
});
