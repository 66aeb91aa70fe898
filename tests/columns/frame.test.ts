import {describe, expect, test} from "vitest";
import type {LevelBending} from "../../lib/columns/columnBending.js";
import {bendingOf, columnLevels, positionsOf} from "../../lib/columns/frame.js";
import type {ColumnPosition} from "../../lib/columns/levels.js";
import {takedown} from "../../lib/columns/takedown.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {evaluate, framingOf} from "../../lib/evaluate.js";
import {roofLoadOn} from "../../lib/snow/roofLoads.js";
import {WITHOUT_WALLS, catalog, seed} from "../support/designs.js";

/** Without its panels, beside which a strip of floor loads the columns at the ends. */
const library = withValues(seed("branch-library"), {"roof.given": "loads", ...WITHOUT_WALLS});
const framed = (design: Design) => framingOf(evaluate(design, catalog));
/** The beams of the library, as their own pages tell them. */
const beams = () => evaluate(library, catalog);

test("the grid has an interior, an edge, a girder end and a corner column, as far as it has bays", () => {
  const at = (values: Record<string, number>) => positionsOf({loads: floorLoads(withValues(library, values), catalog, 10)});
  expect(positionsOf(beams())).toEqual(["interior column", "edge column", "girder end column", "corner column"]);
  expect(at({"bay.baysAlong": 1})).toEqual(["girder end column", "corner column"]);
  expect(at({"bay.baysAcross": 1})).toEqual(["edge column", "corner column"]);
  expect(at({"bay.baysAcross": 1, "bay.baysAlong": 1})).toEqual(["corner column"]);
});

test("there is no level for a roof that weighs nothing and holds nothing", () => {
  const names = (roofDeadPsf: number, roofLivePsf: number) => {
    const design = {...library, bay: {...library.bay, floors: 2}, column: {...library.column, roofDeadPsf, roofLivePsf}};
    return columnLevels({...framed(library), design}, "interior column").map(({name}) => name);
  };
  expect(names(80, 20)).toEqual(["roof", "floor 3", "floor 2"]);
  expect(names(0, 0)).toEqual(["floor 3", "floor 2"]);
  expect(names(0, 20)).toEqual(["roof", "floor 3", "floor 2"]);
  expect(names(80, 0)).toEqual(["roof", "floor 3", "floor 2"]);
});

test("by hand: the dead load that one floor brings to the library's interior column", () => {
  const levels = columnLevels(framed(library), "interior column");
  const {adds} = takedown({position: "interior column", levels, columnPlf: 0}).stories.at(-1) as ReturnType<typeof takedown>["stories"][number];
  const {member, topping, loads, girder} = beams();
  const toppingPsf = member.toppingWeightPlf / member.widthFt + (topping?.extra.averagePsf ?? 0);
  const floorPsf = member.selfWeightPlf / member.widthFt + toppingPsf + loads.superimposedDeadPsf;
  expect(adds.deadKip).toBeCloseTo((floorPsf * 1200 + (girder?.loads.selfPlf ?? 0) * 30) / 1000, 9);
  expect(adds.liveKip).toBeCloseTo(0.15 * 1200, 9);
});

test("cladding hangs on the edge beams of the floors, and neither on the roof's nor inside", () => {
  const plfOf = (position: ColumnPosition) => {
    const {edge} = framed(library);
    return columnLevels({...framed(library), edge: {...edge, loads: {...edge.loads, claddingPlf: 300}}}, position).map(({beamPlf}) => beamPlf);
  };
  const {edgeBeam: {loads: {selfPlf}}, girder} = beams();
  expect(plfOf("edge column")).toEqual([selfPlf, selfPlf + 300, ...plfOf("edge column").slice(2)]);
  expect(plfOf("interior column").every((plf) => plf === girder?.loads.selfPlf)).toBe(true);
});

describe("columns are bent", () => {
  const bendingAt = (design: Design, position: ColumnPosition) => bendingOf(framed(design), position, columnLevels(framed(design), position));
  const floor = (design: Design, position: ColumnPosition, pattern = 0) => bendingAt(design, position).patterns[pattern]?.levels.at(-1) as LevelBending;
  /** 1.2D + 1.6L of a floor, without a roof. */
  const factored = (parts: LevelBending["across"]) => 1.2 * parts.deadKipIn + 1.6 * parts.liveKipIn;

  test("at a corner by the reaction and by the whole twist of the beam's end, as its own page tells them", () => {
    const {edgeBeam} = beams();
    const {along, across} = floor(library, "corner column");
    expect(1.2 * along.deadKip + 1.6 * along.liveKip).toBeCloseTo(edgeBeam.demand.reactionKip, 9);
    expect(factored(across)).toBeCloseTo(edgeBeam.demand.endTorsionKipIn, 8);
    expect(bendingAt(library, "corner column")).toMatchObject({seat: {seatIn: 4.5, cutForIn: 20}});
  });

  test("at the edge by the twist of two ends, and by one beam's live load with the rest of that twist", () => {
    const {edgeBeam} = beams();
    const both = floor(library, "edge column");
    expect(both.along).toEqual({deadKip: 0, liveKip: 0, roofKip: 0});
    expect(factored(both.across)).toBeCloseTo(2 * edgeBeam.demand.endTorsionKipIn, 8);
    const one = floor(library, "edge column", 1);
    expect(one.along.deadKip).toBe(0);
    expect(one.along.liveKip).toBeCloseTo(floor(library, "corner column").along.liveKip, 12);
    expect(one.across.deadKipIn).toBeCloseTo(both.across.deadKipIn, 9);
    expect(one.across.liveKipIn).toBeCloseTo(both.across.liveKipIn / 2, 9);
  });

  test("under pockets by the deck's place inside the web, and under a beam below the deck by one side's live load alone", () => {
    const parking = seed("parking-structure");
    const pockets = withValues(parking, {"edgeBeam.kind": "pockets"});
    const {demand, eccentricityIn, loads} = evaluate(pockets, catalog).edgeBeam;
    expect(eccentricityIn).toBeGreaterThan(0);
    expect(factored(floor(pockets, "edge column").across)).toBeCloseTo(2 * demand.endTorsionKipIn, 8);
    // Two ends of 36 ft of beam: the deck's load of a whole bay at its lever.
    expect(2 * demand.endTorsionKipIn).toBeCloseTo((loads.factoredLedgePlf * 36 * eccentricityIn) / 1000, 6);
    const below = withValues(parking, {"edgeBeam.kind": "below"});
    const {patterns} = bendingAt(below, "edge column");
    expect(patterns.map(({words}) => words)).toEqual(["live load on only one of the two edge beams"]);
    // 40 psf on 30 ft by 18 ft; on the open top level snow besides, on the beam's own area.
    const snowPsf = roofLoadOn(evaluate(below, catalog).roofLoads, "edge beam").loads.S;
    expect(snowPsf).toBeGreaterThan(20);
    const along = (roofKip: number) => ({along: {deadKip: 0, liveKip: expect.closeTo(21.6, 9), roofKip: expect.closeTo(roofKip, 9)}, across: {deadKipIn: 0, liveKipIn: 0, roofKipIn: 0}});
    expect(patterns[0]?.levels[0]).toEqual(along((snowPsf * 30 * 18) / 1000));
    expect(patterns[0]?.levels[1]).toEqual(along(0));
  });

  test("inside by one girder's live load along the girders, or by one bay's across them", () => {
    const {girder} = beams();
    const along = floor(library, "interior column");
    expect(along.along).toEqual({deadKip: 0, liveKip: expect.closeTo((0.15 * 1200) / 2, 9), roofKip: 0});
    const across = floor(library, "interior column", 1);
    expect(1.6 * across.across.liveKipIn).toBeCloseTo(2 * (girder?.twist.torsionKipIn ?? NaN), 8);
    expect(across.across.deadKipIn).toBe(0);
  });

  test("where a line of girders ends by the one girder on its corbel, whose dead load nothing balances", () => {
    const {girder} = beams();
    const both = floor(library, "girder end column");
    expect(1.2 * both.along.deadKip + 1.6 * both.along.liveKip).toBeCloseTo(girder?.reactionKip ?? NaN, 9);
    expect(factored(both.across)).toBe(0);
    const one = floor(library, "girder end column", 1);
    expect(one.along.deadKip).toBe(both.along.deadKip);
    expect(one.along.liveKip).toBeCloseTo(both.along.liveKip / 2, 9);
    expect(1.6 * one.across.liveKipIn).toBeCloseTo(girder?.twist.torsionKipIn ?? NaN, 9);
  });

  test("on a roof by the same beams without cladding, evenly loaded", () => {
    const {edgeBeam} = beams();
    // 80 psf on 20 ft and the beam itself; 20 psf: half of 30 ft. Without the parapet, which lies on the beam as well.
    const [roof] = bendingAt(withValues(library, WITHOUT_WALLS), "corner column").patterns[0]?.levels ?? [];
    expect(roof?.along.deadKip).toBeCloseTo(((80 * 20 + edgeBeam.loads.selfPlf) * 15) / 1000, 9);
    expect(roof?.along.roofKip).toBeCloseTo((20 * 20 * 15) / 1000, 9);
    expect(roof?.across.roofKipIn).toBeCloseTo((20 * 20 * 15 * edgeBeam.eccentricityIn) / 1000, 9);
    expect(roof?.across.deadKipIn).toBeCloseTo(((80 * 20 * edgeBeam.eccentricityIn + edgeBeam.loads.selfPlf * edgeBeam.selfEccentricityIn) * 15) / 1000, 9);
    expect([roof?.along.liveKip, roof?.across.liveKipIn]).toEqual([0, 0]);
  });

  test("on a roof by the same girders: 40 ft of it on both bays, or the live load of one", () => {
    const {girder} = beams();
    const [both, oneBay] = bendingAt(library, "girder end column").patterns.map(({levels}) => levels[0]);
    const deadKip = ((80 * 40 + (girder?.loads.selfPlf ?? NaN)) * 15) / 1000;
    expect(both?.along).toEqual({deadKip: expect.closeTo(deadKip, 9), liveKip: 0, roofKip: expect.closeTo(12, 9)});
    expect(both?.across).toEqual({deadKipIn: 0, liveKipIn: 0, roofKipIn: 0});
    expect(oneBay?.along).toEqual({deadKip: expect.closeTo(deadKip, 9), liveKip: 0, roofKip: expect.closeTo(6, 9)});
    expect(oneBay?.across).toEqual({deadKipIn: 0, liveKipIn: 0, roofKipIn: expect.closeTo(6 * (girder?.seat.eccentricityIn ?? NaN), 9)});
    // Inside, the two girders' dead load balances, and their twists by one bay add up.
    const [along, across] = bendingAt(library, "interior column").patterns.map(({levels}) => levels[0]);
    expect(along).toEqual({along: {deadKip: 0, liveKip: 0, roofKip: expect.closeTo(12, 9)}, across: {deadKipIn: 0, liveKipIn: 0, roofKipIn: 0}});
    expect(across?.across.roofKipIn).toBeCloseTo(2 * 6 * (girder?.seat.eccentricityIn ?? NaN), 9);
  });

  test("to both sides of a story where every level turns it the same way, to one side where live load may change sides", () => {
    const curves = (position: ColumnPosition) => bendingAt(library, position).patterns.map(({curvature: {along, across}}) => `${along} ${across}`);
    expect(curves("corner column")).toEqual(["double double"]);
    expect(curves("edge column")).toEqual(["single double", "single double"]);
    expect(curves("girder end column")).toEqual(["double single", "double single"]);
    expect(curves("interior column")).toEqual(["single single", "single single"]);
  });
});
