import {describe, expect, it} from "vitest";
import {shrinkageStrain, timeModel} from "../../lib/materials/timeModel.js";
import {creepCoefficient} from "../support/creep.js";

describe("creep and shrinkage of ACI 209R-92", () => {
  const model = timeModel(1.5, 70);

  it("start from nothing and approach their ultimate values", () => {
    expect(creepCoefficient(model, 1, 1)).toBe(0);
    expect(shrinkageStrain(model, 0)).toBe(0);
    expect(shrinkageStrain(model, 1e9)).toBeCloseTo(model.shrinkage, 6);
    expect(creepCoefficient(model, 1e12, 1)).toBeCloseTo(model.creep * 1.13, 2);
  });
  // By hand, V/S 1.5 in and 70 %: 2.35 (1.27 - 0.469) (2/3)(1 + 1.13 exp(-0.81)) = 2.35 x 0.801 x 1.0018 = 1.886.
  it("give a creep coefficient of 1.886 for an inch and a half of V/S at 70 %", () => expect(model.creep).toBeCloseTo(1.886, 2));
  // 780e-6 (1.4 - 0.714) 1.2 exp(-0.18) = 780e-6 x 0.686 x 1.0023 = 536e-6.
  it("give a shrinkage of 536 millionths there", () => expect(model.shrinkage * 1e6).toBeCloseTo(536, 0));

  it("count the age at loading: a load at 60 days creeps 0.77 times what one at a day does in the end", () => {
    // 1.13 x 60^-0.094 = 1.13 x 0.6805 = 0.769; at a day 1.13.
    expect(creepCoefficient(model, 1e12, 60) / model.creep).toBeCloseTo(0.769, 2);
  });

  it("are half done with drying after 55 days if steam cured, after 35 if moist cured", () => {
    const moist = timeModel(1.5, 70, "moist");
    expect(shrinkageStrain(model, 55)).toBeCloseTo(model.shrinkage / 2, 12);
    expect(shrinkageStrain(moist, 35)).toBeCloseTo(moist.shrinkage / 2, 12);
    // 1.25 x 28^-0.118 = 1.25 x 0.6749 = 0.844.
    expect(creepCoefficient(moist, 1e12, 28) / moist.creep).toBeCloseTo(0.844, 2);
  });

  it("say what they are and where they are from", () => {
    expect(model.name).toBe("ACI 209R-92, steam cured");
    expect(timeModel(3, 70, "moist").name).toBe("ACI 209R-92, moist cured");
  });

  it("grow as the air gets drier and as the piece gets thinner", () => {
    expect(timeModel(1.5, 50).creep).toBeGreaterThan(model.creep);
    expect(timeModel(1.5, 50).shrinkage).toBeGreaterThan(model.shrinkage);
    expect(timeModel(3, 70).creep).toBeLessThan(model.creep);
    expect(timeModel(3, 70).shrinkage).toBeLessThan(model.shrinkage);
  });
});

describe("shrinkage in damp air", () => {
  // ACI 209R-92 2.5.4 (from memory): 1.40 - 0.0102 h to 80 %, 3.00 - 0.030 h beyond; nothing at 100 %.
  const at = (humidityPercent: number) => timeModel(2, humidityPercent).shrinkage / timeModel(2, 40).shrinkage;

  it("falls three times as fast with humidity beyond 80 % as before, and ends where air is full of water", () => {
    expect(at(80)).toBeCloseTo(0.584 / 0.992, 9);
    expect(at(81)).toBeCloseTo(0.57 / 0.992, 9);
    expect(at(90)).toBeCloseTo(0.3 / 0.992, 9);
    expect(at(100)).toBe(0);
  });
});
