import {describe, expect, test} from "vitest";
import {edgeBeamTakes} from "../../lib/edgeBeam/takes.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, seed, seeds} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const takesOf = (design: Design) => {
  const {laid, loads} = evaluate(design, catalog);
  return edgeBeamTakes(design, catalog, laid, loads);
};
const failing = (design: Design, ids: RegExp) =>
  evaluate(design, catalog).edgeBeam.checks.filter(({id, verdict}) => ids.test(id) && verdict === "fails").map(({id}) => id);

describe("edgeBeamTakes", () => {
  test("finds the least ledge: a step less fails by what governs", () => {
    const {ledgeDepth} = takesOf(LIBRARY);
    const depthIn = ledgeDepth?.changes["edgeBeam.ledgeDepthIn"] as number;
    expect(ledgeDepth?.governs.id).toMatch(/^ledge punching/);
    expect(failing(withValues(LIBRARY, {"edgeBeam.ledgeDepthIn": depthIn}), /^ledge/)).toEqual([]);
    expect(failing(withValues(LIBRARY, {"edgeBeam.ledgeDepthIn": depthIn - 0.5}), /^ledge/)).toContain(ledgeDepth?.governs.id);
  });

  test("finds the least web", () => {
    const {webWidth} = takesOf(LIBRARY);
    const widthIn = webWidth?.changes["edgeBeam.webWidthIn"] as number;
    const OF_WEB = /^beam (cage|strength|least steel|ductility|bottom steel|shear|shear and torsion|stirrups|cracks)$/;
    expect(failing(withValues(LIBRARY, {"edgeBeam.webWidthIn": widthIn}), OF_WEB)).toEqual([]);
    expect(failing(withValues(LIBRARY, {"edgeBeam.webWidthIn": widthIn - 1}), OF_WEB)).toContain(webWidth?.governs.id);
  });

  test("finds the size of bar that needs the least steel", () => {
    const {bars, strands} = takesOf(LIBRARY);
    expect(strands).toBeUndefined();
    const areas = ["#5", "#6", "#7", "#8", "#9", "#10", "#11"].map((size) => evaluate(withValues(LIBRARY, {"edgeBeam.barSize": size}), catalog).edgeBeam)
      .filter((beam) => beam.barsSuffice).map((beam) => beam.bars.areaIn2);
    expect(bars?.beam.bars.areaIn2).toBe(Math.min(...areas));
  });

  test("finds the fewest strands that need no bars besides", () => {
    const {bars, strands} = takesOf(withValues(LIBRARY, {"edgeBeam.steel": "strands"}));
    expect(bars).toBeUndefined();
    expect(strands?.beam.bars.count).toBe(0);
    const count = strands?.changes["edgeBeam.strands"] as number;
    expect(evaluate(withValues(LIBRARY, {"edgeBeam.steel": "strands", "edgeBeam.strands": count - 1}), catalog).edgeBeam.bars.count).toBeGreaterThan(0);
  });

  test("finds none where nothing suffices, and no ledge for a beam without one", () => {
    const heavy = takesOf(withValues(LIBRARY, {"bay.spanFt": 150, "bay.beamSpanFt": 80, "edgeBeam.upstandIn": 0}));
    expect(heavy).toMatchObject({ledgeDepth: undefined, webWidth: undefined, bars: undefined});
    expect(takesOf(withValues(LIBRARY, {"edgeBeam.kind": "below"})).ledgeDepth).toBeUndefined();
  });

  test("has an answer to each question for every starter design", () => {
    for (const {id, design} of seeds) {
      const takes = takesOf(design);
      for (const key of ["ledgeDepth", "webWidth", "bars"] as const) expect(takes[key], `${id} ${key}`).toBeDefined();
      expect(takes.ledgeDepth?.changes["edgeBeam.ledgeDepthIn"]).toBeLessThanOrEqual(design.edgeBeam.ledgeDepthIn);
      expect(takes.webWidth?.changes["edgeBeam.webWidthIn"]).toBeLessThanOrEqual(design.edgeBeam.webWidthIn);
    }
  });
});
