import {describe, expect, test} from "vitest";
import type {Check} from "../lib/checks.js";
import {withValues} from "../lib/design/edit.js";
import {candidates, columnsOf, demandOf, evaluate, framingOf, peopleWork} from "../lib/evaluate.js";
import {catalog, seed, seeds} from "./support/designs.js";
import {refused} from "./support/errors.js";

describe("evaluate", () => {
  test("leaves the design as it was and returns it", () => {
    for (const {design} of seeds) {
      const before = structuredClone(design);
      expect(evaluate(design, catalog).design).toBe(design);
      expect(design).toEqual(before);
    }
  });

  test("gives the same results for the same design", () => {
    const design = seed("branch-library");
    expect(JSON.stringify(evaluate(design, catalog))).toBe(JSON.stringify(evaluate(structuredClone(design), catalog)));
  });

  test("gathers every check of every part under the worst verdict, each with a name of its own", () => {
    for (const {design} of seeds) {
      const {checks, verdict, ...parts} = evaluate(design, catalog);
      const all = Object.values(parts).flatMap((part): readonly Check[] => (part && "checks" in part ? part.checks : []));
      expect(all.length).toBeGreaterThan(20);
      expect(new Set(checks)).toEqual(new Set(all));
      expect(checks).toHaveLength(all.length);
      expect(new Set(checks.map((check) => check.id)).size).toBe(checks.length);
      expect(verdict === "fails").toBe(checks.some((check) => check.verdict === "fails"));
    }
  });

  test("finds no check that fails in the starter designs", () => {
    for (const {id, design} of seeds) {
      expect(evaluate(design, catalog).checks.filter((check) => check.verdict === "fails").map((check) => check.id), id).toEqual([]);
    }
  });

  test("has a topping only where the deck has one", () => {
    expect(evaluate(seed("parking-structure"), catalog).topping).toBeUndefined();
    expect(evaluate(seed("parking-structure"), catalog).joint).toBeDefined();
    expect(evaluate(seed("branch-library"), catalog).topping).toBeDefined();
    expect(evaluate(seed("branch-library"), catalog).joint).toBeUndefined();
  });

  test("refuses parts that do not fit each other", () => {
    refused(() => evaluate(withValues(seed("classroom-wing"), {"deck.pattern": "76-D1"}), catalog), {path: "deck.pattern"});
  });
});

describe("demandOf", () => {
  test("asks of a wider member less where its area allows a reduction", () => {
    const design = withValues(seed("branch-library"), {"loads.rooms": [{name: "Desks", occupancy: "office"}], "bay.spanFt": 60});
    const demand = demandOf(design, catalog, evaluate(design, catalog).loads);
    // 4 ft * 60 = 240 ft2: all of 50 psf; 15 ft * 60 = 900: 0.25 + 15/30 = 0.75. Layers 10, partitions 15.
    expect(demand.demandPsf(4)).toBe(75);
    expect(demand.demandPsf(15)).toBeCloseTo(62.5, 12);
    expect(demand.demandPsf(15)).toBe(demand.demandPsf(15));
  });
});

describe("what is worked out once", () => {
  test("is the result of one design with one catalog: another of either is worked out anew", () => {
    const design = structuredClone(seed("classroom-wing"));
    expect(evaluate(design, catalog)).toBe(evaluate(design, catalog));
    expect(evaluate(structuredClone(design), catalog)).not.toBe(evaluate(design, catalog));
    const other = {...catalog};
    expect(evaluate(design, other)).not.toBe(evaluate(design, catalog));
  });
});

describe("people", () => {
  test("work in any room that is neither for cars nor for goods", () => {
    const works = (...occupancies: string[]) => peopleWork(evaluate(withValues(seed("records-store"), {"loads.rooms": occupancies.map((occupancy) => ({name: occupancy, occupancy}))}), catalog).loads);
    expect(works("garage")).toBe(false);
    expect(works("storage-heavy")).toBe(false);
    expect(works("garage", "storage-light")).toBe(false);
    expect(works("office")).toBe(true);
    expect(works("storage-heavy", "office")).toBe(true);
  });
});

describe("columns and candidates", () => {
  test("stand beside the pipeline: columns under the deck with all that fills its camber", () => {
    const evaluation = evaluate(seed("branch-library"), catalog);
    expect(framingOf(evaluation)).toEqual({design: evaluation.design, deck: evaluation.laid, loads: evaluation.loads, girder: evaluation.girder, edge: evaluation.edgeBeam, walls: evaluation.walls, roof: evaluation.roof});
    expect(evaluation.laid.toppingWeightPlf).toBeGreaterThan(evaluation.member.toppingWeightPlf);
    expect(columnsOf(evaluation, catalog).columns.map(({position}) => position)).toEqual(["interior column", "edge column", "girder end column", "corner column"]);
  });

  test("the starter's own deck is among those that its search finds", () => {
    expect(candidates(seed("classroom-wing"), catalog).map(({id}) => id)).toContain("4HC8+2 76-S");
  });
});
