import {describe, expect, test} from "vitest";
import {corbelLeverIn, type LevelBending} from "../../lib/columns/columnBending.js";
import {bendingOf, columnLevels, positionsOf} from "../../lib/columns/frame.js";
import type {ColumnPosition} from "../../lib/columns/levels.js";
import {loadPath} from "../../lib/columns/columnsResult.js";
import {takedown} from "../../lib/columns/takedown.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate, framingOf} from "../../lib/evaluate.js";
import {catalogue, seed, seeds} from "../support/designs.js";

const at = (design: Design) => {
  const result = evaluate(design, catalogue);
  return {result, framing: framingOf(result), ...columnsOf(result, catalogue)};
};

describe("the columns of a design", () => {
  test("fail no check in the starter designs, and each check has a name of its own", () => {
    for (const {id, design} of seeds) {
      const {checks, result} = at(design);
      expect(checks.filter((check) => check.verdict === "fails").map((check) => check.id), id).toEqual([]);
      const ids = [...result.checks, ...checks].map((check) => check.id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test("are those that the grid has", () => {
    const design = seed("branch-library");
    expect(positionsOf(evaluate(design, catalogue))).toEqual(["interior column", "edge column", "girder end column", "corner column"]);
    expect(at(withValues(design, {"bay.baysAlong": 1})).columns.map(({position}) => position)).toEqual(["girder end column", "corner column"]);
    expect(at(withValues(design, {"bay.baysAcross": 1})).columns.map(({position}) => position)).toEqual(["edge column", "corner column"]);
    expect(at(withValues(design, {"bay.baysAcross": 1, "bay.baysAlong": 1})).columns.map(({position}) => position)).toEqual(["corner column"]);
  });

  test("carry a quarter bay at the corner, half at the edge and where girders end, a whole one inside", () => {
    const {columns} = at(seed("branch-library"));
    const bayFt2 = 40 * 30;
    expect(columns.map(({foot}) => foot.level.tributaryFt2)).toEqual([bayFt2, bayFt2 / 2, bayFt2 / 2, bayFt2 / 4]);
  });

  test("have no level for a roof that weighs nothing and holds nothing", () => {
    const design = seed("classroom-wing");
    const names = (of: Design) => columnLevels(at(of).framing, "interior column").map(({name}) => name);
    expect(names(design)).toEqual(["roof", "floor 3", "floor 2"]);
    expect(names(withValues(design, {"column.roofDeadPsf": 0, "column.roofLivePsf": 0}))).toEqual(["floor 3", "floor 2"]);
    expect(names(withValues(design, {"column.roofDeadPsf": 0, "column.roofLivePsf": 20}))).toEqual(["roof", "floor 3", "floor 2"]);
  });

  test("are no smaller for a roof that may hold live load, which steadies a bent column only while it is there", () => {
    // By a grid of fibers the 14 in column under a line of girders' end uses 1.005 of its strength beside a bare roof.
    const design = withValues(seed("records-store"), {"bay.floors": 1, "column.seatIn": 4.5});
    const under = (roofLivePsf: number) => {
      const {columns} = at(withValues(design, {"column.roofLivePsf": roofLivePsf}));
      return columns.map(({position, column}) => ({position, sideIn: column.sideIn}));
    };
    const bare = under(0);
    expect(bare.find(({position}) => position === "girder end column")?.sideIn).toBe(16);
    for (const roofLivePsf of [20, 50]) under(roofLivePsf).forEach(({sideIn}, i) => expect(sideIn).toBeGreaterThanOrEqual(bare[i]?.sideIn ?? NaN));
  });

  test("by hand: the dead load that one floor brings to the library's interior column", () => {
    const {framing, result} = at(seed("branch-library"));
    const levels = columnLevels(framing, "interior column");
    const {adds} = takedown({position: "interior column", levels, columnPlf: 0}).storeys.at(-1) as ReturnType<typeof takedown>["storeys"][number];
    const {member, topping, loads, girder} = result;
    const toppingPsf = member.toppingWeightPlf / member.widthFt + (topping?.extra.averagePsf ?? 0);
    const floorPsf = member.selfWeightPlf / member.widthFt + toppingPsf + loads.superimposedDeadPsf;
    expect(adds.deadKip).toBeCloseTo((floorPsf * 1200 + (girder?.loads.selfPlf ?? 0) * 30) / 1000, 9);
    expect(adds.liveKip).toBeCloseTo(0.15 * 1200, 9);
  });

  describe("are bent", () => {
    const bendingAt = (design: Design, position: ColumnPosition) => {
      const {framing} = at(design);
      return bendingOf(framing, position, columnLevels(framing, position));
    };
    const library = seed("branch-library");
    const {edgeBeam, girder} = evaluate(library, catalogue);
    const floor = (design: Design, position: ColumnPosition, pattern = 0) => bendingAt(design, position).patterns[pattern]?.levels.at(-1) as LevelBending;
    /** 1.2D + 1.6L of a floor, without a roof. */
    const factored = (parts: LevelBending["across"]) => 1.2 * parts.deadKipIn + 1.6 * parts.liveKipIn;

    test("at a corner by the reaction and by the whole twist of the beam's end, as its own page tells them", () => {
      const {along, across} = floor(library, "corner column");
      expect(1.2 * along.deadKip + 1.6 * along.liveKip).toBeCloseTo(edgeBeam.demand.reactionKip, 9);
      expect(factored(across)).toBeCloseTo(edgeBeam.demand.endTorsionKipIn, 8);
      expect(bendingAt(library, "corner column")).toMatchObject({seat: {seatIn: 4.5, cutForIn: 20}});
    });

    test("at the edge by the twist of two ends, and by one beam's live load with the rest of that twist", () => {
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
      const {demand, eccentricityIn, loads} = evaluate(pockets, catalogue).edgeBeam;
      expect(eccentricityIn).toBeGreaterThan(0);
      expect(factored(floor(pockets, "edge column").across)).toBeCloseTo(2 * demand.endTorsionKipIn, 8);
      // Two ends of 36 ft of beam: the deck's load of a whole bay at its lever.
      expect(2 * demand.endTorsionKipIn).toBeCloseTo((loads.factoredLedgePlf * 36 * eccentricityIn) / 1000, 6);
      const below = withValues(parking, {"edgeBeam.kind": "below"});
      const {patterns} = bendingAt(below, "edge column");
      expect(patterns.map(({words}) => words)).toEqual(["live load on one of the two edge beams alone"]);
      // 40 psf on 30 ft by 18 ft.
      expect(patterns[0]?.levels[0]).toEqual({along: {deadKip: 0, liveKip: expect.closeTo(21.6, 9), roofKip: 0}, across: {deadKipIn: 0, liveKipIn: 0, roofKipIn: 0}});
      const {worst} = at(below).columns.find(({position}) => position === "edge column")?.column ?? {};
      expect(worst?.along.slenderness.endMomentKipIn).toBeGreaterThan(0);
    });

    test("inside by one girder's live load along the girders, or by one bay's across them", () => {
      const along = floor(library, "interior column");
      expect(along.along).toEqual({deadKip: 0, liveKip: expect.closeTo((0.15 * 1200) / 2, 9), roofKip: 0});
      const across = floor(library, "interior column", 1);
      expect(1.6 * across.across.liveKipIn).toBeCloseTo(2 * (girder?.twist.torsionKipIn ?? NaN), 8);
      expect(across.across.deadKipIn).toBe(0);
    });

    test("where a line of girders ends by the one girder on its corbel, whose dead load nothing balances", () => {
      const both = floor(library, "girder end column");
      expect(1.2 * both.along.deadKip + 1.6 * both.along.liveKip).toBeCloseTo(girder?.reactionKip ?? NaN, 9);
      expect(factored(both.across)).toBe(0);
      const one = floor(library, "girder end column", 1);
      expect(one.along.deadKip).toBe(both.along.deadKip);
      expect(one.along.liveKip).toBeCloseTo(both.along.liveKip / 2, 9);
      expect(1.6 * one.across.liveKipIn).toBeCloseTo(girder?.twist.torsionKipIn ?? NaN, 9);
    });

    test("on a roof by the same beams without cladding, evenly loaded", () => {
      // 80 psf on 20 ft and the beam itself; 20 psf: half of 30 ft.
      const [roof] = bendingAt(library, "corner column").patterns[0]?.levels ?? [];
      expect(roof?.along.deadKip).toBeCloseTo(((80 * 20 + edgeBeam.loads.selfPlf) * 15) / 1000, 9);
      expect(roof?.along.roofKip).toBeCloseTo((20 * 20 * 15) / 1000, 9);
      expect(roof?.across.roofKipIn).toBeCloseTo((20 * 20 * 15 * edgeBeam.eccentricityIn) / 1000, 9);
    });
  });

  test("are all met by beams that are cut alike, so that a narrow column's corbel reaches farther out", () => {
    const design = withValues(seed("branch-library"), {"column.sideIn": 20, "column.seatIn": 4.5});
    for (const {column, corbel, position} of at(design).columns) {
      // The bearing's middle is 10 + 4.5 in off the column line at each of them.
      expect((corbel?.input.armIn ?? 0) + column.sideIn / 2, position).toBeCloseTo(14.5, 12);
      // The beam ends 11 in off the line: the bearing does not reach beyond it.
      expect(14.5 - (corbel?.input.bearingLengthIn ?? 0) / 2, position).toBeGreaterThanOrEqual(11);
      // 14.5 in from the middle of a 12 in column, 12 + 4.5 from that of one wider than the ends are cut for.
      expect([12, 24].map((sideIn) => corbelLeverIn(column.bending.seat, sideIn))).toEqual([14.5, 16.5]);
    }
  });

  test("fail where the beams' ends are cut for a narrower column, and the side that is named mends it", () => {
    const narrow = withValues(seed("branch-library"), {"column.sideIn": 12});
    const failed = at(narrow).checks.filter(({id, verdict}) => id.endsWith("beam ends") && verdict === "fails");
    expect(failed.map(({id}) => id)).toContain("interior column: beam ends");
    const named = Math.max(...failed.map(({message}) => Number(/to (\d+) in/.exec(message)?.[1])));
    const mended = at(withValues(narrow, {"column.sideIn": named}));
    expect(mended.checks.filter(({id, verdict}) => id.endsWith("beam ends") && verdict !== "ok")).toEqual([]);
  });

  test("stand on the shallowest corbel that holds, and on ground that bears", () => {
    const {columns} = at(seed("branch-library"));
    for (const {corbel, footing, allowablePsf, position} of columns) {
      expect(corbel?.checks.filter((check) => check.verdict === "fails"), position).toEqual([]);
      expect(corbel?.input.bearingLengthIn).toBeLessThanOrEqual(2 * (4.5 - 1));
      expect(footing?.servicePsf).toBeLessThanOrEqual(allowablePsf);
    }
  });

  test("say so where their load is beyond the methods, and throw nothing", () => {
    const layers = Array.from({length: 5}, (_, i) => ({name: `layer ${i}`, loadPsf: 150}));
    const heavy = withValues(seed("records-store"), {"bay.floors": 12, "bay.spanFt": 100, "bay.beamSpanFt": 80, "loads.layers": layers});
    const {columns, unsized, checks} = at(heavy);
    expect(columns).toEqual([]);
    expect(unsized).toHaveLength(4);
    expect(checks.map((check) => check.verdict)).toEqual(unsized.map(() => "out of range"));
    const large = at(withValues(seed("records-store"), {"bay.floors": 12, "bay.spanFt": 100, "bay.beamSpanFt": 80}));
    expect(large.checks.some((check) => check.id === "interior column: footing side" && check.verdict === "out of range")).toBe(true);
    for (const check of large.checks) expect(Number.isFinite(check.demand + check.capacity + check.utilisation)).toBe(true);
  });

  test("pass the load of a square foot on, part by part", () => {
    const {framing, columns} = at(seed("branch-library"));
    const [inside] = columns;
    if (!inside) throw new Error("no column");
    const path = loadPath(framing, inside, {floorPsf: 200, factoredPsf: 300});
    // 10 ft of width over half of 40 ft.
    expect(path.memberKip).toBeCloseTo(60, 12);
    expect(path.beamKip).toBe(framing.girder?.reactionKip);
    expect(path.columnKip).toBe(inside.foot.governing.kip);
    expect(path.soilPsf).toBe(inside.footing?.servicePsf);
  });
});

describe("a corbel's bearing", () => {
  // 0.65 x 0.85 x 5 ksi = 2.7625 ksi on the beam's width less 1 in at each side. Girder, 16 in wide: 38.675 kip an inch,
  // and 234.6 kip ask 6.07 in; edge beam, 14 in wide: 33.15 kip an inch, and 133.5 kip ask 4.03 in.
  test("is as long as its reaction asks, in half inches", () => {
    const {columns} = columnsOf(evaluate(seed("branch-library"), catalogue), catalogue);
    const lengthIn = (position: string) => columns.find((column) => column.position === position)?.corbel?.input.bearingLengthIn;
    expect(lengthIn("interior column")).toBe(6.5);
    expect(lengthIn("corner column")).toBe(4.5);
  });

  test("is no shorter than 4 in, and no longer than stays under the beam", () => {
    const light = columnsOf(evaluate(withValues(seed("branch-library"), {"bay.beamSpanFt": 20, "loads.rooms": [{name: "Desks", occupancy: "office"}]}), catalogue), catalogue);
    expect(light.columns.find(({position}) => position === "corner column")?.corbel?.input.bearingLengthIn).toBe(4);
    const shortSeat = columnsOf(evaluate(withValues(seed("branch-library"), {"column.seatIn": 3}), catalogue), catalogue);
    expect(shortSeat.columns.find(({position}) => position === "interior column")?.corbel?.input.bearingLengthIn).toBe(4);
  });
});
