import {describe, expect, test} from "vitest";
import {MOST_KG_PER_UNIT, carbonFactorName, carbonKgPerLb, concreteCarbonKgPerFt3, withOwnFactors, type CarbonFactor} from "../../lib/materials/carbon.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const factors = catalog.carbonFactors;
const point = (strengthPsi: number, kgPerUnit: number): CarbonFactor => ({
  id: `at-${strengthPsi}`, material: "concrete", concrete: {place: "precast", kind: "normalweight", strengthPsi}, unit: "yd3", kgPerUnit,
  stage: "A1-A3", source: "a test", date: "2020", confidence: "worked out",
});
/** 270 kg at 4000 psi, 297 at 5000, 351 at 6000; out of order, as a table may be. */
const THREE = [point(6000, 351), point(4000, 270), point(5000, 297)];
const precast = (strengthPsi: number) => concreteCarbonKgPerFt3(THREE, "precast", "normalweight", strengthPsi);

describe("the carbon of a concrete", () => {
  test("is the table's at the table's strengths, a cubic yard being 27 cubic feet", () => {
    expect(precast(4000)).toBeCloseTo(10, 12);
    expect(precast(5000)).toBeCloseTo(11, 12);
    expect(precast(6000)).toBeCloseTo(13, 12);
  });

  test("runs straight between them, and on past both ends, but not below nothing", () => {
    expect(precast(4500)).toBeCloseTo(10.5, 12);
    expect(precast(5750)).toBeCloseTo(12.5, 12);
    expect(precast(3000)).toBeCloseTo(9, 12);
    expect(precast(8000)).toBeCloseTo(17, 12);
    expect(concreteCarbonKgPerFt3([point(4000, 27), point(5000, 270)], "precast", "normalweight", 3000)).toBe(0);
  });

  test("is refused where the table has too little to draw a line", () => {
    refused(() => concreteCarbonKgPerFt3([point(4000, 270)], "precast", "normalweight", 4000), {path: "carbon", value: "normalweight concrete, precast"});
    refused(() => concreteCarbonKgPerFt3(THREE, "precast", "sand-lightweight", 4000), {allowed: "two strengths or more"});
  });
});

describe("the table", () => {
  test.each(["precast", "cast on site"] as const)("has more carbon for a stronger or a lightweight concrete, %s", (place) => {
    for (let psi = 3000; psi < 8000; psi += 250) {
      for (const kind of ["normalweight", "sand-lightweight"] as const) {
        expect(concreteCarbonKgPerFt3(factors, place, kind, psi + 250), `${kind} ${psi}`).toBeGreaterThan(concreteCarbonKgPerFt3(factors, place, kind, psi));
      }
      expect(concreteCarbonKgPerFt3(factors, place, "sand-lightweight", psi)).toBeGreaterThan(concreteCarbonKgPerFt3(factors, place, "normalweight", psi));
    }
  });

  test("adds 30 % for early strength to the normalweight that it takes from the same source", () => {
    for (const psi of [3000, 4000, 5000, 6000, 8000]) {
      const ratio = concreteCarbonKgPerFt3(factors, "precast", "normalweight", psi) / concreteCarbonKgPerFt3(factors, "cast on site", "normalweight", psi);
      expect(ratio, String(psi)).toBeCloseTo(1.3, 3);
    }
  });

  test("is its source's values in cubic yards and pounds", () => {
    const yd3 = (kgPerM3: number) => kgPerM3 * 0.9144 ** 3 / 27;
    for (const [psi, kgPerM3] of [[2500, 277], [3000, 318], [4000, 352], [5000, 382], [6000, 407]] as const) {
      expect(concreteCarbonKgPerFt3(factors, "cast on site", "normalweight", psi)).toBeCloseTo(yd3(kgPerM3), 2);
    }
    expect(carbonKgPerLb(factors, "plant work")).toBeCloseTo(29.8 * 0.45359237 / 1000, 4);
    expect(carbonKgPerLb(factors, "reinforcing bars")).toBeCloseTo(854 * 0.45359237 / 1000, 3);
    expect(carbonKgPerLb(factors, "strand")).toBeCloseTo(2 * 854 * 0.45359237 / 1000, 3);
  });

  test("says which material it lacks", () => {
    refused(() => carbonKgPerLb(THREE, "strand"), {path: "carbon", value: "strand", allowed: "a row for it"});
  });
});

describe("a reader's own factors", () => {
  test("take the place of the table's by their id, and of no others", () => {
    const own = withOwnFactors(factors, {"strand": 1.5, "no-such-row": 3});
    expect(carbonKgPerLb(own, "strand")).toBe(1.5);
    expect(own.filter((factor, i) => factor !== factors[i]).map(({id}) => id)).toEqual(["strand"]);
  });

  test("are refused by name where they cannot be", () => {
    refused(() => withOwnFactors(factors, {"plant-nw-5000": -1}), {path: "plant-nw-5000", value: -1,
      message: /^precast concrete, normalweight, 5,000 psi: -1 kgCO2e per yd3 is not possible \(0 to/});
    refused(() => withOwnFactors(factors, {strand: MOST_KG_PER_UNIT + 1}), {path: "strand"});
    refused(() => withOwnFactors(factors, {strand: NaN}), {path: "strand"});
  });
});

test("a factor has a name in words", () => {
  expect(factors.map(carbonFactorName)).toContain("concrete cast on site, sand-lightweight, 4,000 psi");
  expect(factors.map(carbonFactorName)).toContain("plant work");
  expect(new Set(factors.map(carbonFactorName)).size).toBe(factors.length);
});
