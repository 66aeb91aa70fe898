import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {hasPanels} from "../../lib/design/used.js";
import {InputError} from "../../lib/errors.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import {columnCounts} from "../../lib/schemes/measures/columnAmounts.js";
import {ownFootingKip} from "../../lib/schemes/measures/deadLoad.js";
import {MEASURE_LIST} from "../../lib/schemes/measures/measureList.js";
import {catalog} from "../support/designs.js";
import {fittingDesign, hold} from "../properties/arbitrary.js";

const BY = {factors: catalog.carbonFactors, prices: {deckPerYd3: 500}};

/** The floor of a design, or undefined where its parts do not fit each other. */
function floorOrRefusal(design: Design) {
  try {
    return evaluate(design, catalog);
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

describe("whatever a design is", () => {
  test("its measures are finite numbers or undefined with the columns, and its dead load is that of all feet by the take-down", () => {
    let [counted, sized] = [0, 0];
    hold(40, fc.property(fittingDesign, (design) => {
      const floor = floorOrRefusal(design);
      if (!floor) return;
      counted++;
      const columns = columnsOf(floor, catalog);
      const m = measuresOf(floor, columns, BY);
      for (const {key, needsColumns, group} of MEASURE_LIST) {
        const value = m[key];
        if (value === undefined) expect(needsColumns || group === "cost" || group === "limits" || key === "parkingFt2PerStall", key).toBe(true);
        // A story that is too low has a ceiling below its floor, and a bay narrower than its columns nothing clear.
        else expect(Number.isFinite(value) && (value >= -1e-9 || key === "ceilingFt" || group === "columns"), `${key}: ${value}`).toBe(true);
      }
      const {goodDaylightPercent, daylitPercent, noSkyPercent} = m;
      expect(goodDaylightPercent).toBeLessThanOrEqual(daylitPercent + 1e-9);
      expect(Math.max(daylitPercent, noSkyPercent)).toBeLessThanOrEqual(100 + 1e-9);
      const overs = [m.overWidthWithoutColumnsPieces, m.overHeightWithoutColumnsPieces, m.overLengthWithoutColumnsPieces, m.overWeightWithoutColumnsPieces];
      expect(m.permitWithoutColumnsPieces).toBeGreaterThanOrEqual(Math.max(...overs));
      expect(m.permitWithoutColumnsPieces).toBeLessThanOrEqual(Math.min(m.piecesWithoutColumns, overs.reduce((sum, over) => sum + over, 0)));
      expect(m.truckloadsWithoutColumns).toBeLessThanOrEqual(m.piecesWithoutColumns);
      if (m.deadKip === undefined) return;
      sized++;
      const counts = columnCounts(design);
      const kip = columns.columns.reduce((sum, {position, foot}) => sum + counts[position] * foot.deadKip, ownFootingKip(floor));
      expect((m.deadKip - kip) / kip).toBeCloseTo(0, 9);
    }));
    expect(counted).toBeGreaterThan(25);
    expect(sized).toBeGreaterThan(5);
  });

  test("each floor more brings the same, and what a square foot of floor takes of deck and beams stays", () => {
    hold(15, fc.property(fittingDesign, (design) => {
      const of = (floors: number) => {
        const floor = floorOrRefusal(withValues(design, {"bay.floors": floors}));
        return floor && measuresOf(floor, undefined, BY);
      };
      const [one, two, four] = [of(2), of(4), of(6)];
      if (!one || !two || !four) return;
      for (const key of ["deckConcreteFt3PerFt2", "toppingConcreteFt3PerFt2", "edgeBeamsCarbonKgPerFt2", "girdersBarsLbPerFt2", "deckStrandLbPerFt2"] as const) {
        expect(two[key]).toBeCloseTo(one[key], 9);
      }
      // Panels of several stories have a joint to each tier, not to each story.
      const even = hasPanels(design) ? [] : ["concreteWithoutColumnsFt3PerFt2", "carbonWithoutColumnsKgPerFt2"] as const;
      for (const key of [...even, "deadWithoutColumnsPsf"] as const) {
        const whole = [one, two, four].map((m) => m[key] * m.floorFt2) as [number, number, number];
        expect((whole[2] - whole[1]) / whole[2]).toBeCloseTo((whole[1] - whole[0]) / whole[2], 9);
      }
      expect(two.floorFt2).toBe(2 * one.floorFt2);
      expect([two.columnsPer1000Ft2, two.clearAcrossFt, two.goodDaylightPercent, two.parkingStalls]).toEqual([one.columnsPer1000Ft2, one.clearAcrossFt, one.goodDaylightPercent, one.parkingStalls]);
    }));
  });

  test("all columns of a kind are counted: together as many as the grid has crossings", () => {
    hold(100, fc.property(fc.integer({min: 1, max: 30}), fc.integer({min: 1, max: 10}), (baysAlong, baysAcross) => {
      const counts = Object.values(columnCounts({bay: {spanFt: 30, beamSpanFt: 30, baysAlong, baysAcross, floors: 1}}));
      expect(counts.reduce((sum, count) => sum + count, 0)).toBe((baysAlong + 1) * (baysAcross + 1));
    }));
  });
});
