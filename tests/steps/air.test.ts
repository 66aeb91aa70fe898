import {describe, expect, test} from "vitest";
import {frictionFactor} from "../../lib/air/friction.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {mainFrictionWorking, mainHeightWorking, wayBackWorking} from "../../lib/steps/air.js";
import type {Working} from "../../lib/step.js";
import {catalog, seed} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

/** The library with one main for 1,600 ft2 along its ledge, 24 by 8 in inside, and no return. */
const PLAIN = {
  "air.place": "ledge", "air.run": "plenum", "air.way": "none", "air.rows": 1, "air.serves": "floor", "air.riser": "end", "air.supplyEvery": 2, "air.returnEvery": 1,
  "air.exhaustPercent": 0, "air.wallsCrossed": 0, "air.casing": "derived", "deck.member": "10DT32", "deck.toppingIn": 2, "bay.spanFt": 40, "bay.beamSpanFt": 30, "bay.baysAlong": 4, "bay.baysAcross": 2,
  "services.airCfmPerFt2": 1, "services.servedFt2": 1600, "services.mainWidthIn": 26, "services.mainDepthIn": 10, "services.branchWidthIn": 14, "services.branchDepthIn": 10,
  "services.sprinklerIn": 4, "services.lightIn": 3, "story.ceiling": "flush", "story.floorToFloorFt": 15, "story.finishIn": 0, "edgeBeam.ledgeDepthIn": 13,
};
const library = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(withValues(seed("branch-library"), {...PLAIN, ...changes}), catalog);
const step = ({steps}: Working, symbol: string) => steps.find((one) => one.symbol === symbol);
/** Symbols in their order, each step recomputed from its own expression. */
function worked(working: Working): string {
  checkWorking(working);
  return working.steps.map(({symbol}) => symbol).join(" ");
}

describe("friction in the main", () => {
  test("is that of the round duct which passes the same air as easily", () => {
    const working = mainFrictionWorking(library());
    expect(worked(working)).toBe("v D_e v_e Re f p");
    // 1,600 cfm through 24 by 8 in, 1.333 ft2; 1.30 192^0.625 / 32^0.25 = 14.6 in, 1.164 ft2; 8.56 14.6 1,374 = 172,000.
    expect(step(working, "v")?.result).toBeCloseTo(1200, 6);
    expect(step(working, "D_e")?.result).toBeCloseTo(14.6, 1);
    expect(step(working, "v_e")?.result).toBeCloseTo(1374, -1);
    expect((step(working, "Re")?.result ?? NaN) / 1000).toBeCloseTo(172, 0);
    expect(step(working, "f")?.note).toMatch(/on both sides/);
  });

  test("is 64 over Reynolds' number up to 2,000, where air flows in layers, and Colebrook's from there on", () => {
    // 5 cfm in a duct as large as they come.
    const slow = library({"services.servedFt2": 50, "services.airCfmPerFt2": 0.1, "services.mainWidthIn": 96, "services.mainDepthIn": 48});
    const working = mainFrictionWorking(slow);
    expect(worked(working)).toBe("v D_e v_e Re f p");
    expect(step(working, "Re")?.result).toBeLessThan(200);
    expect(step(working, "f")?.expression).toBe("64 / Re");
    const {air} = slow;
    if (!air) throw new Error("no air");
    const at = (reynolds: number) => {
      const friction = {...air.main.friction, reynolds, factor: frictionFactor(reynolds, air.main.friction.equivalentIn)};
      const f = step(mainFrictionWorking({...slow, air: {...air, main: {...air.main, friction}}}), "f");
      return checkWorking({title: "f", steps: f ? [f] : []}) && f?.source;
    };
    expect([1999.9, 2000].map(at)).toEqual(["laminar flow", "Colebrook and White"]);
  });

  test("is nothing where no air comes through ducts", () => {
    const still = library({"services.airCfmPerFt2": 0});
    for (const working of [mainFrictionWorking, mainHeightWorking]) expect(working(still)).toEqual({title: "No air through ducts", steps: []});
    expect(wayBackWorking(still)).toEqual({title: "No return is shown", steps: []});
  });
});

describe("the way back of the air", () => {
  const back = (changes: Readonly<Record<string, unknown>>) => wayBackWorking(library({"air.exhaustPercent": 25, ...changes}));

  test("is not shown where the design shows none, or where all of it is exhausted elsewhere", () => {
    for (const changes of [{"air.way": "none"}, {"air.way": "plenum", "air.exhaustPercent": 100}]) expect(back(changes)).toEqual({title: "No return is shown", steps: []});
  });

  test.each([
    ["trunk", {}, "Q_r v_r"], ["stems", {}, "Q_r v_r v_r"], ["plenum", {"story.ceilingDropIn": 18, "story.ceiling": "below"}, "Q_r v_r"], ["rooms", {}, "Q_r"],
    ["plenum", {"story.ceilingDropIn": 18, "story.ceiling": "below", "air.wallsCrossed": 2}, "Q_r v_r A_w"], ["rooms", {"air.wallsCrossed": 3}, "Q_r A_w"],
  ])("%s: what comes in less a quarter, by a duct, between stems, over the ceiling or through walls", (way, changes, symbols) => {
    const working = back({"air.way": way, ...changes});
    expect(worked(working)).toBe(symbols);
    expect(working.title).toBe("The way back");
    expect(step(working, "Q_r")?.result).toBeCloseTo(1200, 9);
  });

  test("a plenum that lights fill has no velocity: nothing passes", () => {
    expect(worked(back({"air.way": "plenum", "edgeBeam.ledgeDepthIn": 6, "services.lightIn": 6}))).toBe("Q_r");
  });

  test("of three walls on the way to a riser in the middle, the one nearest to it passes half of the air", () => {
    const working = back({"air.way": "rooms", "air.wallsCrossed": 3, "air.riser": "middle"});
    // Half of 1,200 cfm at 400 ft/min.
    expect(step(working, "A_w")?.result).toBeCloseTo(1.5, 9);
  });
});

describe("the main in the height of its story", () => {
  /** 2 in of hangers, 10 in of duct with its insulation, 4 in of pipes, 3 in of lights. */
  const height = (changes: Readonly<Record<string, unknown>> = {}): readonly [Working, Evaluation] => {
    const evaluation = library(changes);
    const working = mainHeightWorking(evaluation);
    worked(working);
    return [working, evaluation];
  };

  test("beside the ledge wants a plenum of its own height, elsewhere pipes and lights under it too; never less than the ledge", () => {
    const least = (changes: Readonly<Record<string, unknown>>) => step(height(changes)[0], "p")?.result;
    expect(height()[0].title).toBe("The least plenum");
    expect(step(height()[0], "h_h")?.result).toBe(12);
    expect(least({})).toBe(13);
    expect(least({"edgeBeam.ledgeDepthIn": 8})).toBe(12);
    expect(least({"edgeBeam.ledgeDepthIn": 8, "air.place": "middle"})).toBe(19);
    expect(least({"edgeBeam.ledgeDepthIn": 8, "services.sprinklerIn": 9, "services.lightIn": 5, "services.mainDepthIn": 6})).toBe(14);
  });

  test.each([
    // The plenum behind a flush ceiling is as deep as the ledge, 8 in.
    ["box", "flush", 12 + 1 - 8], ["strip", "flush", 12 + 4 + 3 + 1 - 8], ["box", "none", 12 + 1], ["strip", "none", 12 + 4 + 1],
  ] as const)("a %s under a ceiling that is %s drops by what the plenum lacks, board included", (run, ceiling, dropIn) => {
    const [{title, steps}, {story}] = height({"air.run": run, "story.ceiling": ceiling, "edgeBeam.ledgeDepthIn": 8});
    expect([title, steps.map(({symbol}) => symbol).join(" ")]).toEqual([`The ${run} below the ceiling`, "h_h s h_u"]);
    expect(steps[1]?.result).toBe(dropIn);
    expect(steps[2]?.result).toBe(story.ceilingHeightIn - dropIn);
    expect(steps[2]?.values["h_c"]?.label).toBe(ceiling === "none" ? "height under the deck" : "ceiling height");
  });

  test("a box whose drop the design states does not follow from the ducts, so that the least plenum is told", () => {
    expect(height({"air.run": "box", "air.casing": "stated"})[0].title).toBe("The least plenum");
  });
});
