import {describe, expect, test} from "vitest";
import {designCriteria} from "../../lib/deck/criteria.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import {failedGates} from "../../lib/deck/gates.js";
import {WORKING_GATES} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {patternMember, usualPatterns} from "../../lib/deck/table.js";
import {leastDepth, leastStrand, takingOf, type Taking} from "../../lib/deck/takes.js";
import {withValues} from "../../lib/design/edit.js";
import {InputError} from "../../lib/errors.js";
import {makeMember} from "../../lib/member/member.js";
import {usualLayout} from "../../lib/prestress/layout.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog, seed} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const question = (changes: Record<string, unknown> = {}, loadPsf = 100): Taking => {
  const design = withValues(LIBRARY, changes);
  return takingOf(design, catalog, designCriteria(design, catalog, 10), loadPsf);
};

describe("what it takes in strand", () => {
  test.each(["straight", "one-point"] as const)("is the first number of %s strands that carries the load: one pair fewer does not", (profile) => {
    for (const loadPsf of [60, 100, 140]) {
      const of = question({}, loadPsf);
      const found = leastStrand(of, profile);
      expect(found?.safe.safeLoadPsf).toBeGreaterThanOrEqual(loadPsf);
      const row = deckRow(catalog, of.designation);
      const fewer = usualPatterns(row).filter((text) => parsePattern(text).profile === profile && parsePattern(text).count < parsePattern(found?.pattern ?? "").count);
      for (const text of fewer) expect(safeLoad(patternMember(catalog, row, text, of.conditions), 40, of.criteria).safeLoadPsf).toBeLessThan(loadPsf);
    }
  });

  test("passes over strands that do not fit, and nothing else: a catalog without strands is a fault", () => {
    expect(() => leastStrand({...question(), catalog: {...catalog, strands: undefined as never}}, "straight")).toThrow(TypeError);
  });

  test("is no number at all where the load is too much", () => {
    expect(leastStrand(question({}, 5000), "straight")).toBeUndefined();
    expect(leastStrand(question({"deck.member": "4HC8", "deck.pattern": "66-S", "bay.spanFt": 20}), "one-point")).toBeUndefined();
  });
});

describe("what it takes", () => {
  test("passes the gates that a candidate of the search must pass, not the load's limits alone", () => {
    let gated = 0;
    for (const [member, spanFt, loadPsf] of [["10DT32", 40, 20], ["10DT32", 60, 20], ["10DT24", 50, 10], ["4HC8", 24, 20], ["4HC8", 30, 10]] as const) {
      const of = question({"deck.member": member, "deck.pattern": member === "4HC8" ? "66-S" : "88-S", "bay.spanFt": spanFt}, loadPsf);
      const failed = (pattern: string, depthIn?: number) => {
        const shape = shapeOf(catalog, of.designation, depthIn === undefined ? {} : {depthIn});
        const parsed = parsePattern(pattern);
        const strand = catalog.strands.find(({sixteenths}) => sixteenths === parsed.sixteenths)!;
        const made = makeMember({...of.conditions, shape, layout: usualLayout(shape, parsed, strand, deckRow(catalog, of.designation).lowestStrandIn)});
        const carried = safeLoad(made, of.spanFt, of.criteria).safeLoadPsf >= loadPsf;
        const gates = failedGates(made, of.spanFt, {...of.criteria, limits: WORKING_GATES});
        if (carried && gates.length > 0) gated++;
        return gates;
      };
      const strand = leastStrand(of, "straight");
      if (strand) expect(failed(strand.pattern)).toEqual([]);
      const depth = leastDepth(of);
      if (!depth) continue;
      if (WORKING_GATES.includes(depth.governs)) expect(failed(of.pattern, depth.exactIn - 0.01)).toContain(depth.governs);
      expect(failed(of.pattern, depth.depthIn)).toEqual([]);
      try {
        failed(of.pattern, depth.depthIn - 1);
      } catch (problem) {
        expect(problem).toBeInstanceOf(InputError);
      }
    }
    // Some shallower one carries the load, and a gate keeps it out.
    expect(gated).toBeGreaterThan(0);
  });
});

describe("what it takes in depth", () => {
  test("is reported with the gate that keeps a shallower section out, where the load itself would let it in", () => {
    const tee = leastDepth(question({"deck.member": "10DT32", "deck.pattern": "88-S"}, 20));
    expect(tee).toMatchObject({governs: "vibration"});
    expect(tee?.safe.governs).not.toBe("vibration");
    expect(leastStrand(question({"deck.member": "12DT32", "deck.pattern": "88-S", "bay.spanFt": 60}, 20), "straight")?.governs).toBe("camber");
  });

  test("is where the load is just carried, and the whole inch above it", () => {
    for (const [changes, loadPsf] of [[{}, 120], [{"deck.member": "10DT24", "deck.pattern": "88-S"}, 60], [{"deck.member": "4FS6", "deck.pattern": "68-S", "bay.spanFt": 18}, 60]] as const) {
      const of = question(changes, loadPsf);
      const found = leastDepth(of);
      expect(found).toBeDefined();
      const carried = (depthIn: number) => {
        const shape = shapeOf(catalog, of.designation, {depthIn});
        const pattern = parsePattern(of.pattern);
        const strand = catalog.strands.find(({sixteenths}) => sixteenths === pattern.sixteenths)!;
        const member = makeMember({...of.conditions, shape, layout: usualLayout(shape, pattern, strand, deckRow(catalog, of.designation).lowestStrandIn)});
        return failedGates(member, of.spanFt, {...of.criteria, limits: WORKING_GATES}).length > 0 ? 0 : safeLoad(member, of.spanFt, of.criteria).safeLoadPsf;
      };
      expect(carried(found!.exactIn)).toBeGreaterThanOrEqual(loadPsf);
      expect(carried(found!.exactIn - 0.1)).toBeLessThan(loadPsf);
      expect(found!.depthIn - found!.exactIn).toBeLessThan(1.02);
      expect(found!.depthIn % 1).toBe(0);
      expect(found!.safe.safeLoadPsf).toBeCloseTo(carried(found!.depthIn), 9);
    }
  });

  test("is found where deeper sections could break as they crack, and says from where on they do", () => {
    const of = question({"deck.member": "10DT32", "deck.pattern": "88-S", "deck.toppingIn": 2, "bay.spanFt": 50, "criteria.keepCamber": false}, 70);
    const found = leastDepth(of);
    expect(found?.depthIn).toBeGreaterThanOrEqual(28);
    expect(found?.depthIn).toBeLessThanOrEqual(32);
    expect(found?.safe.safeLoadPsf).toBeGreaterThanOrEqual(70);
    expect(found?.until?.depthIn).toBeGreaterThan(38);
    expect(found?.until?.depthIn).toBeLessThan(46);
    expect(found?.until?.governs).toBe("minimum strength");
    expect(leastDepth(question({}, 120))?.until).toBeUndefined();
  });

  test("is looked for down to 60 in and no deeper", () => {
    const deep = (loadPsf: number) => leastDepth(question({"deck.member": "10DT32", "deck.pattern": "208-S", "bay.spanFt": 80}, loadPsf));
    expect(deep(110)?.depthIn).toBe(60);
    expect(deep(116)).toBeUndefined();
  });

  test("is more than a plank with its voids can be given", () => {
    expect(leastDepth(question({"deck.member": "4HC8", "deck.pattern": "66-S", "bay.spanFt": 60}, 300))).toBeUndefined();
  });
});
