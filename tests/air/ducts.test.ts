import {describe, expect, test} from "vitest";
import {widthAt} from "../../lib/sections/polygon.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {doubleTee} from "../../lib/sections/doubleTee.js";
import {DUCT_PLACES, ductRoom, ductWidthIn, stemGapIn, type DuctClearance} from "../../lib/air/ductRoom.js";
import {ductPlan, ductVelocityFpm, greatestFlowCfm, quietBranches, smallestDuct, type DuctPlan} from "../../lib/air/ducts.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const TEE = shapeOf(catalog, "10DT24");
const FLARED = shapeOf(catalog, "12DT32");
const PLANK = shapeOf(catalog, "4HC8");
const NONE: DuctClearance = {coatingIn: 0, insulationIn: 0, hangerIn: 0, sideIn: 0};
/** Straight stems 6 in wide and 60 in apart in an 8 ft flange: 54 in between them, 30 in to the next tee's; 30 in high. */
const made = () => doubleTee("made", {widthIn: 96, depthIn: 32, flangeIn: 2, stemBottomIn: 6, stemTopIn: 6, stemSpacingIn: 60, chamferIn: 0});
/** A foot of air at each side leaves 30 and 6 in. */
const AIR: DuctClearance = {...NONE, sideIn: 12};

describe("stemGapIn", () => {
  test("is not the same on both sides of a stem", () => {
    expect(DUCT_PLACES.map((place) => stemGapIn(made(), place, 9))).toEqual([54, 30]);
  });

  test("follows the taper: 60 in less 3.75 at the soffit, less 5.75 under the flange", () => {
    expect(stemGapIn(TEE, "between stems", 0)).toBeCloseTo(56.25, 12);
    expect(stemGapIn(TEE, "between stems", 22)).toBeCloseTo(54.25, 12);
    expect(stemGapIn(TEE, "between tees", 11)).toBeCloseTo(60 - 4.75, 12);
  });

  test.each([TEE, FLARED])("leaves with the stems the whole width, at every height of $designation", (shape) => {
    const undersideIn = shape.depthIn - (shape.dimensions["flangeIn"] as number);
    for (let heightIn = 0.1; heightIn < undersideIn; heightIn += 0.7) {
      // One gap between the stems, one to the neighbor's, and what the outline has of concrete there.
      const gaps = DUCT_PLACES.reduce((sum, place) => sum + stemGapIn(shape, place, heightIn), 0);
      expect(gaps + widthAt(shape.rings, heightIn)).toBeCloseTo(shape.widthIn, 9);
    }
  });

  test("refuses planks, and heights outside the stems", () => {
    refused(() => stemGapIn(PLANK, "between stems", 2), {path: "member", value: "4HC8", message: /no room for ducts/});
    refused(() => stemGapIn(TEE, "between stems", 22.5), {path: "heightIn", allowed: "0 to 22 in"});
  });
});

describe("ductRoom", () => {
  test("takes coating, insulation, hangers and air from the bare space", () => {
    const clearance = {coatingIn: 0.5, insulationIn: 1, hangerIn: 2, sideIn: 1.5};
    const {greatestDepthIn, widthAtGreatestIn} = ductRoom(TEE, "between stems", clearance);
    // 22 - 0.5 - 2 - 2 = 17.5 in; its insulated top at 19.5 in, where the stems are 3.75 + 2 x 19.5/22 wide.
    expect(greatestDepthIn).toBeCloseTo(17.5, 12);
    expect(widthAtGreatestIn).toBeCloseTo(60 - 3.75 - (2 * 19.5) / 22 - 2 * 3, 12);
    expect(ductWidthIn(TEE, "between stems", 17.6, clearance)).toBe(0);
  });

  test("leaves a flatter or lower duct more width, and a raised one less depth", () => {
    expect(ductWidthIn(TEE, "between stems", 8)).toBeGreaterThan(ductWidthIn(TEE, "between stems", 14));
    expect(ductWidthIn(TEE, "between stems", 8, NONE, 6)).toBeLessThan(ductWidthIn(TEE, "between stems", 8, NONE, 0));
    expect(ductRoom(TEE, "between stems", NONE, 6).greatestDepthIn).toBeCloseTo(16, 12);
    expect(ductRoom(TEE, "between stems", NONE, 22)).toMatchObject({greatestDepthIn: 0, widthAtGreatestIn: 0});
  });

  test("refuses a clearance that is none", () => {
    refused(() => ductRoom(TEE, "between stems", {...NONE, hangerIn: -1}), {path: "clearance.hangerIn"});
  });
});

describe("ductVelocityFpm", () => {
  test("is flow over area", () => {
    // 24 by 12 in is 2 ft2; a 24 in round duct pi ft2.
    expect(ductVelocityFpm(2000, {kind: "rectangular", widthIn: 24, depthIn: 12})).toBeCloseTo(1000, 9);
    expect(ductVelocityFpm(2000, {kind: "round", diameterIn: 24})).toBeCloseTo(2000 / Math.PI, 9);
  });

  test("refuses no flow and no duct", () => {
    refused(() => ductVelocityFpm(0, {kind: "round", diameterIn: 12}), {path: "flowCfm"});
    refused(() => ductVelocityFpm(100, {kind: "round", diameterIn: 0}), {path: "diameterIn"});
    refused(() => ductVelocityFpm(100, {kind: "rectangular", widthIn: 12, depthIn: Number.NaN}), {path: "depthIn"});
  });
});

describe("smallestDuct", () => {
  test("carries the flow quietly with the least area of all that fit", () => {
    // 1,800 cfm at 900 ft/min want 288 in2: 24 x 12, 18 x 16 and others have just that.
    const duct = smallestDuct(TEE, "between stems", 1800, "branch");
    expect(duct?.velocityFpm).toBeLessThanOrEqual(900);
    const size = duct?.size as {widthIn: number; depthIn: number};
    expect(size.widthIn * size.depthIn).toBe(288);
    // Of those of 288 in2 that are no flatter than 4 to 1 the one 12 in deep takes least of the height.
    expect(size).toMatchObject({widthIn: 24, depthIn: 12});
    expect(size.widthIn).toBeLessThanOrEqual(ductWidthIn(TEE, "between stems", size.depthIn));
  });

  test("finds none for more than goes through", () => {
    const most = greatestFlowCfm(TEE, "between stems", "branch");
    expect(most).toBeGreaterThan(1000);
    expect(smallestDuct(TEE, "between stems", most, "branch")).toBeDefined();
    expect(smallestDuct(TEE, "between stems", 1.01 * most, "branch")).toBeUndefined();
  });

  test("is no flatter and no slimmer than 4 to 1, whatever room is left", () => {
    // 6 in wide and 30 in high: 6 x 24 in is 1 ft2, 900 cfm. 4 in high and 30 in wide: 16 x 4 in, 400 cfm.
    for (const [place, bottomIn, cfm, widthIn, depthIn] of [["between tees", 0, 900, 6, 24], ["between stems", 26, 400, 16, 4]] as const) {
      expect(greatestFlowCfm(made(), place, "branch", AIR, bottomIn)).toBeCloseTo(cfm, 9);
      expect(smallestDuct(made(), place, cfm, "branch", AIR, bottomIn)?.size).toMatchObject({widthIn, depthIn});
      expect(smallestDuct(made(), place, cfm + 1, "branch", AIR, bottomIn)).toBeUndefined();
    }
  });

  test("is the branch of each place, whatever was looked for before", () => {
    const flows = [50, 400, 900, 1800, 2500, 400, 50];
    for (const shape of [TEE, FLARED]) for (const clearance of [undefined, AIR]) for (const cfm of flows) {
      expect(quietBranches(shape, cfm, clearance)).toEqual(DUCT_PLACES.flatMap((place) => smallestDuct(shape, place, cfm, "branch", clearance) ?? []));
    }
    expect(quietBranches(FLARED, 400).map(({place}) => place)).toEqual(DUCT_PLACES);
  });

  test("is 4 by 4 in at the least", () => {
    expect(smallestDuct(TEE, "between stems", 1, "branch")?.size).toMatchObject({widthIn: 4, depthIn: 4});
  });
});

describe("ductPlan", () => {
  const PLAN: DuctPlan = {
    flowCfm: 5000, main: {kind: "rectangular", widthIn: 40, depthIn: 14}, branchFlowCfm: 1250,
    branch: {kind: "rectangular", widthIn: 20, depthIn: 10}, branchPlace: "between stems",
  };
  const verdict = (changes: Partial<DuctPlan>, id: string, shape = TEE) => ductPlan(shape, {...PLAN, ...changes}).checks.find((check) => check.id === id)?.verdict;

  test("takes the velocity of main and branch each from its own flow", () => {
    const result = ductPlan(TEE, PLAN);
    expect(result.mainVelocityFpm).toBeCloseTo((5000 * 144) / 560, 9);
    expect(result.branchVelocityFpm).toBeCloseTo(900, 9);
    expect(result.fits.map(({place}) => place)).toEqual(["between stems", "between tees"]);
    expect(result.checks.some((check) => check.verdict === "fails")).toBe(false);
  });

  test("fails each check beyond its limit", () => {
    expect(verdict({flowCfm: 5100}, "main duct velocity")).toBe("fails");
    expect(verdict({branchFlowCfm: 1251}, "branch duct velocity")).toBe("fails");
    expect(verdict({main: {kind: "rectangular", widthIn: 60, depthIn: 14}}, "main duct shape")).toBe("fails");
    expect(verdict({branch: {kind: "rectangular", widthIn: 8, depthIn: 40}}, "branch duct shape")).toBe("fails");
    // Just four to one is as good as less.
    expect(verdict({main: {kind: "rectangular", widthIn: 56, depthIn: 14}}, "main duct shape")).toBe("ok");
    // 22 - 2 - 2 = 18 in between the stems.
    expect(verdict({branch: {kind: "round", diameterIn: 18}}, "branch duct depth")).toBe("ok");
    expect(verdict({branch: {kind: "round", diameterIn: 18.1}}, "branch duct depth")).toBe("fails");
    const room = ductWidthIn(TEE, "between stems", 14);
    expect(verdict({branch: {kind: "rectangular", widthIn: room, depthIn: 14}}, "branch duct width")).toBe("ok");
    expect(verdict({branch: {kind: "rectangular", widthIn: room + 0.1, depthIn: 14}}, "branch duct width")).toBe("fails");
  });

  test("mends a flat duct by more depth and a slim one by more width, rushing air by several mains but not in a branch", () => {
    const message = (changes: Partial<DuctPlan>, id: string) => ductPlan(TEE, {...PLAN, ...changes}).checks.find((check) => check.id === id)?.message;
    expect(message({main: {kind: "rectangular", widthIn: 60, depthIn: 14}}, "main duct shape")).toMatch(/make it deeper or narrower/);
    expect(message({branch: {kind: "rectangular", widthIn: 8, depthIn: 40}}, "branch duct shape")).toMatch(/make it wider or shallower/);
    expect(message({flowCfm: 5100}, "main duct velocity")).toMatch(/several mains/);
    expect(message({branchFlowCfm: 1251}, "branch duct velocity")).not.toMatch(/mains/);
  });

  test("takes a round branch's diameter for its width", () => {
    const check = (diameterIn: number) => ductPlan(made(), {...PLAN, branchPlace: "between tees", branch: {kind: "round", diameterIn}, clearance: AIR}).checks.find(({id}) => id === "branch duct width");
    expect(check(6)).toMatchObject({verdict: "ok", demand: 6, capacity: 6});
    expect(check(6.1)?.verdict).toBe("fails");
  });

  test("tells the branches that fit, each with its place, and none where there is none", () => {
    expect(ductPlan(made(), {...PLAN, clearance: AIR}).fits.map(({place}) => place)).toEqual(["between stems"]);
    const crowded = ductPlan(made(), {...PLAN, branchFlowCfm: 5000, clearance: {...AIR, coatingIn: 12}});
    expect(crowded.fits).toEqual([]);
  });

  test("asks nothing of the room between stems where a deck has none", () => {
    const {fits, checks} = ductPlan(PLANK, PLAN);
    expect(fits).toEqual([]);
    expect(checks.map(({id}) => id)).toEqual(["main duct velocity", "branch duct velocity", "main duct shape", "branch duct shape"]);
  });

  test("refuses a plan that is none", () => {
    refused(() => ductPlan(TEE, {...PLAN, branchFlowCfm: 5001}), {path: "branchFlowCfm"});
    refused(() => ductPlan(TEE, {...PLAN, flowCfm: Infinity}), {path: "flowCfm"});
  });
});
