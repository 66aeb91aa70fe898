import {describe, expect, test} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {floorDiaphragm} from "../../lib/diaphragm/floorDiaphragm.js";
import {catalog, seed} from "../support/designs.js";

const of = (design: Design) => floorDiaphragm(design, deckMember(design, catalog));

describe("the floor of a design as a diaphragm", () => {
  test("by hand: 4 bays of 30 ft, 2 of 40 ft, 400 plf", () => {
    const {lengthFt, depthFt, kind, result} = of(seed("branch-library"));
    expect([lengthFt, depthFt, kind]).toEqual([120, 80, "topped"]);
    // 0.4 * 120^2 / 8 = 720 kip-ft over 0.9 * 80 ft.
    expect(result?.chordKip).toBeCloseTo(10, 12);
    expect(result?.shearKipPerFt).toBeCloseTo(0.3, 12);
  });

  test("passes shear as its deck can", () => {
    const tees = of(seed("parking-structure"));
    expect(tees.kind).toBe("pretopped");
    expect(tees.checks.find((check) => check.id === "diaphragm shear")?.message).toMatch(/connector/);
    const planks = of(withValues(seed("classroom-wing"), {"deck.toppingIn": 0}));
    expect(planks.kind).toBe("grouted planks");
    expect(planks.checks.find((check) => check.id === "diaphragm shear")).toMatchObject({verdict: "out of range", message: expect.stringMatching(/grouted/) as string});
    expect(of(withValues(seed("classroom-wing"), {"deck.toppingIn": 0.5})).kind).toBe("grouted planks");
  });

  test("is left to joints where it is longer than the method covers", () => {
    const long = of(withValues(seed("branch-library"), {"bay.baysAlong": 30, "bay.beamSpanFt": 40}));
    expect(long.result).toBeUndefined();
    expect(long.checks.map((check) => check.verdict)).toEqual(["out of range"]);
    expect(long.checks[0]).toMatchObject({id: "diaphragm proportions", demand: 1200, capacity: 1000, unit: "ft"});
    // 25 bays of 40 ft are 1,000 ft, which it still covers; and a floor may be too deep as well as too long.
    expect(of(withValues(seed("branch-library"), {"bay.baysAlong": 25, "bay.beamSpanFt": 40})).result).toBeDefined();
    const member = deckMember(seed("branch-library"), catalog);
    const deep = (baysAcross: number) => floorDiaphragm({...seed("branch-library"), bay: {...seed("branch-library").bay, spanFt: 50, baysAcross}}, member);
    expect(deep(20).result).toBeDefined();
    expect(deep(21)).toMatchObject({result: undefined, checks: [{demand: 1050}]});
  });

  test("counts a topping of an inch and more, and says of grouted keys only what is about the joints", () => {
    expect(of(withValues(seed("classroom-wing"), {"deck.toppingIn": 1})).kind).toBe("topped");
    const {checks} = of(withValues(seed("classroom-wing"), {"deck.toppingIn": 0}));
    expect(checks.filter((check) => /grouted/.test(check.message)).map((check) => check.id)).toEqual(["diaphragm shear"]);
    expect(checks.length).toBeGreaterThan(1);
  });
});
