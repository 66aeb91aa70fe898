import {describe, expect, test} from "vitest";
import {columnLevels} from "../../lib/columns/frame.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, framingOf} from "../../lib/evaluate.js";
import {buildingEnvelope} from "../../lib/story/envelope.js";
import {catalog, seed, seeds} from "../support/designs.js";

/**
 * The library's roof by hand. Two stories of 180 in; finish 1/4 in and deck 34 in put the soffits at 145.75 and 325.75 in.
 * On that a tee of 26 in without topping: structure at 351.75 in. Layers 3/4 + 5 1/2 in: 358 in at the drains in the middle
 * of the building; a fall of 1/4 in per ft over 40 ft: 368 in at the long edges, 30'-8". The roof's beams stand 12 in above
 * the structure, at 363.75 in; a parapet of 36 in ends at 404 in, 40.25 in above them.
 */
const library = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(withValues(seed("branch-library"), changes), catalog);

describe("the topmost level of a building whose roof is a level of its own", () => {
  test("is as high as its deck, layers and fall make it over a soffit like any other", () => {
    const {walls: {planes}, story, design} = library();
    expect(planes).toMatchObject({topIn: 368, topStoryIn: 188, parapetIn: 36, upstandIn: 0, parapetAddedIn: 40.25});
    expect(planes.top).toMatchObject({surfaceIn: 368, deckDepthIn: 26, structureIn: [351.75, 351.75, 351.75]});
    expect(planes.top.sides[0]).toEqual({structureIn: 351.75, beamTopIn: 363.75, builtOnIn: 363.75, addedIn: 40.25});
    expect(planes.top.sides[1]).toEqual(planes.top.sides[0]);
    // The room under it is as high as under a floor.
    expect(planes.top.structureIn[0] as number - 26 - 180).toBeCloseTo(story.clearUnderDeckIn, 9);
    const around = buildingEnvelope(design, story);
    expect(around.heightFt).toBeCloseTo(368 / 12, 9);
    // In the mean the roof lies half of its fall lower: 120 x 80 x 363/12 ft.
    expect(around.volumeFt3).toBeCloseTo(120 * 80 * (363 / 12), 6);
  });

  test("follows each part of the roof, inch by inch, and the floor's deck not at all", () => {
    const topIn = (changes: Readonly<Record<string, unknown>>) => library(changes).walls.planes.topIn;
    expect(topIn({"roof.toppingIn": 2})).toBe(370);
    expect(topIn({"roof.slopeInPerFt": 0.5})).toBe(378);
    expect(topIn({"roof.drainage": "camber"})).toBe(358);
    expect(topIn({"roof.drainage": "bearing"})).toBe(368);
    expect(topIn({"roof.layers": [{name: "membrane", loadPsf: 3, thicknessIn: 0.25, rValue: 0}]})).toBe(362);
    // 2 in more of topping take 2 in from every room, the topmost as well.
    expect(topIn({"deck.toppingIn": 4})).toBe(366);
    // Given by two loads it is taken as deep as a floor.
    expect(topIn({"roof.given": "loads"})).toBe(360);
  });

  test("has a parapet that begins on the edge beams, or on the deck's edge above a beam that lies below", () => {
    const side = (changes: Readonly<Record<string, unknown>>) => library(changes).walls.planes.top.sides[0];
    expect(side({"roof.upstandIn": 60})).toMatchObject({beamTopIn: 411.75, addedIn: 0});
    expect(side({"roof.upstandIn": 52})).toMatchObject({beamTopIn: 403.75, addedIn: 0.25});
    expect(side({"edgeBeam.kind": "below"})).toMatchObject({beamTopIn: 325.75, builtOnIn: 351.75, addedIn: 52.25});
    // Without a parapet a metal edge closes the layers; no concrete is built on.
    expect(side({"walls.parapetIn": 0})).toMatchObject({addedIn: 0});
    // 150 pcf: 6 in wide, 37.25 in high, under a cap of 3 in, 8 in wide.
    expect(library().walls.weights.parapetPlf).toBeCloseTo((150 * (6 * 37.25 + 8 * 3)) / 144, 9);
  });

  test("given by two loads is a floor's, with the floor's beams under it; so is a highest floor under the sky", () => {
    // 360 in less 1/4 in of finish over each of three column lines across; 30 in of upstand from the structure.
    expect(library({"roof.given": "loads"}).walls.planes.top).toMatchObject({structureIn: [359.75, 359.75, 359.75], sides: [{structureIn: 359.75, beamTopIn: 389.75}, {}]});
    const parked = seed("parking-structure");
    const {topIn, top} = evaluate(parked, catalog).walls.planes;
    const structureIn = topIn - parked.story.finishIn;
    expect(top.structureIn).toEqual([structureIn, structureIn, structureIn]);
    expect(top.sides.map(({beamTopIn}) => beamTopIn)).toEqual([structureIn + parked.edgeBeam.upstandIn, structureIn + parked.edgeBeam.upstandIn]);
  });

  test("brings its height to panels, footing and columns", () => {
    const {walls, design, roof} = library();
    // Both stories and the parapet in one panel: 368 + 36 in.
    expect(walls.panels?.sizes.map(({heightIn}) => heightIn)).toEqual([404]);
    const {wallPsf, withWindowsPsf, endCapPlf, footingPlf} = walls.weights;
    expect(footingPlf).toBeCloseTo(withWindowsPsf * (368 / 12) + wallPsf * 3 + endCapPlf, 9);
    const lying = library({"walls.panelSupport": "columns"}).walls;
    expect(lying.weights.roofPlf).toBeCloseTo(lying.weights.withWindowsPsf * (188 / 12) + lying.weights.wallPsf * 3 + lying.weights.endCapPlf, 9);
    // From structure to structure the topmost story is 8 in lower: 26 in of tee in place of 34.
    expect(roof?.member.compression.depthIn).toBe(26);
    expect(columnLevels(framingOf(library()), "corner column").map(({storyHeightFt}) => storyHeightFt)).toEqual([180 / 12 - 8 / 12, 15]);
    expect(design.story.floorToFloorFt).toBe(15);
    // A spandrel reaches from 18 in below its floor's structure to the parapet's top: 18 + 1/4 + 8 + 36 in of 8 in.
    const spandrel = library({"walls.shortSide": "spandrel", "walls.spandrelDepthIn": 48, "walls.spandrelUpstandIn": 30}).walls.spandrel;
    expect(spandrel?.roofSelfPlf).toBeCloseTo((150 * 8 * 62.25) / 144, 9);
    // Without a parapet it is no lower than the roof's surface: 48 in are enough for 26.25, 20 in are not for 18 + 8.25 in.
    const bare = (upstandIn: number, depthIn: number) => library({"walls.parapetIn": 0, "walls.shortSide": "spandrel", "walls.spandrelDepthIn": depthIn, "walls.spandrelUpstandIn": upstandIn}).walls.spandrel;
    expect(bare(30, 48)?.roofSelfPlf).toBeCloseTo((150 * 8 * 48) / 144, 9);
    expect(bare(0, 36)?.roofSelfPlf).toBeCloseTo((150 * 8 * 44.25) / 144, 9);
  });

  test("falls over stepped bearings, so that the two long sides may differ", () => {
    // Three bays of 30 ft, drains over the first line of girders and along the far edge: 7.5 in of fall to each.
    const {walls: {planes, weights, materials}, roof} = evaluate(seed("records-store"), catalog);
    const {top} = planes;
    const lowIn = Math.min(...top.structureIn);
    expect(top.structureIn.map((at) => at - lowIn)).toEqual([7.5, 0, 7.5, 0]);
    expect(planes.topIn).toBeCloseTo(lowIn + (roof?.layers.buildUpIn ?? NaN) + 7.5, 9);
    expect(top.sides[1].addedIn - top.sides[0].addedIn).toBeCloseTo(7.5, 9);
    // Beams that stand 48 in above their decks hide as much of a parapet along both sides as along the lower.
    const high = evaluate(withValues(seed("records-store"), {"roof.upstandIn": 48}), catalog);
    expect(high.walls.planes.upstandIn).toBeCloseTo(48 - 7.5 - (high.roof?.layers.buildUpIn ?? NaN), 9);
    expect(planes.upstandIn).toBe(0);
    // The columns carry the side where more is built on.
    expect(planes.parapetAddedIn).toBe(top.sides[1].addedIn);
    const {parapetThicknessIn, capIn} = seed("records-store").walls;
    expect(weights.parapetPlf).toBeCloseTo((150 * (parapetThicknessIn * (top.sides[1].addedIn - capIn) + capIn * (parapetThicknessIn + 2))) / 144, 9);
    expect(materials.concreteYd3).toBeGreaterThan(0);
  });

  test.each(seeds.flatMap(({id, design}) => ["bearing", "taper", "camber"].flatMap((drainage) => ["ledge", "below"].map((kind) => [id, drainage, kind, design] as const))))(
    "adds up to the rectangles of its walls: %s, fall by %s, beam %s", (_, drainage, kind, design) => {
      for (const shortSide of ["solid panel", "spandrel", "cladding"]) {
        const changed = withValues(design, {"roof.given": "deck", "roof.drainage": drainage, "edgeBeam.kind": kind, "walls.shortSide": shortSide, "walls.parapetIn": 30});
        const {walls, story} = evaluate(changed, catalog);
        const {areas, planes} = walls;
        expect(areas.parts.every(({ft2}) => ft2 > 0)).toBe(true);
        expect(areas.wallFt2).toBeCloseTo((areas.perimeterFt * (planes.topIn + 30)) / 12, 6);
        expect(buildingEnvelope(changed, story).wallFt2).toBeCloseTo(areas.wallFt2, 9);
      }
    });
});
