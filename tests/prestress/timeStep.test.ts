import {describe, expect, it} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {patternMember} from "../../lib/deck/table.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {STRAND_MODULUS_KSI} from "../../lib/materials/strand.js";
import {USUAL_SCHEDULE, creepCoefficient, shrinkageStrain, timeModel, timeStepLosses} from "../../lib/prestress/timeStep.js";
import {catalogue} from "../support/designs.js";

const ORDINARY = [
  ["10DT24", "88-S", 50, 0], ["10DT24", "88-S", 50, 2], ["10DT32", "128-S", 60, 2],
  ["12DT34", "168-S", 60, 0], ["4HC8", "66-S", 24, 0], ["4HC10", "66-S", 30, 2],
] as const;

function member(designation: string, pattern: string, toppingIn: number) {
  return patternMember(catalogue, deckRow(catalogue, designation), pattern, {
    concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn, toppingStrengthPsi: 3000, humidityPercent: 70,
  });
}

describe("losses step by step through time", () => {
  it.each(ORDINARY)("agree with the component method to 3 ksi for %s %s on %d ft, with the same shrinkage", (designation, pattern, spanFt, toppingIn) => {
    const of = member(designation, pattern, toppingIn);
    const deadPlf = 10 * of.widthFt;
    const component = prestressState(of, spanFt, 0.5, deadPlf).losses;
    const model = {...timeModel(of.volumeToSurfaceIn, 70), shrinkage: component.shrinkageKsi / STRAND_MODULUS_KSI};
    const last = timeStepLosses(of, spanFt, 0.5, deadPlf, USUAL_SCHEDULE, model).at(-1);
    expect(Math.abs((last?.stressKsi ?? 0) - component.effectiveStressKsi)).toBeLessThan(3);
  });

  it("leave what the causes have not taken", () => {
    for (const {stressKsi, elasticKsi, creepKsi, shrinkageKsi, relaxationKsi} of timeStepLosses(member("10DT24", "88-S", 2), 50, 0.5, 100)) {
      expect(stressKsi + elasticKsi + creepKsi + shrinkageKsi + relaxationKsi).toBeCloseTo(202.5, 9);
    }
  });

  it("change little when every step is halved by an added event", () => {
    const of = member("10DT24", "88-S", 2);
    const coarse = timeStepLosses(of, 50, 0.5, 100).at(-1)?.stressKsi ?? 0;
    const fine = timeStepLosses(of, 50, 0.5, 100, {...USUAL_SCHEDULE, loadingDay: 90.001}).at(-1)?.stressKsi ?? 0;
    expect(fine).toBeCloseTo(coarse, 2);
  });

  it("never creep where no prestress bends or presses the concrete", () => {
    const history = timeStepLosses(member("10DT24", "88-S", 0), 50, 0.5, 0, USUAL_SCHEDULE, {creep: 0, shrinkage: 0});
    expect(history.at(-1)?.creepKsi).toBe(0);
    expect(history.at(-1)?.shrinkageKsi).toBe(0);
  });
});

describe("creep and shrinkage of ACI 209R-92", () => {
  const model = timeModel(1.5, 70);
  it("start from nothing and approach their ultimate values", () => {
    expect(creepCoefficient(model, 1, 1)).toBe(0);
    expect(shrinkageStrain(model, 0.75, 0.75)).toBe(0);
    expect(shrinkageStrain(model, 1e9, 0.75)).toBeCloseTo(model.shrinkage, 6);
    expect(creepCoefficient(model, 1e12, 1)).toBeCloseTo(model.creep * 1.13, 2);
  });
  // By hand, V/S 1.5 in and 70 %: 2.35 (1.27 - 0.469) (2/3)(1 + 1.13 exp(-0.81)) = 2.35 x 0.801 x 1.0018 = 1.886.
  it("give a creep coefficient of 1.886 for an inch and a half of V/S at 70 %", () => expect(model.creep).toBeCloseTo(1.886, 2));
  // 780e-6 (1.4 - 0.714) 1.2 exp(-0.18) = 780e-6 x 0.686 x 1.0023 = 536e-6.
  it("give a shrinkage of 536 millionths there", () => expect(model.shrinkage * 1e6).toBeCloseTo(536, 0));
});
