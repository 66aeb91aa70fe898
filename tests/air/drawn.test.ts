import {describe, expect, test} from "vitest";
import {straightLossIn} from "../../lib/air/air.js";
import {hungBoxes} from "../../lib/air/casing.js";
import {mainCosts} from "../../lib/air/costs.js";
import {ductFriction} from "../../lib/air/friction.js";
import {checkOf, library} from "./model.js";

const ids = (changes: Readonly<Record<string, unknown>>) => {
  const {checks} = library(changes);
  for (const {id, clause, message} of checks) expect([typeof id, typeof clause, typeof message]).toEqual(["string", "string", "string"]);
  return library(changes).air.checks.map(({id}) => id);
};

describe("the ducts of 1,600 cfm as they are drawn", () => {
  test("carry it at 1,200 ft/min in a main of 24 by 8 in, and a quarter of it at 600 in a feeder of 12 by 8 in", () => {
    const {main, feeder} = library().air;
    expect([main.flowCfm, main.velocityFpm, feeder.flowCfm, feeder.velocityFpm]).toEqual([1600, expect.closeTo(1200, 9), 400, expect.closeTo(600, 9)]);
  });

  test("are heard by what covers them: a main by box, ceiling or nothing, a feeder by the ceiling at most", () => {
    const noise = (changes: Readonly<Record<string, unknown>>) => {
      const {main, feeder} = library(changes).air;
      return [main.noise, feeder.noise];
    };
    // A main at 1,200 ft/min keeps to RC 25 behind a ceiling, not in the open room. A feeder 9 in wide at 800 keeps to 80 % of the same.
    const slender = {"services.branchWidthIn": 11};
    expect(noise(slender)).toEqual(["RC 25", "RC 25"]);
    expect(noise({...slender, "story.ceiling": "none"})).toEqual(["RC 35", "RC 35"]);
    // At 1,000 ft/min the ceiling does not hide a feeder that a box around its main does not hold; at 1,600 the box hides the main.
    const fast = {"air.run": "box", "services.branchWidthIn": 9.2, "services.mainWidthIn": 20};
    expect(noise(fast)).toEqual(["RC 25", "RC 35"]);
    expect(noise({...fast, "air.run": "strip"})).toEqual(["RC 35", "RC 35"]);
    // A box hides its main without a ceiling as well.
    expect(noise({...fast, "story.ceiling": "none"})).toEqual(["RC 25", "RC 35"]);
  });

  test("give the return feeders what comes back over their side of the main", () => {
    const back = (changes: Readonly<Record<string, unknown>>) => library({"air.way": "trunk", "air.exhaustPercent": 25, ...changes}).air;
    // Three spaces for 1,200 cfm: along the ledge all of it comes from one side.
    expect(back({}).backFeeder?.flowCfm).toBeCloseTo(400, 6);
    expect(back({}).back?.flowCfm).toBe(back({}).plan.returnPeakCfm);
    const {backFeeder, plan} = back({"air.place": "across", "air.acrossFt": 15});
    // From both sides: the busier one has more than half, and both together all.
    const busier = Math.max(...plan.sides.map(({lengthIn}) => lengthIn)) / plan.sides.reduce((sum, {lengthIn}) => sum + lengthIn, 0);
    expect(busier).toBeGreaterThan(0.55);
    expect(backFeeder?.flowCfm).toBeGreaterThan(200);
    expect(backFeeder?.flowCfm).toBeLessThan(400);
    expect(library({"air.way": "plenum"}).air.backFeeder).toBeUndefined();
    // All of 4 cfm less three quarters comes back through one space: a cubic foot a minute is an airflow, less is none.
    const faint = (exhaustPercent: number) => library({"air.way": "trunk", "air.returnEvery": 3, "services.airCfmPerFt2": 4 / 1600, "air.exhaustPercent": exhaustPercent}).air.backFeeder?.flowCfm;
    expect([faint(75), faint(75.1)]).toEqual([1, undefined]);
  });

  test("lose pressure from the riser to the far end, section by section, and along the longest feeder", () => {
    const loss = (changes: Readonly<Record<string, unknown>>) => {
      const {air} = library(changes);
      const size = {kind: "rectangular", widthIn: 24, depthIn: 8} as const;
      const of = (from: number, to: number) => air.plan.sections.slice(from, to).reduce((sum, {flowCfm, x0In, x1In}) => sum + (ductFriction(flowCfm, size).inPer100Ft * (x1In - x0In)) / 1200, 0);
      const out = Math.max(...air.plan.sides.map(({lengthIn}) => lengthIn));
      return [straightLossIn(air), of, (air.feeder.friction.inPer100Ft * out) / 1200] as const;
    };
    const [end, along, feeder] = loss({});
    expect(end).toBeCloseTo(along(0, 4) + feeder, 12);
    // From a riser in the middle the worse of two legs counts, across the floor the longer of two feeders.
    const [middle, halves, half] = loss({"air.riser": "middle"});
    expect(middle).toBeCloseTo(Math.max(halves(0, 2), halves(2, 4)) + half, 12);
    // Over 1,300 ft2 the riser stands at 240 in between feeders at 60, 180 and 300 in: the leg back to the first two loses more.
    const [west, part, out] = loss({"air.riser": "middle", "services.servedFt2": 1300});
    expect(part(0, 2)).toBeGreaterThan(part(2, 3));
    expect(west).toBeCloseTo(part(0, 2) + out, 12);
    const [across, whole, longer] = loss({"air.place": "across", "air.acrossFt": 12});
    expect(across).toBeCloseTo(whole(0, 4) + longer, 12);
  });
});

describe("checks of the air", () => {
  test("look at where the main lies once a design says anything of it: its place, its box or its return", () => {
    expect(ids({"air.place": "fit"})).toEqual([]);
    for (const changes of [{"air.place": "ledge"}, {"air.place": "fit", "air.run": "box"}, {"air.place": "fit", "air.way": "rooms"}]) expect(ids(changes)).toEqual(expect.arrayContaining(["trunk room", "feeder spaces", "riser room"]));
  });

  test("hold the narrower of two risers, and between the feeders of planks", () => {
    const ends = library({"air.riser": "ends"});
    expect(checkOf(ends, "riser room")?.capacity).toBe(Math.min(...ends.air.plan.risers.map(({space}) => space.topIn)));
    // A last tee cut to 4 ft leaves its one stem 18 in from the far wall, less half of the stem's 7.75 in: the second riser's room.
    expect(checkOf(library({"air.riser": "ends", "bay.beamSpanFt": 31, "services.servedFt2": 4960}), "riser room")?.capacity).toBeCloseTo(14.125, 9);
    // Feeders every 10 ft: 120 in from one to the next, less the 14 in of one.
    expect(checkOf(library({"deck.member": "4HC8", "air.riser": "middle"}), "riser room")?.capacity).toBeCloseTo(120 - 14, 6);
  });

  test("ask nothing of a girder that feeders pass over", () => {
    const rows = {"air.place": "middle", "air.rows": 2, "services.servedFt2": 2400};
    const crossing = (changes: Readonly<Record<string, unknown>>) => ids({...rows, ...changes}).filter((id) => id.includes("girder"));
    // Three rows have two girders between them, all alike: they are asked of once.
    expect(crossing({"bay.baysAcross": 3, "air.rows": 3})).toEqual(["girder web opening"]);
    expect([crossing({}), crossing({"girder.kind": "rectangle"}), crossing({"deck.member": "4HC8"})]).toEqual([["girder web opening"], [], ["feeders under the girder"]]);
  });

  test("look under a box or a strip that hangs, and at its share where it is a low box below a ceiling", () => {
    const LOW = {"story.floorToFloorFt": 11, "services.mainDepthIn": 16, "edgeBeam.ledgeDepthIn": 8};
    const casing = (changes: Readonly<Record<string, unknown>>) => ids({...LOW, ...changes}).filter((id) => /casing|box/.test(id));
    expect(casing({})).toEqual([]);
    expect(casing({"air.run": "box"})).toEqual(["casing headroom", "box share"]);
    expect(casing({"air.run": "strip"})).toEqual(["casing headroom"]);
    expect(casing({"air.run": "box", "story.ceiling": "none"})).toEqual(["casing headroom"]);
    expect(casing({"air.run": "box", "services.mainDepthIn": 5})).toEqual([]);
    // Nor of one that does not drop below a ceiling which is itself too low.
    expect(casing({"air.run": "box", "services.mainDepthIn": 4, "story.floorToFloorFt": 10})).toEqual([]);
    expect(library({...LOW, "story.floorToFloorFt": 10}).story.ceilingHeightIn).toBeLessThan(90);
    expect(checkOf(library({...LOW, "air.run": "box"}), "casing headroom")?.message).not.toMatch(/strip/);
    expect(checkOf(library({"air.run": "strip"}), "casing headroom")?.message).toBe("The strip is as high as a ceiling must be.");
    expect(checkOf(library({"air.run": "box", "services.mainDepthIn": 16}), "casing headroom")?.message).toBe("A head passes under the box.");
  });

  test("of the return ask for spaces, feeders, duct, plenum and quiet, each where it is met", () => {
    const back = (changes: Readonly<Record<string, unknown>>) => ids(changes).filter((id) => /return|plenum/.test(id));
    expect(back({})).toEqual([]);
    expect(back({"air.way": "trunk"})).toEqual(["return spaces", "return feeder width", "return duct shape"]);
    // With grilles of its own the return duct asks for no spaces, nor does one below planks.
    expect(back({"air.way": "trunk", "air.returnEvery": 0})).toEqual(["return duct shape"]);
    expect(back({"air.way": "trunk", "deck.member": "4HC8"})).toEqual(["return duct shape"]);
    expect(back({"air.way": "stems"})).toEqual(["return spaces", "return duct shape", "return velocity"]);
    expect(back({"air.way": "plenum"})).toEqual(["return plenum", "return velocity"]);
    expect(back({"air.way": "rooms"})).toEqual([]);
    // One space for it is enough.
    expect(checkOf(library({"air.way": "stems", "air.returnEvery": 3}), "return spaces")).toMatchObject({verdict: "ok", capacity: 1});
  });
});

describe("a box below the ceiling", () => {
  test("lies around its ducts, an inch of air and an inch of board at each side", () => {
    const {services, air} = library({"air.run": "box", "edgeBeam.ledgeDepthIn": 8});
    const {casing} = services.ducts ?? {};
    expect([casing?.widthIn, (casing?.y1In ?? NaN) - (casing?.y0In ?? NaN)]).toEqual([30, 30]);
    expect([casing?.y0In, casing?.y1In]).toEqual([air.plan.trunk.y0In - 2, air.plan.trunk.y1In + 2]);
  });

  test("takes light on its own side, and its like on the other side where another main serves that", () => {
    const boxes = (changes: Readonly<Record<string, unknown>>) => hungBoxes(library({"air.run": "box", "edgeBeam.ledgeDepthIn": 8, ...changes}).services.ducts).map(({y0In, y1In}) => [y0In, y1In]);
    const [first, mirrored] = boxes({});
    expect(mirrored).toEqual([960 - (first?.[1] ?? NaN), 960 - (first?.[0] ?? NaN)]);
    expect(boxes({"air.rows": 2})).toHaveLength(1);
    expect(boxes({"bay.baysAcross": 3, "air.place": "middle"})).toHaveLength(1);
    // One that does not drop takes none, nor does a main in the plenum.
    expect(boxes({"services.mainDepthIn": 4})).toEqual([]);
    expect(boxes({"air.run": "plenum"})).toEqual([]);
    expect(hungBoxes(undefined)).toEqual([]);
  });
});

describe("what each depth of main takes", () => {
  const rows = (changes: Readonly<Record<string, unknown>> = {}) => mainCosts(library(changes));
  const at = (depthIn: number, changes: Readonly<Record<string, unknown>> = {}) => rows(changes).find((row) => row.depthIn === depthIn);

  test("is told from the shallowest to the deepest, the design's own among them once", () => {
    expect(rows({"services.mainDepthIn": 15}).map(({depthIn}) => depthIn)).toEqual([8, 10, 12, 14, 15, 16, 18, 20, 24, 28]);
    expect(rows({"services.mainDepthIn": 10}).map(({depthIn}) => depthIn)).toEqual([8, 10, 12, 14, 16, 18, 20, 24, 28]);
    for (const {depthIn, duct, widthIn} of rows()) expect([duct.size.depthIn, widthIn - duct.size.widthIn]).toEqual([depthIn - 2, 2]);
  });

  test("is too flat beyond 4 to 1", () => {
    for (const {duct: {size}, tooFlat} of rows({"services.servedFt2": 4800})) expect(tooFlat).toBe(size.widthIn > 4 * size.depthIn || size.depthIn > 4 * size.widthIn);
    expect(new Set(rows({"services.servedFt2": 4800}).map(({tooFlat}) => tooFlat))).toEqual(new Set([true, false]));
  });

  test("is the main with its hangers under planks with the feeders, in a box its board too, in a strip pipes and lights as well, without a ceiling no less than the pipes", () => {
    // 2 in of hangers, 16 in of main; feeders of 10 in; 4 in of pipes, 4 in of lights; an inch of board; the ledge takes 13 in.
    expect(at(16)?.takenIn).toBe(18);
    expect(at(8, {"deck.member": "4HC8", "services.branchDepthIn": 20})?.takenIn).toBe(22);
    expect(at(16, {"air.run": "box"})?.takenIn).toBe(19);
    expect(at(16, {"air.run": "strip"})?.takenIn).toBe(27);
    expect(at(16, {"air.place": "middle"})?.takenIn).toBe(26);
    expect(at(8, {"story.ceiling": "none"})?.takenIn).toBe(10);
    expect(at(8, {"story.ceiling": "none", "services.sprinklerIn": 12})?.takenIn).toBe(12);
    // Higher stories are more wall.
    expect(at(28)?.wallFt2).toBeGreaterThan(at(8)?.wallFt2 ?? Infinity);
  });
});
