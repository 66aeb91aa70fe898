import {describe, expect, test} from "vitest";
import {MEASURES, deckCarbon, deckMeasures, measureValues} from "../../lib/deck/measures.js";
import type {CarbonFactor} from "../../lib/materials/carbon.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const common = {stage: "A1-A3", source: "a test", date: "2020", confidence: "worked out"} as const;
const concrete = (place: "precast" | "cast on site", kind: "normalweight" | "sand-lightweight", kgPerFt3: number): CarbonFactor[] =>
  [3000, 6000].map((strengthPsi) => ({...common, id: `${place} ${kind} ${strengthPsi}`, material: "concrete", concrete: {place, kind, strengthPsi}, unit: "yd3", kgPerUnit: 27 * kgPerFt3}));
/** Round factors: 10 kg a cubic foot in the plant, 20 of lightweight, 6 on site, 2 a pound of strand, 0.01 a pound of plant work. */
const ROUND: readonly CarbonFactor[] = [
  ...concrete("precast", "normalweight", 10), ...concrete("precast", "sand-lightweight", 20), ...concrete("cast on site", "normalweight", 6),
  {...common, id: "strand", material: "strand", concrete: undefined, unit: "lb", kgPerUnit: 2},
  {...common, id: "plant", material: "plant work", concrete: undefined, unit: "lb", kgPerUnit: 0.01},
];

describe("a deck's measures", () => {
  test("of a solid slab of 6 in with 3 in of topping and eight 1/2 in strands in four feet, by hand", () => {
    const measures = deckMeasures(memberWith("4FS6", "88-S", {toppingIn: 3}), ROUND);
    expect(measures.depthIn).toBe(9);
    // Nine inches of normalweight concrete: 0.75 ft at 150 pcf.
    expect(measures.weightPsf).toBeCloseTo(112.5, 9);
    expect(measures.concreteFt).toBeCloseTo(0.75, 12);
    // Eight strands of 0.52 lb a foot over four feet.
    expect(measures.strandPsf).toBeCloseTo(1.04, 12);
    // 0.5 ft of 10, 0.25 ft of 6, 1.04 lb of 2, 75 lb of 0.01.
    expect(measures.carbonKgPerFt2).toBeCloseTo(5 + 1.5 + 2.08 + 0.75, 9);
  });

  test("of a lightweight double tee without topping, by hand", () => {
    const member = memberWith("10DT34", "88-S", {concreteKind: "sand-lightweight"});
    const {areaIn2} = member.section;
    const measures = deckMeasures(member, ROUND);
    expect(measures.depthIn).toBe(34);
    expect(measures.concreteFt).toBeCloseTo(areaIn2 / 1440, 12);
    expect(measures.weightPsf).toBeCloseTo((areaIn2 / 1440) * 115, 9);
    expect(measures.strandPsf).toBeCloseTo(0.416, 12);
    expect(deckCarbon(member, ROUND)).toEqual({
      precastConcreteKg: expect.closeTo((areaIn2 / 1440) * 20, 9), toppingKg: 0, strandKg: expect.closeTo(0.832, 9),
      plantWorkKg: expect.closeTo((areaIn2 / 1440) * 1.15, 9), totalKg: measures.carbonKgPerFt2,
    });
  });

  test("are listed in one order, or those that are named", () => {
    const measures = {depthIn: 1, weightPsf: 2, strandPsf: 3, concreteFt: 4, carbonKgPerFt2: 5};
    expect(measureValues(measures)).toEqual([1, 2, 3, 4, 5]);
    expect(measureValues(measures, ["carbonKgPerFt2", "depthIn"])).toEqual([5, 1]);
    expect(MEASURES).toHaveLength(Object.keys(measures).length);
  });

  test("put a precast tee somewhat below the industry's declaration of 300 kg per metric ton, which has bars, mesh and plates in it", () => {
    for (const [designation, pattern] of [["10DT34", "128-S"], ["12DT30", "148-S"], ["4HC8", "76-S"]] as const) {
      const member = memberWith(designation, pattern);
      const tonsPerFt2 = (member.selfWeightPlf / member.widthFt) * 0.45359237 / 1000;
      const kgPerTon = deckCarbon(member, catalog.carbonFactors).totalKg / tonsPerFt2;
      expect(kgPerTon, designation).toBeGreaterThan(220);
      expect(kgPerTon, designation).toBeLessThan(300);
    }
  });
});
