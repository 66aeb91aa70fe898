import {describe, expect, test} from "vitest";
import type {Check} from "../lib/checks.js";
import {withValues} from "../lib/design/edit.js";
import {demandOf, evaluate} from "../lib/evaluate.js";
import {catalogue, seed, seeds} from "./support/designs.js";
import {refused} from "./support/errors.js";

describe("evaluate", () => {
  test("leaves the design as it was and returns it", () => {
    for (const {design} of seeds) {
      const before = structuredClone(design);
      expect(evaluate(design, catalogue).design).toBe(design);
      expect(design).toEqual(before);
    }
  });

  test("gives the same results for the same design", () => {
    const design = seed("branch-library");
    expect(JSON.stringify(evaluate(design, catalogue))).toBe(JSON.stringify(evaluate(structuredClone(design), catalogue)));
  });

  test("gathers every check of every part under the worst verdict, each with a name of its own", () => {
    for (const {design} of seeds) {
      const {checks, verdict, ...parts} = evaluate(design, catalogue);
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
      expect(evaluate(design, catalogue).checks.filter((check) => check.verdict === "fails").map((check) => check.id), id).toEqual([]);
    }
  });

  test("has a topping only where the deck has one", () => {
    expect(evaluate(seed("parking-structure"), catalogue).topping).toBeUndefined();
    expect(evaluate(seed("parking-structure"), catalogue).joint).toBeDefined();
    expect(evaluate(seed("branch-library"), catalogue).topping).toBeDefined();
    expect(evaluate(seed("branch-library"), catalogue).joint).toBeUndefined();
  });

  test("refuses parts that do not fit each other", () => {
    refused(() => evaluate(withValues(seed("classroom-wing"), {"deck.pattern": "76-D1"}), catalogue), {path: "deck.pattern"});
  });
});

describe("demandOf", () => {
  test("asks of a wider member less where its area allows a reduction", () => {
    const design = withValues(seed("branch-library"), {"loads.rooms": [{name: "Desks", occupancy: "office"}], "bay.spanFt": 60});
    const demand = demandOf(design, catalogue, evaluate(design, catalogue).loads);
    // 4 ft * 60 = 240 ft2: all of 50 psf; 15 ft * 60 = 900: 0.25 + 15/30 = 0.75. Layers 10, partitions 15.
    expect(demand.demandPsf(4)).toBe(75);
    expect(demand.demandPsf(15)).toBeCloseTo(62.5, 12);
    expect(demand.demandPsf(15)).toBe(demand.demandPsf(15));
  });
});
