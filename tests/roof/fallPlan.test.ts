import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {fallPlan, greatestMeanRiseIn, riseAtIn} from "../../lib/roof/fallPlan.js";
import {AIR_FILMS_R, roofLayers} from "../../lib/roof/layers.js";
import {seed} from "../support/designs.js";

/** A building 120 ft long of bays 40 ft across, its roof falling by 1/4 in per ft. */
function design(baysAcross: number, drainage: string, drainsAt: string, more: Readonly<Record<string, unknown>> = {}) {
  return withValues(seed("branch-library"), {
    "bay.spanFt": 40, "bay.beamSpanFt": 30, "bay.baysAlong": 4, "bay.baysAcross": baysAcross, "roof.given": "deck",
    "roof.drainage": drainage, "roof.drainsAt": drainsAt, "roof.slopeInPerFt": 0.25, "roof.drainSpacingFt": 30, ...more,
  });
}
const lines = (...of: Parameters<typeof design>) => fallPlan(design(...of)).lines.map(({atFt, riseIn, drains}) => `${atFt} ${drains ? "drains" : riseIn}`);

describe("a roof falls", () => {
  test("inside to the line of girders between each two bays, an odd one to its own edge", () => {
    expect(lines(2, "bearing", "inside")).toEqual(["0 10", "40 drains", "80 10"]);
    expect(lines(4, "taper", "inside")).toEqual(["0 10", "40 drains", "80 10", "120 drains", "160 10"]);
    expect(lines(3, "bearing", "inside")).toEqual(["0 10", "40 drains", "80 10", "120 drains"]);
  });

  test("to the edges from the middle, where a taper may part anywhere and a deck only over girders", () => {
    expect(lines(2, "taper", "edges")).toEqual(["0 drains", "40 10", "80 drains"]);
    expect(lines(3, "taper", "edges")).toEqual(["0 drains", "60 15", "120 drains"]);
    // Two bays on one side make 20 in; the one on the other falls by as much over half the way.
    expect(lines(3, "bearing", "edges")).toEqual(["0 drains", "40 20", "120 drains"]);
    expect(fallPlan(design(3, "bearing", "edges"))).toMatchObject({runFt: 80, riseIn: 20});
  });

  test("in one bay to one edge where the deck itself falls, to both or to its middle by a taper", () => {
    expect(lines(1, "bearing", "edges")).toEqual(["0 drains", "40 10"]);
    expect(lines(1, "bearing", "inside")).toEqual(["0 drains", "40 10"]);
    expect(lines(1, "taper", "edges")).toEqual(["0 drains", "20 5", "40 drains"]);
    expect(lines(1, "taper", "inside")).toEqual(["0 5", "20 drains", "40 5"]);
  });

  test("by camber to both ends of each member, over half its span", () => {
    expect(lines(2, "camber", "inside")).toEqual(["0 drains", "40 drains", "80 drains"]);
    expect(fallPlan(design(2, "camber", "edges"))).toMatchObject({runFt: 20, riseIn: 0});
  });
});

test("its drains stand no farther apart than is asked, and serve what comes to them", () => {
  // Both bays, 80 ft, times 30 ft; by the edges one bay.
  expect(fallPlan(design(2, "taper", "inside"))).toMatchObject({drainsPerLine: 4, drains: 4, drainFt2: 2400});
  expect(fallPlan(design(2, "taper", "edges"))).toMatchObject({drainsPerLine: 4, drains: 8, drainFt2: 1200});
  expect(fallPlan(design(2, "taper", "edges", {"roof.drainSpacingFt": 35}))).toMatchObject({drainsPerLine: 4, drainFt2: 1200});
  expect(fallPlan(design(2, "taper", "edges", {"roof.drainSpacingFt": 300}))).toMatchObject({drainsPerLine: 1, drains: 2, drainFt2: 4800});
  // By camber a line inside serves half a member on each side, a line at the edge half of one.
  expect(fallPlan(design(2, "camber", "edges"))).toMatchObject({drains: 12, drainFt2: 1200});
  // The line 40 ft from the edge takes two bays, the edge's own drains one.
  expect(fallPlan(design(3, "bearing", "inside"))).toMatchObject({drains: 8, drainFt2: 2400});
});

test("its height runs straight from line to line", () => {
  const plan = fallPlan(design(3, "bearing", "edges"));
  expect([0, 10, 40, 80, 120].map((at) => riseAtIn(plan, at))).toEqual([0, 5, 20, 10, 0]);
  const single = fallPlan(design(1, "taper", "inside"));
  expect([0, 10, 20, 30, 40].map((at) => riseAtIn(single, at))).toEqual([5, 2.5, 0, 2.5, 5]);
});

describe("the layers of a roof", () => {
  const layers = [{name: "membrane", loadPsf: 1, thicknessIn: 0.5, rValue: 0}, {name: "boards", loadPsf: 2, thicknessIn: 4, rValue: 22}, {name: "ceiling", loadPsf: 5, thicknessIn: 0, rValue: 1.5}];
  const of = (baysAcross: number, drainage: string, drainsAt: string, more = {}) => roofLayers(design(baysAcross, drainage, drainsAt, {"roof.layers": layers, "roof.taperPcf": 3, ...more}));

  test("add up, a taper by its mean over the bay where that is greatest", () => {
    // Edges, four bays: 20 in at the middle, 10 in at 40 ft; the inner bays have 15 in on the mean, 15/12 x 3 = 3.75 psf.
    expect(greatestMeanRiseIn(fallPlan(design(4, "taper", "edges")), {spanFt: 40, baysAcross: 4})).toBeCloseTo(15, 12);
    expect(of(4, "taper", "edges")).toMatchObject({psf: 8 + 3.75, buildUpIn: 4.5, taperIn: 20});
    expect(of(4, "taper", "edges").carried.at(-1)).toEqual({name: "taper toward the drains", loadPsf: 3.75});
    // Three bays: up to 15 in at 60 ft in the middle of the middle bay: 10 to 15 and back, 12.5 on the mean.
    expect(greatestMeanRiseIn(fallPlan(design(3, "taper", "edges")), {spanFt: 40, baysAcross: 3})).toBeCloseTo(12.5, 12);
  });

  test("have no taper on a deck that falls itself, nor on a level roof", () => {
    expect(of(2, "bearing", "inside")).toMatchObject({psf: 8, taperIn: 0});
    expect(of(2, "camber", "inside")).toMatchObject({psf: 8, taperIn: 0});
    expect(of(2, "taper", "inside", {"roof.slopeInPerFt": 0}).carried).toHaveLength(3);
  });

  test("resist heat one after the other, with the air on both sides", () => {
    expect(of(2, "bearing", "inside").rValue).toBeCloseTo(23.5 + 0.61 + 0.17, 12);
    expect(AIR_FILMS_R).toBeCloseTo(0.78, 12);
  });
});
