import {describe, expect, test} from "vitest";
import {ductFriction} from "../../lib/air/friction.js";
import {checkOf, library} from "./model.js";

type Changes = Readonly<Record<string, unknown>>;
const verdict = (id: string, changes: Changes) => checkOf(library(changes), id)?.verdict;
const message = (id: string, changes: Changes) => checkOf(library(changes), id)?.message ?? "";
/** Which of some remedies mend a check that fails: what becomes of it with each; a check that is no longer asked holds. */
const mended = (id: string, changes: Changes, ...remedies: readonly Changes[]) => {
  expect(verdict(id, changes)).toBe("fails");
  return remedies.map((remedy) => verdict(id, {...changes, ...remedy}) ?? "not asked");
};

/** Airflow at which a rectangular duct has just 0.1 in of friction in 100 ft, cfm. */
function cfmAtRate(widthIn: number, depthIn: number): number {
  let [low, high] = [1, 100_000];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (ductFriction(middle, {kind: "rectangular", widthIn, depthIn}).inPer100Ft < 0.1) low = middle;
    else high = middle;
  }
  return low;
}

describe("main and return between the beams", () => {
  // A row of bays 120 in wide: the ledge reaches 2 in into it, and half a girder of 16 + 2 x 8 in takes 16. 102 in are left.
  const NARROW = {"bay.spanFt": 10, "services.servedFt2": 1200};

  test("have room for the main with 4 in at each side, and not for a hair more", () => {
    expect(checkOf(library({...NARROW, "services.mainWidthIn": 94}), "trunk room")).toMatchObject({verdict: "ok", demand: 102, capacity: 102});
    expect(verdict("trunk room", {...NARROW, "services.mainWidthIn": 94.01})).toBe("fails");
    expect(message("trunk room", {...NARROW, "services.mainWidthIn": 94.01})).toBe("The main is too wide for the strip between the beams: a narrower main.");
  });

  test("have 2 in between them, and the riser of a return that goes another way is as wide as the main", () => {
    // 4 + 46 + 2 + 46 + 4 = 102 in.
    expect(checkOf(library({...NARROW, "air.way": "plenum", "services.mainWidthIn": 46}), "trunk room")).toMatchObject({verdict: "ok", demand: 102});
    expect(verdict("trunk room", {...NARROW, "air.way": "plenum", "services.mainWidthIn": 46.01})).toBe("fails");
    // A return duct for 1,200 cfm at the main's 8 in is 26 in wide, 28 with its insulation: 4 + 64 + 2 + 28 + 4.
    expect(checkOf(library({...NARROW, "air.way": "trunk", "services.mainWidthIn": 64}), "trunk room")).toMatchObject({verdict: "ok", demand: 102});
    expect(verdict("trunk room", {...NARROW, "air.way": "trunk", "services.mainWidthIn": 64.01})).toBe("fails");
  });

  test("lie in the middle of a strip that is too narrow for them", () => {
    // Of 102 in between the beams at 2 and 104 in a main of 100 in needs 108: it lies from 3 to 103 in.
    const {trunk} = library({...NARROW, "services.mainWidthIn": 96}).air.plan;
    expect(trunk).toMatchObject({rowFromIn: 2, rowToIn: 104, neededIn: 104, y0In: 5, y1In: 101, backY0In: undefined, backY1In: undefined});
  });

  test("fit again with a narrower main, or the air back another way", () => {
    const wide = {...NARROW, "air.way": "plenum", "services.mainWidthIn": 60};
    expect(message("trunk room", wide)).toMatch(/: a narrower main, or the air back another way\.$/);
    expect(mended("trunk room", wide, {"services.mainWidthIn": 40}, {"air.way": "trunk"}, {"air.way": "none"})).toEqual(["ok", "ok", "ok"]);
  });
});

describe("the spaces for feeders", () => {
  test("begin where the floor of a main reaches past the middle of the first tee", () => {
    // Over 40 ft of span 200 ft2 are 5 ft of building: the space between the stems of the first tee is centered there.
    expect([200, 200.1].map((servedFt2) => verdict("feeder spaces", {"services.servedFt2": servedFt2}))).toEqual(["fails", "ok"]);
    // Where each third space is taken, that is the first one too; a flat deck's first strip is 120 in wide and 60 in away.
    expect([200, 200.1].map((servedFt2) => verdict("feeder spaces", {"services.servedFt2": servedFt2, "air.supplyEvery": 3}))).toEqual(["fails", "ok"]);
    expect([200, 200.1].map((servedFt2) => verdict("feeder spaces", {"services.servedFt2": servedFt2, "deck.member": "4HC8"}))).toEqual(["fails", "ok"]);
  });

  test("come with a larger floor, of an area or of bays", () => {
    expect(mended("feeder spaces", {"services.servedFt2": 100}, {"services.servedFt2": 150}, {"services.servedFt2": 400}, {"air.serves": "bays", "air.baysServed": 1})).toEqual(["fails", "ok", "ok"]);
  });
});

describe("a return feeder between stems", () => {
  // One return space of the three. Depth 10 in outside, 8 in inside; at its top the stems are 4.75 + 3 x 10/30 = 5.75 in wide:
  // 60 - 5.75 in, less an inch of insulation and an inch of air at each side, leaves 50.25 in, 50 in steps of 2.
  const ONE = {"air.way": "trunk", "air.returnEvery": 3};
  const at = (cfm: number) => ({...ONE, "services.airCfmPerFt2": cfm / 1600});

  test("is as wide as the space at the most", () => {
    const {air} = library(ONE);
    expect(air.plan.returns.length).toBe(1);
    // All of the air comes back through it, from the one side of a main along the ledge: 50 by 8 in at 900 ft/min are 2,500 cfm,
    // and friction would let more through.
    const cfm = 2500;
    expect(cfmAtRate(50, 8)).toBeGreaterThan(cfm);
    expect(checkOf(library(at(cfm * 0.9999)), "return feeder width")).toMatchObject({verdict: "ok", demand: 50, capacity: 50.25});
    expect(checkOf(library(at(cfm * 1.0001)), "return feeder width")).toMatchObject({verdict: "fails", demand: 52, capacity: 50.25});
  });

  test("is narrower with a return in more of the free spaces, or in deeper branches", () => {
    expect(message("return feeder width", at(3000))).toMatch(/: a return in more of the free spaces, or deeper branches\.$/);
    // 3,000 cfm want 480 in2: 54 by 9 in does not fit, 48 by 10 in does.
    expect(mended("return feeder width", at(3000), {"air.returnEvery": 2}, {"services.branchDepthIn": 11}, {"services.branchDepthIn": 12})).toEqual(["ok", "fails", "ok"]);
  });
});

describe("a riser that just passes between stems", () => {
  test("is as good as any: 26 in of 26.125 at the end wall", () => {
    const at = (cfm: number) => library({"services.airCfmPerFt2": cfm / 1600});
    const just = Array.from({length: 40}, (_, i) => 3200 + 100 * i).find((cfm) => at(cfm).air.plan.risers[0]?.alongIn === 24) as number;
    expect(checkOf(at(just), "riser room")).toMatchObject({verdict: "ok", demand: 26, capacity: 26.125});
  });
});

describe("stems that do not stand at even distances", () => {
  // Stems 50 in apart leave 70 in between those of neighbors.
  const UNEVEN = {"deck.dimensions": {stemSpacingIn: 50}};
  const depth = (changes: Changes) => library({...UNEVEN, ...changes}).checks.find(({id}) => id === "branch duct depth")?.label;

  test("are asked for the narrower of the places that feeders take", () => {
    expect(depth({})).toBe("Depth of the branch between stems");
    expect(depth({"air.supplyEvery": 1})).toBe("Depth of the branch between stems");
    expect(depth({"air.supplyEvery": 1, "deck.dimensions": {stemSpacingIn: 70}})).toBe("Depth of the branch between tees");
    expect(depth({"deck.dimensions": {stemSpacingIn: 70}})).toBe("Depth of the branch between stems");
  });

  test("leave a return feeder the narrower of the places that it takes", () => {
    // At the top of a feeder 10 in deep stems are 5.75 in wide; an inch of insulation and of air at each side: 70 - 9.75 in between tees, 50 - 9.75 within one.
    const width = (changes: Changes) => checkOf(library({"air.way": "trunk", ...UNEVEN, ...changes}), "return feeder width")?.capacity;
    expect(width({})).toBeCloseTo(60.25, 9);
    expect(width({"air.supplyEvery": 3})).toBeCloseTo(40.25, 9);
  });
});

describe("the return duct", () => {
  // 8 in deep inside, as the main: 32 in wide it is four to one.
  const at = (cfm: number) => ({"air.way": "trunk", "services.airCfmPerFt2": cfm / 1600});

  test("is four times as wide as deep at the most, wherever that is just met", () => {
    const cfm = cfmAtRate(32, 8);
    expect(checkOf(library(at(cfm * 0.9999)), "return duct shape")).toMatchObject({verdict: "ok", demand: 4, capacity: 4});
    expect(checkOf(library(at(cfm * 1.0001)), "return duct shape")).toMatchObject({verdict: "fails", demand: 34 / 8, capacity: 4});
  });

  test("is less flat with a deeper main, or with half of its air from two risers", () => {
    expect(message("return duct shape", at(2400))).toMatch(/: a deeper main, or two risers\.$/);
    expect(mended("return duct shape", at(2400), {"services.mainDepthIn": 14}, {"air.riser": "ends"})).toEqual(["ok", "ok"]);
  });
});

describe("the return that finds its own way", () => {
  test("drifts through the plenum at 500 ft/min at the most", () => {
    // 13 in of plenum less 9 of lights leave 4 in over 480 in, less 26 in of main: 12.611 ft2 take 6,305.6 cfm.
    const cfm = (((480 - 26) * 4) / 144) * 500;
    const at = (flow: number) => ({"air.way": "plenum", "services.lightIn": 9, "services.airCfmPerFt2": flow / 1600});
    expect([at(0.949 * cfm), at(0.9999 * cfm), at(1.0001 * cfm)].map((changes) => verdict("return velocity", changes))).toEqual(["ok", "near", "fails"]);
    const rushing = at(1.01 * cfm);
    expect(message("return velocity", rushing)).toMatch(/: a lower ceiling, two risers, or another way back\.$/);
    expect(mended("return velocity", rushing, {"story.ceiling": "below", "story.ceilingDropIn": 4}, {"air.riser": "ends"}, {"air.way": "rooms"})).toEqual(["ok", "ok", "not asked"]);
    // What is exhausted elsewhere does not come back.
    expect(verdict("return velocity", {...rushing, "air.exhaustPercent": 50})).toBe("ok");
  });

  test("drifts between stems at 500 ft/min at the most", () => {
    // 60 in less 4.75 at the soffit and 7.75 under the flange: 53.75 in on average over 30 in, 11.198 ft2, 5,599 cfm through one space.
    const cfm = ((53.75 * 30) / 144) * 500;
    const at = (flow: number) => ({"air.way": "stems", "air.returnEvery": 3, "services.airCfmPerFt2": flow / 1600});
    expect(library(at(cfm)).air.plan.returns.length).toBe(1);
    expect([at(0.949 * cfm), at(0.9999 * cfm), at(1.0001 * cfm)].map((changes) => verdict("return velocity", changes))).toEqual(["ok", "near", "fails"]);
    expect(message("return velocity", at(1.1 * cfm))).toMatch(/: a return in more of the free spaces, or another way back\.$/);
    expect(mended("return velocity", at(1.1 * cfm), {"air.returnEvery": 2}, {"air.way": "rooms"})).toEqual(["ok", "not asked"]);
  });
});
