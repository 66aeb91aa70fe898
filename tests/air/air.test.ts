import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {straightLossIn} from "../../lib/air/air.js";
import {mainCosts} from "../../lib/air/costs.js";
import {clearAtTopIn, ductWidthIn, stemGapIn} from "../../lib/air/ductRoom.js";
import {mainSections} from "../../lib/air/flows.js";
import {airParts} from "../../lib/air/parts.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {buildingEnvelope} from "../../lib/story/envelope.js";
import {leastFloorToFloor} from "../../lib/story/solve.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog} from "../support/designs.js";
import {stemSpaceFt2} from "../../lib/air/wayBack.js";
import {hold, within} from "../properties/arbitrary.js";
import {airOf, checkOf, library} from "./model.js";

const verdict = (id: string, changes: Readonly<Record<string, unknown>>) => checkOf(library(changes), id)?.verdict;

describe("air", () => {
  test("falls along the main as feeders leave it, and what leaves is what came", () => {
    // 1,600 cfm by four feeders: 1,600, 1,200, 800 and 400 between them.
    expect(library().air.plan.sections.map(({flowCfm}) => flowCfm)).toEqual([1600, 1200, 800, 400]);
    expect(library({"air.riser": "middle"}).air.plan.sections.map(({flowCfm}) => flowCfm)).toEqual([400, 800, 800, 400]);
    // From the riser at 240 in to the feeders at 60, 180, 300 and 420 in, one stretch after the other.
    expect(library({"air.riser": "middle"}).air.plan.sections.map(({x0In, x1In}) => [x0In, x1In])).toEqual([[60, 180], [180, 240], [240, 300], [300, 420]]);
    expect(library({"air.riser": "ends"}).air.plan.sections.map(({flowCfm}) => flowCfm)).toEqual([800, 400, 400, 800]);
    // Of five feeders the middle one has half of its air from either side.
    expect(library({"air.riser": "ends", "services.servedFt2": 2000}).air.plan.sections.map(({flowCfm}) => flowCfm)).toEqual([1000, 600, 200, 200, 600, 1000]);
  });

  test("is none of a floor without it, and loses nothing in a stretch with less than a cubic foot a minute", () => {
    expect(airOf(withValues(library().design, {"services.airCfmPerFt2": 0}))).toBeUndefined();
    // From two risers the middle one of five feeders has half of its cubic foot from either side.
    const {air} = library({"air.riser": "ends", "services.servedFt2": 2000, "services.airCfmPerFt2": 0.0025});
    expect(air.plan.sections.map(({flowCfm}) => flowCfm)).toEqual([2.5, 1.5, 0.5, 0.5, 1.5, 2.5]);
    expect(straightLossIn(air)).toBeGreaterThan(0);
    expect(straightLossIn(air)).toBeLessThan(1e-4);
  });

  test("is counted once of a feeder at the riser itself", () => {
    expect(mainSections(400, [100], [100, 200])).toEqual([{x0In: 100, x1In: 100, flowCfm: 400}, {x0In: 100, x1In: 200, flowCfm: 200}]);
  });

  test("has ducts for the rate that the design gives, a hundredth at least, or for the usual tenth of an inch", () => {
    expect([0, 0.05, 0.005].map((frictionInPer100Ft) => library({"air.frictionInPer100Ft": frictionInPer100Ft}).air.rateIn)).toEqual([0.1, 0.05, 0.01]);
  });

  test("takes a plenum that holds main, pipes and lights, whichever needs the most", () => {
    // 2 in of hangers and 10 in of main along the ledge; 10 in of pipes and 4 in of lights; a ledge of 13 in.
    const least = (changes: Readonly<Record<string, unknown>>) => library(changes).air.leastPlenumIn;
    expect([least({}), least({"edgeBeam.ledgeDepthIn": 8}), least({"edgeBeam.ledgeDepthIn": 8, "services.sprinklerIn": 10})]).toEqual([13, 12, 14]);
  });

  test("that comes back is what goes in, less what is exhausted, whatever way it goes", () => {
    const way = fc.constantFrom("trunk", "stems", "plenum", "rooms");
    const riser = fc.constantFrom("end", "middle", "ends");
    hold(200, fc.property(way, riser, within(0, 90), fc.integer({min: 400, max: 4800}), fc.integer({min: 1, max: 4}), (way, riser, exhaustPercent, servedFt2, every) => {
      const {air} = library({"air.way": way, "air.riser": riser, "air.exhaustPercent": exhaustPercent, "services.servedFt2": servedFt2, "air.supplyEvery": every});
      const {plan} = air;
      expect(plan.returnCfm).toBeCloseTo(plan.flowCfm * (1 - exhaustPercent / 100), 6);
      // Feeders together carry the supply, risers together both.
      expect(plan.supply.length * plan.sides.reduce((sum, {flowCfm}) => sum + flowCfm, 0)).toBeCloseTo(plan.flowCfm, 6);
      expect(plan.risers.reduce((sum, {supply}) => sum + supply.flowCfm, 0)).toBeCloseTo(plan.flowCfm, 6);
      expect(plan.risers.reduce((sum, {back}) => sum + (back?.flowCfm ?? 0), 0)).toBeCloseTo(plan.returnCfm, 6);
      // At the riser a leg of the main has all that its feeders give off.
      const given = plan.sections.reduce((sum, {flowCfm}, i) => sum + Math.abs(flowCfm - (plan.sections[i + 1]?.flowCfm ?? 0)), 0);
      expect(given).toBeGreaterThan(0);
    }));
  });

  test("of several risers, rows and bays", () => {
    expect(library({"air.serves": "bays", "air.baysServed": 2}).air.plan).toMatchObject({servedFt2: 2400, zone: {lengthIn: 720, rows: 1}});
    expect(library({"air.serves": "bays", "air.baysServed": 9, "air.rows": 2}).air.plan).toMatchObject({servedFt2: 9600, zone: {lengthIn: 1440, rows: 2}});
    expect(library({"services.servedFt2": 9600}).air.plan.zone.rows).toBe(2);
    expect(library({"air.riser": "ends"}).services.ducts?.quietFt2).toBeCloseTo(2 * (library().services.ducts?.quietFt2 ?? NaN), 6);
  });

  test("by feeders in every n-th space, and what they leave to the return", () => {
    const counts = (changes: Readonly<Record<string, unknown>>) => {
      const {plan} = library({"air.way": "stems", ...changes}).air;
      return [plan.supply.length, plan.returns.length];
    };
    // Four tees have seven spaces over 40 ft, and one more over the last joint, which is the zone's edge.
    expect(counts({})).toEqual([4, 3]);
    expect(counts({"air.supplyEvery": 1})).toEqual([7, 0]);
    expect(counts({"air.supplyEvery": 3})).toEqual([3, 4]);
    expect(counts({"air.returnEvery": 2})).toEqual([4, 2]);
    expect(counts({"air.returnEvery": 0})).toEqual([4, 0]);
  });

  test("lies beside the ledge, beside the girder in the middle, or where it is told, and says how far it moved", () => {
    // Bearings three quarters out on 8 in of ledge: 2 in of it lie inside them, and 4 in are left beside it.
    expect(library().air.plan.trunk).toMatchObject({y0In: 6, y1In: 32, movedIn: 0});
    // 40 ft, 16 in of half girder, 4 in beside it.
    expect(library({"air.place": "middle", "air.rows": 2}).air.plan.trunk).toMatchObject({y0In: 500, movedIn: 33});
    expect(library({"air.place": "middle"}).air.plan.trunk).toMatchObject({y1In: 460});
    expect(library({"air.place": "across", "air.acrossFt": 20}).air.plan.trunk).toMatchObject({y0In: 227, y1In: 253, movedIn: 0});
    expect(library({"air.place": "across", "air.acrossFt": 60}).air.plan.zone.firstRow).toBe(1);
  });

  test("passes a girder over, under or through it", () => {
    const how = (changes: Readonly<Record<string, unknown>>) => library({"air.place": "middle", "air.rows": 2, "services.servedFt2": 2400, ...changes}).air.plan.crossings.map(({how: one}) => one);
    expect(how({})).toEqual(["through its web"]);
    expect(how({"girder.kind": "rectangle"})).toEqual(["over the girder"]);
    // 13 in of ledge and 10 in of drop against 12 in of foot, 10 in of feeder and an inch between.
    expect(how({"story.ceiling": "below", "story.ceilingDropIn": 10})).toEqual(["under the girder"]);
    expect(how({"story.ceiling": "below", "story.ceilingDropIn": 9.9})).toEqual(["through its web"]);
    expect(checkOf(library({"air.place": "middle", "air.rows": 2, "services.servedFt2": 2400, "story.ceiling": "below", "story.ceilingDropIn": 10}), "feeders under the girder")).toMatchObject({verdict: "ok", demand: 11, capacity: 11});
    expect(how({"deck.member": "4HC8"})).toEqual(["under the girder"]);
    expect(library({"air.rows": 1}).air.plan.crossings).toEqual([]);
    expect(verdict("girder web opening", {"air.place": "middle", "air.rows": 2, "services.servedFt2": 2400})).toBe("near");
    expect(verdict("feeders under the girder", {"air.place": "middle", "air.rows": 2, "services.servedFt2": 2400, "deck.member": "4HC8"})).toBe("fails");
  });
});

describe("a story of 14'-8\" with 34 in of deck and an 8 in ledge", () => {
  const STORY = {"story.floorToFloorFt": 14 + 8 / 12, "edgeBeam.ledgeDepthIn": 8, "story.finishIn": 0, "air.place": "middle", "air.rows": 2, "services.servedFt2": 4800};

  test("has its flush ceiling 11'-2\" up, and a trunk boxed down the middle leaves what its drop leaves", () => {
    // 176 - 34 - 8 = 134 in. A main of 16 in with 2 in of hangers and an inch of board, less the 8 in that the plenum has: 11 in.
    const {story, services} = library({...STORY, "air.run": "box", "services.mainDepthIn": 16});
    expect(story.ceilingHeightIn).toBe(134);
    expect(services.ducts?.casing).toMatchObject({kind: "box", dropIn: 11, footIn: 123});
    // A strip hangs lower by pipes and lights, 8 in of them.
    expect(library({...STORY, "air.run": "strip", "services.mainDepthIn": 16}).services.ducts?.casing).toMatchObject({kind: "strip", dropIn: 19, footIn: 115});
    // Where the plenum is deep enough nothing drops.
    expect(library({...STORY, "air.run": "box", "services.mainDepthIn": 5}).services.ducts?.casing).toMatchObject({dropIn: 0, footIn: 134});
  });

  test("holds a head under the box and a ceiling's height under the strip, on both sides of the limit", () => {
    const under = (run: string, footIn: number) => verdict("casing headroom", {...STORY, "air.run": run, "air.casing": "stated", "air.casingWidthIn": 60, "air.casingDropIn": 134 - footIn});
    expect([under("box", 80), under("box", 79)]).toEqual(["ok", "fails"]);
    expect([under("strip", 90), under("strip", 89)]).toEqual(["ok", "fails"]);
  });

  test("has a box of its own size only where the ducts fit into it", () => {
    const stated = (id: string, widthIn: number, dropIn: number) => verdict(id, {...STORY, "air.run": "box", "air.casing": "stated", "services.mainDepthIn": 16, "air.casingWidthIn": widthIn, "air.casingDropIn": dropIn});
    // 26 in of main, an inch of air and an inch of board at each side.
    expect([stated("casing width", 30, 11), stated("casing width", 29.9, 11)]).toEqual(["ok", "fails"]);
    const short = checkOf(library({...STORY, "air.run": "box", "air.casing": "stated", "services.mainDepthIn": 16, "air.casingWidthIn": 27, "air.casingDropIn": 8}), "casing width");
    expect(short?.message).toBe("The ducts are wider than the box allows by 3 in: a wider box, or a narrower main.");
    expect([stated("casing drop", 30, 11), stated("casing drop", 30, 10.9)]).toEqual(["ok", "fails"]);
  });

  test("says when a low box takes more than half of the ceiling", () => {
    const share = (widthIn: number, dropIn: number) => verdict("box share", {...STORY, "air.run": "box", "air.casing": "stated", "air.casingDropIn": dropIn, "air.casingWidthIn": widthIn, "bay.spanFt": 15, "services.servedFt2": 1800});
    // 30 ft of floor: half of it is 180 in. A box that leaves a ceiling's height is no obstacle.
    expect([share(180, 50), share(181, 50), share(181, 40)]).toEqual(["ok", "fails", undefined]);
    // 134 in less 44 are a ceiling's 90 in.
    expect([share(181, 44), share(181, 44.25)]).toEqual([undefined, "fails"]);
  });
});

describe("checks of supply and return", () => {
  test("ask nothing of a file that says nothing of its air", () => {
    expect(library({"air.place": "fit"}).air.checks).toEqual([]);
  });

  test("hold friction to the rate", () => {
    const {main, feeder} = library().air;
    for (const [id, found] of [["main friction", main], ["feeder friction", feeder]] as const) {
      const at = found.friction.inPer100Ft;
      expect([verdict(id, {"air.frictionInPer100Ft": at * 1.0001}), verdict(id, {"air.frictionInPer100Ft": at * 0.9999}), verdict(id, {})]).toEqual(["ok", "fails", undefined]);
    }
  });

  test("hold a riser between stems", () => {
    const {air} = library();
    const [riser] = air.plan.risers;
    // 12 in with an inch of air at each side; the half space at the end: 30 in less half of a stem 7.75 in wide.
    expect(checkOf(library(), "riser room")).toMatchObject({demand: (riser?.alongIn ?? 0) + 2, capacity: 26.125, verdict: "ok"});
    expect(verdict("riser room", {"services.mainWidthIn": 24, "services.mainDepthIn": 30, "services.servedFt2": 4800})).toBe("fails");
  });

  test("leave the return its spaces, its plenum and its quiet", () => {
    expect([verdict("return spaces", {"air.way": "stems"}), verdict("return spaces", {"air.way": "stems", "air.supplyEvery": 1})]).toEqual(["ok", "fails"]);
    expect(checkOf(library({"air.way": "stems", "deck.member": "4HC8"}), "return spaces")?.message).toContain("flat deck");
    expect(checkOf(library({"air.way": "stems", "air.supplyEvery": 1}), "return spaces")?.message).toMatch(/^Feeders or risers take every space.*: feeders in fewer spaces, or a return another way\.$/);
    expect(checkOf(library({"air.way": "stems", "air.returnEvery": 0}), "return spaces")?.message).toMatch(/: a return in every free space, or another way back\.$/);
    expect(checkOf(library({"air.way": "stems"}), "return velocity")?.label).toBe("Velocity of the return between stems");
    expect(checkOf(library({"air.way": "plenum"}), "return velocity")?.label).toBe("Velocity of the return in the plenum");
    // 13 in of plenum less lights: 4 in must be left.
    expect([verdict("return plenum", {"air.way": "plenum", "services.lightIn": 9}), verdict("return plenum", {"air.way": "plenum", "services.lightIn": 9.1})]).toEqual(["ok", "fails"]);
    expect(checkOf(library({"air.way": "plenum", "story.ceiling": "none"}), "return plenum")?.message).toContain("hang a ceiling");
    expect(library({"air.way": "plenum", "services.lightIn": 9.1}).air.wayBack).toMatchObject({freeFt2: 0, velocityFpm: undefined, freeHeightIn: expect.closeTo(3.9, 9)});
    // Free: 480 in by 9 in less 26 by 9 in of main, 28.4 ft2; at 1,600 cfm 56 ft/min.
    expect(library({"air.way": "plenum"}).air.wayBack).toMatchObject({freeFt2: expect.closeTo(28.375, 6), velocityFpm: expect.closeTo(56.39, 2)});
    expect(checkOf(library({"air.way": "plenum", "services.lightIn": 9.1}), "return plenum")?.message).toMatch(/^Between lights and deck no height/);
    // 13 in of ledge and 3 of drop less the girder's 12 leave 4 in under it: as good as any.
    expect(checkOf(library({"air.way": "plenum", "air.place": "middle", "air.rows": 2, "story.ceiling": "below", "story.ceilingDropIn": 3}), "plenum at the girder")).toMatchObject({verdict: "ok", demand: 4, capacity: 4});
    expect(verdict("plenum at the girder", {"air.way": "plenum", "air.place": "middle", "air.rows": 2})).toBe("fails");
  });

  test("give every wall in the way its openings", () => {
    const {openings} = library({"air.way": "rooms", "air.wallsCrossed": 3}).air.wayBack ?? {openings: []};
    // A quarter, a half and three quarters of the floor lie within the walls, seen from the far end: 1,200, 800, 400 cfm at 400 ft/min.
    expect(openings.map(({wall, flowCfm, freeFt2, openings: of}) => [wall, flowCfm, freeFt2, of])).toEqual([[1, 1200, 3, 2], [2, 800, 2, 1], [3, 400, 1, 1]]);
    // Around a riser in the middle each wall parts off the floor beyond it on its own side.
    expect(library({"air.way": "rooms", "air.wallsCrossed": 3, "air.riser": "middle"}).air.wayBack?.openings.map(({flowCfm}) => flowCfm)).toEqual([400, 800, 400]);
    expect(library({"air.way": "rooms", "air.wallsCrossed": 1, "air.riser": "ends"}).air.wayBack?.openings[0]?.flowCfm).toBe(0);
  });
});

describe("the space between the stems of a tee", () => {
  test("is what its gap comes to strip by strip, also where stems flare under the flange", () => {
    const tees = catalog.deckMembers.filter(({family}) => family === "double tee").map(({designation}) => shapeOf(catalog, designation));
    expect(tees.some(({dimensions}) => (dimensions["chamferIn"] ?? 0) > 0)).toBe(true);
    for (const shape of tees) {
      const heightIn = (shape.dimensions["depthIn"] as number) - (shape.dimensions["flangeIn"] as number);
      const gaps = Array.from({length: 4000}, (_, i) => stemGapIn(shape, "between stems", ((i + 0.5) * heightIn) / 4000));
      expect(stemSpaceFt2(shape)).toBeCloseTo((gaps.reduce((sum, gap) => sum + gap, 0) / 4000) * (heightIn / 144), 5);
    }
  });

  test("takes the air of the longer side of a main, where it has two", () => {
    // A main 15 ft across serves 162 in on one side of its middle and 318 on the other: 265 of the 400 cfm of each of four feeders. Through three spaces of 11.2 ft2 come 1,060 cfm.
    const {wayBack, plan} = library({"air.way": "stems", "air.place": "across", "air.acrossFt": 15}).air;
    expect(plan.sides.map(({flowCfm}) => flowCfm)).toEqual([expect.closeTo(135, 9), expect.closeTo(265, 9)]);
    expect(wayBack?.velocityFpm).toBeCloseTo((4 * 265) / 3 / ((53.75 * 30) / 144), 9);
  });

  test("and every other way back is told of from a cubic foot of air a minute on", () => {
    const back = (exhaustPercent: number) => library({"air.way": "plenum", "services.airCfmPerFt2": 4 / 1600, "air.exhaustPercent": exhaustPercent}).air.wayBack;
    expect([back(75)?.velocityFpm !== undefined, back(76)]).toEqual([true, undefined]);
  });
});

describe("what each inch of main costs", () => {
  test("is an inch of plenum where the main decides it, and no less than the ledge", () => {
    const model = library({"story.ceiling": "below", "story.ceilingDropIn": 20});
    const rows = mainCosts(model);
    const at = (depthIn: number) => rows.find((row) => row.depthIn === depthIn) ?? rows[0];
    expect(at(10)?.takenIn).toBe(13);
    expect((at(18)?.takenIn ?? 0) - (at(16)?.takenIn ?? 0)).toBe(2);
    expect(at(16)?.takenIn).toBe(18);
    for (const row of rows) {
      expect(row.underIn + row.takenIn).toBeCloseTo(model.story.clearUnderDeckIn, 9);
      // The other way around: the story whose ceiling hangs that far below the deck, by the page on stories.
      const dropped = withValues(model.design, {"story.ceilingDropIn": row.takenIn - model.story.ledgeDepthIn});
      const wanted = model.story.clearUnderDeckIn - (at(10)?.takenIn ?? 0);
      expect(leastFloorToFloor(dropped, 34, wanted, 0.25, model.story.ledgeDepthIn).floorToFloorIn).toBeCloseTo(row.floorToFloorIn, 9);
    }
  });

  test("is as much more wall as it is more story, whether or not what closes the short sides is counted", () => {
    for (const shortSide of ["not counted", "insulated panel", "spandrel"]) {
      const model = library({"walls.shortSide": shortSide});
      const {wallPerInchFt2} = buildingEnvelope(model.design, model.story);
      const rows = mainCosts(model);
      const [own] = rows.filter(({depthIn}) => depthIn === 10);
      for (const {floorToFloorIn, wallFt2} of rows) expect(wallFt2 - (own?.wallFt2 ?? 0), shortSide).toBeCloseTo(wallPerInchFt2 * (floorToFloorIn - (own?.floorToFloorIn ?? 0)), 6);
      expect(rows.at(-1)?.floorToFloorIn).toBeGreaterThan((own?.floorToFloorIn ?? 0) + 10);
    }
  });

  test("is narrower as it is deeper, and more wall", () => {
    const rows = mainCosts(library({"services.servedFt2": 4800, "air.place": "middle"}));
    rows.slice(1).forEach((row, i) => {
      expect(row.widthIn).toBeLessThanOrEqual(rows[i]?.widthIn ?? 0);
      expect(row.wallFt2).toBeGreaterThanOrEqual(rows[i]?.wallFt2 ?? 0);
    });
  });
});

test("the boxes of a design are its ducts: as many feeders as spaces, each as large as it is stated", () => {
  const model = library({"air.way": "trunk"});
  const parts = airParts(model);
  const of = (kind: string) => parts.filter((part) => part.kind === kind);
  expect([of("feeder").length, of("return feeder").length, of("main").length, of("return main").length, of("riser").length, of("return riser").length, of("collar").length]).toEqual([4, 3, 1, 1, 1, 1, 7]);
  for (const {x0In, x1In, z0In, z1In} of of("feeder")) expect([x1In - x0In, z1In - z0In, z0In]).toEqual([14, 10, model.story.clearUnderDeckIn]);
  const [main] = of("main");
  expect([(main?.y1In ?? 0) - (main?.y0In ?? 0), main?.z1In, main?.z0In]).toEqual([26, 144, 134]);
});

test("the clear width at the top of a duct is what the stems leave its outside", () => {
  const shape = shapeOf(catalog, "10DT32");
  // 60 in between centers, less a stem of 4.75 in at the foot and 7.75 in at 30 in: at 10 in 5.75 in; an inch of air at either side.
  expect(clearAtTopIn(shape, "between stems", 10)).toBeCloseTo(60 - 5.75 - 2, 9);
  expect(clearAtTopIn(shape, "between stems", 10)).toBe(ductWidthIn(shape, "between stems", 8) + 2);
  expect(clearAtTopIn(shape, "between stems", 40)).toBeUndefined();
});
