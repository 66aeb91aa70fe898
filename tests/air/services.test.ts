import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {services, type ServicesResult} from "../../lib/air/services.js";
import {storyStack} from "../../lib/story/stack.js";
import {catalog, seed} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const TEE = shapeOf(catalog, "10DT32");
const PLANK = shapeOf(catalog, "4HC8");
const BASE = {
  "air.place": "fit", "air.way": "none",
  "bay.spanFt": 40, "bay.beamSpanFt": 30, "services.airCfmPerFt2": 1, "services.servedFt2": 1200, "services.mainWidthIn": 26, "services.mainDepthIn": 8, "services.branchWidthIn": 14,
  "services.branchDepthIn": 10, "services.sprinklerIn": 4, "services.lightIn": 4, "story.ceiling": "flush", "edgeBeam.ledgeDepthIn": 10, "story.finishIn": 0, "story.floorToFloorFt": 15,
};
const run = (changes: Record<string, unknown> = {}, shape = TEE) => {
  const design = withValues(LIBRARY, {...BASE, ...changes});
  return services(design, shape, storyStack(design, 34));
};
const check = (id: string, changes: Record<string, unknown>, shape = TEE) => run(changes, shape).checks.find((one) => one.id === id);

describe("services", () => {
  test("takes the air of the floor that the main serves, a branch for each tee, and sizes inside their insulation", () => {
    const {ducts} = run();
    // 1,200 ft2 at 1 cfm of a floor of 120 by 80 ft; tees of 10 by 40 ft; 24 x 6 in inside is 1 ft2, 12 x 8 in two thirds.
    expect(ducts).toMatchObject({servedFt2: 1200, flowCfm: 1200, floorFt2: 9600, mains: 8, branches: 3, branchFt2: 400, branchFlowCfm: 400, branchesBetweenStems: true});
    expect(ducts?.quietFt2).toBeCloseTo(1300, 9);
    expect(ducts?.result.mainVelocityFpm).toBeCloseTo(1200, 9);
    expect(ducts?.result.branchVelocityFpm).toBeCloseTo(600, 9);
  });

  test("shares the air between as many branches as there are spaces, where each space has one", () => {
    // 1,200 ft2 are 30 ft along the building: spaces at 5, 10, 15, 20 and 25 ft, from the ledge to one side.
    expect(run({"air.supplyEvery": 1}).ducts).toMatchObject({branches: 5, branchFlowCfm: 240, branchFt2: 240});
  });

  test("keeps the air in the main, and in its branches, when columns move along the edge", () => {
    const velocities = (changes: Record<string, unknown>) => {
      const {result} = run({"services.servedFt2": 4000, ...changes}).ducts as NonNullable<ServicesResult["ducts"]>;
      return [result.mainVelocityFpm, result.branchVelocityFpm];
    };
    for (const shape of [{"bay.beamSpanFt": 20, "bay.baysAlong": 6}, {"bay.beamSpanFt": 24, "bay.baysAlong": 5}, {"bay.beamSpanFt": 60, "bay.baysAlong": 2}]) {
      expect(velocities(shape)).toEqual(velocities({}));
    }
    // The deck's span is the branch's length, and does not concern the main.
    expect(velocities({"bay.spanFt": 20})[0]).toBe(velocities({})[0]);
  });

  test("takes as many mains as the floor has shares, and refuses one that serves more than there is", () => {
    expect(run({"services.servedFt2": 4800}).ducts?.mains).toBe(2);
    expect(run({"services.servedFt2": 4700}).ducts?.mains).toBe(3);
    expect(check("served floor", {"services.servedFt2": 9600})?.verdict).toBe("ok");
    expect(check("served floor", {"services.servedFt2": 9601})).toMatchObject({verdict: "fails", message: expect.stringContaining("more floor than there is")});
    // A branch has no more air than its main.
    expect(run({"services.servedFt2": 300}).ducts).toMatchObject({branches: 1, branchFlowCfm: 300});
  });

  test("stacks hangers, main, pipes and lights below the deck, and else keeps the main along the ledge", () => {
    // 2 + 8 + 4 + 4 = 18 in stacked, 10 in hung.
    expect(run().ducts).toMatchObject({hungIn: 10, stackedIn: 18, mainPlace: "along the ledge"});
    expect(check("main duct room", {})?.verdict).toBe("ok");
    expect(run({"story.ceiling": "below", "story.ceilingDropIn": 8}).ducts?.mainPlace).toBe("below the deck");
    expect(run({"story.ceiling": "below", "story.ceilingDropIn": 7.9}).ducts?.mainPlace).toBe("along the ledge");
  });

  test("counts the main's own depth against the room, however much pipes and lights keep for themselves", () => {
    // The main moves to the ledge on the way, and takes its 8 in and 2 in of hangers throughout.
    for (const sprinklerIn of [0, 4, 4.1, 8, 12]) {
      expect(check("main duct room", {"services.sprinklerIn": sprinklerIn}), String(sprinklerIn)).toMatchObject({demand: 10, utilization: expect.closeTo(10 / (run().roomIn), 9)});
    }
    expect(check("main duct room", {"services.mainDepthIn": 9})?.utilization).toBeGreaterThan(check("main duct room", {})?.utilization ?? NaN);
  });

  test("names what collides, and by how much", () => {
    expect(check("main duct room", {"services.mainDepthIn": 11})).toMatchObject({verdict: "fails", message: expect.stringMatching(/^The main duct and the ceiling collide by 3 in/)});
    expect(check("service zones", {"services.lightIn": 6.5})).toMatchObject({verdict: "fails", message: expect.stringMatching(/^The sprinkler zone and the lights collide by 0\.50 in/)});
    expect(check("service zones", {"services.lightIn": 6})?.verdict).toBe("ok");
  });

  test("keeps a head's room below what hangs where there is no ceiling", () => {
    // 180 - 34 = 146 in under the deck; 146 - 80 = 66 for what hangs.
    expect(run({"story.ceiling": "none"}).roomIn).toBe(66);
    const low = {"story.ceiling": "none", "story.floorToFloorFt": 10};
    expect(check("main duct room", {...low, "services.mainDepthIn": 5})).toMatchObject({verdict: "fails", message: expect.stringContaining("a head below it collide by 1 in")});
    expect(check("service zones", {...low, "services.sprinklerIn": 6})?.verdict).toBe("ok");
    expect(check("service zones", {...low, "services.sprinklerIn": 7})).toMatchObject({verdict: "fails", message: expect.stringContaining("collide by 1 in")});
  });

  test("serves half the floor quietly with twice the air, and more with a larger main", () => {
    // 1,300 ft/min through 24 x 6 and 24 x 12 in inside.
    expect(run({"services.airCfmPerFt2": 2}).ducts?.quietFt2).toBeCloseTo(650, 9);
    expect(run({"services.mainDepthIn": 14}).ducts?.quietFt2).toBeCloseTo(2600, 9);
  });

  test("tells on how many mains the floor hangs, and in which strip they keep clear of pipes and lights", () => {
    expect(check("served floor", {"services.servedFt2": 9600})?.message).toBe("One main serves the whole floor.");
    expect(check("served floor", {})?.message).toBe("8 such mains serve the whole floor.");
    expect(check("main duct room", {})?.message).toContain("beside the ledge");
    expect(check("main duct room", {"story.ceiling": "below", "story.ceilingDropIn": 8})?.message).toContain("under one another");
  });

  test("says by which rule the main's room is short, and what strip it keeps to", () => {
    expect(check("main duct room", {})?.clause).toBe("geometry");
    expect(check("main duct room", {"story.ceiling": "none"})?.clause).toBe("IBC 2021 1003.3.1");
    expect(check("main duct room", {"air.place": "across", "air.acrossFt": 20})?.message).toBe("The main fits in a strip that lights and pipes leave free; it would not fit over them.");
  });

  test("gives a branch its share of the main's air once the design says where the main lies, or in which spaces branches do", () => {
    // 1,200 ft2 are 30 ft along: three feeders of 400 ft2, from a main in the middle of the row to both sides.
    expect(run({"air.place": "ledge"}).ducts).toMatchObject({branches: 3, branchFt2: 400});
    const {branches, branchFt2, plan} = run({"air.place": "across", "air.acrossFt": 26}).ducts as NonNullable<ServicesResult["ducts"]>;
    expect([branches, branchFt2]).toEqual([6, Math.max(...plan.sides.map(({flowCfm}) => flowCfm))]);
    // 26 ft of 40: five shares of 260 ft2 would be enough, but each of three feeders goes to both sides.
    expect(branchFt2).toBeGreaterThan(255);
    expect(branchFt2).toBeLessThan(300);
    // In every third space one at 5 and one at 20 ft share them.
    expect(run({"air.supplyEvery": 3}).ducts).toMatchObject({branches: 2, branchFt2: 600});
    // Left open, each tee has one over its span: of 1,300 ft2 four, though only three have their middle there; in every space, to both sides of a main below the deck, as many as there are.
    expect(run({"services.servedFt2": 1300}).ducts?.branches).toBe(4);
    const both = run({"bay.baysAcross": 1, "air.supplyEvery": 1, "story.ceiling": "below", "story.ceilingDropIn": 10}).ducts;
    // Both rows of bays by one main beside their girder: the longer side's branches have more air than the other's, and both are counted.
    const rows = run({"services.servedFt2": 9600, "air.supplyEvery": 1, "story.ceiling": "below", "story.ceilingDropIn": 10}).ducts;
    expect([rows?.mainPlace, rows?.plan.sides.length, rows?.branches]).toEqual(["below the deck", 2, 2 * (rows?.plan.supply.length ?? NaN)]);
    expect([both?.mainPlace, both?.branches]).toEqual(["below the deck", 2 * (both?.plan.supply.length ?? NaN)]);
  });

  test("counts a branch's whole cubic foot of air a minute, and less as none", () => {
    expect(run({"services.airCfmPerFt2": 1 / 400}).ducts?.branchFlowCfm).toBe(1);
    expect(run({"services.airCfmPerFt2": 0.99 / 400}).ducts).toBeUndefined();
    expect(run({"services.servedFt2": 300, "services.airCfmPerFt2": 1 / 300}).ducts?.flowCfm).toBe(1);
  });

  test("hangs branches beside the main below planks", () => {
    const {ducts, checks} = run({}, PLANK);
    expect(ducts).toMatchObject({branches: 3, branchFt2: 400, branchesBetweenStems: false, hungIn: 12});
    expect(checks.some((one) => one.verdict === "out of range")).toBe(false);
    // Beside a return duct they pass over the main: hangers, branch and main are 2 + 10 + 8 in.
    expect(run({"air.place": "ledge", "air.way": "trunk"}, PLANK).ducts?.hungIn).toBe(20);
  });

  test("has no ducts where there is no air", () => {
    const {ducts, checks} = run({"services.airCfmPerFt2": 0});
    expect(ducts).toBeUndefined();
    expect(checks.map(({id}) => id)).toEqual(["service zones"]);
    // Sprinkler pipes hang all the same: 4 in below 146 in of deck where there is no ceiling.
    expect(run({"services.airCfmPerFt2": 0, "story.ceiling": "none"}).pipesUnderIn).toBe(142);
  });

  test("bears every size that the fields allow", () => {
    for (const airCfmPerFt2 of [0.001, 4]) for (const servedFt2 of [50, 200_000]) for (const sizeIn of ["least", "most"]) {
      const [width, depth, branchWidth, branchDepth] = sizeIn === "least" ? [6, 4, 4, 4] : [96, 48, 72, 36];
      const {checks} = run({"services.airCfmPerFt2": airCfmPerFt2, "services.servedFt2": servedFt2, "services.mainWidthIn": width, "services.mainDepthIn": depth, "services.branchWidthIn": branchWidth, "services.branchDepthIn": branchDepth});
      for (const {demand, capacity} of checks) expect(Number.isFinite(demand) && Number.isFinite(capacity)).toBe(true);
    }
  });
});
