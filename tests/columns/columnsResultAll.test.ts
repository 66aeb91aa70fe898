// The columns of whole designs, all positions and all sizes of them.
import {describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {WITHOUT_WALLS, catalog, seed, seeds} from "../support/designs.js";

const at = (design: Design) => {
  const result = evaluate(design, catalog);
  return {result, ...columnsOf(result, catalog)};
};

describe("the columns of a design", () => {
  test("fail no check in the starter designs, and each check has a name of its own", () => {
    for (const {id, design} of seeds) {
      const {checks, result} = at(design);
      expect(checks.filter((check) => check.verdict === "fails").map((check) => check.id), id).toEqual([]);
      const ids = [...result.checks, ...checks].map((check) => check.id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test("are those that the grid has", () => {
    const design = seed("branch-library");
    expect(at(withValues(design, {"bay.baysAlong": 1})).columns.map(({position}) => position)).toEqual(["girder end column", "corner column"]);
    expect(at(withValues(design, {"bay.baysAcross": 1})).columns.map(({position}) => position)).toEqual(["edge column", "corner column"]);
    expect(at(withValues(design, {"bay.baysAcross": 1, "bay.baysAlong": 1})).columns.map(({position}) => position)).toEqual(["corner column"]);
  });

  test("are no smaller for a roof that may hold live load, which steadies a bent column only while it is there", () => {
    // By a grid of fibers the 14 in column under a line of girders' end uses 1.005 of its strength beside a bare roof.
    const design = withValues(seed("records-store"), {"bay.floors": 1, "column.seatIn": 4.5, ...WITHOUT_WALLS});
    const under = (roofLivePsf: number) => {
      const {columns} = at(withValues(design, {"column.roofLivePsf": roofLivePsf}));
      return columns.map(({position, column}) => ({position, sideIn: column.sideIn}));
    };
    const bare = under(0);
    expect(bare.find(({position}) => position === "girder end column")?.sideIn).toBe(16);
    for (const roofLivePsf of [20, 50]) under(roofLivePsf).forEach(({sideIn}, i) => expect(sideIn).toBeGreaterThanOrEqual(bare[i]?.sideIn ?? NaN));
  });

  test("fail where the beams' ends are cut for a narrower column, and the side that is named mends it", () => {
    const narrow = withValues(seed("branch-library"), {"column.sideIn": 12});
    const failed = at(narrow).checks.filter(({id, verdict}) => id.endsWith("beam ends") && verdict === "fails");
    expect(failed.map(({id}) => id)).toContain("interior column: beam ends");
    const named = Math.max(...failed.map(({message}) => Number(/to (\d+) in/.exec(message)?.[1])));
    const mended = at(withValues(narrow, {"column.sideIn": named}));
    expect(mended.checks.filter(({id, verdict}) => id.endsWith("beam ends") && verdict !== "ok")).toEqual([]);
  });

  test("say so where their load is beyond the methods, and throw nothing", () => {
    const layers = Array.from({length: 5}, (_, i) => ({name: `layer ${i}`, loadPsf: 150}));
    const heavy = withValues(seed("records-store"), {"bay.floors": 12, "bay.spanFt": 100, "bay.beamSpanFt": 80, "loads.layers": layers});
    const {columns, unsized, checks} = at(heavy);
    expect(columns).toEqual([]);
    expect(unsized).toHaveLength(4);
    expect(checks.map((check) => check.verdict)).toEqual(unsized.map(() => "out of range"));
    const large = at(withValues(seed("records-store"), {"bay.floors": 12, "bay.spanFt": 100, "bay.beamSpanFt": 80}));
    expect(large.checks.some((check) => check.id === "interior column: footing side" && check.verdict === "out of range")).toBe(true);
    for (const check of large.checks) expect(Number.isFinite(check.demand + check.capacity + check.utilization)).toBe(true);
  });
});
