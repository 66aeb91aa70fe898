import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {ruledDeckEdge, ruledWalls} from "../../lib/schemes/wallRule.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {ROUND} from "./factors.js";

/** The parking structure with columns so far apart along its short sides. */
function cars(spanFt: number, changes: Record<string, unknown> = {}): Scheme {
  const schemes = schemesOf(briefOf(withValues(seed("parking-structure"), {"snow.groundPsf": 0, ...changes}), 8, {spansFt: [spanFt], beamSpansFt: [36]}), catalog, {columns: true});
  const scheme = schemes.at(0);
  if ("none" in scheme) throw new Error(scheme.none);
  return scheme;
}

describe("end spandrels by rule", () => {
  test("are cut into as few pieces as trucks haul: one of 60 ft, two of 72 and of 92", () => {
    expect([60, 72, 92].map((spanFt) => cars(spanFt).design.walls.spandrelPieces)).toEqual([1, 2, 2]);
    expect(cars(92).fails.filter(({id}) => id.startsWith("end spandrel"))).toEqual([]);
    const {design, floor, fails} = cars(72);
    expect(fails.filter(({id}) => id.startsWith("end spandrel"))).toEqual([]);
    expect((floor.walls.spandrel?.lengthIn ?? NaN) / 12).toBeLessThan(36);
    const whole = evaluate(withValues(design, {"walls.spandrelPieces": 1}), catalog).checks.filter(({verdict}) => verdict === "fails").map(({id}) => id);
    expect(whole).toContain("end spandrel hauled length");
  });

  test("stand between the columns where a strip past them would reach too far", () => {
    const scheme = cars(60, {"walls.spandrelPlace": "outside", "column.sideIn": 30, "consider.pretoppedTees": true});
    const outside = evaluate(withValues(scheme.design, {"walls.spandrelPlace": "outside"}), catalog).checks.some(({id, verdict}) => id === "deck edge" && verdict === "fails");
    expect(scheme.design.walls.spandrelPlace).toBe(outside ? "between" : "outside");
    expect(scheme.fails.some(({id}) => id === "deck edge")).toBe(false);
  });
});

test("the deck's edge by rule is known before beams and story are", () => {
  const mended = new Set<string>();
  for (const {design: own} of seeds) {
    const {member, story} = evaluate(own, catalog);
    for (const shortSide of ["spandrel", "solid panel", "insulated panel", "cladding", "not counted"]) for (const spandrelPlace of ["between", "outside"])
      for (const sideIn of [14, 20, 30]) for (const beamSpanFt of [24, 31, 45]) for (const endFill of ["piece", "strip"]) for (const toppingIn of [0, 2, 4]) {
        const changes = {"walls.shortSide": shortSide, "walls.spandrelPlace": spandrelPlace, "column.sideIn": sideIn, "bay.beamSpanFt": beamSpanFt, "walls.endFill": endFill, "deck.toppingIn": toppingIn};
        const design = withValues(own, changes);
        const {input, result} = ruledWalls(design, catalog, member, story, false);
        expect(ruledDeckEdge(design, member), `${own.name} ${JSON.stringify(changes)}`).toEqual(result.edge);
        if (input.endFill !== endFill) mended.add("fill");
        if (input.spandrelPlace !== spandrelPlace) mended.add("place");
      }
  }
  // Were nothing mended, the edge of the design's own walls would do as well.
  expect([...mended].sort()).toEqual(["fill", "place"]);
});

test("spandrels in pieces weigh as much on the ground but for their joints: what posts carry comes down by itself", () => {
  const design = withValues(seed("parking-structure"), {"snow.groundPsf": 0});
  const kip = (pieces: number, changes: Record<string, unknown> = {}) => {
    const floor = evaluate(withValues(design, {"walls.spandrelPieces": pieces, ...changes}), catalog);
    return {kip: measuresOf(floor, undefined, {factors: ROUND, prices: {}}).deadWithoutColumnsPsf, pieces: measuresOf(floor, undefined, {factors: ROUND, prices: {}}).piecesWithoutColumns, count: floor.walls.spandrel?.count ?? 0};
  };
  for (const place of ["between", "outside"]) {
    const [one, three] = [kip(1, {"walls.spandrelPlace": place}), kip(3, {"walls.spandrelPlace": place})];
    expect(three.kip / one.kip).toBeCloseTo(1, 3);
    expect(three.kip).toBeLessThanOrEqual(one.kip + 1e-12);
    expect(three.pieces - one.pieces).toBe(2 * (three.count - one.count));
  }
});
