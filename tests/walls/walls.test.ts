import {describe, expect, test} from "vitest";
import {columnsOf, evaluate, framingOf} from "../../lib/evaluate.js";
import {deckEnds} from "../../lib/beams/deckEnds.js";
import {bendingOf, columnLevels} from "../../lib/columns/frame.js";
import {withValues} from "../../lib/design/edit.js";
import type {ColumnPosition} from "../../lib/columns/levels.js";
import {onPostsIn, sharesKip, wallReach} from "../../lib/walls/weights.js";
import {parapetRunIn} from "../../lib/walls/planes.js";
import {leastThicknessIn, stripFootingIn} from "../../lib/walls/wallChecks.js";
import {WITHOUT_WALLS, catalog, seed} from "../support/designs.js";

/**
 * The library: 4 bays of 30 ft by 2 spans of 40 ft, one floor carried and a roof, so two stories of 15 ft; columns of
 * 20 in, webs of 14 in, deck of 34 in, ledges of 13 in, upstand 30 in, finish 1/4 in.
 */
const PLAIN = {...WITHOUT_WALLS, "roof.given": "loads", "walls.glassShare": 0, "walls.panelStories": 1, "walls.capIn": 0};
const library = (changes: Readonly<Record<string, unknown>> = {}) => withValues(seed("branch-library"), {...PLAIN, ...changes});
const of = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(library(changes), catalog).walls;
const check = (changes: Readonly<Record<string, unknown>>, id: string) => {
  const found = of(changes).checks.find((one) => one.id === id);
  if (!found) throw new Error(`no check ${id}`);
  return found;
};
const reach = (changes: Readonly<Record<string, unknown>>, column: ColumnPosition) => {
  const {design, walls} = evaluate(library(changes), catalog);
  return wallReach(design, walls, column);
};

describe("a design that says nothing of its short sides", () => {
  test("counts nothing there: no weight, no check, no strip, the building as long as its column lines are apart", () => {
    const walls = of();
    expect(walls).toMatchObject({counted: false, panels: undefined, spandrel: undefined, footing: undefined, checks: [], materials: {concreteYd3: 0, carbonKg: 0}});
    expect(walls.edge).toMatchObject({firstStripIn: 0, lastStripIn: 0});
    for (const position of ["corner column", "girder end column", "edge column", "interior column"] as const) {
      expect(reach({}, position)).toEqual({floor: [], roof: []});
    }
    // 2 x 120 x 30 ft and 2 x 80 x 30 ft.
    expect(walls.areas.wallFt2).toBeCloseTo(12000, 6);
    expect(walls.areas.parts.filter(({side}) => side === "short")).toEqual([{side: "short", kind: "not counted", ft2: 4800}]);
  });
});

describe("solid panels on a footing of their own", () => {
  const panels = {"walls.shortSide": "solid panel", "walls.parapetIn": 36};

  test("are of one width over the side, in tiers of so many stories, with the parapet in the topmost", () => {
    // Panels stand 1 in clear of the columns and run to the columns' outer faces: 960 + 2 x 10 = 980 in.
    // Nine of at most 120 in with eight joints of 3/4 in: (980 - 6)/9 = 108.22 in; eight would be (980 - 5.25)/8 = 121.8 in.
    const {panels: run, planes} = of(panels);
    expect(planes).toMatchObject({endInnerIn: 11, endOuterIn: 19, longOutIn: 10, shortOutIn: 19, stories: 2, topIn: 360, upstandIn: 29.75, parapetAddedIn: 6.25});
    expect(run?.sizes.map(({count, heightIn}) => [count, heightIn])).toEqual([[9, 179.25], [9, 216]]);
    expect(run?.sizes[0]?.widthIn).toBeCloseTo(974 / 9, 9);
    // The topmost weighs 108.22 in x 216 in at 100 psf: 9.0185 ft x 18 ft x 0.1 = 16.23 kip.
    expect(run?.heaviest.weightKip).toBeCloseTo(16.233, 3);
    const tall = of({...panels, "walls.panelStories": 2}).panels;
    expect(tall?.sizes.map(({count, heightIn}) => [count, heightIn])).toEqual([[9, 396]]);
    expect(tall?.heldIn).toBe(180);
  });

  test("weigh on their footing alone: 100 psf over two stories and the parapet, 3,300 plf", () => {
    const {weights, footing} = of(panels);
    expect(weights).toMatchObject({wallPsf: 100, floorPlf: 0, roofPlf: 0, footingPlf: 3300});
    // 3,300 plf on 3,000 psf of ground: 13.2 in; the wall of 8 in with 6 in on either side is wider: 20, so 21 in.
    expect(footing).toMatchObject({plf: 3300, widthIn: 21});
    expect(footing?.neededIn).toBeCloseTo((12 * 3300) / library().ground.allowablePsf, 9);
    expect([stripFootingIn(6000, 3000, 8), stripFootingIn(6001, 3000, 8), stripFootingIn(100, 3000, 9)]).toEqual([24, 27, 21]);
    // What is left to the columns is the strip of floor between deck and wall: 10 in of 4 in, 41.7 plf, and the parapet of the long side.
    expect(reach(panels, "girder end column").floor.map(({name, kip}) => [name, kip.toFixed(3)])).toEqual([["strip of floor", "1.667"]]);
  });

  test("with windows are lighter by their share, but for the parapet, which has none", () => {
    const {weights} = of({...panels, "walls.glassShare": 0.2});
    // 0.8 x 100 + 0.2 x 8 = 81.6 psf over 30 ft, and 3 ft of 100 psf.
    expect(weights.withWindowsPsf).toBeCloseTo(81.6, 9);
    expect(weights.footingPlf).toBeCloseTo(81.6 * 30 + 300, 9);
  });

  test("need 4 in and 1/30 of the height between floors: 6 in at 15 ft", () => {
    expect(check({...panels, "walls.panelThicknessIn": 6}, "panel thickness")).toMatchObject({demand: 6, capacity: 6, verdict: "ok"});
    expect(check({...panels, "walls.panelThicknessIn": 5.5}, "panel thickness").verdict).toBe("fails");
    // The inner wythe of an insulated panel stands for itself.
    expect(check({...panels, "walls.shortSide": "insulated panel", "walls.innerWytheIn": 6}, "panel thickness").verdict).toBe("ok");
    expect(check({...panels, "walls.shortSide": "insulated panel", "walls.innerWytheIn": 5.5}, "panel thickness").verdict).toBe("fails");
    expect([leastThicknessIn(90), leastThicknessIn(120), leastThicknessIn(150)]).toEqual([4, 4, 5]);
  });

  test("travel by their shorter side, up to 12 ft, by their longer, up to 60 ft, and by 48 kip", () => {
    const wide = {...panels, "bay.spanFt": 36, "walls.panelWidthFt": 16};
    // 864 + 20 = 884 in: five of 176.2 in, 14.7 ft wide and 18 ft high; lower stories make them lie.
    expect(check(wide, "panel hauled width").demand).toBeCloseTo((884 - 3) / 5 / 12, 9);
    expect(check(wide, "panel hauled width").verdict).toBe("fails");
    expect(check({...wide, "walls.parapetIn": 0, "story.floorToFloorFt": 12}, "panel hauled width").demand).toBeCloseTo(12, 9);
    expect(check({...wide, "walls.parapetIn": 0, "story.floorToFloorFt": 12}, "panel hauled width").verdict).toBe("ok");
    const tall = {...panels, "bay.floors": 3, "walls.panelStories": 4, "walls.parapetIn": 0};
    expect(check(tall, "panel hauled length")).toMatchObject({demand: 60, verdict: "ok"});
    expect(check({...tall, "walls.parapetIn": 1}, "panel hauled length").verdict).toBe("fails");
    // 9.0185 ft x 60 ft x 100 psf = 54 kip; 7 in thick 47.3 kip.
    expect(check(tall, "panel weight").verdict).toBe("fails");
    expect(check({...tall, "walls.panelThicknessIn": 7}, "panel weight").verdict).toBe("ok");
  });
});

describe("insulated panels that lie from column to column", () => {
  const panels = {"walls.shortSide": "insulated panel", "walls.panelSupport": "columns", "walls.parapetIn": 36};

  test("weigh what both wythes and the insulation weigh, and come to the columns story by story", () => {
    const {weights, panels: run, footing} = of(panels);
    // 9 in of concrete 112.5 psf, 3 in of insulation of 2 pcf 0.5 psf.
    expect(weights.wallPsf).toBeCloseTo(113, 9);
    expect(weights.floorPlf).toBeCloseTo(113 * 15, 9);
    expect(weights.roofPlf).toBeCloseTo(113 * 18, 9);
    expect(footing).toBeUndefined();
    expect(run).toMatchObject({thicknessIn: 12, structuralIn: 6, concreteIn: 9, heldIn: 480});
    // Two rows of (180 - 1.5)/2 = 89.25 in in the lower story; 216 in of the upper take two of (216 - 0.75)/2 = 107.625 in.
    expect(run?.sizes.map(({count, heightIn, widthIn}) => [count, heightIn, widthIn])).toEqual([[4, 89.25, 489.625], [4, 107.625, 489.625]]);
    // A corner column carries 20 ft and 10 in to its outer face, the one between 40 ft.
    const [corner, end] = [reach(panels, "corner column"), reach(panels, "girder end column")];
    expect(corner.floor[0]).toMatchObject({name: "wall panels", plf: 113 * 15});
    expect(corner.floor[0]?.lengthFt).toBeCloseTo(20 + 10 / 12, 9);
    expect(end.floor[0]?.kip).toBeCloseTo(0.113 * 15 * 40, 9);
    expect(reach(panels, "edge column").floor).toEqual([]);
  });

  test("must be span/60 thick, by the wythe that carries", () => {
    expect(check({...panels, "walls.innerWytheIn": 8}, "panel reach")).toMatchObject({demand: 8, verdict: "ok"});
    expect(check({...panels, "walls.innerWytheIn": 7.5}, "panel reach").verdict).toBe("fails");
  });

  test("bring all that they weigh to the columns, and nothing twice", () => {
    // One short side, both stories: 113 psf on 81.67 ft of wall (980 in) by 33 ft with the parapet.
    const kip = ["floor", "roof"].flatMap((kind) => [2, 1].map((count, i) => {
      const {floor, roof} = reach({...panels, "walls.glassShare": 0}, i === 0 ? "corner column" : "girder end column");
      return count * sharesKip((kind === "floor" ? floor : roof).filter(({name}) => name === "wall panels"));
    })).reduce((sum, one) => sum + one, 0);
    expect(kip).toBeCloseTo((113 * (980 / 12) * 33) / 1000, 6);
  });
});

describe("spandrels of the short sides", () => {
  const spandrel = {"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 72, "walls.spandrelThicknessIn": 8, "walls.spandrelUpstandIn": 30};

  test("carry themselves and the windows on them: tension by hand", () => {
    const {spandrel: beam, weights} = of(spandrel);
    // Bearings 10 + 4.5 in off the column lines: 480 - 29 = 451 in. 72 x 8 in weighs 600 plf, 9 ft of windows 72 plf.
    // M = 0.672/12 x 451^2/8 = 1,423.8 kip-in; S = 8 x 72^2/6 = 6,912 in3; f = 0.206 ksi against 7.5 sqrt(5000) = 0.530 ksi.
    expect(beam).toMatchObject({spanIn: 451, lengthIn: 458, selfPlf: 600, windowIn: 108, windowPlf: 72, modulusIn3: 6912, count: 4});
    expect(beam?.momentKipIn).toBeCloseTo(1423.8, 1);
    expect(beam?.tensionKsi).toBeCloseTo(0.206, 3);
    expect(beam?.ruptureKsi).toBeCloseTo(0.5303, 4);
    expect(weights.floorPlf).toBe(672);
    // Without windows in a parking structure.
    expect(evaluate(withValues(seed("parking-structure"), spandrel), catalog).walls.spandrel).toMatchObject({windowIn: 0, windowPlf: 0});
  });

  test("crack, sag and stop short of the deck's underside where they are too shallow", () => {
    // f = M/S falls with depth: just at 7.5 root f'c on one side, past it on the other.
    const thin = (depthIn: number) => check({...spandrel, "bay.spanFt": 60, "walls.spandrelDepthIn": depthIn}, "end spandrel cracking");
    const depths = Array.from({length: 40}, (_, i) => 30 + i);
    const first = depths.find((depthIn) => thin(depthIn).verdict !== "fails") as number;
    // w = 150 x 8 x d/144 + 8 (180 - d)/12 plf over 691 in: f = (w/12000) 691^2/8 / (8 d^2/6), by the quadratic in d.
    const tension = (d: number) => (((150 * 8 * d) / 144 + (8 * (180 - d)) / 12) / 12000) * (691 ** 2 / 8) / ((8 * d * d) / 6);
    expect(tension(first)).toBeLessThanOrEqual(0.5303);
    expect(tension(first - 1)).toBeGreaterThan(0.5303);
    // 451/16 = 28.19 in.
    expect(check({...spandrel, "walls.spandrelDepthIn": 28.25}, "end spandrel depth").verdict).toBe("ok");
    expect(check({...spandrel, "walls.spandrelDepthIn": 28}, "end spandrel depth").verdict).toBe("fails");
    // Deck and topping 34 in below the floor, 30 in above it: 64 in.
    expect(check({...spandrel, "walls.spandrelDepthIn": 64}, "end spandrel over deck").verdict).toBe("ok");
    expect(check({...spandrel, "walls.spandrelDepthIn": 63}, "end spandrel over deck").verdict).toBe("fails");
    expect(check({...spandrel, "story.floorToFloorFt": 12, "walls.spandrelDepthIn": 144}, "end spandrel story").verdict).toBe("ok");
    expect(check({...spandrel, "story.floorToFloorFt": 11.75, "walls.spandrelDepthIn": 144}, "end spandrel story").verdict).toBe("fails");
  });

  test("travel lying or standing: 12 ft deep, 60 ft long, 48 kip at the most", () => {
    expect(check({...spandrel, "walls.spandrelDepthIn": 144}, "end spandrel hauled width").verdict).toBe("ok");
    expect(check({...spandrel, "bay.spanFt": 61.75}, "end spandrel hauled length").verdict).toBe("ok");
    expect(check({...spandrel, "bay.spanFt": 62}, "end spandrel hauled length").verdict).toBe("fails");
    // 38.17 ft x 12.5 psf for each inch of thickness x 6 ft: 24 in thick 68.7 kip, 16 in 45.8 kip.
    expect(check({...spandrel, "walls.spandrelThicknessIn": 16}, "end spandrel weight").verdict).not.toBe("fails");
    expect(check({...spandrel, "walls.spandrelThicknessIn": 17}, "end spandrel weight").verdict).toBe("fails");
  });

  test("between the columns come to them by half their own length each, and bend the corner's across its beam", () => {
    const shares = (column: ColumnPosition) => reach(spandrel, column).floor.map(({name, kip}) => [name, Number(kip.toFixed(3))]);
    // 458 in of 672 plf: 25.648 kip.
    expect(shares("girder end column")).toEqual([["spandrel and windows", 25.648]]);
    expect(shares("corner column")).toEqual([["spandrel and windows", 12.824]]);
    const moments = (changes: Readonly<Record<string, unknown>>) => {
      const {columns} = columnsOf(evaluate(library(changes), catalog), catalog);
      return columns.find(({position}) => position === "corner column")?.column.takedown.stories.map(({adds}) => adds.wallsKip.toFixed(3));
    };
    // On the roof, without a parapet, the same spandrel without windows: 600 plf x 38.167 ft / 2.
    expect(moments(spandrel)).toEqual(["11.450", "12.824"]);
    expect(moments({})).toEqual(["0.000", "0.000"]);
  });

  test("add to what bends a corner column, and a parapet to what its roof's beam brings, whichever roof it is", () => {
    const bent = (changes: Readonly<Record<string, unknown>>) => {
      const framing = framingOf(evaluate(library(changes), catalog));
      return bendingOf(framing, "corner column", columnLevels(framing, "corner column")).patterns[0]?.levels ?? [];
    };
    // 25.648 / 2 kip on a corbel 10 + 4.5 in off the column's middle.
    const [bare, hung] = [bent({}), bent(spandrel)];
    expect((hung[1]?.across.deadKipIn ?? 0) - (bare[1]?.across.deadKipIn ?? 0)).toBeCloseTo((0.672 * (458 / 12) * 14.5) / 2, 6);
    expect(hung[1]?.along).toEqual(bare[1]?.along);
    // Past the columns it does not stand on a corbel.
    expect(bent({...spandrel, "walls.spandrelPlace": "outside"})[1]?.across).toEqual(bare[1]?.across);
    for (const roof of [{}, {"roof.given": "deck", "roof.upstandIn": 0}]) {
      const {weights} = of({...roof, "walls.parapetIn": 36});
      expect(weights.parapetPlf).toBeGreaterThan(30);
      const [low, high] = [bent(roof), bent({...roof, "walls.parapetIn": 36})];
      expect((high[0]?.along.deadKip ?? 0) - (low[0]?.along.deadKip ?? 0)).toBeCloseTo((weights.parapetPlf * 15) / 1000, 9);
    }
  });

  test("that are too heavy to haul may be cut into more pieces, as long as there may be more", () => {
    // 24 in by 12 ft weigh 3,600 plf: a quarter of 150 ft 135 kip.
    const words = (pieces: number) => check({...spandrel, "bay.spanFt": 150, "walls.spandrelThicknessIn": 24, "walls.spandrelDepthIn": 144, "walls.spandrelPieces": pieces}, "end spandrel weight");
    expect([1, 3, 4].map((pieces) => [words(pieces).verdict, words(pieces).message.includes("cut it into more pieces")])).toEqual([["fails", true], ["fails", true], ["fails", false]]);
  });

  test("in several pieces stand on posts but for one piece's length a bay, the longest that at a corner", () => {
    const posts = (changes: Readonly<Record<string, unknown>>) => onPostsIn(library({...spandrel, ...changes}));
    // (458 - 2 x 3/4)/3 in are two of three pieces in each of two bays; past the columns 160 in.
    expect(posts({"walls.spandrelPieces": 3})).toBeCloseTo((4 * 456.5) / 3, 9);
    expect(posts({"walls.spandrelPieces": 3, "walls.spandrelPlace": "outside"})).toBeCloseTo(640, 9);
    expect([posts({}), posts({"walls.spandrelPieces": 3, "walls.shortSide": "solid panel"})]).toEqual([0, 0]);
    // Half of 480 in, the corner column's 10 in, less half a joint, also where both ends of the one bay are corners.
    expect(of({...spandrel, "walls.spandrelPlace": "outside", "walls.spandrelPieces": 2, "bay.baysAcross": 1}).spandrel?.lengthIn).toBe(240 + 10 - 0.375);
  });

  test("over a single bay pass both of its columns, and on a roof no deeper than a floor are as on a floor", () => {
    // 480 in and 10 in past either column line: no joint in between.
    expect(of({...spandrel, "walls.spandrelPlace": "outside", "bay.baysAcross": 1}).spandrel).toMatchObject({spanIn: 480, lengthIn: 500, runIn: 500});
    // One that does not stand up is 1/4 in of finish short of the roof's surface, as it is of the floor's: 600 plf all the same.
    expect(of({...spandrel, "walls.spandrelUpstandIn": 0}).spandrel?.roofSelfPlf).toBe(600);
  });

  test("past the columns meet over their middles, and leave a strip of floor to close", () => {
    const outside = of({...spandrel, "walls.spandrelPlace": "outside"});
    expect(outside.spandrel).toMatchObject({spanIn: 480, lengthIn: 480 + 10 - 0.375, runIn: 980 - 0.75});
    expect(outside.edge).toMatchObject({firstStripIn: 10, lastStripIn: 10, thicknessIn: 4});
    expect(of(spandrel).edge).toMatchObject({firstStripIn: 0, lastStripIn: 0});
  });

  test("cut into pieces meet over posts, which carry what is not next to a column", () => {
    // What lies between two columns less two joints of 3/4 in, in three.
    const three = {...spandrel, "walls.spandrelPieces": 3};
    const [whole, cut] = [of(spandrel), of(three)];
    const pieceIn = ((whole.spandrel?.lengthIn ?? NaN) - 1.5) / 3;
    expect(cut.spandrel).toMatchObject({pieces: 3, count: 3 * (whole.spandrel?.count ?? NaN)});
    expect(cut.spandrel?.lengthIn).toBeCloseTo(pieceIn, 9);
    expect(cut.spandrel?.spanIn).toBeCloseTo((whole.spandrel?.spanIn ?? NaN) / 3, 9);
    expect(cut.spandrel?.runIn).toBeCloseTo((whole.spandrel?.runIn ?? NaN) - 2 * 2 * 0.75, 9);
    // A third of the span is a ninth of the moment.
    expect(cut.spandrel?.tensionKsi).toBeCloseTo((whole.spandrel?.tensionKsi ?? NaN) / 9, 9);
    // A corner takes half a piece, the column between two bays two halves.
    const carried = (changes: Record<string, unknown>, column: "corner column" | "girder end column") => reach(changes, column).floor.find(({name}) => name === "spandrel and windows")?.lengthFt;
    expect(carried(three, "corner column")).toBeCloseTo(pieceIn / 24, 9);
    expect(carried(three, "girder end column")).toBeCloseTo(pieceIn / 12, 9);
    // Past the columns a piece that is no corner's has a third of the bay, and a corner's reaches past its column as well.
    const outside = {...three, "walls.spandrelPlace": "outside"};
    expect(of(outside).spandrel).toMatchObject({spanIn: 160, lengthIn: 160 + 10 - 0.375, runIn: 980 - 5 * 0.75});
    expect(carried(outside, "corner column")).toBeCloseTo((80 + 10) / 12, 9);
    expect(carried(outside, "girder end column")).toBeCloseTo(160 / 12, 9);
  });

  test("carry a cap on the roof's parapet, and there stand no windows on them", () => {
    // 652.1 plf of spandrel and parapet, in which the cap of 3 in takes the place of 8 in: 2 in more over its height, 6.25 plf.
    expect(of({...spandrel, "walls.parapetIn": 36, "walls.capIn": 3}).weights.roofPlf).toBeCloseTo((150 * 8 * 78.25) / 144 + (150 * 2 * 3) / 144, 9);
  });

  test("have the roof's parapet as part of them: from 42 in below the floor's structure to 36 in above the roof", () => {
    // 42 + 1/4 + 36 in of 8 in: 652.1 plf.
    expect(of({...spandrel, "walls.parapetIn": 36}).weights.roofPlf).toBeCloseTo((150 * 8 * 78.25) / 144, 9);
  });
});

describe("what a short side weighs", () => {
  test("is nothing where it is not counted, whatever share of it is said to be windows, and by the foot alone where spandrels close it", () => {
    expect(of({"walls.glassShare": 0.3}).weights).toMatchObject({wallPsf: 0, withWindowsPsf: 0, floorPlf: 0, roofPlf: 0, footingPlf: 0, endCapPlf: 0});
    expect(of({"walls.shortSide": "spandrel", "walls.glassShare": 0.3}).weights).toMatchObject({wallPsf: 0, withWindowsPsf: 0, footingPlf: 0});
  });

  test("grows on its footing by each story that it stands over, with or without a roof", () => {
    const footing = (changes: Readonly<Record<string, unknown>>) => of({"walls.shortSide": "solid panel", ...changes}).weights.footingPlf;
    const sky = {"column.roofDeadPsf": 0, "column.roofLivePsf": 0};
    // 100 psf of 8 in over 15 ft a story.
    expect([1, 2, 3].map((floors) => footing({"bay.floors": floors}))).toEqual([3000, 4500, 6000]);
    expect([1, 2, 3].map((floors) => footing({"bay.floors": floors, ...sky}))).toEqual([1500, 3000, 4500]);
    // Nothing hangs on columns above the highest floor.
    const {design, walls} = evaluate(library({"walls.shortSide": "cladding", ...sky}), catalog);
    expect(wallReach(design, walls, "corner column").roof).toEqual([]);
  });

  test("brings the wider of the strips at the two ends of the building to columns: a corner half of what the next has", () => {
    // 124 ft of 10 ft tees leave 48 in, and 10 in lie beyond the column line: 58 in of 4 in.
    const strip = (column: ColumnPosition) => reach({"walls.shortSide": "solid panel", "bay.beamSpanFt": 31, "walls.endFill": "strip"}, column).floor.find(({name}) => name === "strip of floor");
    expect(strip("girder end column")).toMatchObject({plf: expect.closeTo((150 * 58 * 4) / 144, 9) as number, lengthFt: 40});
    expect(strip("corner column")).toMatchObject({plf: expect.closeTo((150 * 58 * 4) / 144, 9) as number, lengthFt: 20});
  });
});

describe("light cladding, the parapet and the deck's ends", () => {
  test("weigh by the square foot on the columns", () => {
    const shares = reach({"walls.shortSide": "cladding", "walls.claddingPsf": 40, "walls.glassShare": 0.25}, "girder end column").floor;
    // (0.75 x 40 + 0.25 x 8) psf x 15 ft = 480 plf over 40 ft.
    expect(shares[0]).toMatchObject({name: "cladding", plf: 480, lengthFt: 40});
  });

  test("count of a parapet what stands above the roof's own beams, with its cap", () => {
    // The same beams as the floors': 30 in above the structure, 29.75 above the surface. 6.25 in of 6 in concrete are left: 39.06 plf.
    expect(of({"walls.parapetIn": 36}).weights.parapetPlf).toBeCloseTo((150 * 6 * 6.25) / 144, 9);
    expect(of({"walls.parapetIn": 29.75}).weights.parapetPlf).toBe(0);
    // A cap of 3 in is an inch wider than the parapet on both sides.
    expect(of({"walls.parapetIn": 36, "walls.capIn": 3}).weights.parapetPlf).toBeCloseTo((150 * (6 * 3.25 + 8 * 3)) / 144, 9);
    // An edge column carries 30 ft of it, a corner column 15 ft and what stands past the column line.
    expect(reach({"walls.parapetIn": 36}, "edge column").roof[0]?.lengthFt).toBe(30);
    expect(reach({"walls.parapetIn": 36}, "corner column").roof[0]?.lengthFt).toBeCloseTo(15 + 10 / 12, 9);
    // A roof of its own says how far its beams stand up
    // above its structure: 6 1/4 in of layers and 10 in of fall lie higher, and no upstand makes up for them.
    expect(of({"walls.parapetIn": 36, "roof.given": "deck", "roof.upstandIn": 0}).planes.parapetAddedIn).toBe(52.25);
    // No roof, no parapet.
    expect(of({"walls.parapetIn": 36, "column.roofDeadPsf": 0, "column.roofLivePsf": 0}).planes).toMatchObject({parapetIn: 0, stories: 1});
  });

  test("run a parapet to the outer faces of the short sides' walls, or to a joint before panels that rise past it", () => {
    const runIn = (changes: Readonly<Record<string, unknown>>) => parapetRunIn(library(changes), of(changes).planes);
    // 1,440 in and at either end 10 in of column, 1 in of room and 6 in of light wall; to panels 11 in less 3/4 in.
    expect([runIn({}), runIn({"walls.shortSide": "cladding"}), runIn({"walls.shortSide": "solid panel"})]).toEqual([1460, 1474, 1460.5]);
    // 6.25 in of 6 in concrete on both sides: 2 x 1,474 x 37.5 in3.
    expect(of({"walls.shortSide": "cladding", "walls.parapetIn": 36}).materials.concreteYd3).toBeCloseTo((2 * 1474 * 6.25 * 6) / 1728 / 27, 9);
  });

  test("close the deck's ends only where the beam lies below the deck, and hang on it", () => {
    const closed = {"edgeBeam.kind": "below", "walls.teeEnds": "concrete", "walls.teeEndStripIn": 4};
    expect(deckEnds(library({...closed, "edgeBeam.kind": "ledge"}), 34)).toBeUndefined();
    expect(deckEnds(library({"edgeBeam.kind": "below"}), 34)).toBeUndefined();
    // 34 x 4 in: 141.7 plf; cladding of 15 psf 34 in high 42.5 plf.
    expect(deckEnds(library(closed), 34)).toMatchObject({heightIn: 34, thicknessIn: 4});
    expect(deckEnds(library(closed), 34)?.plf).toBeCloseTo(141.67, 2);
    expect(deckEnds(library({...closed, "walls.teeEnds": "cladding"}), 34)?.plf).toBeCloseTo(42.5, 9);
    // A strip of 12 in in front of a web of 14 in stands out past the columns of 20 in: 7 + 12 in from their lines; one of 2 in does not.
    expect([of({...closed, "walls.teeEndStripIn": 12}).planes.longOutIn, of({...closed, "walls.teeEndStripIn": 2}).planes.longOutIn]).toEqual([19, 10]);
    const [bare, hung] = [{"edgeBeam.kind": "below"}, closed].map((changes) => evaluate(library(changes), catalog));
    expect((hung?.edgeBeam.loads.claddingPlf ?? 0) - (bare?.edgeBeam.loads.claddingPlf ?? 0)).toBeCloseTo(141.67, 2);
    // The roof's beam has it as well, where no other cladding is counted: 28.17 ft between columns.
    const roofs = [bare, hung].map((one) => one && columnLevels(framingOf(one), "edge column")[0]?.wallKip);
    expect(roofs[0]).toBe(0);
    expect(roofs[1]).toBeCloseTo((0.14167 * 338) / 12, 3);
  });
});

describe("the deck's edge", () => {
  const thick = (changes: Readonly<Record<string, unknown>>) => check({"walls.shortSide": "solid panel", ...changes}, "deck edge");

  test("reaches past its outermost stem as far as ten times its thickness", () => {
    // 10DT32: (120 - 60 - 7.75)/2 = 26.125 in of flange, and 10 in of strip up to the panels: 36.1 in on 2 + 2 in.
    expect(of({"walls.shortSide": "solid panel"}).edge).toMatchObject({flangeIn: 26.125, reachIn: 36.125});
    expect(thick({}).verdict).toBe("ok");
    // A column of 28 in puts the wall 14 in out: 40.1 in on 4 in.
    expect(thick({"column.sideIn": 26}).verdict).toBe("ok");
    expect(thick({"column.sideIn": 28}).verdict).toBe("fails");
    // A thicker topping mends it.
    expect(thick({"column.sideIn": 28, "deck.toppingIn": 2.25}).verdict).toBe("ok");
  });

  test("is a piece cut narrower, or a strip beyond the last whole one", () => {
    const odd = {"walls.shortSide": "solid panel", "bay.beamSpanFt": 31};
    // 124 ft: twelve tees of 10 ft and 4 ft.
    expect(of(odd).edge.pieces).toMatchObject({perRow: 13, lastWidthFt: 4, stripFt: 0});
    expect(of({...odd, "walls.endFill": "strip"}).edge).toMatchObject({lastStripIn: 58, firstStripIn: 10, pieces: {perRow: 12, lastWidthFt: 10, stripFt: 4}});
    // The stems with the web between are 67.75 in over: 4 ft are too narrow, 6 ft are not.
    expect(check(odd, "last piece").verdict).toBe("fails");
    expect(check({...odd, "bay.beamSpanFt": 31.5}, "last piece").verdict).toBe("ok");
    expect(check({...odd, "walls.endFill": "strip"}, "last piece").verdict).toBe("ok");
    // Not where nothing is counted.
    expect(of({"bay.beamSpanFt": 31, "walls.endFill": "strip"}).edge.pieces).toMatchObject({perRow: 13, stripFt: 0});
  });

  test("of planks is the plank itself", () => {
    const {edge} = evaluate(withValues(seed("classroom-wing"), {"walls.shortSide": "solid panel"}), catalog).walls;
    expect(edge).toMatchObject({flangeIn: 0, thicknessIn: 10, reachIn: 8});
  });
});

describe("areas", () => {
  test.each([
    {"walls.shortSide": "solid panel", "walls.glassShare": 0.3}, {"walls.shortSide": "spandrel"}, {"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside"},
    {"walls.shortSide": "cladding"}, {"edgeBeam.kind": "below", "walls.shortSide": "spandrel", "walls.teeEnds": "concrete"}, {"walls.shortSide": "not counted"},
    {"walls.shortSide": "insulated panel", "daylight.sides": "one", "story.floorToFloorFt": 8}, {"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 144, "story.floorToFloorFt": 9},
    // Sill and beam meet: 60 in of upstand under 34 1/4 + 13 in, in a story of 96 in.
    {"walls.shortSide": "not counted", "edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8},
  ])("of the kinds of each side add up to its rectangle, with the parapet on top: %o", (changes) => {
    for (const parapetIn of [0, 42]) {
      const {areas, planes, counted} = of({...changes, "walls.parapetIn": parapetIn});
      const sum = (side: string) => areas.parts.reduce((total, part) => (part.side === side ? total + part.ft2 : total), 0);
      const heightFt = (planes.topIn + parapetIn) / 12;
      expect(sum("long")).toBeCloseTo(2 * ((planes.lengthIn + (counted ? 2 * planes.shortOutIn : 0)) / 12) * heightFt, 6);
      expect(sum("short")).toBeCloseTo(2 * ((planes.widthIn + (counted ? 2 * planes.longOutIn : 0)) / 12) * heightFt, 6);
      expect(areas.wallFt2).toBeCloseTo(sum("long") + sum("short"), 9);
    }
  });

  test("by hand for the library: windows of the long sides between the columns, spandrels of the short ones", () => {
    const {areas} = of({"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 72, "walls.spandrelUpstandIn": 30});
    const ft2 = (side: string, kind: string) => areas.parts.find((part) => part.side === side && part.kind === kind)?.ft2 ?? 0;
    // Glass of 98.75 in in both stories, between columns 28'-4" apart, in four bays, on two sides.
    const {story} = evaluate(library(), catalog);
    expect(ft2("long", "windows")).toBeCloseTo(2 * 2 * 4 * ((360 - 20) / 12) * (story.glassIn / 12), 6);
    // Short sides: 80 ft less three columns' 20 in plus two halves: 80 + 20/12 - 60/12 = 76.67 ft; spandrels 42.25 in below both floors, 29.75 in above one.
    expect(ft2("short", "spandrel")).toBeCloseTo(2 * (920 / 12) * ((2 * 42.25 + 29.75) / 12), 6);
    expect(ft2("short", "columns")).toBeCloseTo(2 * 5 * 30, 6);
  });

  test("are of the kind that closes each side, its ends seen from the long ones; windows and parapet are counted by themselves", () => {
    const seen = (changes: Readonly<Record<string, unknown>>) => {
      const {parts, windowFt2, parapetFt2} = of({"walls.parapetIn": 36, ...changes}).areas;
      const ft2 = (side: string, kind: string) => parts.find((part) => part.side === side && part.kind === kind)?.ft2 ?? 0;
      const sums = (kind: string) => ft2("long", kind) + ft2("short", kind);
      expect([windowFt2, parapetFt2]).toEqual([expect.closeTo(sums("windows"), 9), expect.closeTo(sums("parapet"), 9)]);
      return ft2;
    };
    // Two sides of 980 in by 30 ft, three tenths of them windows. Panels of 8 in an inch off the columns: 9 in at each of four corners.
    const panels = seen({"walls.shortSide": "solid panel", "walls.panelThicknessIn": 8, "walls.glassShare": 0.3});
    expect([panels("short", "panels"), panels("short", "windows"), panels("long", "panels")]).toEqual([expect.closeTo(3430, 6), expect.closeTo(1470, 6), expect.closeTo(90, 6)]);
    // Both sides have a parapet of 3 ft: 4,900 ft2 / 10, and on the long ones over 1,440 + 2 x 19 in.
    expect([panels("short", "parapet"), panels("long", "parapet")]).toEqual([expect.closeTo(490, 6), expect.closeTo((2 * 1478 * 3) / 12, 6)]);
    // Light walls are 6 in thick.
    const light = seen({"walls.shortSide": "cladding", "walls.glassShare": 0.15});
    expect([light("short", "cladding"), light("short", "windows"), light("long", "cladding")]).toEqual([expect.closeTo(4165, 6), expect.closeTo(735, 6), expect.closeTo(70, 6)]);
    // Spandrels past the columns: 8 in and an inch.
    const past = seen({"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside"});
    expect([past("short", "columns"), past("short", "panels")]).toEqual([0, 0]);
    expect(past("long", "spandrel") - seen({"walls.shortSide": "spandrel"})("long", "spandrel")).toBeCloseTo(90, 6);
    expect(seen({})("short", "windows")).toBe(0);
  });

  test("count the guard of a highest floor that has no roof", () => {
    const design = withValues(seed("parking-structure"), {"walls.shortSide": "spandrel", "walls.spandrelUpstandIn": 42, "walls.spandrelDepthIn": 84});
    const {areas, planes} = evaluate(design, catalog).walls;
    expect(planes).toMatchObject({stories: 3, roofed: false});
    const short = areas.parts.filter(({side}) => side === "short").reduce((sum, {ft2}) => sum + ft2, 0);
    // Three stories of 11 ft over 121'-10", and 42 in of guard between the columns: 1440 + 22 - 66 in.
    expect(short).toBeCloseTo(2 * (((1440 + 22) / 12) * 33 + ((1440 + 22 - 66) / 12) * 3.5), 6);
  });
});

test("concrete and its carbon count panels, spandrels, the deck's ends and the parapet", () => {
  const panels = of({"walls.shortSide": "solid panel"});
  // 980 in less eight joints by (179.25 + 180) in, 8 in thick, on both sides: 2 x (974/12) x (359.25/12) x (8/12)/27 yd3.
  expect(panels.materials.concreteYd3).toBeCloseTo((2 * (974 / 12) * (359.25 / 12) * (8 / 12)) / 27, 6);
  // The table's 379.7 kg in a cubic yard of precast concrete of 5,000 psi.
  expect(panels.materials.carbonKg).toBeCloseTo(379.7 * panels.materials.concreteYd3, 6);
  const both = of({"walls.shortSide": "solid panel", "walls.glassShare": 0.5});
  expect(both.materials.concreteYd3).toBeCloseTo(panels.materials.concreteYd3 / 2, 9);
  expect(both.materials.carbonKg).toBeCloseTo(panels.materials.carbonKg / 2, 9);
  // Spandrels of a side are two: 458 in of 8 in, 72 in deep on the floor, 42 + 1/4 + 36 in under a parapet on the roof; the long sides have 6.25 by 6 in of it over 1,440 + 2 x 9 in.
  expect(of({"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 72, "walls.parapetIn": 36}).planes.endOuterIn).toBe(9);
  expect(of({"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 72, "walls.parapetIn": 36}).materials.concreteYd3)
    .toBeCloseTo((4 * 458 * 8 * (72 + 78.25) + 2 * (1440 + 18) * 6.25 * 6) / 1728 / 27, 9);
  // Under a roof of its own the floors' strips are 34 in high over 338 in, the roof's 26 in: four bays on both sides, 4 in thick; cladding there is no concrete.
  const strips = (teeEnds: string) => of({"roof.given": "deck", "edgeBeam.kind": "below", "walls.teeEnds": teeEnds, "walls.teeEndStripIn": 4}).materials;
  expect(strips("concrete").concreteYd3).toBeCloseTo((8 * 338 * 4 * (34 + 26)) / 1728 / 27, 9);
  expect(strips("cladding")).toEqual({concreteYd3: 0, carbonKg: 0});
  // 458 in of 72 x 8 in twice on a side, on two sides and two levels.
  expect(of({"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 72}).materials.concreteYd3).toBeCloseTo((2 * 2 * 2 * (458 / 12) * 4) / 27, 9);
});
