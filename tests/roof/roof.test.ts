import {describe, expect, test} from "vitest";
import {columnLevels} from "../../lib/columns/frame.js";
import {roofEdgeBeamEnd, roofGirderEnd} from "../../lib/columns/roofOnColumn.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {withValue, withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate, framingOf, roofCandidates} from "../../lib/evaluate.js";
import type {GirderResult} from "../../lib/girder/girder.js";
import {roofDesign} from "../../lib/roof/roofDesign.js";
import type {RoofResult} from "../../lib/roof/roof.js";
import {refused} from "../support/errors.js";
import {memberWith} from "../support/members.js";
import {catalog, seed} from "../support/designs.js";

const LAYERS = [{name: "membrane and boards", loadPsf: 5, thicknessIn: 6, rValue: 30}, {name: "ceiling", loadPsf: 5, thicknessIn: 0, rValue: 0}];
/** Two bays of 40 ft by four of 30 ft, two floors of 10DT32 and a roof of 10DT24 without topping, which falls itself; nothing on the sides. */
const design = (more: Readonly<Record<string, unknown>> = {}) => withValues(seed("branch-library"), {
  "bay.spanFt": 40, "bay.beamSpanFt": 30, "bay.baysAlong": 4, "bay.baysAcross": 2, "bay.floors": 2,
  "roof.given": "deck", "roof.member": "10DT24", "roof.pattern": "68-S", "roof.toppingIn": 0, "roof.concrete": "normalweight", "roof.strengthPsi": 5000,
  "roof.releaseStrengthPsi": 3500, "roof.layers": LAYERS, "roof.drainage": "bearing", "roof.slopeInPerFt": 0.25, "roof.upstandIn": 12, "roof.sagLimit": "L/180",
  "snow.groundPsf": 0, "snow.rainStaticIn": 1, "snow.rainHydraulicIn": 1, "walls.parapetIn": 0, "walls.shortSide": "not counted", ...more,
});
const roofOf = (more: Readonly<Record<string, unknown>> = {}) => evaluate(design(more), catalog).roof as RoofResult;

describe("a roof of its own", () => {
  test("is none where the roof is two loads, whatever else is said of it", () => {
    const loads = evaluate(design({"roof.given": "loads"}), catalog);
    expect(loads.roof).toBeUndefined();
    expect(loads.checks.filter(({id}) => id.startsWith("roof: "))).toEqual([]);
    expect(roofCandidates(loads, catalog)).toEqual([]);
  });

  test("has its deck checked as a floor's, by its own loads and rules", () => {
    const {deck, loads, checks} = roofOf();
    // Lr by one tee, 400 ft2: 20 (1.2 - 0.4) = 16 psf; rain 5.2 (1 + 1) = 10.4; no snow.
    expect(deck.livePsf).toBeCloseTo(16, 12);
    expect(loads.superimposedDeadPsf).toBe(10);
    expect(deck.demandPsf).toBeCloseTo(26, 12);
    // 449 in2 of concrete weigh 467.7 plf, over 10 ft 46.77 psf, and 10 psf dead: 1.2 x 56.77 + 1.6 x 16 = 93.725 psf, more than 1.4 x 56.77.
    expect(deck.factoredPsf).toBeCloseTo(93.725, 3);
    const {criteria} = deck;
    expect(deck.safe).toEqual(safeLoad(memberWith("10DT24", "68-S", {humidityPercent: design().criteria.humidityPercent}), 40, criteria));
    expect(criteria).toMatchObject({sagLimit: "L/180", walking: undefined, sustainedLiveShare: 0});
    // 40 ft over 180: 2.667 in, of the load that comes and goes alone.
    expect(deck.service.allowedMovementIn).toBeCloseTo(480 / 180, 12);
    expect(deck.service.movementIn).toBe(deck.service.liveDeflection.deflectionIn);
    const sag = checks.find(({id}) => id === "roof: deck sag");
    expect(sag?.label).toBe("Roof: deflection under roof load, L/180");
    expect(checks.find(({id}) => id === "roof: deck load")).toMatchObject({demand: deck.demandPsf, capacity: deck.safe.safeLoadPsf, label: "Roof: superimposed load", message: "The member carries the load on this roof."});
    expect(checks.some(({id}) => id === "roof: deck walking")).toBe(false);
  });

  test("takes the floor's concrete where it says nothing of its own", () => {
    const floor = design({"deck.strengthPsi": 7000, "deck.releaseStrengthPsi": 4200, "deck.concrete": "sand-lightweight", "roof.concrete": undefined, "roof.strengthPsi": undefined, "roof.releaseStrengthPsi": undefined});
    expect(roofDesign(floor, 0).deck).toMatchObject({strengthPsi: 7000, releaseStrengthPsi: 4200, concrete: "sand-lightweight"});
    expect(roofDesign(design({"deck.strengthPsi": 7000}), 0).deck).toMatchObject({strengthPsi: 5000, releaseStrengthPsi: 3500, concrete: "normalweight"});
  });

  test("is released at the floor's strength only as far as its own concrete gets that strong", () => {
    const weaker = design({"deck.strengthPsi": 9000, "deck.releaseStrengthPsi": 6500, "roof.strengthPsi": 5000, "roof.releaseStrengthPsi": undefined});
    expect(roofDesign(weaker, 0).deck).toMatchObject({strengthPsi: 5000, releaseStrengthPsi: 5000});
    expect(evaluate(weaker, catalog).roof?.member.concrete.strengthPsi).toBe(5000);
    expect(roofDesign(withValue(weaker, "roof.strengthPsi", 7000), 0).deck).toMatchObject({strengthPsi: 7000, releaseStrengthPsi: 6500});
  });

  test("has no changed shape nor strand heights of the floor's member", () => {
    const floor = design({"deck.dimensions": {stemBottomIn: 5}, "deck.strandHeightCenterIn": 6});
    expect(roofDesign(floor, 0).deck).not.toHaveProperty("dimensions");
    expect(roofDesign(floor, 0).deck).not.toHaveProperty("strandHeightCenterIn");
  });

  test("may have strands at heights of its own, arches as it likes, and rises by its camber where it has no fall", () => {
    expect(roofDesign(design({"roof.strandHeightEndIn": 9, "roof.strandHeightCenterIn": 4}), 0).deck).toMatchObject({strandHeightEndIn: 9, strandHeightCenterIn: 4});
    // Water runs off a roof that arches; the floor's rule that its camber stay is not the roof's.
    expect(design().criteria.keepCamber).toBe(true);
    expect(roofOf().checks.map(({id}) => id)).not.toContain("roof: deck camber");
    expect(roofOf().riseIn).toBe(10);
    const byCamber = roofOf({"roof.drainage": "camber"});
    expect(byCamber.riseIn).toBe(byCamber.deck.camber.longTermIn);
    expect(byCamber.riseIn).toBeGreaterThan(0);
  });

  test("carries what comes and goes as one use, of which nothing stays and nothing more is taken off", () => {
    const {loads} = roofOf();
    expect(loads.checks).toEqual([]);
    expect(loads.rooms).toHaveLength(1);
    expect(loads.rooms[0]).toMatchObject({
      name: "roof live load, snow or rain", livePsf: 16, partitionPsf: 0, own: undefined, rule: "in full", occupancy: {livePsf: 16, reduction: "no", partitions: false, sustainedShare: 0},
    });
  });

  test("is refused at its own fields", () => {
    const at = (more: Readonly<Record<string, unknown>>) => () => evaluate(design(more), catalog);
    refused(at({"roof.member": "10DT99"}), {path: "roof.member"});
    refused(at({"roof.pattern": "60-S"}), {path: "roof.pattern"});
    refused(at({"roof.strengthPsi": 3500, "roof.releaseStrengthPsi": 4000}), {path: "roof.releaseStrengthPsi"});
  });

  test("has the floors' beams by its own deck, upstand and loads", () => {
    const {edgeBeam, girder} = roofOf();
    const {ledgeDepthIn, ledgeProjectionIn, webWidthIn} = design().edgeBeam;
    expect(edgeBeam.depthIn).toBe(ledgeDepthIn + 24 + 12);
    expect(edgeBeam.loads.selfPlf).toBeCloseTo(((webWidthIn * edgeBeam.depthIn + ledgeDepthIn * ledgeProjectionIn) * 150) / 144, 9);
    // 20 ft of roof: 56.77 psf dead; Lr for its 600 ft2: 20 (1.2 - 0.6) = 12 psf.
    expect(edgeBeam.loads.deckDeadPlf).toBeCloseTo(20 * 56.7708, 2);
    expect(edgeBeam.loads.livePlf).toBeCloseTo(20 * 12, 9);
    expect(edgeBeam.loads.claddingPlf).toBe(0);
    expect((girder as GirderResult).loads.livePlf).toBeCloseTo(40 * 12, 9);
    expect((girder as GirderResult).depthIn).toBe(design().girder.ledgeDepthIn + 24);
    expect(roofOf({"bay.baysAcross": 1}).girder).toBeUndefined();
  });

  test("says of its beams only what is not said of the floors' in the same numbers", () => {
    const {checks} = roofOf();
    const ids = checks.map(({id}) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toEqual(expect.arrayContaining(["roof: beam strength", "roof: girder load", "roof: fall", "roof: trapped water", "roof: ponding stiffness", "roof: water load"]));
    for (const same of ["ledge projection", "ledge depth", "seat tolerance"]) expect(ids).not.toContain(`roof: ${same}`);
  });

  test("may be searched for its deck, and what the search puts first carries it", () => {
    const now = evaluate(design(), catalog);
    const found = roofCandidates(now, catalog);
    const [first] = found;
    expect(first?.works).toBe(true);
    expect(new Set(found.map(({designation}) => /DT|HC|FS/.exec(designation)?.[0]))).toEqual(new Set(["DT", "HC", "FS"]));
    const chosen = evaluate(withValues(design(), {"roof.member": first?.designation, "roof.pattern": first?.pattern, "roof.toppingIn": first?.toppingIn}), catalog).roof as RoofResult;
    expect(chosen.deck.safe.safeLoadPsf).toBeCloseTo(first?.safe.safeLoadPsf as number, 9);
    expect(chosen.checks.find(({id}) => id === "roof: deck load")?.verdict).not.toBe("fails");
    // Whatever the floor considers: tees to be topped, pretopped ones and planks.
    const uses = new Set(found.map(({designation}) => catalog.deckMembers.find((row) => row.designation === designation)?.use));
    expect(uses).toEqual(new Set(["field-topped", "pretopped", "plank"]));
    // Of a tee of 12 ft the area is 480 ft2 and Lr 14.4 psf.
    const wide = found.find(({designation}) => designation.startsWith("12DT"));
    expect(wide).toBeDefined();
  });
});

describe("the take-down counts it", () => {
  // By hand, interior column, 40 ft by 30 ft on each level.
  const areaFt2 = 1200;

  test("level by level as its parts add up", () => {
    const now = evaluate(design(), catalog);
    const {roof, member, girder, loads} = now as typeof now & {roof: RoofResult; girder: GirderResult};
    const [top, ...floors] = columnLevels(framingOf(now), "interior column");
    expect(floors).toHaveLength(2);
    // 467.7 plf over 10 ft, no topping, 10 psf of layers; the girder's own weight; Lr at 1200 ft2 is 12 psf, more than rain.
    expect(top).toMatchObject({kind: "roof", toppingPsf: 0, superimposedPsf: 10, usePsf: 0, rule: "no", beamPlf: roof.girder?.loads.selfPlf});
    expect(top?.deckPsf).toBeCloseTo((449 * 150) / 144 / 10, 9);
    expect(top?.livePsf).toBeCloseTo(12, 12);
    const inner = columnsOf(now, catalog).columns.find(({position}) => position === "interior column");
    const foot = inner?.foot;
    const columnKip = ((inner?.column.sideIn as number) ** 2 / 144) * 0.15 * design().story.floorToFloorFt * 3;
    const roofDeadKip = ((roof.member.selfWeightPlf / 10 + 10) * areaFt2 + (roof.girder as GirderResult).loads.selfPlf * 30) / 1000;
    const floorDeadKip = (((now.laid.selfWeightPlf + now.laid.toppingWeightPlf) / member.widthFt + loads.superimposedDeadPsf) * areaFt2 + girder.loads.selfPlf * 30) / 1000;
    expect(foot?.deadKip).toBeCloseTo(roofDeadKip + 2 * floorDeadKip + columnKip, 6);
    expect(foot?.roofKip).toBeCloseTo((12 * areaFt2) / 1000, 9);
    const [dead, live, over] = [foot?.deadKip as number, foot?.liveKip as number, 14.4];
    expect(foot?.factored.map(({kip}) => kip)).toEqual([1.4 * dead, 1.2 * dead + 1.6 * live + 0.5 * over, 1.2 * dead + live + 1.6 * over, 1.2 * dead + 1.6 * live].map((kip) => expect.closeTo(kip, 6) as number));
    expect(foot?.service.map(({kip}) => kip)).toEqual([dead + live, dead + over, dead + 0.75 * live + 0.75 * over].map((kip) => expect.closeTo(kip, 6) as number));
    // The floors' live load knows nothing of the roof.
    const bare = columnsOf(evaluate(design({"roof.given": "loads", "column.roofDeadPsf": 0, "column.roofLivePsf": 0}), catalog), catalog).columns.find(({position}) => position === "interior column");
    expect(foot?.liveKip).toBeCloseTo(bare?.foot.liveKip as number, 9);
  });

  test("with a roof of the same two numbers as one of two loads", () => {
    // A roof of its own that weighs 60 psf in all and carries Lr of 12 psf, on beams like the floors'.
    const now = evaluate(design({"roof.layers": []}), catalog);
    const roof = now.roof as RoofResult;
    const [own] = columnLevels(framingOf(now), "corner column");
    const two = evaluate(design({"roof.given": "loads", "column.roofDeadPsf": Math.round(roof.member.selfWeightPlf / 10), "column.roofLivePsf": 16}), catalog);
    const [given] = columnLevels(framingOf(two), "corner column");
    // 300 ft2: 20 (1.2 - 0.3) = 18 psf.
    expect(own?.livePsf).toBeCloseTo(18, 12);
    expect((own?.deckPsf ?? 0) / (given?.deckPsf ?? 1)).toBeCloseTo(1, 1);
    expect(own).toMatchObject({tributaryFt2: given?.tributaryFt2, beamLengthFt: given?.beamLengthFt, storyHeightFt: given?.storyHeightFt});
  });

  test("by the ends of its own beams, unfactored", () => {
    const {roof} = evaluate(design({"roof.member": "4HC8", "roof.pattern": "76-S", "bay.spanFt": 24}), catalog) as {roof: RoofResult};
    // Planks load the beam evenly: half of it to each end; 12 ft of roof, 360 ft2: Lr 20 (1.2 - 0.36) = 16.8 psf.
    const {edgeBeam} = roof;
    const {reaction, twist} = roofEdgeBeamEnd(roof);
    expect(reaction).toMatchObject({liveKip: 0, deadKip: expect.closeTo((edgeBeam.loads.deadPlf * 15) / 1000, 6) as number, roofKip: expect.closeTo((16.8 * 12 * 15) / 1000, 6) as number});
    expect(twist.roofKipIn).toBeCloseTo((16.8 * 12 * 15 * edgeBeam.eccentricityIn) / 1000, 6);
    const {both, oneBay} = roofGirderEnd(roof);
    // 720 ft2 on the girder: 12 psf; one bay's 360 ft2: 16.8.
    expect(both.reaction.roofKip).toBeCloseTo((12 * 24 * 15) / 1000, 6);
    expect(oneBay.reaction.roofKip).toBeCloseTo((16.8 * 12 * 15) / 1000, 6);
    expect(oneBay.twist.liveKipIn).toBe(0);
    expect(oneBay.twist.roofKipIn).toBeGreaterThan(0);
  });

  test("in two parts where people use it", () => {
    const now = evaluate(design({"snow.use": "occupied", "snow.occupancy": "roof-assembly", "snow.groundPsf": 30}), catalog);
    const roof = now.roof as RoofResult;
    const [top] = columnLevels(framingOf(now), "interior column");
    // Assembly is 100 psf and not reduced; the minimum snow, 20 psf, is less than 0.7 x 30 = 21.
    expect(top?.usePsf).toBe(100);
    expect(top?.livePsf).toBeCloseTo(21, 9);
    // The deck carries as one live load: (1.6 x 100 + 0.5 x 21)/1.6 = 106.6 psf, more than 21 + 100/1.6 and 0.75 x 121.
    expect(roof.deck.livePsf).toBeCloseTo(106.5625, 9);
    const column = columnsOf(now, catalog).columns.find(({position}) => position === "interior column");
    const bare = columnsOf(evaluate(design({"snow.groundPsf": 30}), catalog), catalog).columns.find(({position}) => position === "interior column");
    expect((column?.foot.liveKip as number) - (bare?.foot.liveKip as number)).toBeCloseTo((100 * areaFt2) / 1000, 9);
    const {both} = roofGirderEnd(roof);
    expect(both.reaction.liveKip / both.reaction.roofKip).toBeCloseTo(100 / 21, 9);
  });

  test("and a roof that is heavier than a floor decides the corbels", () => {
    const light = columnsOf(evaluate(design(), catalog), catalog).columns[0]?.corbel?.input.shearKip as number;
    const now = evaluate(design({"roof.layers": [{name: "soil", loadPsf: 150, thicknessIn: 18, rValue: 0}, {name: "more soil", loadPsf: 150, thicknessIn: 18, rValue: 0}]}), catalog);
    expect(light).toBe(evaluate(design(), catalog).girder?.reactionKip);
    expect(columnsOf(now, catalog).columns[0]?.corbel?.input.shearKip).toBe(now.roof?.girder?.reactionKip);
  });
});

test("a roof costs nothing where it is two loads, and no field of it changes a result", () => {
  const now = evaluate(design({"roof.given": "loads"}), catalog);
  const other = evaluate(withValue(design({"roof.given": "loads"}), "roof.member", "4HC8"), catalog);
  expect(other.checks).toEqual(now.checks);
});
